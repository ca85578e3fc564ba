#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// Whether fees for promotion are due: before a sale they are counted, since nobody knows yet.
enum class Promotion { Counted, NotUsed };

/// What a sale takes from the buyer, in one currency.
struct Takings {
    Money item;
    Money carriage; ///< as charged to the buyer
    Money tax;      ///< shown on top, if any
    Promotion promotion = Promotion::Counted;
};

struct Fee {
    QString name;
    Money amount;
    bool operator==(const Fee &) const = default;
};

struct Fees {
    QList<Fee> lines; ///< one of each rule that applies, in the rules' order
    Money total;      ///< exactly their sum
    bool operator==(const Fees &) const = default;
};

/// The rules of a channel that hold on a day (valid_from and valid_to inclusive, empty is open), in order of time recorded.
[[nodiscard]] QList<FeeRule> rulesOn(const BenchFile &bench, const Id<Channel> &channel, const QDate &day);
/// The channel that break-even is worked out for: the plan's, else the one that the setting "channel" names, else nullptr.
[[nodiscard]] const Channel *channelFor(const UnitFile &file, const BenchFile &bench);
/// "12.8 % + 0.30", "3 % of item and carriage": the rules in a few words.
[[nodiscard]] QString feeText(const QList<FeeRule> &rules);

/// The fees of a sale. Each rule: rate × the part of its base between tier_from and tier_to (half up to the minor unit), plus
/// fixed, not under minimum, not over cap. A rule whose tier_from is above zero and not exceeded costs nothing, its
/// fixed part and minimum included; a promotion rule costs nothing where the sale did not come through it. Refuses a rule with
/// money of another currency than the sale, by name.
[[nodiscard]] Expected<Fees> feesOf(const QList<FeeRule> &rules, const Takings &takings);

/// The rules made ready to be asked many times, in plain minor units of one currency.
class FeeSchedule {
public:
    /// Refuses rules or sums in more than one currency, by name.
    [[nodiscard]] static Expected<FeeSchedule> of(const QList<FeeRule> &rules, const QList<Money> &sums = {},
                                                  Promotion promotion = Promotion::Counted);
    /// rate (millionths) × part, half up by size, in whole minor units.
    [[nodiscard]] static qint64 shareOf(qint64 rate, qint64 part);

    struct Line {
        FeeBase base = FeeBase::Item;
        qint64 rate = 0;
        qint64 from = 0; ///< the tier's lower end, never below zero
        qint64 upTo = 0; ///< very large where the tier is open
        qint64 fixed = 0;
        qint64 least = 0; ///< very low where there is no minimum
        qint64 most = 0;
        bool due = true;
        bool givenBack = false;

        [[nodiscard]] qint64 at(qint64 price, qint64 carriage, qint64 tax) const;
        [[nodiscard]] qint64 baseOf(qint64 price, qint64 carriage, qint64 tax) const;
        [[nodiscard]] qint64 bounded(qint64 whole) const; ///< the fee on a base within the tier
    };
    [[nodiscard]] const QList<Line> &lines() const { return m_lines; } ///< one for each rule
    [[nodiscard]] const Currency &currency() const { return m_currency; }
    [[nodiscard]] qint64 total(qint64 price, qint64 carriage = 0, qint64 tax = 0) const;
    /// What is not given back where the buyer returns the unit.
    [[nodiscard]] qint64 keptOnReturn(qint64 price, qint64 carriage = 0, qint64 tax = 0) const;

private:
    QList<Line> m_lines;
    Currency m_currency;
};

} // namespace ts
