#include "model/sums/drive/speed.h"

#include "model/sums/given.h"
#include "model/values/number.h"
#include "model/values/quantity.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// Turns a minute, written "33 1/3", "45" or "33.33 rpm"; 33 and 16 are the short names of 33 1/3 and 16 2/3.
double rpmIn(Given &given, QStringView key)
{
    const QString typed = given.text(key);
    double rpm = typed.contains(u'/') ? given.number(key) : given.positive(key, u"rpm");
    if (typed == u"33"_s)
        rpm = 100.0 / 3;
    if (typed == u"16"_s)
        rpm = 50.0 / 3;
    return rpm;
}

double tidyPercent(double percent)
{
    return withoutBinaryDust(percent, 100);
}

} // namespace

Expected<StrobeBars> strobeBars(double rpm, double mainsHertz, int flashesPerCycle)
{
    const double flashes = 60 * mainsHertz * flashesPerCycle;
    const double exact = flashes / rpm;
    if (!(exact >= 0.5) || exact > 100'000)
        return Trouble{u"There is no strobe ring for %1 rpm at %2 Hz"_s.arg(rpm).arg(mainsHertz), {}, {}};
    const int bars = static_cast<int>(std::lround(exact));
    return StrobeBars{bars, flashes / bars};
}

SpeedError speedError(double nominal, double read)
{
    return {100 * (read / nominal - 1), 1200 * std::log2(read / nominal)};
}

Sum strobeSum()
{
    return {
        u"strobe"_s,
        u"bars of a strobe ring, and the speed at which they stand still"_s,
        {{u"speed"_s, u"to be shown: 33 1/3, 45, 78"_s, true, u"rpm"_s},
         {u"frequency"_s, u"of the mains, 50 or 60"_s, true, u"Hz"_s},
         {u"flashes"_s,
          u"in one mains cycle: 2 of an ordinary lamp, 1 of a lamp on one half wave"_s,
          false,
          {},
          u"2"_s,
          {u"1"_s, u"2"_s}}},
        {{u"bars"_s, u"whole number"_s},
         {u"true_speed"_s, u"at which they stand still"_s, true, u"rpm"_s},
         {u"error_percent"_s, u"of that speed against the one asked for"_s, true, u"%"_s},
         {u"degrees"_s, u"from bar to bar"_s, true, u"°"_s}},
        u"definition; lamps flash twice in a mains cycle, rings drawn for one flash have half the bars and stand still as well"_s,
        worked(u"strobe"_s,
               [](Given &given) -> SumOutput {
                   const double speed = rpmIn(given, u"speed");
                   const double frequency = given.positive(u"frequency", u"Hz");
                   const auto flashes = static_cast<int>(given.whole(u"flashes", 1, 2));
                   const auto ring = strobeBars(speed, frequency, flashes);
                   if (!ring)
                       return given.refuse(ring.trouble());
                   return {{u"bars"_s, ring->bars},
                           {u"true_speed"_s, ring->standingSpeed},
                           {u"error_percent"_s, tidyPercent(ring->errorPercent(speed))},
                           {u"degrees"_s, 360.0 / ring->bars}};
               }),
        u"bars = 60 f flashes / rpm, rounded"_s};
}

Sum speedErrorSum()
{
    return {u"speed-error"_s,
            u"how far a tone, a tachometer or a speed is from what it ought to be"_s,
            {{u"nominal"_s, u"what it ought to be: 3150 for the usual test tape, 33 1/3, 2400"_s},
             {u"read"_s, u"what was read, in the same unit"_s}},
            {{u"error_percent"_s, u"above zero is fast"_s, true, u"%"_s},
             {u"cents"_s, u"hundredths of a semitone"_s, true, u"cent"_s}},
            u"definition"_s,
            worked(u"speed-error"_s,
                   [](Given &given) -> SumOutput {
                       const double nominal = given.number(u"nominal");
                       const double read = given.number(u"read");
                       if (!(nominal > 0) || !(read > 0))
                           return given.refuse(u"both must be above 0"_s);
                       const SpeedError error = speedError(nominal, read);
                       return {{u"error_percent"_s, tidyPercent(error.percent)}, {u"cents"_s, error.cents}};
                   }),
            u"100 (read / nominal − 1); 1200 log2(read / nominal)"_s};
}

Sum mainsSpeedSum()
{
    return {u"mains-speed"_s,
            u"a synchronous motor on another mains frequency, and the pulley that puts it right"_s,
            {{u"made_for"_s, u"frequency on the plate"_s, true, u"Hz"_s},
             {u"runs_on"_s, u"frequency of the mains here"_s, true, u"Hz"_s},
             {u"speed"_s, u"at the right frequency: 33 1/3"_s, false, u"rpm"_s},
             {u"pulley"_s, u"effective diameter with the belt, in any unit"_s, false}},
            {{u"error_percent"_s, u"of the speed here"_s, true, u"%"_s},
             {u"speed"_s, u"here; null where none was given"_s, true, u"rpm"_s},
             {u"pulley"_s, u"that restores the speed, in the unit given; null where none was given"_s}},
            u"definition: a synchronous motor turns with the frequency; electronic drives do not"_s,
            worked(u"mains-speed"_s,
                   [](Given &given) -> SumOutput {
                       const double madeFor = given.positive(u"made_for", u"Hz");
                       const double runsOn = given.positive(u"runs_on", u"Hz");
                       std::optional<double> speed;
                       if (given.has(u"speed"))
                           speed = rpmIn(given, u"speed") * runsOn / madeFor;
                       std::optional<double> pulley;
                       if (given.has(u"pulley")) {
                           const auto size = Quantity::parse(given.text(u"pulley"));
                           if (!size || !(size->value() > 0))
                               return given.refuse(u"pulley is no diameter"_s, u"give it as 10 mm"_s);
                           pulley = size->value() * madeFor / runsOn;
                       }
                       return {{u"error_percent"_s, tidyPercent(100 * (runsOn / madeFor - 1))},
                               {u"speed"_s, orNull(speed)},
                               {u"pulley"_s, orNull(pulley)}};
                   }),
            u"n = n0 f / f0; d = d0 f0 / f"_s};
}

} // namespace ts
