#include "model/sums/supply/discharge.h"

#include "model/sums/given.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double ohmsPerVolt = 100; // common practice, no source

/// In our own words; a resistor of a few ohms on hundreds of volts is no discharge but a bang.
QString cautionFor(double ohms, double volts, double peakCurrent)
{
    QString caution;
    if (volts > 60 && ohms < ohmsPerVolt * volts / 10)
        caution = u"%1 Ω is too little for %2 V: the first moment draws %3 A. Take kilohms. "_s.arg(ohms, 0, 'g', 3)
                      .arg(volts, 0, 'g', 4)
                      .arg(peakCurrent, 0, 'g', 3);
    return caution +
           QStringLiteral("Unplug, keep one hand away, use a resistor with an insulated lead that stands the voltage and the "
                          "watts, then measure, and measure again some minutes later: charge creeps back. Local codes and "
                          "licensed practice come first.");
}

} // namespace

Expected<Discharge> discharge(double farads, double ohms, double fromVolts, double toVolts)
{
    if (!(toVolts > 0) || !(fromVolts > toVolts))
        return Trouble{u"Cannot work out a discharge from %1 V to %2 V"_s.arg(fromVolts).arg(toVolts),
                       u"the voltage must fall and never reaches 0"_s, u"give a start above the end, and an end above 0"_s};
    Discharge done;
    done.time = ohms * farads * std::log(fromVolts / toVolts);
    done.energy = farads * fromVolts * fromVolts / 2;
    done.peakCurrent = fromVolts / ohms;
    done.peakPower = fromVolts * fromVolts / ohms;
    done.caution = cautionFor(ohms, fromVolts, done.peakCurrent);
    return done;
}

double voltsLeft(double farads, double ohms, double fromVolts, double seconds)
{
    return fromVolts * std::exp(-seconds / (ohms * farads));
}

DischargeResistor dischargeResistorFor(double volts)
{
    return {ohmsPerVolt * volts, volts / ohmsPerVolt};
}

Sum dischargeSum()
{
    return {u"discharge"_s,
            u"how long a capacitor takes to empty through a resistor, and what the resistor must stand"_s,
            {{u"capacitance"_s, u"of all that is joined in parallel"_s, true, u"F"_s},
             {u"resistance"_s, u"of the discharge resistor; 100 Ω for each volt is a habit"_s, true, u"Ω"_s},
             {u"from"_s, u"voltage at the start"_s, true, u"V"_s},
             {u"to"_s, u"voltage to come down to; not needed where after is given"_s, false, u"V"_s},
             {u"after"_s, u"a time, to ask what is left then"_s, false, u"s"_s}},
            {{u"time"_s, u"until the end voltage; null where none was given"_s, true, u"s"_s},
             {u"energy"_s, u"stored at the start"_s, true, u"J"_s},
             {u"peak_current"_s, u"at the first moment"_s, true, u"A"_s},
             {u"peak_power"_s, u"in the resistor at the first moment"_s, true, u"W"_s},
             {u"left"_s, u"after the time that was asked about, else null"_s, true, u"V"_s},
             {u"caution"_s, u"what to mind"_s}},
            u"definition of the RC discharge; habits of the trade say 100 Ω for each volt (no source)"_s,
            worked(u"discharge"_s,
                   [](Given &given) -> SumOutput {
                       const double farads = given.positive(u"capacitance", u"F");
                       const double ohms = given.positive(u"resistance", u"Ω");
                       const double from = given.positive(u"from", u"V");
                       const auto to = given.maybe(u"to", u"V");
                       const auto after = given.maybe(u"after", u"s");
                       if (!to && !after)
                           given.refuse(u"it needs an end voltage or a time"_s, u"give to=… (in V) or after=… (in s)"_s);
                       const auto done = discharge(farads, ohms, from, to.value_or(from / 2));
                       if (!done)
                           return given.refuse(done.trouble());
                       return SumOutput{
                           {u"time"_s, orNull(to ? std::optional(done->time) : std::nullopt)},
                           {u"energy"_s, done->energy},
                           {u"peak_current"_s, done->peakCurrent},
                           {u"peak_power"_s, done->peakPower},
                           {u"left"_s, orNull(after ? std::optional(voltsLeft(farads, ohms, from, *after)) : std::nullopt)},
                           {u"caution"_s, done->caution}};
                   }),
            u"t = R C ln(V0 / V); E = C V0² / 2; I = V0 / R; P = V0² / R"_s};
}

} // namespace ts
