#include "model/sums/drive/belt.h"

#include "model/sums/given.h"
#include "model/values/number.h"
#include "model/values/quantity.h"
#include "model/values/quoted.h"

#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double metresPerInch = 0.0254; // by definition

Expected<Quantity> lengthOf(const QString &text)
{
    const auto length = Quantity::parse(text);
    const QString unit = length ? length->measure().symbol() : QString();
    const bool known = unit.isEmpty() || unit == u"m"_s || unit == u"in"_s || unit == u"\""_s;
    if (!length || !known || !(length->value() > 0))
        return Trouble{quoted(text) + u" is no length"_s, {}, u"give it as 250 mm or 12 in"_s};
    return *length;
}

} // namespace

BeltLength beltLength(double measured, BeltFrom from, double shorterPercent)
{
    const auto shorter = [measured](double percent) { return withoutBinaryDust(measured * (100 - percent) / 100, measured); };
    return {shorter(shorterPercent), shorter(10), shorter(from == BeltFrom::Path ? 4 : 4.2)};
}

double tapeMetres(double metresPerSecond, double seconds)
{
    return metresPerSecond * seconds;
}

Expected<double> tapeSpeed(const QString &text)
{
    static const QRegularExpression form(
        u"^(?:(?:([0-9]+)\\s+)?([0-9]+)/([1-9][0-9]*)|([0-9]+(?:[.,][0-9]+)?))\\s*(in/s|ips|i/s|cm/s|m/s)?$"_s);
    const auto match = form.match(text.trimmed());
    const double fraction = match.hasCaptured(2) ? match.captured(2).toDouble() / match.captured(3).toDouble() : 0;
    const double number = match.captured(1).toDouble() + fraction + match.captured(4).replace(u',', u'.').toDouble();
    if (!match.hasMatch() || !(number > 0))
        return Trouble{quoted(text) + u" is no tape speed"_s, {}, u"give it as 4.76 cm/s or 1 7/8 in/s"_s};
    const QString unit = match.captured(5);
    return unit == u"m/s"_s ? number : shiftDecimal(unit == u"cm/s"_s ? number : number * metresPerInch * 100, -2);
}

Sum beltSum()
{
    return {u"belt"_s,
            u"how long to order a drive belt (advice)"_s,
            {{u"path"_s, u"string round the path of the belt; in any unit, mm if none"_s, false, u"mm"_s},
             {u"old"_s, u"inside circumference of the old belt, which has stretched"_s, false, u"mm"_s},
             {u"shorter"_s, u"percent that the new one is to be shorter: 5 by habit, 6 for square belts by a string"_s, false,
              u"%"_s, u"5"_s}},
            {{u"length"_s, u"inside circumference to order, in the unit given"_s},
             {u"shortest"_s, u"still acceptable"_s},
             {u"longest"_s, u"still acceptable"_s},
             {u"unit"_s, u"of the three"_s},
             {u"remark"_s, u"how far to trust it"_s}},
            u"common practice: 4 to 10 % shorter; 6 % by a string round the path (belt-measuring pages), 5 % without a source"_s,
            worked(u"belt"_s,
                   [](Given &given) -> SumOutput {
                       if (given.has(u"path") == given.has(u"old"))
                           return given.refuse(u"it needs either the path or the old belt"_s, u"give path=… or old=…"_s);
                       const auto from = given.has(u"path") ? BeltFrom::Path : BeltFrom::OldBelt;
                       const auto measured = lengthOf(given.text(from == BeltFrom::Path ? u"path" : u"old"));
                       if (!measured)
                           return given.refuse(measured.trouble());
                       const double shorter = given.number(u"shorter");
                       if (shorter < 0 || shorter > 15)
                           return given.refuse(u"%1 % shorter fits no belt"_s.arg(shorter), u"give 0 to 15"_s);
                       const BeltLength belt = beltLength(measured->value(), from, shorter);
                       const QString unit = measured->measure().text();
                       return {
                           {u"length"_s, belt.length},
                           {u"shortest"_s, belt.shortest},
                           {u"longest"_s, belt.longest},
                           {u"unit"_s, unit.isEmpty() ? u"mm"_s : unit},
                           {u"remark"_s, u"Advice, no more: what the maker's sheet or a belt that worked says comes first."_s}};
                   }),
            u"length × (1 − shorter)"_s};
}

Sum tapeLengthSum()
{
    return {u"tape-length"_s,
            u"tape that passes in a time"_s,
            {{u"speed"_s, u"of the tape: 4.76 cm/s, 1 7/8 in/s"_s}, {u"minutes"_s, u"of playing"_s, true, u"min"_s}},
            {{u"length"_s, u"of tape"_s, true, u"m"_s}, {u"speed"_s, u"of the tape"_s, true, u"m/s"_s}},
            u"definition; 1 in is 25.4 mm; nominal speeds by IASA TC-04"_s,
            worked(u"tape-length"_s,
                   [](Given &given) -> SumOutput {
                       const auto speed = tapeSpeed(given.text(u"speed"));
                       if (!speed)
                           return given.refuse(speed.trouble());
                       const double minutes = given.positive(u"minutes", u"min");
                       return {{u"length"_s, tapeMetres(*speed, 60 * minutes)}, {u"speed"_s, *speed}};
                   }),
            u"length = speed × time"_s};
}

} // namespace ts
