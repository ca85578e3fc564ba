#include "model/sums/parts/part_kind.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

using enum RatingRule;

RatingField amount(const QString &key, const QString &measure, RatingRule rule, const QStringList &shorter = {}, double percent = 1)
{
    return {key, shorter, measure, rule, percent, {}};
}

RatingField word(const QString &key, RatingRule rule, const QStringList &words = {}, const QStringList &shorter = {})
{
    return {key, shorter, {}, rule, 0, words};
}

// Fields that several kinds share.
RatingField capacitance() { return amount(u"capacitance"_s, u"µF"_s, Same, {u"c"_s, u"cap"_s}); }
RatingField voltage(RatingRule rule) { return amount(u"voltage"_s, u"V"_s, rule, {u"v"_s, u"u"_s}); }
RatingField current(RatingRule rule, double percent = 1) { return amount(u"current"_s, u"A"_s, rule, {u"i"_s}, percent); }
RatingField leadSpacing() { return amount(u"lead spacing"_s, u"mm"_s, Same, {u"pitch"_s, u"p"_s, u"rm"_s}, 10); }
RatingField diameter(RatingRule rule) { return amount(u"diameter"_s, u"mm"_s, rule, {u"d"_s, u"dia"_s, u"⌀"_s}); }
RatingField height(RatingRule rule) { return amount(u"height"_s, u"mm"_s, rule, {u"h"_s}); }
RatingField length(RatingRule rule) { return amount(u"length"_s, u"mm"_s, rule, {u"l"_s}); }
RatingField width(RatingRule rule, double percent = 10) { return amount(u"width"_s, u"mm"_s, rule, {u"w"_s, u"b"_s}, percent); }
RatingField thickness(double percent = 10) { return amount(u"thickness"_s, u"mm"_s, Same, {u"t"_s}, percent); }
RatingField tolerance() { return amount(u"tolerance"_s, u"%"_s, AtMost, {u"tol"_s}); }
RatingField temperature() { return amount(u"temperature"_s, u"°C"_s, AtLeast, {u"temp"_s}); }
RatingField esr() { return amount(u"esr"_s, u"Ω"_s, AtMost); }
RatingField ripple() { return amount(u"ripple current"_s, u"A"_s, AtLeast, {u"ripple"_s}); }
RatingField mounting() { return word(u"mounting"_s, Same, {u"radial"_s, u"axial"_s, u"snap-in"_s, u"surface"_s, u"screw"_s}); }
RatingField exactType() { return word(u"type"_s, Same); }
RatingField condition() { return word(u"condition"_s, Remark, {u"new"_s, u"used"_s, u"after-market"_s}); }
RatingField safetyClass() { return word(u"class"_s, Same, {u"X1"_s, u"X2"_s, u"Y1"_s, u"Y2"_s}); }

QList<PartKind> made()
{
    const auto capacitor = u"capacitor"_s;
    QList<PartKind> kinds;
    // The belt's length is advice of the trade (model/sums/drive/belt.h): two in a hundred is what nobody hears or sees.
    kinds << PartKind{u"belt"_s, {u"drive belt"_s}, u"belt"_s,
                      {amount(u"inner circumference"_s, u"mm"_s, Same, {u"ic"_s, u"inner length"_s, u"circumference"_s}, 2.5),
                       word(u"section"_s, Same, {u"flat"_s, u"square"_s, u"round"_s}), width(Same), thickness(),
                       word(u"measured"_s, Remark)},
                      {u"inner circumference"_s, u"width"_s, u"thickness"_s}};
    const QList<RatingField> sizedCan{leadSpacing(), diameter(AtMost), height(AtMost)};
    kinds << PartKind{u"electrolytic"_s, {u"electrolytic capacitor"_s, u"elco"_s}, capacitor,
                      QList<RatingField>{capacitance(), voltage(AtLeast), temperature(), amount(u"life"_s, u"h"_s, AtLeast, {u"hours"_s}),
                                         word(u"polarity"_s, Same, {u"polar"_s, u"bipolar"_s}), mounting(), tolerance(), esr(), ripple()} + sizedCan,
                      {u"diameter"_s, u"height"_s}};
    kinds << PartKind{u"film capacitor"_s, {u"foil capacitor"_s}, capacitor,
                      {capacitance(), voltage(AtLeast), tolerance(), word(u"dielectric"_s, Remark), leadSpacing(), width(AtMost), height(AtMost), length(AtMost)},
                      {u"length"_s, u"width"_s, u"height"_s}};
    kinds << PartKind{u"safety capacitor"_s, {u"suppressor"_s, u"mains capacitor"_s}, capacitor,
                      {capacitance(), voltage(AtLeast), safetyClass(), tolerance(), leadSpacing(), width(AtMost), height(AtMost), length(AtMost)},
                      {u"length"_s, u"width"_s, u"height"_s}};
    kinds << PartKind{u"tantalum"_s, {u"tantalum capacitor"_s}, capacitor, {capacitance(), voltage(AtLeast), tolerance(), word(u"case"_s, Same)}};
    kinds << PartKind{capacitor, {u"condenser"_s}, capacitor,
                      QList<RatingField>{capacitance(), voltage(AtLeast), temperature(), word(u"polarity"_s, Same, {u"polar"_s, u"bipolar"_s}),
                                         mounting(), safetyClass(), tolerance(), esr(), ripple()} + sizedCan,
                      {u"diameter"_s, u"height"_s}};
    kinds << PartKind{u"resistor"_s, {}, u"resistor"_s,
                      {amount(u"resistance"_s, u"Ω"_s, Same, {u"r"_s}), amount(u"power"_s, u"W"_s, AtLeast, {u"p"_s}), tolerance(),
                       word(u"fusible"_s, Same, {u"fusible"_s}), voltage(AtLeast)}};
    kinds << PartKind{u"potentiometer"_s, {u"pot"_s, u"trimmer"_s}, u"potentiometer"_s,
                      {amount(u"resistance"_s, u"Ω"_s, Same, {u"r"_s}), word(u"law"_s, Same, {u"linear"_s, u"log"_s, u"anti-log"_s}), word(u"taps"_s, Same),
                       amount(u"shaft"_s, u"mm"_s, Same), word(u"pins"_s, Same)}};
    // A fuse is a safety part: as on the plate in everything.
    kinds << PartKind{u"fuse"_s, {u"fuse link"_s}, u"fuse"_s,
                      {current(Same), word(u"characteristic"_s, Same, {u"FF"_s, u"F"_s, u"M"_s, u"T"_s, u"TT"_s}), voltage(AtLeast), diameter(Same), length(Same),
                       word(u"breaking capacity"_s, Same, {u"low"_s, u"enhanced"_s, u"high"_s}), word(u"body"_s, Remark, {u"glass"_s, u"ceramic"_s})},
                      {u"diameter"_s, u"length"_s}};
    kinds << PartKind{u"lamp"_s, {u"bulb"_s, u"dial lamp"_s}, u"lamp"_s,
                      {voltage(Same), current(Same, 10), word(u"base"_s, Same), diameter(AtMost), length(AtMost), word(u"colour"_s, Remark)},
                      {u"diameter"_s, u"length"_s}};
    kinds << PartKind{u"semiconductor"_s, {u"transistor"_s, u"diode"_s, u"integrated circuit"_s, u"regulator"_s}, u"semiconductor"_s,
                      {exactType(), word(u"package"_s, Same), word(u"gain grade"_s, Same, {}, {u"gain"_s}), word(u"matched"_s, Same), voltage(AtLeast),
                       current(AtLeast), amount(u"power"_s, u"W"_s, AtLeast), word(u"source"_s, Remark)}};
    kinds << PartKind{u"idler tyre"_s, {u"tyre"_s}, u"rubber"_s,
                      {amount(u"outer diameter"_s, u"mm"_s, Same, {u"od"_s, u"d"_s}, 2), amount(u"inner diameter"_s, u"mm"_s, Same, {u"id"_s}, 2), thickness(),
                       word(u"hardness"_s, Remark)},
                      {u"outer diameter"_s, u"inner diameter"_s, u"thickness"_s}};
    for (const auto &[name, other] : {std::pair{u"idler"_s, u"idler wheel"_s}, std::pair{u"pinch roller"_s, u"roller"_s}})
        kinds << PartKind{name, {other}, u"rubber"_s,
                          {amount(u"outer diameter"_s, u"mm"_s, Same, {u"od"_s, u"d"_s}, 1), width(Same, 3), amount(u"bore"_s, u"mm"_s, Same),
                           word(u"shaft"_s, Same), word(u"hardness"_s, Remark)},
                          {u"outer diameter"_s, u"width"_s, u"bore"_s}};
    kinds << PartKind{u"motor"_s, {}, u"motor"_s,
                      {exactType(), voltage(Same), word(u"direction"_s, Same), amount(u"shaft"_s, u"mm"_s, Same), amount(u"pulley"_s, u"mm"_s, Same),
                       word(u"mount"_s, Same), word(u"connector"_s, Same), condition()}};
    kinds << PartKind{u"head"_s, {u"tape head"_s}, u"head"_s,
                      {exactType(), word(u"tracks"_s, Same), amount(u"resistance"_s, u"Ω"_s, Same, {u"r"_s}, 10), word(u"mount"_s, Same), height(Same),
                       word(u"leads"_s, Remark), word(u"wear"_s, Remark), condition()}};
    kinds << PartKind{u"stylus"_s, {u"needle"_s}, u"stylus"_s, {exactType(), word(u"tip"_s, Same, {u"round"_s, u"elliptical"_s, u"line"_s}), word(u"mount"_s, Same), condition()}};
    kinds << PartKind{u"laser"_s, {u"pickup"_s, u"laser pickup"_s}, u"laser"_s, {exactType(), word(u"mount"_s, Same), word(u"connector"_s, Same), condition()}};
    kinds << PartKind{u"relay"_s, {}, u"relay"_s, {voltage(Same), word(u"contacts"_s, Same), current(AtLeast), word(u"pins"_s, Same)}};
    kinds << PartKind{u"switch"_s, {}, u"switch"_s, {word(u"contacts"_s, Same), current(AtLeast), voltage(AtLeast), word(u"pins"_s, Same)}};
    kinds << PartKind{u"cell"_s, {u"battery"_s, u"save cell"_s}, u"cell"_s,
                      {word(u"chemistry"_s, Same), voltage(Same), amount(u"capacity"_s, u"mAh"_s, AtLeast), diameter(Same), height(Same), word(u"tabs"_s, Same, {u"tabbed"_s})},
                      {u"diameter"_s, u"height"_s}};
    kinds << PartKind{u"gear"_s, {u"cog"_s}, u"mechanical"_s, {word(u"teeth"_s, Same), amount(u"outer diameter"_s, u"mm"_s, Same, {u"od"_s, u"d"_s}), amount(u"bore"_s, u"mm"_s, Same), thickness()}};
    kinds << PartKind{u"spring"_s, {}, u"mechanical"_s, {length(Same), diameter(Same), amount(u"wire"_s, u"mm"_s, Same), word(u"turns"_s, Same)}};
    kinds << PartKind{u"screw"_s, {}, u"mechanical"_s, {word(u"thread"_s, Same), length(Same), word(u"head"_s, Remark)}};
    kinds << PartKind{u"mechanical"_s, {u"clutch"_s, u"bracket"_s, u"knob"_s}, u"mechanical"_s, {word(u"thread"_s, Same), length(Same), diameter(Same), word(u"material"_s, Remark)}};
    return kinds;
}

bool called(const PartKind &kind, QStringView name)
{
    return kind.name.compare(name, Qt::CaseInsensitive) == 0 || kind.names.contains(name, Qt::CaseInsensitive);
}

} // namespace

bool RatingField::isCalled(QStringView name) const
{
    return key.compare(name, Qt::CaseInsensitive) == 0 || shorter.contains(name, Qt::CaseInsensitive);
}

const RatingField *PartKind::field(QStringView wanted) const
{
    const auto found = std::find_if(fields.begin(), fields.end(), [&](const RatingField &each) { return each.isCalled(wanted); });
    return found == fields.end() ? nullptr : &*found;
}

const QList<PartKind> &partKinds()
{
    static const QList<PartKind> kinds = made();
    return kinds;
}

const PartKind *partKindNamed(QStringView name)
{
    const QStringView text = name.trimmed();
    for (const PartKind &kind : partKinds())
        if (called(kind, text))
            return &kind;
    return nullptr;
}

const PartKind *partKindIn(const QString &text)
{
    static const QRegularExpression apart(u"[^\\p{L}\\-]+"_s);
    const QString words = u' ' + text.toLower().split(apart, Qt::SkipEmptyParts).join(u' ') + u' ';
    const PartKind *found = nullptr;
    qsizetype longest = 0;
    for (const PartKind &kind : partKinds()) {
        for (const QString &name : QStringList(kind.name) + kind.names) {
            const bool there = words.contains(u' ' + name + u' ') || words.contains(u' ' + name + u"s "_s);
            if (there && name.size() > longest) {
                found = &kind;
                longest = name.size();
            }
        }
    }
    return found;
}

bool isOfKind(const PartKind &of, const PartKind &wanted)
{
    return of.name == wanted.name || of.family == wanted.name;
}

} // namespace ts
