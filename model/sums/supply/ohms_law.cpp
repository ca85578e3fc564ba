#include "model/sums/supply/ohms_law.h"

#include "model/sums/given.h"

using namespace Qt::StringLiterals;

namespace ts {

namespace {

const QString &ohmsLaw()
{
    static const QString text = u"definition: Ohm's law"_s;
    return text;
}

} // namespace

Expected<Dropper> dropperFor(double supplyVolts, double volts, double amperes)
{
    if (!(supplyVolts > volts))
        return Trouble{u"A resistor cannot drop %1 V to %2 V"_s.arg(supplyVolts).arg(volts),
                       {},
                       u"give a supply above the part's voltage"_s};
    return Dropper{(supplyVolts - volts) / amperes, (supplyVolts - volts) * amperes};
}

Sum idleCurrentSum()
{
    return {u"idle-current"_s,
            u"idle current from the drop over an emitter or cathode resistor"_s,
            {{u"drop"_s, u"measured over the resistor"_s, true, u"V"_s},
             {u"resistance"_s, u"of the resistor; both where the drop is over two"_s, true, u"Ω"_s}},
            {{u"current"_s, u"through it"_s, true, u"A"_s}},
            ohmsLaw(),
            worked(u"idle-current"_s,
                   [](Given &given) -> SumOutput {
                       const double drop = given.amount(u"drop", u"V");
                       const double resistance = given.positive(u"resistance", u"Ω");
                       return SumOutput{{u"current"_s, drop / resistance}};
                   }),
            u"I = U / R"_s};
}

Sum loadPowerSum()
{
    return {u"load-power"_s,
            u"power into a load from the voltage over it"_s,
            {{u"volts"_s, u"rms over the load"_s, true, u"V"_s}, {u"load"_s, u"of the load while it is warm"_s, true, u"Ω"_s}},
            {{u"watts"_s, u"into the load"_s, true, u"W"_s}},
            u"P = U² / R; IEC 60268-3 (rated output power, from memory)"_s,
            worked(u"load-power"_s,
                   [](Given &given) -> SumOutput {
                       const double volts = given.amount(u"volts", u"V");
                       const double load = given.positive(u"load", u"Ω");
                       return SumOutput{{u"watts"_s, volts * volts / load}};
                   }),
            u"P = U² / R"_s};
}

Sum dropperSum()
{
    return {u"dropper"_s,
            u"the resistor in line with a lamp or another part that wants less than the supply"_s,
            {{u"supply"_s, u"voltage there is"_s, true, u"V"_s},
             {u"volts"_s, u"voltage the part wants"_s, true, u"V"_s},
             {u"current"_s, u"that the part draws"_s, true, u"A"_s}},
            {{u"resistance"_s, u"of the resistor"_s, true, u"Ω"_s},
             {u"watts"_s, u"heat in it; choose about twice as much"_s, true, u"W"_s}},
            ohmsLaw(),
            worked(u"dropper"_s,
                   [](Given &given) -> SumOutput {
                       const double supply = given.positive(u"supply", u"V");
                       const double volts = given.positive(u"volts", u"V");
                       const double current = given.positive(u"current", u"A");
                       const auto dropper = dropperFor(supply, volts, current);
                       if (!dropper)
                           return given.refuse(dropper.trouble());
                       return SumOutput{{u"resistance"_s, dropper->ohms}, {u"watts"_s, dropper->watts}};
                   }),
            u"R = (U − U_part) / I; P = (U − U_part) I"_s};
}

Sum dampingSum()
{
    return {u"damping"_s,
            u"damping factor of an amplifier's output"_s,
            {{u"load"_s, u"nominal, of the loudspeaker"_s, true, u"Ω"_s},
             {u"source"_s, u"output resistance of the amplifier"_s, true, u"Ω"_s}},
            {{u"factor"_s, u"load over source"_s}},
            u"definition"_s,
            worked(u"damping"_s,
                   [](Given &given) -> SumOutput {
                       const double load = given.positive(u"load", u"Ω");
                       const double source = given.positive(u"source", u"Ω");
                       return SumOutput{{u"factor"_s, load / source}};
                   }),
            u"load / source"_s};
}

} // namespace ts
