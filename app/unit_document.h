#pragma once

#include "model/desk/rack_row.h"
#include "model/money/unit_money.h"
#include "model/records/unit_file.h"

#include <QJsonObject>

namespace ts {

/// Everything recorded on one unit and what is worked out from it: one JSON object, keys in snake_case, money as decimal
/// strings, times in UTC; absent facts are null or an empty list, never left out. `now` is when it is shown.
[[nodiscard]] QJsonObject unitDocument(const UnitFile &file, const BenchFile &bench, const UnitMoney &money, const QDateTime &now);

/// The rack: {currency, units: […]}.
[[nodiscard]] QJsonObject rackDocument(const QList<RackRow> &rack, const Currency &currency);

} // namespace ts
