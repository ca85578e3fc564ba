#include "views/log/log_words.h"

#include "model/sums/acceptance.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/hours.h"
#include "model/sums/power_ladder.h"
#include "model/sums/spent.h"
#include "model/values/name_key.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/measured_text.h"
#include "views/widgets/word_text.h"

namespace ts {

namespace {

QString joined(const QStringList &parts)
{
    QStringList said;
    for (const QString &part : parts)
        if (!part.trimmed().isEmpty())
            said << part.simplified();
    return said.join(QStringLiteral(" · "));
}

/// The sentence with the words in it, or nothing where there are no words.
QString with(const QString &sentence, const QString &words)
{
    return words.trimmed().isEmpty() ? QString() : sentence.arg(words.simplified());
}

QString startingBig(QString text)
{
    text = text.simplified();
    if (!text.isEmpty())
        text[0] = text.at(0).toUpper();
    return text;
}

LaneMark sign(const char16_t *text, Tone tone = Tone::Neutral)
{
    return {QString::fromUtf16(text), {}, tone};
}

LaneMark icon(const char *name, Tone tone = Tone::Neutral)
{
    return {{}, QString::fromLatin1(name), tone};
}

} // namespace

LogEntry LogWords::saidTogether(const QList<Event> &photos) const
{
    LogEntry entry;
    entry.events = photos;
    entry.time = shown::time(photos.first().at);
    entry.mark = icon("camera-photo");
    QStringList captions;
    QStringList phases;
    for (const Event &event : photos)
        if (const Photo *photo = m_file.find(Id<Photo>{event.record})) {
            entry.photos << photo->sha256;
            if (!photo->caption.trimmed().isEmpty())
                captions << photo->caption.simplified();
            if (const QString phase = shown::word(photo->phase); !phases.contains(phase))
                phases << phase;
        }
    const QString count = photos.size() == 1 ? tr("Photo") : tr("%n photos", nullptr, static_cast<int>(photos.size()));
    entry.headline = count + QStringLiteral(", ") + phases.join(QStringLiteral(", "));
    entry.detail = joined(captions);
    return entry;
}

void LogWords::saySymptom(LogEntry &entry, const Event &event, const Symptom &symptom) const
{
    entry.mark = event.later ? sign(u"✓", Tone::Within) : sign(u"!", Tone::Outside);
    entry.headline = (event.later ? tr("Symptom cleared: %1") : tr("Symptom: %1")).arg(symptom.text.simplified());
    entry.detail = event.later ? QString() : symptom.conditions.simplified();
}

void LogWords::sayUnit(LogEntry &entry) const
{
    const Unit &unit = m_file.unit;
    entry.mark = sign(u"i");
    entry.headline = tr("Taken in");
    entry.detail = joined({with(tr("claim “%1”"), unit.claim), with(tr("looks: %1"), unit.looks), with(tr("function: %1"), unit.function),
                           with(tr("earlier work: %1"), unit.earlierWork), with(tr("with it: %1"), unit.accessories)});
}

void LogWords::sayMoney(LogEntry &entry, const Spend &spend) const
{
    const QString amount = spend.amount ? shown::money(*spend.amount) : QString();
    const bool out = spend.flow == Flow::Out;
    const Contact *who = m_bench.find(spend.contact);
    const bool bought = entry.what() == EventKind::Bought;
    entry.mark = {spend.amount ? spend.amount->currency().sign().trimmed().left(1) : QString(), {}, out ? Tone::Neutral : Tone::Within};
    entry.headline = bought ? tr("Bought for %1").arg(amount) : (out ? tr("Paid %1: %2") : tr("Got %1: %2")).arg(amount, spend.text.simplified());
    // What the headline says already is not said again under it.
    QString more = bought ? spend.text.simplified() : spend.kind == SpendKind::Other ? QString() : shown::word(spend.kind);
    if (more.compare(bought ? QStringLiteral("bought") : spend.text.simplified(), Qt::CaseInsensitive) == 0)
        more.clear();
    entry.detail = joined({more, who ? (out && !bought ? tr("to %1") : tr("from %1")).arg(who->name.simplified()) : QString()});
    if (paidAt(spend) != spend.at)
        entry.time.clear(); // a day without a time
}

void LogWords::sayCause(LogEntry &entry, EventKind what, const Cause &cause) const
{
    const QString text = cause.text.simplified();
    if (what == EventKind::Cause) {
        const Symptom *of = m_file.find(cause.symptom);
        entry.mark = sign(u"?");
        entry.headline = tr("Possible cause: %1").arg(text);
        entry.detail = joined({cause.weight ? shown::percent(*cause.weight) : QString(), of ? with(tr("of: %1"), of->text) : QString()});
        return;
    }
    const bool confirmed = what == EventKind::CauseConfirmed;
    entry.mark = confirmed ? sign(u"✓", Tone::Hint) : sign(u"×");
    entry.headline = (confirmed ? tr("Cause confirmed: %1") : tr("Ruled out: %1")).arg(text);
    entry.detail = cause.reason.simplified();
}

void LogWords::sayCheck(LogEntry &entry, const Event &event, const Check &check) const
{
    const bool apart = check.doneAt.isValid() && check.doneAt != check.at; // told twice: as it was planned, and as it came out
    const bool done = check.cameOut != CameOut::NotDone && event.later == apart;
    entry.mark = sign(u"?", done ? Tone::Hint : Tone::Neutral);
    entry.headline = done ? tr("Check came out %1: %2").arg(shown::word(check.cameOut), check.text.simplified()) : tr("Check to do: %1").arg(check.text.simplified());
    entry.detail = done ? check.result.simplified() : QString();
}

void LogWords::sayReading(LogEntry &entry, const Reading &reading)
{
    const Verdict verdict = entry.verdict.value_or(Verdict::NoLimit);
    const Meter *meter = m_bench.find(reading.meter);
    entry.mark = sign(u"≈", toneOf(verdict));
    entry.headline = startingBig(reading.name);
    entry.figures = reading.value ? shown::quantity(*reading.value) : tr("no value");
    const QString bare = entry.figures;
    if (reading.uncertainty && reading.value)
        entry.figures += QLatin1Char(' ') + shown::spread(*reading.uncertainty, Measure());
    const QString key = reading.point.isNull() ? nameKey(reading.name) : reading.point.text();
    entry.detail = joined({reading.wanted.isNone() ? QString() : tr("wanted %1").arg(shown::limit(reading.wanted)), with(tr("was %1"), m_lastValue.value(key)),
                           shown::word(reading.phase), meter ? meter->name : reading.meterName, reading.conditions});
    m_lastValue.insert(key, bare);
}

void LogWords::saySoak(LogEntry &entry, const Event &event, const Soak &soak) const
{
    const bool ended = event.later;
    entry.mark = sign(u"≈", ended ? Tone::Hint : Tone::Neutral);
    entry.headline = (ended ? tr("Soak ended: %1") : tr("Soak begun: %1")).arg(soak.name.simplified());
    const QString wanted = soak.wanted.isNone() ? QString() : tr("wanted %1").arg(shown::limit(soak.wanted));
    entry.detail = ended ? joined({tr("after %1").arg(shown::duration(soak.startedAt.secsTo(soak.endedAt) / 60)), with(tr("interrupted: %1"), soak.interruptions)})
                         : joined({wanted, soak.conditions});
}

void LogWords::sayStep(LogEntry &entry, const Step &step) const
{
    entry.mark = icon("document-edit");
    entry.headline = startingBig(step.text);
    entry.detail = joined({step.position, step.before.isEmpty() && step.after.isEmpty() ? QString() : QStringLiteral("%1 → %2").arg(step.before, step.after),
                           step.minutes && withinClock(m_file, step.at) ? tr("its minutes are in the clock's time, not counted again") : QString()});
}

void LogWords::sayNeed(LogEntry &entry, const Event &event, const Need &need) const
{
    const QString what = need.quantity == 1 ? need.text.simplified() : tr("%1 × %2").arg(shown::count(need.quantity), need.text.simplified());
    const bool apart = need.stateSince.isValid() && need.stateSince != need.at;
    const NeedState state = event.later == apart ? need.state : NeedState::Needed;
    switch (state) {
    case NeedState::Needed:
        entry.mark = sign(u"+");
        entry.headline = tr("Needed: %1").arg(what);
        break;
    case NeedState::Ordered:
        entry.mark = sign(u"+", Tone::Hint);
        entry.headline = tr("Ordered: %1").arg(what);
        break;
    case NeedState::Here:
        entry.mark = sign(u"+", Tone::Hint);
        entry.headline = tr("Here: %1").arg(what);
        break;
    case NeedState::Fitted:
        entry.mark = sign(u"●", Tone::Within);
        entry.headline = tr("Fitted: %1").arg(what);
    }
    entry.detail = joined({with(tr("at %1"), need.position), with(tr("in place of %1"), need.oldValue), with(tr("from %1"), need.supplier),
                           need.due.isValid() && state != NeedState::Fitted ? tr("due %1").arg(shown::day(need.due, m_today)) : QString()});
}

void LogWords::sayTeardown(LogEntry &entry, EventKind what, const TeardownItem &item) const
{
    if (what == EventKind::PutBack) {
        const bool out = item.state == TeardownState::LeftOut;
        entry.mark = sign(u"↓", out ? Tone::TooClose : Tone::Within);
        entry.headline = (out ? tr("Left out: %1") : tr("Back: %1")).arg(item.what.simplified());
        entry.detail = out ? item.leftOutBecause.simplified() : QString();
        return;
    }
    entry.mark = sign(u"↑");
    entry.headline = tr("Off: %1").arg(item.what.simplified());
    entry.detail = joined({item.fasteners.isEmpty() && item.fastenerCount ? tr("%n fastener(s)", nullptr, *item.fastenerCount) : item.fasteners, item.connectors,
                           item.springs, item.marks, with(tr("kept in %1"), item.keptIn), item.caution});
}

void LogWords::sayStage(LogEntry &entry, const StageMove &move) const
{
    entry.mark = sign(u"→");
    entry.headline = QStringLiteral("%1 → %2").arg(shown::word(move.fromStage), shown::word(move.toStage));
    entry.detail = joined({move.outcome ? shown::word(*move.outcome) : QString(), move.because,
                           move.until.isValid() ? tr("until %1").arg(shown::day(move.until, m_today)) : QString()});
}

void LogWords::sayProof(LogEntry &entry, const Proof &proof) const
{
    const bool passed = proof.cameOut == ProofOutcome::Passed;
    const bool failed = proof.cameOut == ProofOutcome::Failed;
    entry.mark = failed ? sign(u"✗", Tone::Outside) : passed ? sign(u"✓", Tone::Within) : sign(u"–");
    entry.headline = tr("Proof %1: %2").arg(shown::word(proof.cameOut), proof.text.simplified());
    if (triedAt(proof) != proof.at)
        entry.time.clear(); // a day without a time
    entry.detail = joined({proofResult(proof), with(tr("by %1"), proof.ruleSet), proof.instrument,
                           proof.doneOn.isValid() ? shown::day(proof.doneOn, m_today) : QString(), proof.initials});
}

void LogWords::sayRung(LogEntry &entry, const Rung &rung) const
{
    entry.mark = rung.cameOut == RungOutcome::Stop ? sign(u"✗", Tone::Outside) : rung.cameOut == RungOutcome::Pass ? sign(u"✓", Tone::Within) : sign(u"–");
    QString what = toWord(rung.step);
    for (const LadderStep &step : ladderSteps(m_file.unit))
        if (step.step == rung.step)
            what = step.text;
    entry.headline = rung.cameOut == RungOutcome::Stop ? tr("First power, stop: %1").arg(what) : tr("First power, %1: %2").arg(shown::word(rung.cameOut), what);
    entry.detail = joined({foundText(rung), rung.meterName, rung.initials});
}

void LogWords::sayPaper(LogEntry &entry, const Paper &paper) const
{
    entry.mark = icon("text-x-generic");
    entry.headline = tr("%1 no. %2").arg(shown::bigWord(toWord(paper.kind)), shown::count(paper.number));
    entry.detail = joined({tr("edition %1").arg(shown::count(paper.edition)), paper.format.toUpper(), paper.title});
}

void LogWords::sayNote(LogEntry &entry, const Note &note) const
{
    entry.mark = sign(u"•", note.kind == NoteKind::Flaw ? Tone::TooClose : Tone::Neutral);
    entry.headline = note.kind == NoteKind::Note ? note.text.simplified() : shown::bigWord(toWord(note.kind)) + QStringLiteral(": ") + note.text.simplified();
}

void LogWords::sayLeftOff(LogEntry &entry, const LeftOff &left) const
{
    entry.mark = left.doNotPower.isEmpty() ? sign(u"…") : sign(u"!", Tone::Outside);
    entry.headline = left.whereAt.trimmed().isEmpty() ? tr("Left off") : tr("Left off: %1").arg(left.whereAt.simplified());
    entry.detail = joined({with(tr("next: %1"), left.next), with(tr("loose: %1"), left.loose), with(tr("do not power: %1"), left.doNotPower)});
}

void LogWords::sayDecision(LogEntry &entry, const Decision &decision) const
{
    entry.mark = sign(u"⇒");
    entry.headline = tr("Decided: %1").arg(shown::word(decision.way));
    entry.detail = joined(QStringList{decision.reason} + decision.figures.split(QLatin1Char('\n')));
}

void LogWords::sayClock(LogEntry &entry, const ClockSpan &span) const
{
    entry.mark = icon("clock", span.endedAt.isValid() ? Tone::Neutral : Tone::Within);
    entry.headline = span.endedAt.isValid() ? tr("Clock ran until %1").arg(shown::time(span.endedAt)) : tr("Clock runs");
    entry.detail = span.note.simplified();
}

} // namespace ts
