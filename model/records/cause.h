#pragma once

#include "model/records/description.h"
#include "model/records/symptom.h"
#include "model/records/unit.h"

namespace ts {

enum class CauseState { Open, RuledOut, Confirmed };

template <>
struct Words<CauseState> {
    static constexpr std::array list{std::pair{CauseState::Open, "open"},
                                     std::pair{CauseState::RuledOut, "ruled_out"},
                                     std::pair{CauseState::Confirmed, "confirmed"}};
};

/// A possible reason for a symptom.
struct Cause : Record<Cause> {
    Id<Unit> unit;
    Id<Symptom> symptom; ///< null: stands by itself
    QString text;
    CauseState state = CauseState::Open;
    std::optional<double> weight; ///< 0 to 1 as typed
    QString weightFrom; ///< where the weight comes from, where it was not typed: "2 of 5 closed units of this model"
    std::optional<int> fixMinutes;
    std::optional<Money> fixCost;
    std::optional<double> fixOdds; ///< chance that the fix can be had, 0 to 1
    QString reason; ///< why it was ruled out or confirmed
    QDateTime settledAt;

    bool operator==(const Cause &) const = default;

    static constexpr auto table = "cause";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Cause::unit).required();
        fields("symptom", &Cause::symptom);
        fields("text", &Cause::text).required().searched();
        fields("state", &Cause::state);
        fields("weight", &Cause::weight);
        fields("fix_minutes", &Cause::fixMinutes);
        fields("fix_cost", &Cause::fixCost);
        fields("fix_odds", &Cause::fixOdds);
        fields("reason", &Cause::reason).searched();
        fields("settled_at", &Cause::settledAt);
        fields("weight_from", &Cause::weightFrom);
    }
};

} // namespace ts
