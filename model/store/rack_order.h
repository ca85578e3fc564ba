#pragma once

#include "model/store/connection.h"

namespace ts {

class SearchIndex;

/// The columns of readRackOrder, in their order.
enum class OrderColumn { Id, Stage, Tag, StageSince, HeldUntil, Name, PartsSince };

/// Every unit of these stages, with what it can be put in order by; in no order. Where `words` says something, those units alone of which
/// every word begins a word of the unit itself (tag, name, serial, claim …) or of a symptom of it that is open.
[[nodiscard]] Expected<QList<Row>> readRackOrder(Connection &connection, const SearchIndex &search, const QString &words, const QStringList &stages);
/// How many units there are by stage (two columns: stage, count), narrowed likewise; stages without one are left out.
[[nodiscard]] Expected<QList<Row>> countRack(Connection &connection, const SearchIndex &search, const QString &words);

} // namespace ts
