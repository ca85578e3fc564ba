#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// A unit went from one stage to another.
struct StageMove : Record<StageMove> {
    Id<Unit> unit;
    Stage fromStage = Stage::Shelved;
    Stage toStage = Stage::Shelved;
    QString because;
    QDate until;
    std::optional<Outcome> outcome;
    Id<Channel> channel; ///< where it was offered
    std::optional<Money> asked;

    bool operator==(const StageMove &) const = default;

    static constexpr auto table = "stage_move";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &StageMove::unit).required();
        fields("from_stage", &StageMove::fromStage);
        fields("to_stage", &StageMove::toStage);
        fields("because", &StageMove::because).searched();
        fields("until", &StageMove::until);
        fields("outcome", &StageMove::outcome);
        fields("channel", &StageMove::channel);
        fields("asked", &StageMove::asked);
    }
};

} // namespace ts
