#include "model/sums/curves/level.h"

#include "model/sums/given.h"
#include "model/values/number.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// Figures of a level without what binary arithmetic added.
std::optional<double> tidy(std::optional<double> db)
{
    return db ? std::optional(withoutBinaryDust(*db, 100)) : db;
}

/// "8 dBu", "+8" or "-10 dBV" with the unit that the key says.
double decibels(Given &given, QStringView key)
{
    return given.amount(key, key == u"dBu" ? u"dBu" : u"dBV");
}

} // namespace

double decibelsOfVolts(double ratio)
{
    return 20 * std::log10(ratio);
}

double decibelsOfPower(double ratio)
{
    return 10 * std::log10(ratio);
}

double voltRatioOf(double decibels)
{
    return std::pow(10.0, decibels / 20);
}

Sum levelSum()
{
    return {u"level"_s,
            u"a voltage, a ratio or a power in decibels, and back"_s,
            {{u"volts"_s, u"rms"_s, false, u"V"_s},
             {u"against"_s, u"rms, what the volts are held against; else dBu and dBV alone"_s, false, u"V"_s},
             {u"ratio"_s, u"of two voltages"_s, false},
             {u"power_ratio"_s, u"of two powers"_s, false},
             {u"watts"_s, u"a power, for dBm"_s, false, u"W"_s},
             {u"dBu"_s, u"a level to turn into volts"_s, false, u"dBu"_s},
             {u"dBV"_s, u"a level to turn into volts"_s, false, u"dBV"_s}},
            {{u"dBu"_s, u"against 0.7746 V; null where no voltage was given"_s, true, u"dBu"_s},
             {u"dBV"_s, u"against 1 V; null where no voltage was given"_s, true, u"dBV"_s},
             {u"dB"_s, u"of the ratio; null where none was given"_s, true, u"dB"_s},
             {u"dBm"_s, u"against 1 mW; null where no power was given"_s, true, u"dBm"_s},
             {u"volts"_s, u"rms; null where no voltage or level was given"_s, true, u"V"_s}},
            u"definitions; 0 dBu is 1 mW into 600 Ω"_s,
            worked(u"level"_s,
                   [](Given &given) -> SumOutput {
                       qsizetype ways = 0;
                       for (const QStringView key : {u"volts", u"ratio", u"power_ratio", u"watts", u"dBu", u"dBV"})
                           ways += given.has(key) ? 1 : 0;
                       if (ways != 1 || (given.has(u"against") && !given.has(u"volts")))
                           return given.refuse(u"it needs one of volts, ratio, power_ratio, watts, dBu and dBV"_s,
                                               u"give one of them; against goes with volts"_s);
                       std::optional<double> volts = given.maybe(u"volts", u"V");
                       std::optional<double> db;
                       std::optional<double> dbm;
                       if (volts && given.has(u"against"))
                           db = decibelsOfVolts(*volts / given.positive(u"against", u"V"));
                       if (const auto ratio = given.maybe(u"ratio", u""))
                           db = decibelsOfVolts(*ratio);
                       if (const auto ratio = given.maybe(u"power_ratio", u""))
                           db = decibelsOfPower(*ratio);
                       if (const auto watts = given.maybe(u"watts", u"W"))
                           dbm = decibelsOfPower(*watts / 0.001);
                       if (given.has(u"dBu"))
                           volts = voltsOf0dBu * voltRatioOf(decibels(given, u"dBu"));
                       if (given.has(u"dBV"))
                           volts = voltRatioOf(decibels(given, u"dBV"));
                       const auto dbu = volts ? std::optional(decibelsOfVolts(*volts / voltsOf0dBu)) : std::nullopt;
                       const auto dbv = volts ? std::optional(decibelsOfVolts(*volts)) : std::nullopt;
                       return {{u"dBu"_s, orNull(tidy(dbu))},
                               {u"dBV"_s, orNull(tidy(dbv))},
                               {u"dB"_s, orNull(tidy(db))},
                               {u"dBm"_s, orNull(tidy(dbm))},
                               {u"volts"_s, orNull(volts)}};
                   }),
            u"dBu = 20 log10(U / 0.7746 V); dBV = 20 log10(U / 1 V); dB = 20 log10(U1 / U2) = 10 log10(P1 / P2)"_s};
}

} // namespace ts
