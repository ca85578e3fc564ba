#pragma once

#include "model/store/connection.h"

namespace ts {

/// The columns of the rows below, in their order.
enum class RackColumn { Id, Tag, Name, Category, Kind, Stage, StageSince, HeldBecause, HeldUntil, Outcome, SourceId, Spent, Minutes, Symptom, DoNotPower,
    // of readRackUnits alone
    Taken, Mains, ProtectionClass, Claim, Asked, AskedCurrency, Channel, Next, OpenSymptoms, Loose, Soak, SoakSince, Due, Photos, Sheets, SoldFor, PartsHere };

/// The rack's rows in one query: units with what was spent on them in `currency` and their minutes up to `now`
/// (rules of model/sums/spent.h and hours.h). `stage` empty: all; limit below 0: all.
[[nodiscard]] Expected<QList<Row>> readRack(Connection &connection, const QString &currency, const QString &now, const QString &stage, int offset, int limit);
/// The rows of these units alone, in any order, with what their tags say beside.
[[nodiscard]] Expected<QList<Row>> readRackUnits(Connection &connection, const QString &currency, const QString &now, const QStringList &units);

} // namespace ts
