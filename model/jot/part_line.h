#pragma once

#include "model/jot/price.h"
#include "model/values/money.h"

namespace ts {

/// What a line about a part says: [2x] [C214] TEXT [was OLD] [from SUPPLIER] [due DATE] [PRICE].
struct PartLine {
    QString text;
    QString position;
    QString oldValue;
    QString supplier;
    QDate due;
    std::optional<int> quantity;
    std::optional<Money> price;
};

/// `ordering` lines also have a supplier and a day.
[[nodiscard]] PartLine splitPart(const QString &text, const Currency &bench, QDate today, bool ordering);

} // namespace ts
