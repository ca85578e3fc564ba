#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/stage_move.h"

namespace ts {

/// What goes with a move to a stage: why and until when it is held, how it was closed.
struct StageWish {
    Stage stage = Stage::Shelved;
    QString because;
    QDate until;
    std::optional<Outcome> outcome;
};

/// "Held", "Bench": the stage as people read it.
[[nodiscard]] QString stageText(Stage stage);

/// The change that moves a unit to a stage and keeps the move. Refused: Held without a reason, Closed without an outcome, an
/// outcome or a day for another stage. Empty where the unit stands there already with the same particulars.
[[nodiscard]] Expected<Change> stageChange(const Unit &unit, const StageWish &wish, Maker &maker);

} // namespace ts
