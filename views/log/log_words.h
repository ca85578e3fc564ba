#pragma once

#include "views/log/log_entry.h"

#include <QCoreApplication>
#include <QHash>

namespace ts {

/// Says an event of the timeline in the user's language and locale: headline, second line, mark. Goes through them oldest first,
/// because a reading says what the one before it was.
class LogWords {
    Q_DECLARE_TR_FUNCTIONS(ts::LogWords)
public:
    LogWords(const UnitFile &file, const BenchFile &bench, QDate today);

    /// The entry of an event, without its key and day.
    [[nodiscard]] LogEntry said(const Event &event);
    /// The entry of photos that follow each other.
    [[nodiscard]] LogEntry saidTogether(const QList<Event> &photos) const;

private:
    void sayMoney(LogEntry &entry, const Spend &spend) const;
    void sayUnit(LogEntry &entry) const;
    void saySymptom(LogEntry &entry, const Event &event, const Symptom &symptom) const;
    void sayCause(LogEntry &entry, EventKind what, const Cause &cause) const;
    void sayCheck(LogEntry &entry, const Event &event, const Check &check) const;
    void sayReading(LogEntry &entry, const Reading &reading);
    void saySoak(LogEntry &entry, const Event &event, const Soak &soak) const;
    void sayStep(LogEntry &entry, const Step &step) const;
    void sayNeed(LogEntry &entry, const Event &event, const Need &need) const;
    void sayTeardown(LogEntry &entry, EventKind what, const TeardownItem &item) const;
    void sayStage(LogEntry &entry, const StageMove &move) const;
    void sayProof(LogEntry &entry, const Proof &proof) const;
    void sayRung(LogEntry &entry, const Rung &rung) const;
    void sayPaper(LogEntry &entry, const Paper &paper) const;
    void sayNote(LogEntry &entry, const Note &note) const;
    void sayLeftOff(LogEntry &entry, const LeftOff &left) const;
    void sayDecision(LogEntry &entry, const Decision &decision) const;
    void sayClock(LogEntry &entry, const ClockSpan &span) const;
    [[nodiscard]] QString rightOf(const Event &event) const;

    const UnitFile &m_file;
    const BenchFile &m_bench;
    QDate m_today;
    QHash<QString, QString> m_lastValue;
};

} // namespace ts
