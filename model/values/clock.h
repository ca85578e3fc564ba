#pragma once

#include <QDateTime>

namespace ts {

/// Where the time comes from. Nothing else in the program asks the system for it.
class Clock {
public:
    virtual ~Clock() = default;
    /// The present instant in UTC.
    [[nodiscard]] virtual QDateTime now() const = 0;
};

class SystemClock final : public Clock {
public:
    [[nodiscard]] QDateTime now() const override;
};

/// A clock that stands still until it is set: for tests and for the demo workbook.
class SetClock final : public Clock {
public:
    explicit SetClock(QDateTime at);
    [[nodiscard]] QDateTime now() const override;
    void set(QDateTime at);
    void advance(qint64 seconds);

private:
    QDateTime m_at;
};

/// "2026-11-25T09:09:32.123Z": UTC ISO 8601 with milliseconds, the form stored everywhere.
[[nodiscard]] QString toStored(const QDateTime &instant);
/// The instant of a stored text; an invalid QDateTime when the text is none.
[[nodiscard]] QDateTime instantFromStored(const QString &text);

} // namespace ts
