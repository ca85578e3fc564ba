#include "views/clock/running_clock.h"

#include "model/sums/clock_change.h"
#include "views/settings/memory.h"

#include <algorithm>

namespace ts {

namespace {
constexpr qint64 gapMs = 120'000;  // longer than this unseen, it is asked
constexpr qint64 writeMs = 30'000; // how often it is remembered
const auto stateName = QStringLiteral("clock_seen");
}

RunningClock::RunningClock(Workplace &workplace, QObject *parent) : QObject(parent), m_work(workplace)
{
    connect(&m_work.desk(), &Desk::recorded, this, [this](const QString &kind) { m_stale = m_stale || kind == QLatin1String("clock_span") || kind == QLatin1String("unit"); });
    connect(&m_work.desk(), &Desk::everythingChanged, this, [this] { m_stale = true; });
    connect(&m_work, &Workplace::rackChanged, this, [this] {
        if (m_stale)
            look();
    });
}

bool RunningClock::runsFor(const Id<Unit> &unit) const
{
    return std::any_of(m_running.begin(), m_running.end(), [&](const ClockSpan &span) { return span.unit == unit; });
}

qint64 RunningClock::seconds() const
{
    return runs() ? std::max<qint64>(0, m_running.last().startedAt.secsTo(m_work.now())) : 0;
}

void RunningClock::look()
{
    m_stale = false;
    auto running = m_work.desk().list<ClockSpan>(QStringLiteral("ended_at"), QVariant());
    if (!running) {
        m_work.refuse(running.trouble());
        return;
    }
    std::sort(running->begin(), running->end(), [](const ClockSpan &a, const ClockSpan &b) { return a.startedAt < b.startedAt; });
    const bool same = runs() && !running->isEmpty() && m_running.last().id == running->last().id;
    m_running = *std::move(running);
    m_tag = 0;
    if (runs()) {
        const auto unit = m_work.desk().get(m_running.last().unit);
        m_tag = unit ? unit->tag : 0;
    }
    if (!same) {
        m_asking = false;
        m_seen = runs() ? seenBefore(m_running.last()) : QDateTime();
        m_written = {};
    }
    Q_EMIT changed();
    tick();
}

QDateTime RunningClock::seenBefore(const ClockSpan &span) const
{
    QDateTime seen = span.startedAt;
    if (const Memory *memory = m_work.memory()) {
        const QStringList parts = QString::fromUtf8(memory->state(stateName)).split(QLatin1Char(' '));
        if (parts.first() == span.id.text()) {
            const QDateTime at = instantFromStored(parts.last());
            return at.isValid() ? std::max(seen, at) : seen;
        }
    }
    if (const auto lines = m_work.desk().journal(span.unit, 1); lines && !lines->isEmpty())
        seen = std::max(seen, lines->first().at);
    return seen;
}

void RunningClock::tick()
{
    if (!runs() || m_asking)
        return;
    if (m_seen.msecsTo(m_work.now()) > gapMs) {
        m_asking = true;
        Q_EMIT gapFound();
        return;
    }
    seenNow(!m_written.isValid() || m_written.msecsTo(m_work.now()) >= writeMs || m_work.now() < m_written);
}

void RunningClock::seenNow(bool write)
{
    m_seen = m_work.now();
    if (!write)
        return;
    m_written = m_seen;
    if (Memory *memory = m_work.memory())
        memory->setState(stateName, (m_running.last().id.text() + QLatin1Char(' ') + toStored(m_seen)).toUtf8());
}

void RunningClock::toggle()
{
    if (m_asking) {
        Q_EMIT gapFound(); // first what is open
        return;
    }
    if (runs() && (!m_work.hasUnit() || runsFor(m_work.file().unit.id))) {
        stop();
        return;
    }
    if (!m_work.hasUnit()) {
        m_work.refuse(tr("The clock runs for a unit: take one in hand first."));
        return;
    }
    Maker maker = m_work.maker();
    m_work.record(startClock(m_work.file().unit, m_running, maker));
}

void RunningClock::stop()
{
    Maker maker = m_work.maker();
    m_work.record(stopClock(m_tag, m_running, maker));
}

void RunningClock::countAll()
{
    m_asking = false;
    seenNow(true);
    Q_EMIT changed();
}

void RunningClock::countUntilLastSeen()
{
    endAll(true);
}

void RunningClock::countNothing()
{
    endAll(false);
}

void RunningClock::endAll(bool counted)
{
    if (!runs())
        return;
    Change change = endClock(m_tag, m_running.last(), m_seen, counted ? CountAs::UntilLastSeen : CountAs::Nothing);
    for (const ClockSpan &span : m_running)
        if (span.id != m_running.last().id)
            change.join(endClock(m_tag, span, m_seen, counted ? CountAs::UntilLastSeen : CountAs::Nothing));
    m_work.record(change); // where it is refused, it goes on asking
}

} // namespace ts
