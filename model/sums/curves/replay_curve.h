#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// What a curve of records or tape is made of: time constants in seconds, where there are any.
struct ReplayCurve {
    QString name;                   ///< "riaa", "cassette-70", "tape-19-nab"
    QString says;                   ///< what it is of: "7 1/2 in/s, NAB, current"
    std::optional<double> low;      ///< bass time constant
    std::optional<double> high;     ///< treble time constant
    std::optional<double> middle;   ///< of records alone, the third
    std::optional<double> subsonic; ///< of records alone, the roll-off of the 1976 amendment
    double reference = 1000;        ///< Hz at which it is 0 dB
    bool record = false;            ///< of records: the replay amplifier's response; of tape: the flux on it
    QString source;
};

/// All curves that are known by name.
[[nodiscard]] QList<ReplayCurve> replayCurves();
[[nodiscard]] const ReplayCurve *replayCurve(const QList<ReplayCurve> &curves, const QString &name);

/// Level at a frequency in dB against the curve's reference. Of a record curve the response of the replay amplifier; of a tape
/// curve the flux on the tape, which an amplifier behind an ideal flux-reading head makes up for by as much. Refuses
/// frequencies at or below 0. RIAA with its time constants; IEC 60094-1, clause 15 (form from memory).
[[nodiscard]] Expected<double> replayLevel(const ReplayCurve &curve, double hertz);

/// Turnover frequency of a time constant: 1 / (2 π t), in hertz.
[[nodiscard]] double turnover(double seconds);

/// replay-curve for the command line and the page of sums.
[[nodiscard]] Sum replayCurveSum();

} // namespace ts
