#pragma once

#include <QHashFunctions>
#include <QRandomGenerator>
#include <QUuid>

#include <compare>

namespace ts {

class Clock;

/// The identity of one record of type R. A unit's id is never a symptom's.
template <class R>
struct Id {
    QUuid value;

    [[nodiscard]] bool isNull() const { return value.isNull(); }
    [[nodiscard]] QString text() const { return value.isNull() ? QString() : value.toString(QUuid::WithoutBraces); }
    [[nodiscard]] static Id fromText(const QString &text) { return Id{QUuid::fromString(text)}; }
    bool operator==(const Id &) const = default;
    bool operator<(const Id &other) const { return value < other.value; }
};

template <class R>
size_t qHash(const Id<R> &id, size_t seed = 0)
{
    return qHash(id.value, seed);
}

/// Makes ids: UUID version 7 (RFC 9562, section 5.7), so ids sort by the time they were made.
/// Within one millisecond the 12 bits after the version count up, so ids of one maker always ascend.
class IdMaker {
public:
    /// Random bits from the system.
    explicit IdMaker(const Clock &clock);
    /// Random bits from a seed: the same ids again, for the demo workbook and for tests.
    IdMaker(const Clock &clock, quint32 seed);

    [[nodiscard]] QUuid nextUuid();
    template <class R>
    [[nodiscard]] Id<R> next()
    {
        return Id<R>{nextUuid()};
    }
    [[nodiscard]] const Clock &clock() const { return m_clock; }

private:
    const Clock &m_clock;
    QRandomGenerator m_random;
    qint64 m_lastMs = -1;
    quint32 m_count = 0;
};

} // namespace ts
