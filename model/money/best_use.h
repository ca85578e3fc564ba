#pragma once

#include "model/money/unit_money.h"

namespace ts {

/// Why a unit stands where it does in the order.
enum class Pull { DateNear, PartsArrived, WorthMost, Finishing, Waiting, NotWorth };

template <>
struct Words<Pull> {
    static constexpr std::array list{std::pair{Pull::DateNear, "date_near"},   std::pair{Pull::PartsArrived, "parts_arrived"},
                                     std::pair{Pull::WorthMost, "worth_most"}, std::pair{Pull::Finishing, "finishing"},
                                     std::pair{Pull::Waiting, "waiting"},      std::pair{Pull::NotWorth, "not_worth"}};
};

/// One unit as a use of bench time.
struct BenchUse {
    Id<Unit> unit;
    int tag = 0;
    QString name;
    Pull pull = Pull::WorthMost;
    bool workable = true;         ///< something can be done on it today
    int minutes = 0;              ///< to come, in the middle
    std::optional<Money> perHour; ///< what finishing adds over the best other way, for each hour to come
    std::optional<Money> gain;    ///< the same in all
    Money tiedUp;                 ///< spent on it
    int days = 0;                 ///< since it was bought
    QDate due;                    ///< the nearest date that matters
    QString why;                  ///< "The belt has come; £48 an hour; £38.40 tied up for 6 days."
};

/// What of one unit its place in the order is worked out from.
struct UseQuestion {
    UnitFile file;
    std::optional<Forecast> forecast;
    WaysOut ways;
    Money spent;
    QDate boughtOn;
};
[[nodiscard]] UseQuestion useQuestion(const MoneyQuestion &asked, const UnitMoney &money);

/// What to work on today: units that can be worked on, in the order of dates that are near (a week: promises, a seller's last day
/// to take it back, a held unit's day), then by what an hour brings. Those that wait for parts, and those that are better not
/// finished, come after, with the reason. Units that are scouted, on the way, offered or closed are not in it.
[[nodiscard]] QList<BenchUse> bestUse(const QList<UseQuestion> &units, const QDate &today);

} // namespace ts
