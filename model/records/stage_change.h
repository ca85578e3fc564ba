#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/stage_move.h"

namespace ts {

/// What goes with a move to a stage: why and until when it is held, where and for how much it is offered, how it was closed.
struct StageWish {
    Stage stage = Stage::Shelved;
    QString because = {};
    QDate until = {};
    std::optional<Outcome> outcome = std::nullopt;
    // Where it is offered and at what price; left out, it stays as it was.
    Id<Channel> channel = {};
    std::optional<Money> asked = std::nullopt;
};

/// "Held", "Bench": the stage as people read it.
[[nodiscard]] QString stageText(Stage stage);

/// The change that moves a unit to a stage and keeps the move. Refused: Held without a reason, Closed without an outcome, an
/// outcome, a day or a price for another stage, a price below nothing. Empty where the unit stands there already with the same particulars.
[[nodiscard]] Expected<Change> stageChange(const Unit &unit, const StageWish &wish, Maker &maker);

} // namespace ts
