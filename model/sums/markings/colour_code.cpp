#include "model/sums/markings/colour_code.h"

#include "model/sums/given.h"
#include "model/values/number.h"
#include "model/values/quoted.h"

#include <algorithm>
#include <array>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double none = -1; // no meaning at that place
constexpr int noPower = -99;

struct Colour {
    const char *name;
    int digit;        ///< −1: no figure
    int power;        ///< of ten
    double tolerance; ///< percent, IEC 60062:2016
    double older;     ///< percent, on charts of the editions before
    double tempco;    ///< ppm/K
};
// IEC 60062:2016, table of colours, as seen on makers' charts; grey's 0.01 % and pink are of the newer edition (grey from
// memory), orange's and yellow's tolerances stand only on newer charts, grey was 0.05 % on older ones. White was never a
// tolerance.
constexpr std::array colours{
    Colour{"black", 0, 0, none, none, 250},   Colour{"brown", 1, 1, 1, 1, 100},          Colour{"red", 2, 2, 2, 2, 50},
    Colour{"orange", 3, 3, 0.05, none, 15},   Colour{"yellow", 4, 4, 0.02, none, 25},    Colour{"green", 5, 5, 0.5, 0.5, 20},
    Colour{"blue", 6, 6, 0.25, 0.25, 10},     Colour{"violet", 7, 7, 0.1, 0.1, 5},       Colour{"grey", 8, 8, 0.01, 0.05, 1},
    Colour{"white", 9, 9, none, none, none},  Colour{"gold", -1, -1, 5, 5, none},        Colour{"silver", -1, -2, 10, 10, none},
    Colour{"pink", -1, -3, none, none, none}, Colour{"none", -1, noPower, 20, 20, none},
};

const Colour *colourOf(const QString &written)
{
    QString word = written.trimmed().toLower();
    if (word == QLatin1String("gray"))
        word = u"grey"_s;
    if (word == QLatin1String("purple"))
        word = u"violet"_s;
    for (const Colour &each : colours)
        if (word == QLatin1String(each.name))
            return &each;
    return nullptr;
}

Trouble refused(qsizetype place, const QString &wrong, const QString &todo = {})
{
    return {u"Band %1 cannot be read"_s.arg(place + 1), wrong, todo.isEmpty() ? u"try reading from the other end"_s : todo};
}

QString named(const Colour &colour)
{
    return QLatin1String(colour.name);
}

QString percentOrNothing(double percent)
{
    return percent == none ? u"nothing"_s : u"%1 %"_s.arg(percent);
}

} // namespace

Expected<ColourCode> colourCode(const QStringList &bands)
{
    QList<const Colour *> found;
    for (qsizetype i = 0; i < bands.size(); ++i) {
        const Colour *colour = colourOf(bands.at(i));
        if (!colour)
            return refused(i, u"%1 is no colour of the code"_s.arg(quoted(bands.at(i))),
                           u"choose one of "_s + colourNames().join(u", "_s));
        found << colour;
    }
    if (found.size() == 1 && found.first()->digit == 0)
        return ColourCode{0, 0, {}, false, {}, u"a link"_s}; // a single black band, from memory
    if (found.size() < 3 || found.size() > 6)
        return Trouble{
            u"Cannot read %1 bands"_s.arg(found.size()), {}, u"give three to six colours, or one black band for a link"_s};

    const qsizetype figures = found.size() >= 5 ? 3 : 2;
    double value = 0;
    for (qsizetype i = 0; i < figures; ++i) {
        if (found.at(i)->digit < 0)
            return refused(i, u"%1 is no figure"_s.arg(named(*found.at(i))));
        value = 10 * value + found.at(i)->digit;
    }
    const Colour &multiplier = *found.at(figures);
    if (multiplier.power == noPower)
        return refused(figures, u"%1 is no multiplier"_s.arg(named(multiplier)));
    ColourCode code;
    code.ohms = shiftDecimal(value, multiplier.power);
    if (found.size() > figures + 1) {
        const Colour &tolerance = *found.at(figures + 1);
        if (tolerance.tolerance == none)
            return refused(figures + 1, u"%1 is no tolerance in any edition"_s.arg(named(tolerance)));
        code.tolerancePercent = tolerance.tolerance;
        code.editionsDiffer = tolerance.older != tolerance.tolerance;
        if (tolerance.older != none)
            code.olderTolerance = tolerance.older;
        if (code.editionsDiffer)
            code.remark = u"as a tolerance %1 is %2 in IEC 60062:2016%3 and %4 on older charts"_s.arg(
                named(tolerance), percentOrNothing(tolerance.tolerance), tolerance.digit == 8 ? u" (from memory)"_s : QString(),
                percentOrNothing(tolerance.older));
    } else {
        code.olderTolerance = code.tolerancePercent;
    }
    if (multiplier.power == -3) {
        code.editionsDiffer = true;
        code.remark += (code.remark.isEmpty() ? QString() : u"; "_s) + u"pink as a multiplier is of the newer edition only"_s;
    }
    if (found.size() == 6) {
        if (found.last()->tempco == none)
            return refused(5, u"%1 is no temperature coefficient"_s.arg(named(*found.last())));
        code.tempco = found.last()->tempco;
    }
    return code;
}

QStringList colourNames()
{
    QStringList names;
    for (const Colour &each : colours)
        names << named(each);
    return names;
}

Sum colourCodeSum()
{
    return {u"colour-code"_s,
            u"what the colour bands of a resistor say"_s,
            {{u"bands"_s, u"three to six colours, comma-separated: yellow, violet, red, gold"_s}},
            {{u"value"_s, u"resistance"_s, true, u"Ω"_s},
             {u"tolerance_percent"_s, u"by the 2016 edition; 20 where no band says it"_s, true, u"%"_s},
             {u"tempco"_s, u"of a sixth band, else null"_s, true, u"ppm/K"_s},
             {u"older_tolerance_percent"_s, u"by older charts; null where the band meant nothing"_s, true, u"%"_s},
             {u"editions_differ"_s, u"true where it depends on the edition"_s},
             {u"remark"_s, u"in what the editions differ"_s}},
            u"IEC 60062:2016; older charts where they differ"_s,
            [](const SumInput &input) -> Expected<SumOutput> {
                QString text = input.value(u"bands"_s);
                text.replace(QLatin1Char(' '), QLatin1Char(',')).replace(QLatin1Char('-'), QLatin1Char(','));
                const auto code = colourCode(text.split(QLatin1Char(','), Qt::SkipEmptyParts));
                if (!code)
                    return code.trouble();
                return SumOutput{{u"value"_s, code->ohms},
                                 {u"tolerance_percent"_s, code->tolerancePercent},
                                 {u"tempco"_s, orNull(code->tempco)},
                                 {u"older_tolerance_percent"_s, orNull(code->olderTolerance)},
                                 {u"editions_differ"_s, code->editionsDiffer},
                                 {u"remark"_s, code->remark}};
            },
            u"figures × multiplier"_s};
}

} // namespace ts
