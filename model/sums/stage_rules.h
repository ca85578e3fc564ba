#pragma once

#include "model/records/stage_change.h"
#include "model/records/unit_file.h"

namespace ts {

/// What speaks against a unit going to a stage.
struct InTheWay {
    QStringList reasons; ///< a few words each: "it failed: erase head clears a tape"
    /// Whether a reason given by the owner is enough. Not where it would be called ready with a failed electrical-safety proof, or while it
    /// must not be powered: that is put right first.
    bool canBeOverruled = true;
};

/// What speaks against the stage, by what is recorded. Ready and Offered are held against failed proofs, loose parts and a
/// do-not-power; from Ready to Offered and back nothing is asked again.
[[nodiscard]] InTheWay inTheWay(const UnitFile &file, Stage to);

/// stageChange held against the above: refused with the reasons, unless the wish says why it goes there all the same. Teardown items
/// that are still off are then left out for that reason, and the sentence names them.
[[nodiscard]] Expected<Change> ruledStageChange(const UnitFile &file, const StageWish &wish, Maker &maker);

} // namespace ts
