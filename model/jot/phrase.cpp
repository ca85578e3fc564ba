#include "model/jot/phrase.h"

#include <QRegularExpression>

#include <array>
#include <cmath>

namespace ts {

namespace {
constexpr qsizetype longestShown = 200;
} // namespace

QString shown(const QString &text)
{
    QString line;
    line.reserve(std::min(text.size(), longestShown + 1));
    for (const QChar c : text) {
        if (turnsDirection(c))
            continue;
        if (line.size() >= longestShown && !c.isLowSurrogate())
            return line + QChar(u'…');
        line += c.isSpace() ? QChar(u' ') : c;
    }
    return line.simplified();
}

QString inQuotes(const QString &text)
{
    return QLatin1Char('"') + shown(text) + QLatin1Char('"');
}

QString startingBig(const QString &text)
{
    if (text.size() < 2 || !text.at(0).isLower() ||
        !(text.at(1).isLower() || text.at(1).isSpace() || text.at(1) == QLatin1Char('-')))
        return text;
    return text.at(0).toUpper() + text.mid(1);
}

QStringList wordsOf(QStringView text)
{
    QStringList words;
    QString word;
    for (const QChar c : text) {
        if (c.isLetterOrNumber() || c.isSurrogate() || c.isMark()) {
            word += c;
        } else if (!word.isEmpty()) {
            words << word.toCaseFolded();
            word.clear();
        }
    }
    if (!word.isEmpty())
        words << word.toCaseFolded();
    return words;
}

QStringList pieces(const QString &text)
{
    return text.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

std::optional<Taken<int>> takeMinutes(const QString &text)
{
    static const QRegularExpression form(QStringLiteral(
        "^(.*?\\S)[\\s,]+(?:(\\d{1,3}(?:[.,]\\d{1,2})?)\\s?(?:h|hr|hrs|hour|hours)(?:\\s?(\\d{1,2})\\s?(?:m|min|mins|minutes)?)?"
        "|(\\d{1,4})\\s?(?:m|min|mins|minute|minutes))$"));
    // The time stands in the last few characters; a long line is not searched from its beginning for it.
    const qsizetype from = std::max<qsizetype>(0, text.size() - 60);
    const auto match = form.match(text.mid(from));
    if (!match.hasMatch())
        return std::nullopt;
    const QString hours = match.captured(2).replace(QLatin1Char(','), QLatin1Char('.'));
    const double minutes = hours.isEmpty() ? match.captured(4).toDouble() : hours.toDouble() * 60 + match.captured(3).toDouble();
    return Taken<int>{static_cast<int>(std::lround(minutes)), text.left(from) + match.captured(1)};
}

std::optional<Taken<int>> takeMinutesFirst(const QString &text)
{
    // A time at the end must have something before it, so each piece of the beginning is tried behind a word of its own.
    const QStringList all = pieces(text);
    for (qsizetype count = std::min<qsizetype>(4, all.size() - 1); count > 0; --count)
        if (const auto time = takeMinutes(QStringLiteral("x ") + all.mid(0, count).join(QLatin1Char(' '))); time && time->rest == QLatin1String("x"))
            return Taken<int>{time->value, all.mid(count).join(QLatin1Char(' '))};
    return std::nullopt;
}

std::optional<Taken<double>> takePercent(const QString &text)
{
    static const QRegularExpression form(QStringLiteral("^(.*\\S)[\\s,]+(\\d{1,3}(?:[.,]\\d{1,2})?)\\s?%$"));
    const qsizetype from = std::max<qsizetype>(0, text.size() - 40);
    const auto match = form.match(text.mid(from));
    if (!match.hasMatch())
        return std::nullopt;
    const double percent = match.captured(2).replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
    if (percent > 100)
        return std::nullopt;
    return Taken<double>{percent, text.left(from) + match.captured(1)};
}

std::optional<Taken<QString>> takeBecause(const QString &text)
{
    const QString word = QStringLiteral(" because ");
    const qsizetype at = text.indexOf(word, 0, Qt::CaseInsensitive);
    if (at <= 0 || text.mid(at + word.size()).trimmed().isEmpty())
        return std::nullopt;
    return Taken<QString>{text.mid(at + word.size()).trimmed(), text.left(at).trimmed()};
}

QString minutesText(int minutes)
{
    if (minutes < 60)
        return QStringLiteral("%1 min").arg(minutes);
    if (minutes % 60 == 0)
        return QStringLiteral("%1 h").arg(minutes / 60);
    return QStringLiteral("%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
}

namespace {

constexpr std::array monthNames{"january", "february", "march",     "april",   "may",      "june",
                                "july",    "august",   "september", "october", "november", "december"};
constexpr std::array dayNames{"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"};

/// 1 for the first name that `word` is, or begins with at least three letters; 0 where it is none.
template <size_t N>
int numberOf(const std::array<const char *, N> &names, const QString &word)
{
    if (word.size() < 3)
        return 0;
    for (size_t i = 0; i < N; ++i)
        if (QLatin1String(names[i]).startsWith(word))
            return static_cast<int>(i) + 1;
    return 0;
}

std::optional<QDate> dayOf(int day, int month, int year, QDate today)
{
    if (year > 0) {
        const QDate date(year, month, day);
        return date.isValid() ? std::optional(date) : std::nullopt;
    }
    for (int ahead = 0; ahead <= 8; ++ahead) { // 29 February comes again after at most eight years
        const QDate date(today.year() + ahead, month, day);
        if (date.isValid() && date >= today)
            return date;
    }
    return std::nullopt;
}

} // namespace

std::optional<QDate> dateOf(const QString &text, QDate today)
{
    const QString plain = text.simplified().toLower();
    if (plain.isEmpty() || plain.size() > 30)
        return std::nullopt;
    if (plain == QLatin1String("today"))
        return today;
    if (plain == QLatin1String("tomorrow"))
        return today.addDays(1);
    if (const int day = numberOf(dayNames, plain))
        return today.addDays((day - today.dayOfWeek() + 7) % 7);

    static const QRegularExpression iso(QStringLiteral("^(\\d{4})-(\\d{1,2})-(\\d{1,2})$"));
    static const QRegularExpression dotted(QStringLiteral("^(\\d{1,2})\\. ?(\\d{1,2})(?:\\. ?(\\d{4})?)?$"));
    static const QRegularExpression dayFirst(QStringLiteral("^(\\d{1,2})(?:st|nd|rd|th|\\.)? ?([a-z]{3,9})\\.?,? ?(\\d{4})?$"));
    static const QRegularExpression monthFirst(QStringLiteral("^([a-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?(?:,? (\\d{4}))?$"));
    if (const auto m = iso.match(plain); m.hasMatch())
        return dayOf(m.captured(3).toInt(), m.captured(2).toInt(), m.captured(1).toInt(), today);
    if (const auto m = dotted.match(plain); m.hasMatch())
        return dayOf(m.captured(1).toInt(), m.captured(2).toInt(), m.captured(3).toInt(), today);
    if (const auto m = dayFirst.match(plain); m.hasMatch())
        if (const int month = numberOf(monthNames, m.captured(2)))
            return dayOf(m.captured(1).toInt(), month, m.captured(3).toInt(), today);
    if (const auto m = monthFirst.match(plain); m.hasMatch())
        if (const int month = numberOf(monthNames, m.captured(1)))
            return dayOf(m.captured(2).toInt(), month, m.captured(3).toInt(), today);
    return std::nullopt;
}

QString dateText(QDate date, QDate today)
{
    QString text = QStringLiteral("%1 %2")
                       .arg(date.day())
                       .arg(startingBig(QString::fromLatin1(monthNames[static_cast<size_t>(date.month() - 1)]).left(3)));
    if (date.year() != today.year())
        text += QStringLiteral(" %1").arg(date.year());
    return text;
}

} // namespace ts
