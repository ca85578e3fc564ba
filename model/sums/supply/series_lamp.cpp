#include "model/sums/supply/series_lamp.h"

#include "model/sums/given.h"

#include <QJsonArray>

#include <array>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr std::array usualWatts{15.0, 25.0, 40.0, 60.0, 75.0, 100.0, 150.0, 200.0, 300.0, 500.0}; // from memory

} // namespace

Expected<SeriesLamp> seriesLampFor(double idleWatts, double mainsVolts)
{
    if (!(idleWatts > 0) || !(mainsVolts > 0))
        return Trouble{u"Cannot choose a series lamp"_s, u"idle power and mains voltage must be above 0"_s, {}};
    SeriesLamp lamp{idleWatts, 2 * idleWatts, {}, 0, 0};
    for (const double watts : usualWatts) {
        const bool within = watts >= lamp.leastWatts && watts <= lamp.mostWatts;
        if (within || (lamp.usual.isEmpty() && watts > lamp.mostWatts))
            lamp.usual << watts;
    }
    if (lamp.usual.isEmpty())
        lamp.usual << lamp.mostWatts; // several in parallel
    lamp.shortCurrent = lamp.usual.last() / mainsVolts;
    lamp.hotOhms = mainsVolts * mainsVolts / lamp.usual.last();
    return lamp;
}

Sum seriesLampSum()
{
    return {u"series-lamp"_s,
            u"the filament lamp to put in line with a unit at its first power"_s,
            {{u"idle"_s, u"power that the unit draws when it idles"_s, true, u"W"_s}, {u"mains"_s, u"voltage of the mains"_s, true, u"V"_s}},
            {{u"least"_s, u"watts of the lamp"_s, true, u"W"_s},
             {u"most"_s, u"watts of the lamp"_s, true, u"W"_s},
             {u"usual"_s, u"usual sizes within, else the next above"_s},
             {u"short_current"_s, u"through the largest of them into a dead short"_s, true, u"A"_s},
             {u"hot_resistance"_s, u"of the same, at full brightness"_s, true, u"Ω"_s},
             {u"caution"_s, u"what to mind"_s}},
            u"idle power to twice that: habit of the trade, no source; usual sizes from memory"_s,
            worked(u"series-lamp"_s,
                   [](Given &given) -> SumOutput {
                       const auto lamp = seriesLampFor(given.positive(u"idle", u"W"), given.positive(u"mains", u"V"));
                       if (!lamp)
                           return given.refuse(lamp.trouble());
                       QStringList usual;
                       for (const double watts : lamp->usual)
                           usual << QString::number(watts);
                       return SumOutput{{u"least"_s, lamp->leastWatts},
                                        {u"most"_s, lamp->mostWatts},
                                        {u"usual"_s, usual.join(u", "_s)},
                                        {u"short_current"_s, lamp->shortCurrent},
                                        {u"hot_resistance"_s, lamp->hotOhms},
                                        {u"caution"_s, u"A flash that dims is good, a lamp that stays bright is a stop. Everything is live all the same, and a variable transformer alone neither "
                                                       "limits the current nor isolates; a switch-mode supply may hiccup on the lamp. Local codes and licensed practice come first."_s}};
                   }),
            u"P from idle to 2 × idle; I = P / U; R = U² / P"_s};
}

} // namespace ts
