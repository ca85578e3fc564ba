#pragma once

#include "model/values/expected.h"

namespace ts {

/// Weighting curves of measurements by ear and of speed, in dB against frequency in hertz. Each refuses a frequency at or below
/// 0; the flutter curve also one outside its table.

/// A-weighting, the analytic form of IEC 61672-1:2013, annex E: 0 dB at 1 kHz.
[[nodiscard]] Expected<double> aWeighting(double hertz);
/// Noise weighting of ITU-R BS.468-4, table 1, 0 dB at 1 kHz: the table's own figures where it has one, between them the
/// network's rational form drawn to the table. Outside 31.5 Hz to 31.5 kHz the network alone.
[[nodiscard]] Expected<double> itu468Weighting(double hertz);
/// Weighting of speed fluctuation of IEC 60386 (also AES6, DIN 45507, CCIR 409-2), 0 dB at 4 Hz, 0.1 to 200 Hz; its table is
/// from memory and its tolerance at least ± 2 dB. Between the table's figures a straight line over the logarithm of frequency.
[[nodiscard]] Expected<double> flutterWeighting(double hertz);

} // namespace ts
