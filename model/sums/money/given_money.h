#pragma once

#include "model/records/fee_rule.h"
#include "model/sums/given.h"

namespace ts {

/// Given with sums of money: all in one currency, that of the key "currency" or of the first sum; where that names none, GBP
/// stands in and is not shown.
class MoneyGiven : public Given {
public:
    MoneyGiven(const QString &sum, const SumInput &input);

    Money sum(QStringView key);         ///< zero where the key was left out
    Money notNegative(QStringView key); ///< the same, zero or more
    std::optional<Money> maybeSum(QStringView key);
    QList<Money> sums(QStringView key); ///< comma-separated
    Rate percent(QStringView key);      ///< "20 %", "20"; 0 where left out
    double hours(QStringView key);      ///< "4", "2.5 h", "150 min", "2 h 30 m"; zero or more
    double chance(QStringView key);     ///< 0 to 1, or a percentage
    /// "13:item+carriage:0.35:50, 3:item": rate in percent, base, fixed part, cap; what is left out at the end is none.
    QList<FeeRule> rules(QStringView key);
    [[nodiscard]] const Currency &currency() const { return m_currency; }
    /// Adds the currency's code to what came out, where one was named.
    void addCurrency(SumOutput &out) const;

    /// The keys that any sum of money takes and gives beside its own.
    [[nodiscard]] static SumKey currencyKey();
    [[nodiscard]] static SumKey currencyGiven();
    [[nodiscard]] static SumKey rulesKey();

private:
    Expected<FeeRule> rule(const QString &text);
    Expected<std::optional<Money>> moneyIn(const QString &text);

    Currency m_currency;
    bool m_named = false;
    bool m_read = false; ///< a sum was read, so the currency stands
};

} // namespace ts
