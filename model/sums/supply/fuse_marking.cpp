#include "model/sums/supply/fuse_marking.h"

#include "model/sums/given.h"
#include "model/sums/supply/fuse.h"
#include "model/values/quoted.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

struct SpeedWord {
    const char *written;
    const char *speed;
};
// IEC 60127-1 letters, from very quick to very slow, and the words people write for them.
constexpr std::array speeds{SpeedWord{"FF", "FF"},   SpeedWord{"TT", "TT"},    SpeedWord{"SLOW", "T"},     SpeedWord{"FAST", "F"},
                            SpeedWord{"QUICK", "F"}, SpeedWord{"MEDIUM", "M"}, SpeedWord{"TIME-LAG", "T"}, SpeedWord{"F", "F"},
                            SpeedWord{"M", "M"},     SpeedWord{"T", "T"}};

QString speedName(const QString &speed)
{
    if (speed == QLatin1String("FF"))
        return u"very quick"_s;
    if (speed == QLatin1String("F"))
        return u"quick-acting"_s;
    if (speed == QLatin1String("M"))
        return u"medium"_s;
    if (speed == QLatin1String("T"))
        return u"time-lag"_s;
    if (speed == QLatin1String("TT"))
        return u"long time-lag"_s;
    return u"speed not marked"_s;
}

QString breakingName(const QString &breaking)
{
    if (breaking == QLatin1String("L"))
        return u"low breaking"_s;
    if (breaking == QLatin1String("E"))
        return u"enhanced breaking"_s;
    if (breaking == QLatin1String("H"))
        return u"high breaking"_s;
    return {};
}

QString amperes(double value)
{
    return value < 1 ? u"%1 mA"_s.arg(value * 1000) : u"%1 A"_s.arg(value);
}

/// FF, F, M, T, TT from quick to slow; −1 for none.
int slowness(const QString &speed)
{
    static const QStringList order{u"FF"_s, u"F"_s, u"M"_s, u"T"_s, u"TT"_s};
    return static_cast<int>(order.indexOf(speed));
}

} // namespace

Expected<FuseMarking> fuseMarking(QStringView text)
{
    const Trouble none{quoted(text) + u" is no marking of a fuse"_s, {}, u"write it like T2AL250V or F 1.6 A"_s};
    QString rest = text.trimmed().toString().toUpper();
    rest.replace(QLatin1Char(','), QLatin1Char('.'));
    if (rest.isEmpty() || rest.size() > 40)
        return none;
    FuseMarking marking;
    static const QRegularExpression rated(u"(?<![0-9.])([0-9]+(?:\\.[0-9]+)?)\\s*(MA|A)"_s);
    const auto current = rated.match(rest);
    if (!current.hasMatch())
        return none;
    marking.rating = current.captured(1).toDouble() * (current.captured(2) == QLatin1String("MA") ? 0.001 : 1);
    QString before = rest.left(current.capturedStart()).trimmed();
    QString after = rest.mid(current.capturedEnd()).trimmed();

    static const QRegularExpression rating(u"([0-9]+(?:\\.[0-9]+)?)\\s*V(?:AC|\\s*~)?$"_s);
    if (const auto volts = rating.match(after); volts.hasMatch()) {
        marking.volts = volts.captured(1).toDouble();
        after = after.left(volts.capturedStart()).trimmed();
    }
    for (QString *side : {&before, &after})
        for (const SpeedWord &each : speeds) {
            const QLatin1String written(each.written);
            if (!marking.speed.isEmpty() || !side->startsWith(written))
                continue;
            marking.speed = QLatin1String(each.speed);
            *side = side->mid(written.size()).trimmed();
        }
    for (const QChar letter : {QLatin1Char('L'), QLatin1Char('E'), QLatin1Char('H')})
        if (after == QString(letter)) {
            marking.breaking = letter;
            after.clear();
        }
    if (!before.isEmpty() || !after.isEmpty() || !(marking.rating > 0))
        return none;
    if (marking.breaking == QLatin1String("L"))
        marking.breakingCapacity = lowBreakingCapacity(marking.rating);
    else if (marking.breaking == QLatin1String("E"))
        marking.breakingCapacity = 150; // IEC 60127-2, from memory
    else if (marking.breaking == QLatin1String("H"))
        marking.breakingCapacity = 1500; // the same
    return marking;
}

QString fuseWords(const FuseMarking &marking)
{
    QStringList words{speedName(marking.speed), amperes(marking.rating)};
    if (const QString breaking = breakingName(marking.breaking); !breaking.isEmpty())
        words << u"%1 (%2)"_s.arg(breaking, amperes(marking.breakingCapacity.value_or(0)));
    if (marking.volts)
        words << u"%1 V"_s.arg(*marking.volts);
    return words.join(u", "_s);
}

QStringList fuseAgainstPlate(const FuseMarking &fitted, const FuseMarking &plate, bool fittedIsUl, bool plateIsUl)
{
    QStringList wrong;
    if (fitted.rating > plate.rating * (1 + 1e-9))
        wrong << u"its rating of %1 is above the %2 of the plate: it may not open before something burns"_s.arg(
            amperes(fitted.rating), amperes(plate.rating));
    if (fitted.volts && plate.volts && *fitted.volts < *plate.volts)
        wrong << u"it is made for %1 V, the plate asks for %2 V"_s.arg(*fitted.volts).arg(*plate.volts);
    if (plate.breakingCapacity && fitted.breakingCapacity.value_or(0) < *plate.breakingCapacity)
        wrong << (fitted.breakingCapacity
                      ? u"it breaks %1 at most, the plate asks for %2"_s.arg(amperes(*fitted.breakingCapacity),
                                                                             amperes(*plate.breakingCapacity))
                      : u"no breaking capacity is marked on it, the plate asks for %1"_s.arg(amperes(*plate.breakingCapacity)));
    if (!plate.speed.isEmpty() && fitted.speed != plate.speed) {
        const QString both = u"it is %1, the plate asks for %2"_s.arg(speedName(fitted.speed), speedName(plate.speed));
        wrong << (slowness(fitted.speed) > slowness(plate.speed) ? both + u": a slower fuse protects less"_s : both);
    }
    if (fittedIsUl != plateIsUl)
        wrong << QStringLiteral(
            "one is made to IEC and the other to UL: ratings of the same figure do not carry the same current, so "
            "they are not interchangeable");
    if (fitted.rating < plate.rating * (1 - 1e-9))
        wrong << u"its rating of %1 is below the %2 of the plate: it may open without a fault"_s.arg(amperes(fitted.rating),
                                                                                                     amperes(plate.rating));
    return wrong;
}

double ulRatingForLoadOf(double iecRating)
{
    return iecRating / 0.75;
}

Sum fuseMarkingSum()
{
    return {u"fuse-marking"_s,
            u"what the marking of a fuse says, and what is wrong with it beside a plate"_s,
            {{u"text"_s, u"as marked: T2AL250V, F 1.6 A"_s}, {u"plate"_s, u"what the plate names, to hold it against"_s, false}},
            {{u"words"_s, u"the marking in words"_s},
             {u"characteristic"_s, u"FF, F, M, T, TT; null where none is marked"_s},
             {u"rating"_s, u"rated current"_s, true, u"A"_s},
             {u"breaking_capacity"_s, u"null where no class is marked"_s, true, u"A"_s},
             {u"volts"_s, u"null where not marked"_s, true, u"V"_s},
             {u"wrong"_s, u"beside the plate, most dangerous first; empty where it fits"_s},
             {u"ul_rating_for_same_load"_s, u"advice, never a substitution"_s, true, u"A"_s}},
            u"IEC 60127-1 marking order (from memory), IEC 60127-2 breaking capacities; 75 % rule of fuse makers"_s,
            worked(u"fuse-marking"_s,
                   [](Given &given) -> SumOutput {
                       const auto marking = fuseMarking(given.text(u"text"));
                       if (!marking)
                           return given.refuse(marking.trouble());
                       QStringList wrong;
                       if (given.has(u"plate")) {
                           const auto plate = fuseMarking(given.text(u"plate"));
                           if (!plate)
                               return given.refuse(plate.trouble());
                           wrong = fuseAgainstPlate(*marking, *plate);
                       }
                       return SumOutput{{u"words"_s, fuseWords(*marking)},
                                        {u"characteristic"_s,
                                         marking->speed.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(marking->speed)},
                                        {u"rating"_s, marking->rating},
                                        {u"breaking_capacity"_s, orNull(marking->breakingCapacity)},
                                        {u"volts"_s, orNull(marking->volts)},
                                        {u"wrong"_s, wrong.join(u"; "_s)},
                                        {u"ul_rating_for_same_load"_s, ulRatingForLoadOf(marking->rating)}};
                   }),
            u"L: the larger of 35 A and 10 × rating; E: 150 A; H: 1500 A"_s};
}

} // namespace ts
