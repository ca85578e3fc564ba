#include "views/proving/first_power_view.h"

#include "model/jot/jot.h"
#include "model/sums/power_ladder.h"
#include "model/sums/standing.h"
#include "views/proving/power_aids.h"
#include "views/proving/tried_grid.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/pill.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace ts {

namespace {

enum Column { StepColumn, FoundColumn, CameOutColumn, MeterColumn, DoneColumn, InitialsColumn };

QUuid keyOf(PowerStep step)
{
    return rowKeyOf(QStringLiteral("first power ") + toWord(step));
}

QString wordOf(RungOutcome outcome)
{
    return outcome == RungOutcome::Pass ? FirstPowerView::tr("pass") : outcome == RungOutcome::Stop ? FirstPowerView::tr("stop") : FirstPowerView::tr("not applicable");
}

QList<GridColumn> columns()
{
    const QList<GridChoice> outcomes{{QStringLiteral("pass"), FirstPowerView::tr("pass"), u'p'},
                                     {QStringLiteral("wrong"), FirstPowerView::tr("stop"), u's'},
                                     {QStringLiteral("not_applicable"), FirstPowerView::tr("not applicable"), u'n'}};
    return {{.title = FirstPowerView::tr("Step"), .width = 24, .stretch = 4},
            {.title = FirstPowerView::tr("Found"), .width = 16, .stretch = 4, .tip = FirstPowerView::tr("The value, or what was seen; a step is not ticked without it")},
            {.title = FirstPowerView::tr("Came out"), .width = 12, .choices = outcomes},
            {.title = FirstPowerView::tr("Meter"), .width = 9, .stretch = 1},
            {.title = FirstPowerView::tr("Done"), .width = 7},
            {.title = FirstPowerView::tr("Initials"), .width = 6}};
}

GridRow rowOf(const LadderRung &rung, QDate today)
{
    const LadderStep &step = rung.step;
    GridCell what = shownCell(step.text.left(1).toUpper() + step.text.mid(1));
    what.second = FirstPowerView::tr("Stop: %1").arg(step.stops);
    what.strong = true;
    what.tip = FirstPowerView::tr("Source: %1").arg(step.source);
    GridCell found = typedCell(rung.last ? foundText(*rung.last) : QString(), {});
    found.hint = step.asks;
    if (!rung.last) {
        found.text = step.asks;
        found.quiet = true;
    }
    GridCell out = typedCell(rung.last ? wordOf(rung.last->cameOut) : FirstPowerView::tr("open"), {}); // any letter is a new try
    out.pill = !rung.last ? Tone::Neutral : rung.last->cameOut == RungOutcome::Pass ? Tone::Within : rung.last->cameOut == RungOutcome::Stop ? Tone::Outside : Tone::Neutral;
    return {.key = keyOf(step.step),
            .cells = {what, found, out, shownCell(rung.last ? rung.last->meterName : QString()), shownCell(rung.last ? shown::day(rung.last->at.toLocalTime().date(), today) : QString()),
                      shownCell(rung.last ? rung.last->initials : QString())}};
}

} // namespace

FirstPowerView::FirstPowerView(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_verdict = new Pill;
    m_count = styledLabel("quiet");
    m_table = new TriedGrid(workplace.style(), tr("First power, step by step"), columns(), FoundColumn, CameOutColumn,
                            [this](const QUuid &row, Said said, const QString &typed) { return record(row, said, typed); }, this);
    m_none = styledLabel("quiet", tr("This unit takes no mains: there is no first power to go through step by step."), this);
    m_flag = new Card(tr("Do not power"), this);
    restyle(m_flag, "tone", QStringLiteral("outside"));
    m_why = styledLabel("warning", {}, m_flag);
    m_why->setWordWrap(true);
    m_safe = button(tr("Safe to power"), m_flag);
    m_safe->setToolTip(tr("Takes the flag away; a ladder that is passed does not do so by itself"));
    connect(m_safe, &QPushButton::clicked, this, &FirstPowerView::lift);
    auto *flagRow = new QHBoxLayout;
    flagRow->addWidget(m_why, 1);
    flagRow->addWidget(m_safe, 0, Qt::AlignTop);
    m_flag->body()->addLayout(flagRow);
    m_aids = new PowerAids(workplace, this);

    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(m_verdict);
    top->addWidget(m_count, 1);
    top->addWidget(styledLabel("faint", tr("Enter what was found · S stop · N not applicable"), this));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_flag);
    column->addWidget(m_none);
    column->addWidget(m_table, 1);
    column->addWidget(m_aids);
    column->addStretch(0);
}

void FirstPowerView::refresh()
{
    const Ladder ladder = ladderOf(m_work.file());
    QList<GridRow> rows;
    int passed = 0;
    for (const LadderRung &rung : ladder.rungs) {
        rows << rowOf(rung, m_work.today());
        passed += rung.last && rung.last->cameOut == RungOutcome::Pass ? 1 : 0;
    }
    m_table->setRows(rows);
    m_table->setVisible(!rows.isEmpty());
    m_aids->setVisible(!rows.isEmpty());
    m_none->setVisible(rows.isEmpty());
    m_verdict->setVisible(!rows.isEmpty());
    switch (ladder.verdict) {
    case LadderVerdict::Passed:
        m_verdict->show(tr("passed"), Tone::Within);
        break;
    case LadderVerdict::Stopped:
        m_verdict->show(tr("stopped"), Tone::Outside);
        break;
    case LadderVerdict::Open:
        m_verdict->show(tr("open"), Tone::Neutral);
        break;
    }
    m_count->setText(rows.isEmpty() ? QString() : tr("%1 of %2 steps passed").arg(shown::count(passed), shown::count(rows.size())));
    const QString why = standing(m_work.file(), m_work.bench()).doNotPower;
    m_flag->setHidden(why.isEmpty());
    m_why->setText(why + (ladder.verdict == LadderVerdict::Passed ? tr("\nEvery step is passed now. The flag stays until you take it away.") : QString()));
}

QString FirstPowerView::flagText() const
{
    return m_flag->isHidden() ? QString() : m_why->text();
}

void FirstPowerView::focusFirst()
{
    m_table->setFocus();
    for (const LadderRung &rung : ladderOf(m_work.file()).rungs)
        if (!rung.last)
            return m_table->setCurrent(keyOf(rung.step.step), FoundColumn);
}

void FirstPowerView::reveal(PowerStep step)
{
    m_table->setCurrent(keyOf(step), FoundColumn);
}

void FirstPowerView::commitEdits()
{
    m_table->commitEdit();
}

bool FirstPowerView::record(const QUuid &row, Said said, const QString &typed)
{
    for (const LadderStep &step : ladderSteps(m_work.file().unit)) {
        if (keyOf(step.step) != row)
            continue;
        Maker maker = m_work.maker();
        const auto jotted = jotRung(step.step, said, typed, m_work.file(), m_work.bench(), maker);
        if (jotted)
            return m_work.record(jotted->change);
        m_work.refuse(jotted.trouble());
        return false;
    }
    return false;
}

void FirstPowerView::lift()
{
    Maker maker = m_work.maker();
    const auto jotted = jot(QStringLiteral("safe to power"), m_work.file(), m_work.bench(), maker);
    if (jotted)
        m_work.record(jotted->change);
    m_table->setFocus();
}

} // namespace ts
