#include "model/values/wanted.h"

#include "model/values/number.h"
#include "model/values/quoted.h"

#include <QList>

#include <array>

namespace ts {

namespace {

struct Opening {
    QStringView written;
    Shape shape;
};
constexpr std::array openings{
    Opening{u"<=", Shape::AtMost},         Opening{u">=", Shape::AtLeast},     Opening{u"=<", Shape::AtMost},
    Opening{u"=>", Shape::AtLeast},        Opening{u"<", Shape::AtMost},       Opening{u">", Shape::AtLeast},
    Opening{u"≤", Shape::AtMost},          Opening{u"≥", Shape::AtLeast},      Opening{u"up to ", Shape::AtMost},
    Opening{u"at most ", Shape::AtMost},   Opening{u"below ", Shape::AtMost},  Opening{u"under ", Shape::AtMost},
    Opening{u"at least ", Shape::AtLeast}, Opening{u"above ", Shape::AtLeast},
};

Trouble wrongLimit(const QString &wrong, const QString &todo = {})
{
    return {{}, wrong, todo};
}

QString shownMeasure(const Measure &measure)
{
    return measure.text().isEmpty() ? QStringLiteral("no unit") : quoted(measure.text());
}

bool isRelative(const Measure &measure)
{
    return measure.symbol() == u"%" || measure.symbol() == u"ppm";
}

/// One amount inside a limit: a plain value, nothing about or over range.
Expected<Quantity> amount(QStringView text, const Measure &expected)
{
    if (text.trimmed().isEmpty())
        return wrongLimit(QStringLiteral("a value is missing"));
    auto read = Quantity::parse(text, expected);
    if (!read)
        return wrongLimit(read.trouble().sentence().chopped(1));
    if (read->sense() != Sense::Plain)
        return wrongLimit(quoted(text) + QStringLiteral(" is not a definite value"));
    return read;
}

/// Whether the text states a unit, even if only a prefix.
bool namesUnit(QStringView text)
{
    const QStringView word = text.trimmed();
    return numberLength(word) < word.size();
}

Expected<Wanted> readBand(QStringView from, QStringView to, const Measure &expected)
{
    const auto upper = amount(to, expected);
    if (!upper)
        return upper.trouble();
    // "35..65 gf·cm": the unit stands once and holds for both, on whichever side it was put
    const auto lower = amount(from, namesUnit(to) ? upper->measure() : expected);
    if (!lower)
        return lower.trouble();
    Wanted wanted{Shape::Band, *lower, *upper};
    if (!namesUnit(to) && namesUnit(from))
        wanted.second = Quantity(upper->value(), lower->measure());
    const auto same = wanted.first.in(wanted.second.measure());
    if (!same)
        return wrongLimit(QStringLiteral("its ends are in %1 and %2")
                              .arg(shownMeasure(wanted.first.measure()), shownMeasure(wanted.second.measure())));
    if (same->value() > wanted.second.value())
        return wrongLimit(QStringLiteral("%1 is above %2").arg(wanted.first.text(), wanted.second.text()),
                          QStringLiteral("put the lower end first"));
    wanted.first = *same;
    return wanted;
}

Expected<Wanted> readTolerance(QStringView aimText, QStringView toleranceText, bool plusMinus, const Measure &expected)
{
    const QStringView word = toleranceText.trimmed();
    if (!word.isEmpty() && (word.front() == u'-' || word.front() == u'+' || word.front() == u'\u2212'))
        return wrongLimit(QStringLiteral("a tolerance has no sign of its own"),
                          QStringLiteral("write ± before it, or both ends as in 11..12 V"));
    const bool bareTolerance = !namesUnit(word);
    auto aim = amount(aimText, expected);
    if (!aim)
        return aim.trouble();
    if (bareTolerance && !plusMinus)
        return wrongLimit(quoted(word) + QStringLiteral(" may be a percentage or a value"), QStringLiteral("write its unit"));
    auto tolerance = amount(word, aim->measure());
    if (!tolerance)
        return tolerance.trouble();
    const Measure &unit = tolerance->measure();
    // "12 ± 0.5 V": the unit at the end holds for both
    if (!namesUnit(aimText) && !bareTolerance && !isRelative(unit) && unit.symbol() != u"dB")
        aim = Quantity(aim->value(), unit);
    if (tolerance->value() <= 0)
        return wrongLimit(QStringLiteral("a tolerance of nothing cannot be kept"));

    Wanted wanted{Shape::Absolute, *aim, *tolerance};
    const bool inDecibels = aim->measure().symbol().startsWith(QLatin1String("dB"));
    if (aim->measure().comparableWith(unit) || (inDecibels && unit.symbol() == u"dB"))
        return wanted; // also "50 % 5 %", 45 to 55 %, and "4 dBu 1 dB", 3 to 5 dBu
    if (!isRelative(unit) && unit.symbol() != u"dB")
        return wrongLimit(
            QStringLiteral("the tolerance is in %1 and the value in %2").arg(shownMeasure(unit), shownMeasure(aim->measure())));
    if (aim->value() == 0.0)
        return wrongLimit(QStringLiteral("%1 around zero is nothing").arg(tolerance->text()), QStringLiteral("give both ends"));
    if (inDecibels)
        return wrongLimit(QStringLiteral("a share of decibels means nothing"), QStringLiteral("give the tolerance in dB"));
    wanted.shape = unit.symbol() == u"dB" ? Shape::Decibels : Shape::Relative;
    return wanted;
}

/// Where "12 V 5%" has its second number: a token that begins one, after the first.
QList<qsizetype> laterNumbers(QStringView text)
{
    QList<qsizetype> found;
    for (qsizetype i = 1; i < text.size(); ++i)
        if (text[i - 1].isSpace() && numberLength(text.mid(i)) > 0)
            found << i;
    return found;
}

} // namespace

Expected<Wanted> readWanted(QStringView text, const Measure &expected)
{
    for (const Opening &each : openings) {
        if (!text.startsWith(each.written, Qt::CaseInsensitive))
            continue;
        const auto end = amount(text.mid(each.written.size()), expected);
        if (!end)
            return end.trouble();
        return Wanted{each.shape, *end, {}};
    }

    for (const QStringView mark : {QStringView(u"±"), QStringView(u"+/-"), QStringView(u"+-"), QStringView(u"+/\u2212")})
        if (const qsizetype at = text.indexOf(mark); at >= 0) {
            const QString end = text.mid(at + mark.size()).trimmed().toString();
            const auto around = at == 0 ? amount(end, expected) : Expected<Quantity>(Trouble{});
            if (around && !isRelative(around->measure()) && around->measure().symbol() != u"dB") // "±50 mV": around zero
                return readBand(QLatin1Char('-') + end, end, expected);
            return readTolerance(text.left(at), end, true, expected);
        }

    for (const QStringView mark : {QStringView(u"..."), QStringView(u".."), QStringView(u"\u2026"), QStringView(u" to "),
                                   QStringView(u"\u2013"), QStringView(u" - ")})
        if (const qsizetype at = text.indexOf(mark, 0, Qt::CaseInsensitive); at >= 0)
            return readBand(text.left(at), text.mid(at + mark.size()), expected);
    // "35-65 gf·cm": a hyphen between two figures; after a space it is the sign of a tolerance, which has none
    if (const qsizetype length = numberLength(text); length > 0 && length + 1 < text.size() && text[length] == u'-')
        return readBand(text.left(length), text.mid(length + 1), expected);

    // "about 12 V" has no first number; "R47 5%" has
    const bool startsAsWord = text.front().isLetter() && (text.size() < 2 || !text[1].isDigit());
    const QList<qsizetype> later = startsAsWord ? QList<qsizetype>() : laterNumbers(text);
    if (later.size() > 1)
        return wrongLimit(QStringLiteral("it has more than two values"));
    if (later.size() == 1)
        return readTolerance(text.left(later.front()), text.mid(later.front()), false, expected);
    const auto aim = amount(text, expected);
    if (!aim)
        return aim.trouble();
    return Wanted{Shape::Aim, *aim, {}};
}

QString jotted(const Wanted &wanted)
{
    const QString first = wanted.first.text();
    const QString second = wanted.second.text();
    switch (wanted.shape) {
    case Shape::Aim:
        return first;
    case Shape::Band:
        return numberText(wanted.first.value()) + QStringLiteral("..") + second;
    case Shape::AtMost:
        return QStringLiteral("<= ") + first;
    case Shape::AtLeast:
        return QStringLiteral(">= ") + first;
    case Shape::Relative:
    case Shape::Decibels: {
        const QString unit = wanted.second.measure().text();
        const QString gap = unit == u"ppm" ? QStringLiteral(" ") : QString();
        return first + QLatin1Char(' ') + numberText(wanted.second.value()) + gap + unit;
    }
    case Shape::Absolute:
        return wanted.second.measure().text().isEmpty() ? first + QStringLiteral(" ± ") + second
                                                        : first + QLatin1Char(' ') + second;
    }
    return {};
}

QString spelled(const Wanted &wanted, const WantedForm &form)
{
    const Quantity &first = wanted.first;
    const QString second = form.quantity(wanted.second);
    switch (wanted.shape) {
    case Shape::Aim:
        break;
    case Shape::Band:
        return form.band.arg(first.measure() == wanted.second.measure() ? form.number(first.value()) : form.quantity(first), second);
    case Shape::AtMost:
        return form.atMost.arg(form.quantity(first));
    case Shape::AtLeast:
        return form.atLeast.arg(form.quantity(first));
    case Shape::Relative:
    case Shape::Decibels:
    case Shape::Absolute:
        return QStringLiteral("%1 ± %2").arg(form.quantity(first), second);
    }
    return form.quantity(first);
}

QString display(const Wanted &wanted)
{
    return spelled(wanted, {numberText, [](const Quantity &quantity) { return quantity.text(); }, QStringLiteral("%1 to %2"), QStringLiteral("up to %1"),
                            QStringLiteral("at least %1")});
}

} // namespace ts
