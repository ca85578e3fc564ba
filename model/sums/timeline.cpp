#include "model/sums/timeline.h"

#include "model/sums/acceptance.h"
#include "model/sums/metering/calibration.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/hours.h"
#include "model/sums/power_ladder.h"
#include "model/sums/spent.h"

#include <QHash>

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

QString joined(const QStringList &parts)
{
    QStringList said;
    for (const QString &part : parts)
        if (!part.trimmed().isEmpty())
            said << part.trimmed();
    return said.join(QStringLiteral(" · "));
}

/// "before words", or nothing where there are no words.
QString said(const QString &before, const QString &words)
{
    return words.trimmed().isEmpty() ? QString() : before + words.trimmed();
}

QString plain(QString word)
{
    return word.replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString sentenceCase(QString text)
{
    if (!text.isEmpty())
        text[0] = text.at(0).toUpper();
    return text;
}

/// An uncertainty to two figures: more of them say nothing.
QString twoFigures(double value)
{
    if (!(value > 0))
        return numberText(value);
    const double step = std::pow(10.0, std::floor(std::log10(value)) - 1);
    return numberText(QString::number(std::round(value / step) * step, 'g', 3).toDouble());
}

QString dayText(const QDate &day)
{
    return day.isValid() ? day.toString(Qt::ISODate) : QString();
}

class Teller {
public:
    Teller(const UnitFile &file, const BenchFile &bench) : m_file(file), m_bench(bench) {}

    QList<Event> told()
    {
        unit();
        each<Spend>([this](const Spend &r) { spend(r); });
        each<Symptom>([this](const Symptom &r) { symptom(r); });
        each<Cause>([this](const Cause &r) { cause(r); });
        each<Check>([this](const Check &r) { check(r); });
        each<Reading>([this](const Reading &r) { reading(r); });
        each<Soak>([this](const Soak &r) { soak(r); });
        each<Step>([this](const Step &r) { step(r); });
        each<Need>([this](const Need &r) { need(r); });
        each<Photo>([this](const Photo &r) {
            add(r, r.at, EventKind::Photo, r.caption.isEmpty() ? QStringLiteral("Photo") : QStringLiteral("Photo: ") + r.caption,
                plain(toWord(r.phase)));
        });
        each<TeardownItem>([this](const TeardownItem &r) { teardown(r); });
        each<StageMove>([this](const StageMove &r) { stage(r); });
        each<Proof>([this](const Proof &r) {
            if (r.cameOut == ProofOutcome::NotTested)
                return; // nothing has happened yet: what is to be proved stands in its own list
            add(r, triedAt(r), EventKind::Proof, QStringLiteral("Proof %1: %2").arg(plain(toWord(r.cameOut)), r.text),
                joined({proofResult(r), said(QStringLiteral("by "), r.ruleSet), r.instrument, dayText(r.doneOn), r.initials}));
        });
        each<Rung>([this](const Rung &r) {
            add(r, r.at, EventKind::FirstPower, QStringLiteral("First power, %1: %2").arg(toWord(r.step), plain(toWord(r.cameOut))), joined({foundText(r), r.meterName, r.initials}));
        });
        each<Paper>([this](const Paper &r) {
            add(r, r.madeAt.isValid() ? r.madeAt : r.at, EventKind::Paper,
                QStringLiteral("Paper: %1 %2").arg(plain(toWord(r.kind))).arg(r.number),
                joined({QStringLiteral("edition %1").arg(r.edition), r.format, r.title}));
        });
        each<Note>([this](const Note &r) {
            add(r, r.at, EventKind::Note,
                r.kind == NoteKind::Note ? r.text : sentenceCase(toWord(r.kind)) + QStringLiteral(": ") + r.text);
        });
        each<LeftOff>([this](const LeftOff &r) {
            add(r, r.at, EventKind::LeftOff,
                r.whereAt.isEmpty() ? QStringLiteral("Left off") : QStringLiteral("Left off: ") + r.whereAt,
                joined({said(QStringLiteral("next: "), r.next), said(QStringLiteral("loose: "), r.loose),
                        said(QStringLiteral("do not power: "), r.doNotPower)}));
        });
        each<Decision>([this](const Decision &r) { decision(r); });
        each<ClockSpan>([this](const ClockSpan &r) { clock(r); });

        std::stable_sort(m_events.begin(), m_events.end(),
                         [](const Event &a, const Event &b) { return a.at != b.at ? a.at < b.at : a.record < b.record; });
        return std::move(m_events);
    }

private:
    template <class R, class Tell>
    void each(Tell tell)
    {
        for (const R &record : m_file.all<R>())
            if (!record.removed)
                tell(record);
    }

    template <class R>
    Event &add(const R &record, const QDateTime &at, EventKind what, const QString &text, const QString &detail = {})
    {
        m_events.append(Event{at.isValid() ? at.toUTC() : record.at.toUTC(),
                              what,
                              text.simplified(),
                              detail.simplified(),
                              {},
                              {},
                              {},
                              record.id.value,
                              false});
        return m_events.last();
    }

    void unit()
    {
        const Unit &u = m_file.unit;
        add(u, u.at, EventKind::TakenIn, QStringLiteral("Taken in"),
            joined({u.claim.trimmed().isEmpty() ? QString() : QStringLiteral("claim: \"%1\"").arg(u.claim.trimmed()),
                    said(QStringLiteral("looks: "), u.looks), said(QStringLiteral("function: "), u.function),
                    said(QStringLiteral("earlier work: "), u.earlierWork), said(QStringLiteral("with it: "), u.accessories)}));
    }

    void spend(const Spend &r)
    {
        const QDateTime at = paidAt(r);
        const QString amount = r.amount ? r.amount->display() : QString();
        const Contact *who = m_bench.find(r.contact);
        const bool bought = r.kind == SpendKind::Purchase && r.flow == Flow::Out;
        const QString verb = bought                ? QStringLiteral("Bought for")
                             : r.flow == Flow::Out ? QStringLiteral("Paid")
                                                   : QStringLiteral("Got");
        QString text = verb + QLatin1Char(' ') + amount;
        if (!bought)
            text += QStringLiteral(": ") + r.text;
        // What the headline says already is not said again under it.
        const QString more = bought ? r.text : plain(toWord(r.kind));
        const bool said = more.compare(bought ? QStringLiteral("bought") : r.text, Qt::CaseInsensitive) == 0 || r.kind == SpendKind::Other;
        Event &event =
            add(r, at, bought ? EventKind::Bought : EventKind::Spend, text,
                joined({said ? QString() : more,
                        who ? (r.flow == Flow::Out ? QStringLiteral("to ") : QStringLiteral("from ")) + who->name : QString()}));
        if (r.amount)
            event.money = r.flow == Flow::Out ? *r.amount : -*r.amount;
    }

    void symptom(const Symptom &r)
    {
        add(r, r.at, EventKind::Symptom, QStringLiteral("Symptom: ") + r.text, r.conditions);
        if (r.state == SymptomState::Cleared)
            add(r, r.clearedAt, EventKind::SymptomCleared, QStringLiteral("Symptom cleared: ") + r.text).later = true;
    }

    void cause(const Cause &r)
    {
        const Symptom *of = m_file.find(r.symptom);
        const QString weight = r.weight ? QStringLiteral("%1 %").arg(numberText(std::round(*r.weight * 1000) / 10)) : QString();
        add(r, r.at, EventKind::Cause, QStringLiteral("Possible cause: ") + r.text,
            joined({weight, of ? QStringLiteral("of: ") + of->text : QString()}));
        if (r.state == CauseState::RuledOut)
            add(r, r.settledAt, EventKind::CauseRuledOut, QStringLiteral("Ruled out: ") + r.text, r.reason).later = true;
        if (r.state == CauseState::Confirmed)
            add(r, r.settledAt, EventKind::CauseConfirmed, QStringLiteral("Cause confirmed: ") + r.text, r.reason).later = true;
    }

    void check(const Check &r)
    {
        const bool later = r.doneAt.isValid() && r.doneAt != r.at;
        if (r.cameOut == CameOut::NotDone || later)
            add(r, r.at, EventKind::Check, QStringLiteral("Check to do: ") + r.text).minutes =
                r.cameOut == CameOut::NotDone ? r.minutes : std::nullopt;
        if (r.cameOut == CameOut::NotDone)
            return;
        Event &event = add(r, r.doneAt, EventKind::Check, QStringLiteral("Check came out %1: %2").arg(toWord(r.cameOut), r.text), r.result);
        event.minutes = r.minutes;
        event.later = later;
    }

    void reading(const Reading &r)
    {
        const QString key = r.point.isNull() ? r.name.simplified().toLower() : r.point.text();
        QString value = r.value ? r.value->text() : QStringLiteral("no value");
        const QString bare = value;
        if (r.uncertainty)
            value += QStringLiteral(" ± ") + twoFigures(*r.uncertainty);
        const Meter *meter = m_bench.find(r.meter);
        const QString before = m_lastValue.value(key);
        add(r, r.at, EventKind::Reading, r.name,
            joined({value, r.wanted.isNone() ? QString() : QStringLiteral("wanted ") + r.wanted.display(), plain(toWord(r.phase)),
                    said(QStringLiteral("was "), before), meter ? meter->name : r.meterName,
                    meter ? overdueWords(*meter, r.at.date()) : QString(), r.conditions}))
            .verdict = verdictOf(r);
        m_lastValue.insert(key, bare);
    }

    void soak(const Soak &r)
    {
        const QString wanted = r.wanted.isNone() ? QString() : QStringLiteral("wanted ") + r.wanted.display();
        add(r, r.startedAt, EventKind::Soak, QStringLiteral("Soak begun: ") + r.name, joined({wanted, r.conditions}));
        if (!r.endedAt.isValid())
            return;
        const auto minutes = static_cast<int>(r.startedAt.secsTo(r.endedAt) / 60);
        add(r, r.endedAt, EventKind::Soak, QStringLiteral("Soak ended: ") + r.name,
            joined({QStringLiteral("after ") + durationText(minutes), said(QStringLiteral("interrupted: "), r.interruptions)})).later = true;
    }

    void step(const Step &r)
    {
        QString change = r.before.isEmpty() && r.after.isEmpty() ? QString() : QStringLiteral("%1 → %2").arg(r.before, r.after);
        add(r, r.at, EventKind::Step, sentenceCase(r.text), joined({r.position, change})).minutes = r.minutes;
    }

    void need(const Need &r)
    {
        const auto money = r.price ? std::optional(r.price->times(r.quantity)) : std::nullopt;
        const QString what = r.quantity == 1 ? r.text : QStringLiteral("%1 × %2").arg(r.quantity).arg(r.text);
        const QString detail = joined({said(QStringLiteral("at "), r.position), said(QStringLiteral("in place of "), r.oldValue),
                                       said(QStringLiteral("from "), r.supplier), said(QStringLiteral("due "), dayText(r.due))});
        const bool later = r.state != NeedState::Needed && r.stateSince.isValid() && r.stateSince != r.at;
        if (r.state == NeedState::Needed || later)
            add(r, r.at, EventKind::Need, QStringLiteral("Needed: ") + what, detail).money = money;
        if (r.state == NeedState::Needed)
            return;
        const bool fitted = r.state == NeedState::Fitted;
        Event &event = add(r, r.stateSince, fitted ? EventKind::Fitted : EventKind::Need,
                           sentenceCase(toWord(r.state)) + QStringLiteral(": ") + what, detail);
        event.later = later;
        if (!later)
            event.money = money; // once, not again with each state
    }

    void teardown(const TeardownItem &r)
    {
        if (r.state == TeardownState::On)
            return; // nothing was done yet
        add(r, r.at, EventKind::Teardown, QStringLiteral("Off: ") + r.what,
            joined({r.fasteners.isEmpty() && r.fastenerCount ? QStringLiteral("%1 fasteners").arg(*r.fastenerCount) : r.fasteners,
                    r.connectors, r.springs, r.marks, said(QStringLiteral("kept in "), r.keptIn), r.caution}));
        if (r.state == TeardownState::Back)
            add(r, r.backAt, EventKind::PutBack, QStringLiteral("Back: ") + r.what).later = true;
        if (r.state == TeardownState::LeftOut)
            add(r, r.backAt, EventKind::PutBack, QStringLiteral("Left out: ") + r.what, r.leftOutBecause).later = true;
    }

    void stage(const StageMove &r)
    {
        add(r, r.at, EventKind::Stage,
            QStringLiteral("%1 → %2").arg(sentenceCase(toWord(r.fromStage)), sentenceCase(toWord(r.toStage))),
            joined({r.outcome ? plain(toWord(*r.outcome)) : QString(), r.asked ? QStringLiteral("at ") + r.asked->display() : QString(), r.because,
                    said(QStringLiteral("until "), dayText(r.until))}));
    }

    void decision(const Decision &r)
    {
        // The figures it was decided by are a line a way out.
        add(r, r.at, EventKind::Decision, QStringLiteral("Decided: ") + plain(toWord(r.way)),
            joined(QStringList{r.reason} + r.figures.split(QLatin1Char('\n'))));
    }

    void clock(const ClockSpan &r)
    {
        Event &event = add(r, r.startedAt, EventKind::Clock,
                           r.endedAt.isValid() ? QStringLiteral("Clock ran") : QStringLiteral("Clock started"), r.note);
        if (r.countedMinutes)
            event.minutes = r.countedMinutes;
        else if (r.endedAt.isValid())
            event.minutes = wholeMinutes(std::max<qint64>(0, r.startedAt.msecsTo(r.endedAt)));
    }

    const UnitFile &m_file;
    const BenchFile &m_bench;
    QList<Event> m_events;
    QHash<QString, QString> m_lastValue;
};

} // namespace

QList<Event> timeline(const UnitFile &file, const BenchFile &bench)
{
    return Teller(file, bench).told();
}

} // namespace ts
