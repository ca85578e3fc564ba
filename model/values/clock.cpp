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

QString toStored(const QDateTime &instant)
{
    return instant.isValid() ? instant.toUTC().toString(Qt::ISODateWithMs) : QString();
}

QDateTime instantFromStored(const QString &text)
{
    return QDateTime::fromString(text, Qt::ISODateWithMs).toUTC();
}

} // namespace ts
