#include "views/standing/leaving_bar.h"

#include "model/records/tag_text.h"
#include "model/sums/standing.h"
#include "views/clock/running_clock.h"
#include "views/standing/left_off_box.h"
#include "views/widgets/answers_bar.h"

#include <QLineEdit>

namespace ts {

LeavingBar::LeavingBar(Workplace &workplace, RunningClock &clock, QWidget *parent) : QObject(parent), m_work(workplace), m_clock(clock)
{
    m_bar = new AnswersBar(parent);
    m_next = new QLineEdit(m_bar);
    m_next->setPlaceholderText(tr("What comes next?"));
    m_next->setAccessibleName(tr("What comes next"));
    m_bar->setField(m_next);
    connect(&m_work.desk(), &Desk::recorded, this, [this](const QString &kind, const QUuid &, const QUuid &unit) {
        if (unit != m_work.file().unit.id.value)
            return;
        const bool left = kind == QLatin1String("left_off");
        m_noted = left || m_noted;
        m_touched = m_touched || !left;
        m_asked = false;
    });
    connect(&m_work, &Workplace::unitLeaving, this, [this] {
        if (worthAsking())
            ask(m_work.file(), {});
    });
    connect(&m_work, &Workplace::unitTaken, this, [this] { m_touched = m_noted = m_asked = false; });
}

bool LeavingBar::worthAsking() const
{
    if (!m_work.hasUnit() || !m_touched || m_noted || m_work.file().unit.stage == Stage::Closed)
        return false;
    return m_clock.runsFor(m_work.file().unit.id) || !looseWords(m_work.file(), standing(m_work.file(), m_work.bench())).isEmpty();
}

void LeavingBar::ask(const UnitFile &file, std::function<void()> after)
{
    const Id<Unit> unit = file.unit.id;
    const Standing stands = standing(file, m_work.bench());
    const QString loose = looseWords(file, stands);
    const bool runs = m_clock.runsFor(unit);
    QString what = loose.isEmpty() ? QString() : tr("loose: %1").arg(loose);
    if (runs)
        what += what.isEmpty() ? tr("its clock runs") : tr("; its clock runs");
    m_next->setText(stands.next);
    m_next->show();
    QList<AnswersBar::Answer> answers{{after ? tr("Note it and close") : tr("Note it"), [this, unit, after] {
                                           note(unit);
                                           if (after)
                                               after();
                                       }}};
    if (runs)
        answers << AnswersBar::Answer{after ? tr("Stop the clock and close") : tr("Note it and stop the clock"), [this, unit, after] {
                                          if (!after)
                                              note(unit);
                                          m_clock.stop();
                                          if (after)
                                              after();
                                      }};
    answers << AnswersBar::Answer{after ? tr("Close as it is") : tr("Leave it"), after};
    m_bar->ask(tr("%1 is put down, %2.").arg(tagText(file.unit.tag), what), answers);
    disconnect(m_next, &QLineEdit::returnPressed, nullptr, nullptr);
    connect(m_next, &QLineEdit::returnPressed, this, [this, act = answers.first().act] {
        m_bar->done();
        act();
    });
}

// The unit may be in hand no more, so its record is read anew.
void LeavingBar::note(const Id<Unit> &unit)
{
    const QString next = m_next->text().simplified();
    const auto file = m_work.desk().unitFile(unit);
    if (!file) {
        m_work.refuse(file.trouble());
        return;
    }
    m_work.record(leftOffChange(*file, m_work.maker(), tr("Next: %1").arg(next), &LeftOff::next, next));
}

bool LeavingBar::mayClose(std::function<void()> close)
{
    const bool clockElsewhere = m_clock.runs() && !m_clock.runsFor(m_work.file().unit.id);
    if (m_asked || (!worthAsking() && !m_clock.runs()))
        return true;
    m_asked = true;
    close = [this, answered = std::move(close)] {
        m_asked = true; // whatever the answer recorded
        answered();
    };
    if (!worthAsking() || clockElsewhere) {
        m_next->hide();
        m_bar->ask(tr("The clock of %1 runs.").arg(tagText(m_clock.tag())), {{tr("Stop it and close"), [this, close] {
                                                                                 m_clock.stop();
                                                                                 close();
                                                                             }},
                                                                             {tr("Let it run and close"), close}});
    } else {
        m_next->show();
        ask(m_work.file(), std::move(close));
    }
    m_bar->takeFocus();
    return false;
}

} // namespace ts
