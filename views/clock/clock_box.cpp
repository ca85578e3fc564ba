#include "views/clock/clock_box.h"

#include "model/records/tag_text.h"
#include "views/clock/running_clock.h"
#include "views/style/style.h"
#include "views/widgets/answers_bar.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QTimer>

namespace ts {

namespace {
constexpr int seenEveryMs = 1000;
constexpr int unseenEveryMs = 30'000; // minimised: nothing is painted, it is only remembered that somebody is there
}

ClockBox::ClockBox(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("clock"));
    m_clock = new RunningClock(workplace, this);
    m_question = new AnswersBar(this);
    m_dot = styledLabel("clockDot", QStringLiteral("●"), this);
    m_time = wordButton({}, this);
    m_time->setProperty("role", QStringLiteral("clock"));
    m_button = button({}, this);
    m_timer = new QTimer(this);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::small, 3, gap::tight, 3);
    row->setSpacing(gap::tight);
    row->addWidget(m_dot);
    row->addWidget(m_time);
    row->addWidget(m_button);
    connect(m_time, &QPushButton::clicked, this, [this] { m_work.goTo(m_clock->unit(), PageKey::Log); });
    connect(m_button, &QPushButton::clicked, this, [this] {
        if (m_clock->runs() && !m_clock->isAsking())
            m_clock->stop();
        else
            m_clock->toggle();
    });
    connect(m_timer, &QTimer::timeout, this, &ClockBox::tick);
    connect(m_clock, &RunningClock::changed, this, &ClockBox::refresh);
    connect(m_clock, &RunningClock::gapFound, this, &ClockBox::ask);
    connect(&m_work, &Workplace::unitTaken, this, &ClockBox::refresh);
    refresh();
    // The window remembers only after it was built.
    QTimer::singleShot(0, m_clock, &RunningClock::look);
}

void ClockBox::toggle()
{
    m_clock->toggle();
}

void ClockBox::refresh()
{
    const bool runs = m_clock->runs();
    if (!m_clock->isAsking())
        m_question->done();
    restyle(this, "runs", runs);
    m_dot->setVisible(runs);
    m_time->setVisible(runs);
    m_button->setText(runs ? tr("Stop clock") : tr("Start clock"));
    m_button->setAccessibleName(m_button->text());
    m_button->setToolTip(runs ? tr("F9 stops it while its unit is in hand; with another in hand it starts there instead") : tr("F9 starts it for the unit in hand"));
    m_button->setEnabled(runs || m_work.hasUnit());
    tick();
    pace();
}

void ClockBox::tick()
{
    m_clock->tick();
    if (!m_clock->runs() || window()->isMinimized())
        return;
    const qint64 seconds = m_clock->seconds();
    m_time->setText(tr("%1 · %2").arg(tagText(m_clock->tag()),
                                      QStringLiteral("%1:%2:%3").arg(seconds / 3600).arg(seconds / 60 % 60, 2, 10, QLatin1Char('0')).arg(seconds % 60, 2, 10, QLatin1Char('0'))));
    m_time->setAccessibleName(tr("The clock runs for %1; go there").arg(tagText(m_clock->tag())));
}

void ClockBox::pace()
{
    if (!m_clock->runs())
        m_timer->stop();
    else
        m_timer->start(window()->isMinimized() ? unseenEveryMs : seenEveryMs);
}

void ClockBox::showEvent(QShowEvent *event)
{
    window()->installEventFilter(this);
    QFrame::showEvent(event);
}

bool ClockBox::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == window() && event->type() == QEvent::WindowStateChange) {
        tick();
        pace();
    }
    return QFrame::eventFilter(watched, event);
}

void ClockBox::ask()
{
    const QDateTime seen = m_clock->lastSeen();
    const QDateTime now = m_work.now();
    const qint64 all = m_clock->seconds() / 60;
    const qint64 unseen = seen.secsTo(now) / 60;
    const bool today = seen.toLocalTime().date() == now.toLocalTime().date();
    const QString when = today ? shown::time(seen) : shown::dayAndTime(seen);
    m_question->ask(tr("The clock of %1 ran on while nobody was seen here, for %2 since %3. What counts?").arg(tagText(m_clock->tag()), shown::duration(unseen), when),
                    {{tr("Until %1: %2").arg(when, shown::duration(qMax<qint64>(0, all - unseen))), [this] { m_clock->countUntilLastSeen(); }},
                     {tr("Nothing"), [this] { m_clock->countNothing(); }},
                     {tr("All of it: %1, and it runs on").arg(shown::duration(all)), [this] { m_clock->countAll(); }}});
}

} // namespace ts
