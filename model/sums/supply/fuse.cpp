#include "model/sums/supply/fuse.h"

#include "model/sums/given.h"

#include <algorithm>
#include <cmath>
#include <limits>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double no = -1;                                           // the sheet says nothing
constexpr double holdsOn = std::numeric_limits<double>::infinity(); // it never opens

struct Gate {
    FuseLaw law;
    double from; ///< rated current, A
    double to;
    double multiple;
    double least; ///< s
    double most;  ///< s
};

// IEC 60127-2 sheet 2 (F), 3 (T) and 5 (T, ceramic, high breaking; its 10 x gate below 1 A was seen for 1 to 10 A only), UL
// 248-14 general and 5 x 20 mm fast, and makers' tables for ratings above 6.3 A and for slow UL fuses. From makers' data sheets.
constexpr std::array gates{
    Gate{FuseLaw::Fast, 0.032, 0.1, 1.5, 3600, no},
    Gate{FuseLaw::Fast, 0.032, 0.1, 2.1, no, 1800},
    Gate{FuseLaw::Fast, 0.032, 0.1, 2.75, 0.01, 0.5},
    Gate{FuseLaw::Fast, 0.032, 0.1, 4, 0.003, 0.1},
    Gate{FuseLaw::Fast, 0.032, 0.1, 10, no, 0.02},
    Gate{FuseLaw::Fast, 0.125, 6.3, 1.5, 3600, no},
    Gate{FuseLaw::Fast, 0.125, 6.3, 2.1, no, 1800},
    Gate{FuseLaw::Fast, 0.125, 6.3, 2.75, 0.05, 2},
    Gate{FuseLaw::Fast, 0.125, 6.3, 4, 0.01, 0.3},
    Gate{FuseLaw::Fast, 0.125, 6.3, 10, no, 0.02},
    Gate{FuseLaw::Fast, 8, 15, 1.5, 1800, no},
    Gate{FuseLaw::Fast, 8, 15, 2.1, no, 1800},
    Gate{FuseLaw::TimeLag, 0.032, 0.1, 1.5, 3600, no},
    Gate{FuseLaw::TimeLag, 0.032, 0.1, 2.1, no, 120},
    Gate{FuseLaw::TimeLag, 0.032, 0.1, 2.75, 0.2, 10},
    Gate{FuseLaw::TimeLag, 0.032, 0.1, 4, 0.04, 3},
    Gate{FuseLaw::TimeLag, 0.032, 0.1, 10, 0.01, 0.3},
    Gate{FuseLaw::TimeLag, 0.125, 6.3, 1.5, 3600, no},
    Gate{FuseLaw::TimeLag, 0.125, 6.3, 2.1, no, 120},
    Gate{FuseLaw::TimeLag, 0.125, 6.3, 2.75, 0.6, 10},
    Gate{FuseLaw::TimeLag, 0.125, 6.3, 4, 0.15, 3},
    Gate{FuseLaw::TimeLag, 0.125, 6.3, 10, 0.02, 0.3},
    Gate{FuseLaw::TimeLag, 8, 16, 1.5, 1800, no},
    Gate{FuseLaw::TimeLag, 8, 16, 2.1, no, 120},
    Gate{FuseLaw::TimeLag, 8, 16, 2.75, 0.6, 10},
    Gate{FuseLaw::TimeLag, 8, 16, 4, 0.15, 3},
    Gate{FuseLaw::TimeLag, 8, 16, 10, 0.02, 0.3},
    Gate{FuseLaw::TimeLagHigh, 0.125, 0.8, 1.5, 3600, no},
    Gate{FuseLaw::TimeLagHigh, 0.125, 0.8, 2.1, no, 1800},
    Gate{FuseLaw::TimeLagHigh, 0.125, 0.8, 2.75, 0.25, 80},
    Gate{FuseLaw::TimeLagHigh, 0.125, 0.8, 4, 0.05, 5},
    Gate{FuseLaw::TimeLagHigh, 0.125, 0.8, 10, 0.01, 0.15},
    Gate{FuseLaw::TimeLagHigh, 1, 3.15, 1.5, 3600, no},
    Gate{FuseLaw::TimeLagHigh, 1, 3.15, 2.1, no, 1800},
    Gate{FuseLaw::TimeLagHigh, 1, 3.15, 2.75, 0.75, 80},
    Gate{FuseLaw::TimeLagHigh, 1, 3.15, 4, 0.095, 5},
    Gate{FuseLaw::TimeLagHigh, 1, 3.15, 10, 0.01, 0.15},
    Gate{FuseLaw::TimeLagHigh, 4, 6.3, 1.5, 3600, no},
    Gate{FuseLaw::TimeLagHigh, 4, 6.3, 2.1, no, 1800},
    Gate{FuseLaw::TimeLagHigh, 4, 6.3, 2.75, 0.75, 80},
    Gate{FuseLaw::TimeLagHigh, 4, 6.3, 4, 0.15, 5},
    Gate{FuseLaw::TimeLagHigh, 4, 6.3, 10, 0.01, 0.15},
    Gate{FuseLaw::Ul, 0, 30, 1.0, holdsOn, no},
    Gate{FuseLaw::Ul, 0, 30, 1.35, no, 3600},
    Gate{FuseLaw::Ul, 0, 30, 2.0, no, 120},
    Gate{FuseLaw::UlFast, 0.063, 15, 1.0, holdsOn, no},
    Gate{FuseLaw::UlFast, 0.063, 15, 1.35, no, 3600},
    Gate{FuseLaw::UlFast, 0.063, 15, 2.0, no, 120},
    Gate{FuseLaw::UlSlow, 0.08, 3, 1.1, 14400, no},
    Gate{FuseLaw::UlSlow, 0.08, 3, 1.35, no, 3600},
    Gate{FuseLaw::UlSlow, 0.08, 3, 2.0, 5, 120},
    Gate{FuseLaw::UlSlow, 3.15, 10, 1.1, 14400, no},
    Gate{FuseLaw::UlSlow, 3.15, 10, 1.35, no, 3600},
    Gate{FuseLaw::UlSlow, 3.15, 10, 2.0, 12, 120},
};

constexpr double same = 1e-9;

bool holds(const Gate &gate, FuseLaw law, double rating)
{
    return gate.law == law && rating >= gate.from * (1 - same) && rating <= gate.to * (1 + same) && rating > 0;
}

QString sheetOf(const Gate &gate)
{
    const bool beyond = gate.to > 6.3;
    switch (gate.law) {
    case FuseLaw::Fast:
        return beyond ? u"maker's data, beyond the standard"_s : u"IEC 60127-2 sheet 2"_s;
    case FuseLaw::TimeLag:
        return beyond ? u"maker's data, beyond the standard"_s : u"IEC 60127-2 sheet 3"_s;
    case FuseLaw::TimeLagHigh:
        return u"IEC 60127-2 sheet 5"_s;
    case FuseLaw::Ul:
        return u"UL 248-14"_s;
    case FuseLaw::UlFast:
        return u"UL 248-14, maker's data"_s;
    case FuseLaw::UlSlow:
        return u"maker's data"_s;
    }
    return {};
}

} // namespace

Expected<FuseTimes> fuseTimes(FuseLaw law, double rating, double multiple)
{
    QStringList covered;
    FuseTimes times;
    times.atGate = false;
    double least = 0;
    double most = holdsOn;
    for (const Gate &gate : gates) {
        if (gate.law == law && (covered.isEmpty() || gate.multiple <= 1.5))
            if (const QString range = u"%1 to %2 A"_s.arg(gate.from).arg(gate.to); !covered.contains(range))
                covered << range;
        if (!holds(gate, law, rating))
            continue;
        times.sheet = sheetOf(gate);
        if (std::abs(gate.multiple - multiple) <= same * multiple) {
            times.atGate = true;
            least = std::max(0.0, gate.least);
            most = gate.most > 0 ? gate.most : holdsOn;
            break;
        }
        if (gate.multiple > multiple)
            least = std::max(least, gate.least);
        else if (gate.most > 0)
            most = std::min(most, gate.most);
    }
    if (times.sheet.isEmpty() || !(multiple > 0))
        return Trouble{u"There are no gates for %1 %2 A at %3 times"_s.arg(toWord(law)).arg(rating).arg(multiple),
                       u"they are published for "_s + covered.join(u", "_s), u"look in the maker's data sheet"_s};
    times.holds = least == holdsOn;
    if (least > 0 && !times.holds)
        times.least = least;
    if (most < holdsOn)
        times.most = most;
    return times;
}

double lowBreakingCapacity(double rating)
{
    return std::max(35.0, 10 * rating);
}

Sum fuseSum()
{
    return {
        u"fuse"_s,
        u"how long a fuse holds and by when it has opened, at a multiple of its rated current"_s,
        {{u"characteristic"_s,
          u"F and T: IEC, low breaking; T-high: IEC, ceramic, high breaking; UL: American"_s,
          true,
          {},
          {},
          allWords<FuseLaw>()},
         {u"rating"_s, u"rated current"_s, true, u"A"_s},
         {u"multiple"_s, u"times the rated current: 1.5, 2.1, 2.75, 4 and 10 are the gates of IEC"_s}},
        {{u"min_time"_s, u"it holds at least so long; null where nothing is promised"_s, true, u"s"_s},
         {u"max_time"_s, u"it has opened by then; null where nothing is promised"_s, true, u"s"_s},
         {u"holds"_s, u"true where it carries the current for good"_s},
         {u"at_gate"_s, u"false between two gates: then the times are bounds by the neighbouring ones"_s},
         {u"breaking_capacity"_s, u"of a low-breaking IEC fuse, else null"_s, true, u"A"_s},
         {u"sheet"_s, u"where the gate stands"_s},
         {u"remark"_s, u"what to mind before fitting one"_s}},
        u"IEC 60127-2 sheets 2, 3, 5; UL 248-14; makers' data above 6.3 A"_s,
        worked(u"fuse"_s,
               [](Given &given) -> SumOutput {
                   const auto law = static_cast<FuseLaw>(given.choice(u"characteristic", allWords<FuseLaw>()));
                   const double rating = given.positive(u"rating", u"A");
                   const double multiple = given.positive(u"multiple", u"");
                   const auto times = fuseTimes(law, rating, multiple);
                   if (!times)
                       return given.refuse(times.trouble());
                   const bool low = law == FuseLaw::Fast || law == FuseLaw::TimeLag;
                   return SumOutput{
                       {u"min_time"_s, orNull(times->least)},
                       {u"max_time"_s, orNull(times->most)},
                       {u"holds"_s, times->holds},
                       {u"at_gate"_s, times->atGate},
                       {u"breaking_capacity"_s, orNull(low ? std::optional(lowBreakingCapacity(rating)) : std::nullopt)},
                       {u"sheet"_s, times->sheet},
                       {u"remark"_s,
                        QStringLiteral(
                            "A fuse is a safety part: fit what the plate or the maker's sheet names, in rating, speed, breaking "
                            "capacity, voltage and size. IEC and UL fuses of the same figure are not interchangeable: they "
                            "carry and open at different currents.")}};
               }),
        u"gate look-up; between gates the bounds of the neighbouring ones"_s};
}

} // namespace ts
