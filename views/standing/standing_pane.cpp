#include "views/standing/standing_pane.h"

#include "model/faults/check_next.h"
#include "model/sums/at_completion.h"
#include "model/sums/standing.h"
#include "views/standing/due_line.h"
#include "views/standing/left_off_box.h"
#include "views/standing/stand_line.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace ts {

namespace {
constexpr int causesShown = 2;
}

StandingPane::StandingPane(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("standing"));
    setMinimumWidth(230);
    auto *inside = new QWidget;
    auto *column = new QVBoxLayout(inside);
    column->setContentsMargins(gap::normal, gap::normal, gap::normal, gap::normal);
    column->setSpacing(2);
    m_leftOff = new LeftOffBox(workplace, inside);
    column->addWidget(m_leftOff);
    group(column, tr("As it stands"));
    m_due = new DueLine(workplace, inside);
    column->addWidget(m_due);
    m_symptoms = line(column, tr("Symptoms open"), PageKey::FaultFinding);
    m_outside = line(column, tr("Readings out of spec"), PageKey::Readings);
    m_tooClose = line(column, tr("Too close to call"), PageKey::Readings);
    m_awaited = line(column, tr("Parts awaited"), PageKey::Parts);
    m_proofs = line(column, tr("Proofs passed"), PageKey::Proving);
    m_hours = line(column, tr("Hours"), PageKey::Log);
    m_causesName = group(column, tr("Likeliest cause left"));
    for (int i = 0; i < causesShown; ++i)
        m_causes << line(column, {}, PageKey::FaultFinding);
    m_checkNext = styledLabel("faint", {}, inside);
    m_checkNext->setWordWrap(true);
    column->addWidget(m_checkNext);
    m_moneyName = group(column, tr("If finished and sold"));
    m_spent = line(column, tr("Spent so far"), PageKey::Money);
    m_profit = line(column, {}, PageKey::Money);
    m_perHour = line(column, tr("Per hour of yours"), PageKey::Money);
    m_breakEven = line(column, tr("Break-even price"), PageKey::Money);
    m_cautionsName = group(column, tr("Cautions"));
    m_cautions = new QVBoxLayout;
    m_cautions->setSpacing(gap::tight);
    column->addLayout(m_cautions);
    column->addStretch(1);
    auto *scroll = new QScrollArea(this);
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    const auto stale = [this] {
        m_stale = true;
        if (isVisible())
            refresh();
    };
    connect(&m_work, &Workplace::unitChanged, this, stale);
    connect(&m_work, &Workplace::unitLeaving, this, &StandingPane::commitEdits);
}

StandLine *StandingPane::line(QVBoxLayout *column, const QString &label, PageKey page)
{
    auto *made = new StandLine(m_work.style(), label, this);
    connect(made, &QAbstractButton::clicked, this, [this, page] { m_work.goTo(m_work.file().unit.id, page); });
    column->addWidget(made);
    return made;
}

QLabel *StandingPane::group(QVBoxLayout *column, const QString &name)
{
    column->addSpacing(gap::normal);
    auto *label = styledLabel("group", name, this);
    column->addWidget(label);
    return label;
}

void StandingPane::commitEdits()
{
    m_leftOff->commitEdits();
}

void StandingPane::showEvent(QShowEvent *event)
{
    if (m_stale)
        refresh();
    QFrame::showEvent(event);
}

void StandingPane::refresh()
{
    m_stale = false;
    if (!m_work.hasUnit())
        return;
    const Standing stands = standing(m_work.file(), m_work.bench());
    m_leftOff->show(stands);
    m_due->refresh();
    showOpen(stands);
    showHours();
    showCauses();
    showMoney();
    showCautions(stands);
}

void StandingPane::showOpen(const Standing &standing)
{
    m_symptoms->setValue(standing.symptoms == 0 ? tr("none seen") : tr("%1 of %2").arg(shown::count(standing.openSymptoms.size()), shown::count(standing.symptoms)));
    if (standing.outside.isEmpty())
        m_outside->setValue(m_work.file().all<Reading>().isEmpty() ? tr("none taken") : shown::count(0));
    else
        m_outside->setPill(shown::count(standing.outside.size()), Tone::Outside);
    m_tooClose->setVisible(!standing.tooClose.isEmpty());
    m_tooClose->setPill(shown::count(standing.tooClose.size()), Tone::TooClose);
    QString awaited = standing.awaited.isEmpty() ? tr("none") : shown::count(standing.awaited.size());
    if (!standing.awaited.isEmpty() && standing.awaited.first().due.isValid()) {
        const QDate due = standing.awaited.first().due;
        awaited = (due < m_work.today() ? tr("%1, was due %2") : tr("%1, due %2")).arg(awaited, shown::day(due, m_work.today()));
    }
    m_awaited->setValue(awaited);
    int passed = 0;
    int failed = 0;
    int asked = 0;
    for (const Proof &proof : m_work.file().all<Proof>()) {
        passed += proof.cameOut == ProofOutcome::Passed;
        failed += proof.cameOut == ProofOutcome::Failed;
        asked += proof.cameOut != ProofOutcome::NotApplicable;
    }
    m_proofs->setVisible(asked > 0);
    const QString proved = tr("%1 of %2").arg(shown::count(passed), shown::count(asked));
    if (failed > 0)
        m_proofs->setPill(tr("%1, %2 failed").arg(proved, shown::count(failed)), Tone::Outside);
    else
        m_proofs->setValue(proved);
}

void StandingPane::showHours()
{
    const int minutes = hoursOf(m_work.file(), m_work.now()).minutes();
    std::optional<int> planned;
    for (const Plan &plan : m_work.file().all<Plan>())
        planned = plan.minutes ? plan.minutes : planned;
    const bool bar = planned && *planned > 0;
    m_hours->setValue(bar ? tr("%1 of %2").arg(shown::duration(minutes), shown::duration(*planned)) : shown::duration(minutes));
    m_hours->setBar(bar ? static_cast<double>(minutes) / *planned : -1);
}

void StandingPane::showCauses()
{
    const QList<FaultBoard> boards = boardsOf(m_work.file(), m_work.bench());
    const auto open = std::find_if(boards.begin(), boards.end(), [](const FaultBoard &board) { return !board.closed() && !board.blank() && board.small(); });
    int shownNow = 0;
    if (open != boards.end())
        for (const BoardCause &cause : open->causes) {
            if (shownNow == causesShown || cause.state != CauseState::Open || cause.somethingElse)
                continue;
            StandLine *line = m_causes.at(shownNow++);
            line->setLabel(cause.text);
            line->setValue(shown::percent(cause.now));
            line->setBar(cause.now);
        }
    for (int i = 0; i < causesShown; ++i)
        m_causes.at(i)->setVisible(i < shownNow);
    m_causesName->setVisible(shownNow > 0);
    QString next;
    if (shownNow > 0) {
        const CheckNext advice = checkNext(*open, m_work.bench().hourlyRate());
        if (!advice.moves.isEmpty()) {
            const NextMove &move = advice.moves.first();
            next = tr("Next: %1, %2 min").arg(move.text, shown::count(qRound(move.minutes)));
            if (move.savesMinutes && *move.savesMinutes >= 0.5)
                next += tr(", saves %1 min").arg(shown::count(qRound(*move.savesMinutes)));
        }
    }
    m_checkNext->setText(next);
    m_checkNext->setVisible(!next.isEmpty());
}

void StandingPane::showMoney()
{
    const CostSheet sheet = costSheet(m_work.file(), m_work.bench(), m_work.now());
    const Completion done = atCompletion(sheet, m_work.file(), m_work.bench());
    const auto known = [&done](CostKey key) { return done.lines.contains(key) ? std::optional(done.lines.value(key)) : std::nullopt; };
    const auto put = [](StandLine *line, const std::optional<Money> &money, bool strong) {
        line->setVisible(money.has_value());
        if (money)
            line->setValue(shown::money(*money), strong);
    };
    const bool sold = sheet.resaleFrom == QLatin1String("sold");
    m_moneyName->setText(sold ? tr("As it was sold") : tr("If finished and sold"));
    put(m_spent, sheet.spent.total, false); // money really out, as on the tag; the overhead that is only reckoned is on the Money page
    const auto profit = known(CostKey::ProfitBeforeHours);
    const bool loss = profit && profit->minor() < 0;
    m_profit->setLabel(loss ? tr("Loss, your hours aside") : tr("Profit, your hours aside"));
    put(m_profit, loss ? std::optional(-*profit) : profit, true);
    put(m_perHour, known(CostKey::EarnedPerHour), false);
    const auto breakEven = known(CostKey::BreakEven);
    put(m_breakEven, breakEven ? breakEven : sheet.toDate(CostKey::BreakEven), false);
}

void StandingPane::showCautions(const Standing &standing)
{
    while (m_cautionLines.size() < standing.cautions.size()) {
        auto *line = styledLabel("warning", {}, this);
        line->setWordWrap(true);
        m_cautions->addWidget(line);
        m_cautionLines << line;
    }
    for (int i = 0; i < m_cautionLines.size(); ++i) {
        m_cautionLines.at(i)->setVisible(i < standing.cautions.size());
        m_cautionLines.at(i)->setText(standing.cautions.value(i));
    }
    m_cautionsName->setVisible(!standing.cautions.isEmpty());
}

} // namespace ts
