#include "views/log/log_words.h"

#include "views/widgets/locale_text.h"

namespace ts {

LogWords::LogWords(const UnitFile &file, const BenchFile &bench, QDate today) : m_file(file), m_bench(bench), m_today(today) {}

LogEntry LogWords::said(const Event &event)
{
    LogEntry entry;
    entry.events << event;
    entry.time = shown::time(event.at);
    entry.headline = event.text;
    entry.detail = event.detail;
    entry.right = rightOf(event);
    entry.verdict = event.verdict;
    const auto say = [&]<class R>(const Id<R> &id, auto tell) {
        if (const R *record = m_file.find(id))
            tell(*record);
    };
    switch (event.what) {
    case EventKind::TakenIn:
        sayUnit(entry);
        break;
    case EventKind::Bought:
    case EventKind::Spend:
        say(Id<Spend>{event.record}, [&](const Spend &r) { sayMoney(entry, r); });
        break;
    case EventKind::Symptom:
    case EventKind::SymptomCleared:
        say(Id<Symptom>{event.record}, [&](const Symptom &r) { saySymptom(entry, event, r); });
        break;
    case EventKind::Cause:
    case EventKind::CauseRuledOut:
    case EventKind::CauseConfirmed:
        say(Id<Cause>{event.record}, [&](const Cause &r) { sayCause(entry, event.what, r); });
        break;
    case EventKind::Check:
        say(Id<Check>{event.record}, [&](const Check &r) { sayCheck(entry, event, r); });
        break;
    case EventKind::Reading:
        say(Id<Reading>{event.record}, [&](const Reading &r) { sayReading(entry, r); });
        break;
    case EventKind::Soak:
        say(Id<Soak>{event.record}, [&](const Soak &r) { saySoak(entry, event, r); });
        break;
    case EventKind::Step:
        say(Id<Step>{event.record}, [&](const Step &r) { sayStep(entry, r); });
        break;
    case EventKind::Need:
    case EventKind::Fitted:
        say(Id<Need>{event.record}, [&](const Need &r) { sayNeed(entry, event, r); });
        break;
    case EventKind::Photo:
        return saidTogether({event});
    case EventKind::Teardown:
    case EventKind::PutBack:
        say(Id<TeardownItem>{event.record}, [&](const TeardownItem &r) { sayTeardown(entry, event.what, r); });
        break;
    case EventKind::Stage:
        say(Id<StageMove>{event.record}, [&](const StageMove &r) { sayStage(entry, r); });
        break;
    case EventKind::Proof:
        say(Id<Proof>{event.record}, [&](const Proof &r) { sayProof(entry, r); });
        break;
    case EventKind::FirstPower:
        say(Id<Rung>{event.record}, [&](const Rung &r) { sayRung(entry, r); });
        break;
    case EventKind::Paper:
        say(Id<Paper>{event.record}, [&](const Paper &r) { sayPaper(entry, r); });
        break;
    case EventKind::Note:
        say(Id<Note>{event.record}, [&](const Note &r) { sayNote(entry, r); });
        break;
    case EventKind::LeftOff:
        say(Id<LeftOff>{event.record}, [&](const LeftOff &r) { sayLeftOff(entry, r); });
        break;
    case EventKind::Decision:
        say(Id<Decision>{event.record}, [&](const Decision &r) { sayDecision(entry, r); });
        break;
    case EventKind::Clock:
        say(Id<ClockSpan>{event.record}, [&](const ClockSpan &r) { sayClock(entry, r); });
        break;
    }
    return entry;
}

QString LogWords::rightOf(const Event &event) const
{
    QStringList parts;
    const Check *check = m_file.find(Id<Check>{event.record});
    const bool planned = check && check->cameOut == CameOut::NotDone;
    if (event.minutes)
        parts << (planned ? tr("takes %1") : QStringLiteral("%1")).arg(shown::duration(*event.minutes));
    if (event.money && !event.money->isZero()) {
        const Need *need = m_file.find(Id<Need>{event.record});
        const bool toCome = need && need->state == NeedState::Needed;
        const QString amount = shown::money(event.money->minor() < 0 ? -*event.money : *event.money);
        parts << (toCome ? tr("to come %1") : event.money->minor() < 0 ? tr("got %1") : tr("spent %1")).arg(amount);
    }
    return parts.join(QStringLiteral(" · "));
}

} // namespace ts
