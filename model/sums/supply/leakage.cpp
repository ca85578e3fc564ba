#include "model/sums/supply/leakage.h"

#include "model/sums/given.h"

#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double networkOhms = 1500;
constexpr double networkFarads = 0.15e-6;

} // namespace

double leakageNetworkOhms(double hertz)
{
    const double ratio = 2 * std::numbers::pi * hertz * networkOhms * networkFarads;
    return networkOhms / std::sqrt(1 + ratio * ratio);
}

double leakageAmperes(double volts, double hertz)
{
    return volts / leakageNetworkOhms(hertz);
}

Sum leakageSum()
{
    return {u"leakage"_s,
            u"leakage current of exposed metal from the voltage over the makers' network"_s,
            {{u"volts"_s, u"rms, from the metal to earth over 1.5 kΩ ∥ 0.15 µF"_s, true, u"V"_s}, {u"frequency"_s, u"of the mains"_s, false, u"Hz"_s, u"50 Hz"_s}},
            {{u"current"_s, u"through the network"_s, true, u"A"_s},
             {u"impedance"_s, u"of the network at that frequency"_s, true, u"Ω"_s},
             {u"caution"_s, u"what to mind"_s}},
            u"service manuals' leakage check: at most 0.75 V (0.5 mA) in many, 0.35 V or 0.15 V in stricter ones"_s,
            worked(u"leakage"_s,
                   [](Given &given) -> SumOutput {
                       const double volts = given.notNegative(u"volts", u"V");
                       const double hertz = given.maybe(u"frequency", u"Hz").value_or(50);
                       return SumOutput{{u"current"_s, leakageAmperes(volts, hertz)},
                                        {u"impedance"_s, leakageNetworkOhms(hertz)},
                                        {u"caution"_s, u"The unit is live for this check: both plug ways, switch on and off, without an isolating transformer, hands off. Local "
                                                       "codes and licensed practice come first."_s}};
                   }),
            u"|Z| = R / √(1 + (2 π f R C)²); I = U / |Z|"_s};
}

} // namespace ts
