#pragma once

#include "model/sums/hours.h"
#include "model/sums/resale.h"
#include "model/sums/spent.h"
#include "model/values/words.h"

namespace ts {

enum class CostKey {
    BoughtFor,
    CarriageIn,
    Parts,
    Consumables,
    OutsideWork,
    Other,
    Refunds,
    Overhead,
    Spent,
    SellingFee,
    CarriageOut,
    EverythingButHours,
    Resale,
    ProfitBeforeHours,
    YourHours,
    EarnedPerHour,
    BreakEven
};

template <>
struct Words<CostKey> {
    static constexpr std::array list{std::pair{CostKey::BoughtFor, "bought_for"},
                                     std::pair{CostKey::CarriageIn, "carriage_in"},
                                     std::pair{CostKey::Parts, "parts"},
                                     std::pair{CostKey::Consumables, "consumables"},
                                     std::pair{CostKey::OutsideWork, "outside_work"},
                                     std::pair{CostKey::Other, "other"},
                                     std::pair{CostKey::Refunds, "refunds"},
                                     std::pair{CostKey::Overhead, "overhead"},
                                     std::pair{CostKey::Spent, "spent"},
                                     std::pair{CostKey::SellingFee, "selling_fee"},
                                     std::pair{CostKey::CarriageOut, "carriage_out"},
                                     std::pair{CostKey::EverythingButHours, "everything_but_hours"},
                                     std::pair{CostKey::Resale, "resale"},
                                     std::pair{CostKey::ProfitBeforeHours, "profit_before_hours"},
                                     std::pair{CostKey::YourHours, "your_hours"},
                                     std::pair{CostKey::EarnedPerHour, "earned_per_hour"},
                                     std::pair{CostKey::BreakEven, "break_even"}};
};

/// One line: what was planned at purchase, and what it is to date. Nothing where it is not known.
struct CostLine {
    CostKey key = CostKey::BoughtFor;
    QString text; ///< for people: "Selling fee 12.8 % + 0.30"
    std::optional<Money> planned;
    std::optional<Money> toDate;
    bool isTotal = false; ///< stands out: Spent, EverythingButHours, ProfitBeforeHours, EarnedPerHour, BreakEven
    bool operator==(const CostLine &) const = default;
};

/// Cost against resale for one unit, in the bench's currency. Spent is the sum of the lines above it; everything but your hours
/// is Spent + selling fee + carriage and packing out; profit is resale less that. Other and Refunds appear only where there are
/// any.
struct CostSheet {
    Currency currency;
    QList<CostLine> lines; ///< always in the order of CostKey
    Spent spent;           ///< money really out, without the overhead that is only reckoned
    Hours hours;
    std::optional<int> minutesPlanned;
    QString resaleFrom; ///< "median of 11 sold comparables", "plan", "sold", or empty
    int soldComparables = 0;
    QString channel;     ///< name of the channel whose fees were taken; empty: none
    QList<FeeRule> rules; ///< of that channel, on the day of the sale, else today
    Money feeBesideRules; ///< selling fee really paid that the rules do not give again: to be covered like any cost
    QStringList remarks;  ///< what the figures leave out, one sentence each

    [[nodiscard]] const CostLine *line(CostKey key) const;
    [[nodiscard]] std::optional<Money> planned(CostKey key) const;
    [[nodiscard]] std::optional<Money> toDate(CostKey key) const;
};

/// The sheet. Planned: what was paid at purchase, the plan's parts, minutes, likely resale, carriage and packing. To date: what
/// was spent; below Spent as if sold now at the middle resale (resale.h), else the plan's likely; once a sale is
/// recorded, the sale, its fees and its carriage as they were. Fees by the rules of `now`'s day. The break-even price covers the fee
/// that the rules give at that price; where there are none, or nothing is sold yet, the fee really paid.
[[nodiscard]] CostSheet costSheet(const UnitFile &file, const BenchFile &bench, const QDateTime &now);
/// The same with an estimate that was made already, from other units' comparables too.
[[nodiscard]] CostSheet costSheet(const UnitFile &file, const BenchFile &bench, const QDateTime &now, const Resale &resale);

} // namespace ts
