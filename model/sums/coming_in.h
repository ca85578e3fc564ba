#pragma once

#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// What a unit brings with it by its category, plate and protection class, by whichever door it comes in.
struct ComingIn {
    QList<Proof> proofs;  ///< to be made before handover, none tested yet
    QStringList mains;    ///< why it must not just be plugged in at this bench
    QStringList cautions; ///< the hazards inside, and what to do about them
};
[[nodiscard]] ComingIn comingIn(const Unit &unit, const BenchFile &bench, Maker &maker);

} // namespace ts
