#pragma once

#include "model/store/connection.h"

namespace ts {

/// The columns of RackReader::rows, in their order.
enum class RackColumn { Id, Tag, Name, Category, Kind, Stage, StageSince, HeldBecause, HeldUntil, Outcome, SourceId, Spent, Minutes, Symptom, DoNotPower };

/// The rack's rows in one query: units with what was spent on them in `currency` and their minutes up to `now`
/// (rules of model/sums/spent.h and hours.h). `stage` empty: all; limit below 0: all.
[[nodiscard]] Expected<QList<Row>> readRack(Connection &connection, const QString &currency, const QString &now, const QString &stage, int offset, int limit);

} // namespace ts
