#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// A sum in another currency for which no amount in the bench's currency was entered.
struct Unconverted {
    QString text;
    Money amount;
    Flow flow = Flow::Out;
    bool operator==(const Unconverted &) const = default;
};

/// Money out on one unit, in the bench's currency.
struct Spent {
    Money total;                ///< really out: spends, less refunds got, plus needs that are ordered, here or fitted
    Money toCome;               ///< needs still only needed, at their price
    int unpriced = 0;           ///< needs of any state without a price, not in either sum
    QList<Unconverted> without; ///< foreign sums without a rate: in no total, to be shown beside it
    bool operator==(const Spent &) const = default;
};

/// What a spend is worth in the bench's currency: its amount, or the entered inBenchCurrency where the amount is foreign; nothing
/// where there is none.
[[nodiscard]] std::optional<Money> inCurrency(const Spend &spend, const Currency &bench);
/// Price × quantity of a need, nothing where it has no price or a foreign one.
[[nodiscard]] std::optional<Money> inCurrency(const Need &need, const Currency &bench);

/// When it was paid: the time of recording, or where another day is named the beginning of that day (UTC).
[[nodiscard]] QDateTime paidAt(const Spend &spend);
/// How a spend counts towards what was spent: 1 for money out, -1 for a refund got, 0 for any other money in.
[[nodiscard]] int spendSign(const Spend &spend);

/// Money out on the unit: spends that flow out, less what flowed in as refund (sales and deposits are no refund), plus the needs
/// that are ordered, here or fitted at price × quantity. Time is not in it.
[[nodiscard]] Spent spentOn(const UnitFile &file, const Currency &bench);
/// Of those, the spends of the kinds named: out less (for refunds) in. Foreign ones without a rate are left out.
[[nodiscard]] Money spentAs(const UnitFile &file, const Currency &bench, const QList<SpendKind> &kinds);

} // namespace ts
