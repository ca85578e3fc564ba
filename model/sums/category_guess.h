#pragma once

#include "model/records/unit.h"

namespace ts {

/// The category that a unit's name speaks of: "Pellworth KD-7 cassette deck" is a cassette deck. None where it speaks of none; the first
/// that goes further where it speaks of two: a tuner amplifier is an amplifier.
[[nodiscard]] std::optional<Category> categoryNamed(const QString &name);

} // namespace ts
