#pragma once

#include "model/values/expected.h"
#include "model/values/quantity.h"

namespace ts {

/// A marking in the letter and digit code of IEC 60062 ("4k7", "2R2J", "p33", "473J"), decoded.
struct Marking {
    Quantity value;                                ///< with Ω, F or, where the code does not say, no symbol
    std::optional<double> tolerancePercent;        ///< symmetric, or the larger side
    std::optional<double> toleranceLowPercent;     ///< for unsymmetric letters (Z: -20), negative
    std::optional<double> toleranceHighPercent;    ///< (Z: +80)
    bool operator==(const Marking &) const = default;
};

/// Decodes a marking: resistor letters R K M G (Ω), capacitor letters p n µ m F (F), three-digit capacitor codes (pF), with an
/// optional tolerance letter at the end. Refuses what is none, naming the character. IEC 60062:2016.
[[nodiscard]] Expected<Marking> decodeMarking(QStringView text);

} // namespace ts
