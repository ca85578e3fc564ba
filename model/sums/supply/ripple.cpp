#include "model/sums/supply/ripple.h"

#include "model/sums/given.h"

#include <numbers>

using namespace Qt::StringLiterals;

namespace ts {

double rippleVolts(double amperes, double hertz, double farads, Rectifier rectifier)
{
    return amperes / ((rectifier == Rectifier::FullWave ? 2 : 1) * hertz * farads);
}

double seriesResistance(double tanDelta, double hertz, double farads)
{
    return tanDelta / (2 * std::numbers::pi * hertz * farads);
}

Sum rippleSum()
{
    static const QStringList waves{u"half"_s, u"full"_s};
    return {
        u"ripple"_s,
        u"peak-to-peak ripple on a reservoir capacitor"_s,
        {{u"current"_s, u"steady, out of the supply"_s, true, u"A"_s},
         {u"frequency"_s, u"of the mains, 50 or 60; not doubled"_s, true, u"Hz"_s},
         {u"capacitance"_s, u"of the reservoir"_s, true, u"F"_s},
         {u"wave"_s, u"rectifier"_s, false, {}, u"full"_s, waves},
         {u"esr"_s, u"equivalent series resistance of the capacitor"_s, false, u"Ω"_s},
         {u"pulse"_s, u"charging current at its peak, with esr"_s, false, u"A"_s}},
        {{u"volts"_s, u"peak to peak, of the capacitance"_s, true, u"V"_s},
         {u"esr_volts"_s, u"step at the series resistance; null without it"_s, true, u"V"_s},
         {u"total"_s, u"both added, an upper bound"_s, true, u"V"_s}},
        u"charge balance over one period; common in handbooks as I / (f C) and I / (2 f C)"_s,
        worked(u"ripple"_s,
               [](Given &given) -> SumOutput {
                   const double current = given.positive(u"current", u"A");
                   const double frequency = given.positive(u"frequency", u"Hz");
                   const double capacitance = given.positive(u"capacitance", u"F");
                   const auto wave = given.choice(u"wave", waves) == 0 ? Rectifier::HalfWave : Rectifier::FullWave;
                   const auto esr = given.maybe(u"esr", u"Ω");
                   const auto pulse = given.maybe(u"pulse", u"A");
                   if (pulse && !esr)
                       given.refuse(u"pulse means nothing without esr"_s, u"give esr=… (in Ω)"_s);
                   const double volts = rippleVolts(current, frequency, capacitance, wave);
                   // From charging at its peak to discharging the current through the resistance turns round.
                   const auto step = esr ? std::optional(*esr * (current + pulse.value_or(0))) : std::nullopt;
                   return SumOutput{{u"volts"_s, volts}, {u"esr_volts"_s, orNull(step)}, {u"total"_s, volts + step.value_or(0)}};
               }),
        u"half wave I / (f C), full wave I / (2 f C); at the series resistance (I + I_pulse) R"_s};
}

Sum esrSum()
{
    return {u"esr"_s,
            u"equivalent series resistance from a data sheet's dissipation factor"_s,
            {{u"dissipation"_s, u"tan δ at that frequency"_s},
             {u"frequency"_s, u"that the data sheet names, often 120 Hz"_s, false, u"Hz"_s, u"120"_s},
             {u"capacitance"_s, u"of the capacitor"_s, true, u"F"_s}},
            {{u"resistance"_s, u"equivalent series resistance"_s, true, u"Ω"_s}},
            u"definition of the dissipation factor"_s,
            worked(u"esr"_s,
                   [](Given &given) -> SumOutput {
                       const double tanDelta = given.positive(u"dissipation", u"");
                       const double frequency = given.positive(u"frequency", u"Hz");
                       const double capacitance = given.positive(u"capacitance", u"F");
                       return SumOutput{{u"resistance"_s, seriesResistance(tanDelta, frequency, capacitance)}};
                   }),
            u"R = tan δ / (2 π f C)"_s};
}

} // namespace ts
