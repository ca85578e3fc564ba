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

/// What of electrical safety nobody has tested yet.
struct SafetyGap {
    QStringList untested; ///< by their words (sums/electrical_safety.h)
    bool none = false;    ///< a unit that runs from the mains has neither such a proof nor a reading that decides one
    [[nodiscard]] bool any() const { return none || !untested.isEmpty(); }
    [[nodiscard]] QString text() const; ///< "2 electrical-safety proofs not tested"; empty where there is no gap
};
[[nodiscard]] SafetyGap safetyGap(const UnitFile &file);

/// Whether a move there hands the unit on to somebody who will plug it in: Ready, Offered, Closed as sold. Not where it stands there already,
/// nor back from Offered to Ready.
[[nodiscard]] bool handsOn(const Unit &unit, Stage to, std::optional<Outcome> outcome = std::nullopt);

/// stageChange held against the above: refused with the reasons, unless the wish says why it goes there all the same. Teardown items
/// that are still off are then left out for that reason, and the sentence names them. Untested electrical safety keeps nothing from moving, but
/// the sentence of a move that hands the unit on says it.
[[nodiscard]] Expected<Change> ruledStageChange(const UnitFile &file, const StageWish &wish, Maker &maker);

} // namespace ts
