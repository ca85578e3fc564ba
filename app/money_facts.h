#pragma once

#include "app/invocation.h"

#include "model/money/best_use.h"

#include <QJsonArray>

namespace ts {

/// All that the money of a unit is worked out from, read from the workbook.
[[nodiscard]] Expected<MoneyQuestion> moneyQuestion(Desk &desk, const UnitFile &file, const BenchFile &bench,
                                                    const QDateTime &now);

/// The object "money" of a unit's document.
[[nodiscard]] QJsonObject moneyObject(const UnitMoney &money);

/// The same for people: what it should fetch, the forecast, the ways out, the highest bid.
void printMoney(QTextStream &out, const UnitMoney &money);

} // namespace ts
