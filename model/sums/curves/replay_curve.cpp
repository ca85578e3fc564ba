#include "model/sums/curves/replay_curve.h"

#include "model/sums/given.h"
#include "model/values/number.h"

#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double micro = 1e-6;

ReplayCurve record(const QString &name, const QString &says, std::optional<double> subsonic, const QString &source)
{
    return {name, says, 3180 * micro, 75 * micro, 318 * micro, subsonic, 1000, true, source};
}

ReplayCurve tape(const QString &name, const QString &says, double lowMicroseconds, double highMicroseconds,
                 double reference = 1000)
{
    const auto low = lowMicroseconds > 0 ? std::optional(lowMicroseconds * micro) : std::nullopt;
    return {name,
            says,
            low,
            highMicroseconds * micro,
            {},
            {},
            reference,
            false,
            name.startsWith(u"cassette"_s) ? u"IEC 60094-1:1981"_s : u"IASA TC-04, 5.4.10, table 1"_s};
}

/// Response without its reference, as power.
double power(const ReplayCurve &curve, double hertz)
{
    const double w = 2 * std::numbers::pi * hertz;
    const auto rise = [w](double seconds) { return 1 + std::pow(w * seconds, 2); };
    if (curve.record) {
        double response = rise(*curve.middle) / (rise(*curve.low) * rise(*curve.high));
        if (curve.subsonic)
            response *= std::pow(w * *curve.subsonic, 2) / rise(*curve.subsonic);
        return response;
    }
    const double bass = curve.low ? 1 + 1 / std::pow(w * *curve.low, 2) : 1;
    return bass / rise(*curve.high);
}

} // namespace

QList<ReplayCurve> replayCurves()
{
    // Tape: a bass time constant of 0 stands for none. Speeds in the names are whole cm/s.
    return {
        record(u"riaa"_s, u"microgroove records"_s, {}, u"RIAA, time constants 3180, 318 and 75 µs"_s),
        record(u"riaa-1976"_s, u"the same with the amendment against subsonics"_s, 7950 * micro,
               u"IEC 60098 amendment of 1976: 7950 µs (from memory)"_s),
        tape(u"cassette-120"_s, u"cassette, type I"_s, 3180, 120, 315),
        tape(u"cassette-70"_s, u"cassette, types II and IV (III from memory)"_s, 3180, 70, 315),
        tape(u"tape-76-aes"_s, u"76.2 cm/s (30 in/s), IEC2, AES 1981, current"_s, 0, 17.5),
        tape(u"tape-76-iec1"_s, u"76.2 cm/s (30 in/s), CCIR, IEC1, DIN, historic"_s, 0, 35),
        tape(u"tape-38-iec1"_s, u"38.1 cm/s (15 in/s), IEC1, CCIR, DIN, BS 1968, current"_s, 0, 35),
        tape(u"tape-38-nab"_s, u"38.1 cm/s (15 in/s), NAB, EIA 1953, current"_s, 3180, 50),
        tape(u"tape-19-iec1"_s, u"19.05 cm/s (7 1/2 in/s), IEC1, DIN studio, CCIR, current"_s, 0, 70),
        tape(u"tape-19-nab"_s, u"19.05 cm/s (7 1/2 in/s), IEC2, NAB, DIN home, EIA, RIAA, current"_s, 3180, 50),
        tape(u"tape-19-1967"_s, u"19.05 cm/s (7 1/2 in/s), home, EIA proposal of 1967"_s, 0, 50),
        tape(u"tape-19-1965"_s, u"19.05 cm/s (7 1/2 in/s), CCIR, IEC, DIN, BS up to 1965 to 1968"_s, 0, 100),
        tape(u"tape-9-nab"_s, u"9.53 cm/s (3 3/4 in/s), IEC2, NAB, RIAA 1968, current"_s, 3180, 90),
        tape(u"tape-9-din-1962"_s, u"9.53 cm/s (3 3/4 in/s), DIN 1962"_s, 3180, 120),
        tape(u"tape-9-din-1955"_s, u"9.53 cm/s (3 3/4 in/s), DIN 1955 to 1961"_s, 0, 200),
        tape(u"tape-9-1967"_s, u"9.53 cm/s (3 3/4 in/s), home, EIA proposal of 1967"_s, 0, 100),
        tape(u"tape-9-iec-1962"_s, u"9.53 cm/s (3 3/4 in/s), IEC 1962 to 1968"_s, 3180, 140),
        tape(u"tape-9-1953"_s, u"9.53 cm/s (3 3/4 in/s), 1953 to 1958"_s, 3180, 200),
    };
}

const ReplayCurve *replayCurve(const QList<ReplayCurve> &curves, const QString &name)
{
    for (const ReplayCurve &curve : curves)
        if (curve.name.compare(name, Qt::CaseInsensitive) == 0)
            return &curve;
    return nullptr;
}

Expected<double> replayLevel(const ReplayCurve &curve, double hertz)
{
    if (!(hertz > 0) || !std::isfinite(hertz))
        return Trouble{u"There is no level of %1 at %2 Hz"_s.arg(curve.name, numberText(hertz)), {}, u"give more than 0 Hz"_s};
    return 10 * std::log10(power(curve, hertz) / power(curve, curve.reference));
}

double turnover(double seconds)
{
    return 1 / (2 * std::numbers::pi * seconds);
}

Sum replayCurveSum()
{
    QStringList names;
    for (const ReplayCurve &curve : replayCurves())
        names << curve.name;
    return {u"replay-curve"_s,
            u"the level of a record's or tape's standard curve at a frequency"_s,
            {{u"curve"_s, u"which standard; a number behind tape is its speed in cm/s"_s, true, {}, {}, names},
             {u"frequency"_s, u"of the tone"_s, true, u"Hz"_s},
             {u"reference"_s, u"frequency of 0 dB; else 1 kHz, cassettes 315 Hz"_s, false, u"Hz"_s}},
            {{u"db"_s, u"records: response of the replay amplifier; tape: flux on the tape"_s, true, u"dB"_s},
             {u"replay_db"_s, u"what the replay amplifier does: tape with an ideal flux-reading head"_s, true, u"dB"_s},
             {u"low_us"_s, u"bass time constant; null where there is none"_s, true, u"µs"_s},
             {u"high_us"_s, u"treble time constant"_s, true, u"µs"_s},
             {u"low_hz"_s, u"its turnover; null where there is none"_s, true, u"Hz"_s},
             {u"high_hz"_s, u"its turnover"_s, true, u"Hz"_s},
             {u"source"_s, u"where the time constants stand"_s}},
            u"RIAA; IEC 60098 amendment of 1976 (from memory); IEC 60094-1:1981; IASA TC-04, 5.4.10"_s,
            worked(u"replay-curve"_s,
                   [names](Given &given) -> SumOutput {
                       ReplayCurve curve = replayCurves().at(given.choice(u"curve", names));
                       const double frequency = given.positive(u"frequency", u"Hz");
                       if (const auto reference = given.maybe(u"reference", u"Hz"))
                           curve.reference = *reference;
                       const auto level = replayLevel(curve, frequency);
                       if (!level)
                           return given.refuse(level.trouble());
                       const auto in = [](const std::optional<double> &seconds, auto way) {
                           return orNull(seconds ? std::optional(way(*seconds)) : std::nullopt);
                       };
                       const auto microseconds = [](double seconds) { return withoutBinaryDust(seconds * 1e6, seconds * 1e6); };
                       const double db = withoutBinaryDust(*level, 100);
                       return {{u"db"_s, db},
                               {u"replay_db"_s, curve.record || db == 0.0 ? db : -db},
                               {u"low_us"_s, in(curve.low, microseconds)},
                               {u"high_us"_s, in(curve.high, microseconds)},
                               {u"low_hz"_s, in(curve.low, turnover)},
                               {u"high_hz"_s, in(curve.high, turnover)},
                               {u"source"_s, curve.source}};
                   }),
            u"tape: 10 log10((1 + 1 / (ω t_low)²) / (1 + (ω t_high)²)); records: (1 + (ω 318 µs)²) / ((1 + (ω 3180 µs)²)(1 + (ω "
            u"75 µs)²)); "
            "turnover 1 / (2 π t)"_s};
}

} // namespace ts
