#include "model/values/clock.h"

#include <utility>

namespace ts {

QDateTime SystemClock::now() const
{
    return QDateTime::currentDateTimeUtc();
}

SetClock::SetClock(QDateTime at) : m_at(std::move(at)) {}

QDateTime SetClock::now() const
{
    return m_at;
}

void SetClock::set(QDateTime at)
{
    m_at = std::move(at);
}

void SetClock::advance(qint64 seconds)
{
    m_at = m_at.addSecs(seconds);
}

namespace {

// Every record carries instants, so both ways are written out: Qt's general formatter took a quarter of an import.
constexpr qsizetype storedLength = 24;

void putDigits(char16_t *at, int digits, int number)
{
    for (int i = digits - 1; i >= 0; --i, number /= 10)
        at[i] = static_cast<char16_t>(u'0' + number % 10);
}

// The number in text[from, from + digits), or -1.
int takeDigits(QStringView text, qsizetype from, qsizetype digits)
{
    int number = 0;
    for (qsizetype i = from; i < from + digits; ++i) {
        const char16_t c = text[i].unicode();
        if (c < u'0' || c > u'9')
            return -1;
        number = number * 10 + (c - u'0');
    }
    return number;
}

QDateTime canonicalInstant(QStringView text)
{
    constexpr QStringView shape = u"0000-00-00T00:00:00.000Z";
    for (qsizetype i = 0; i < storedLength; ++i)
        if (shape[i] != u'0' && text[i] != shape[i])
            return {};
    const QDate day(takeDigits(text, 0, 4), takeDigits(text, 5, 2), takeDigits(text, 8, 2));
    const QTime time(takeDigits(text, 11, 2), takeDigits(text, 14, 2), takeDigits(text, 17, 2), takeDigits(text, 20, 3));
    return day.isValid() && time.isValid() ? QDateTime(day, time, Qt::UTC) : QDateTime();
}

} // namespace

QString toStored(const QDateTime &instant)
{
    if (!instant.isValid())
        return {};
    const QDateTime utc = instant.toUTC();
    const QDate day = utc.date();
    const QTime time = utc.time();
    if (day.year() < 0 || day.year() > 9999)
        return utc.toString(Qt::ISODateWithMs);
    char16_t text[storedLength + 1] = u"0000-00-00T00:00:00.000Z";
    putDigits(text, 4, day.year());
    putDigits(text + 5, 2, day.month());
    putDigits(text + 8, 2, day.day());
    putDigits(text + 11, 2, time.hour());
    putDigits(text + 14, 2, time.minute());
    putDigits(text + 17, 2, time.second());
    putDigits(text + 20, 3, time.msec());
    return QString::fromUtf16(text, storedLength);
}

QDateTime instantFromStored(const QString &text)
{
    if (text.size() == storedLength)
        if (const QDateTime instant = canonicalInstant(text); instant.isValid())
            return instant;
    return QDateTime::fromString(text, Qt::ISODateWithMs).toUTC();
}

} // namespace ts
