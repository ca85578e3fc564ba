#pragma once

#include "app/invocation.h"

#include "model/money/unit_money.h"

#include <QJsonArray>

namespace ts {

/// The object "money" of a unit's document.
[[nodiscard]] QJsonObject moneyObject(const UnitMoney &money);

/// The same for people: what it should fetch, the forecast, the ways out, the highest bid.
void printMoney(QTextStream &out, const UnitMoney &money);

} // namespace ts
