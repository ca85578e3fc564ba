#include "views/unit/stage_panel.h"

#include "model/sums/stage_rules.h"
#include "views/style/style.h"
#include "views/unit/stage_asks.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/labelled.h"
#include "views/widgets/stage_names.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>

#include <algorithm>

namespace ts {

StagePanel::StagePanel(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("stagePanel"));
    m_title = styledLabel("strong", {}, this);
    m_why = styledLabel("warning", {}, this);
    m_why->setWordWrap(true);
    m_safety = styledLabel("warning", {}, this);
    m_safety->setWordWrap(true);
    m_safety->hide();
    m_because = new QLineEdit;
    m_overrule = labelled(tr("It goes there all the same, because"), m_because, this);
    m_body = new QWidget(this);
    auto *body = new QVBoxLayout(m_body);
    body->setContentsMargins(0, 0, 0, 0);
    m_move = primaryButton({}, this);
    m_proofs = button(tr("Look at the proofs"), this);
    m_loose = button(tr("Look at what is off"), this);
    m_away = wordButton(tr("Not now"), this);
    auto *buttons = new QHBoxLayout;
    buttons->setSpacing(gap::small);
    for (QPushButton *each : {m_move, m_proofs, m_loose, m_away})
        buttons->addWidget(each);
    buttons->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::normal, gap::small, gap::normal, gap::normal);
    column->setSpacing(gap::small);
    column->addWidget(m_title);
    column->addWidget(m_why);
    column->addWidget(m_safety);
    column->addWidget(m_body);
    column->addWidget(m_overrule);
    column->addLayout(buttons);
    m_because->installEventFilter(this);
    connect(m_move, &QPushButton::clicked, this, &StagePanel::commit);
    connect(m_away, &QPushButton::clicked, this, &StagePanel::putAway);
    connect(m_proofs, &QPushButton::clicked, this, [this] { m_work.goTo(m_unit, PageKey::Proving); });
    connect(m_loose, &QPushButton::clicked, this, [this] { m_work.goTo(m_unit, PageKey::Teardown); });
    connect(&m_work, &Workplace::unitLeaving, this, &StagePanel::commitEdits);
    connect(&m_work, &Workplace::unitTaken, this, &QWidget::hide);
    connect(&m_work, &Workplace::unitChanged, this, [this] {
        if (isVisible())
            showObstacles(); // they may have been put right meanwhile
    });
    orderTabs();
    hide();
}

StageAsk *StagePanel::askOf(Stage stage)
{
    StageAsk *&ask = m_asks[static_cast<int>(stage)];
    if (!ask) {
        if (stage == Stage::Held)
            ask = new HeldAsk(m_work, m_body);
        else if (stage == Stage::Offered)
            ask = new OfferedAsk(m_work, m_body);
        else if (stage == Stage::Closed)
            ask = new ClosedAsk(m_work, m_body);
        else
            return nullptr;
        m_body->layout()->addWidget(ask);
        for (QWidget *field : ask->findChildren<QWidget *>())
            field->installEventFilter(this);
        connect(ask, &StageAsk::outcomeChosen, this, &StagePanel::showSafety);
        orderTabs();
    }
    return ask;
}

// What a stage asks for is made when it is first wanted, and comes before the buttons all the same.
void StagePanel::orderTabs()
{
    QWidgetList order;
    for (const StageAsk *ask : std::as_const(m_asks))
        if (ask)
            order << ask->fields();
    order << QWidgetList{m_because, m_move, m_proofs, m_loose, m_away};
    QWidget *before = this;
    for (QWidget *each : std::as_const(order)) {
        setTabOrder(before, each);
        before = each;
    }
}

void StagePanel::ask(Stage stage)
{
    commitEdits();
    StageAsk *asked = askOf(stage);
    m_stage = stage;
    m_unit = m_work.file().unit.id;
    const bool asksNothing = inTheWay(m_work.file(), stage).reasons.isEmpty() && !(handsOn(m_work.file().unit, stage) && safetyGap(m_work.file()).any());
    if (!asked && (edits() || asksNothing)) {
        Maker maker = m_work.maker();
        m_work.record(ruledStageChange(m_work.file(), {.stage = stage}, maker));
        putAway();
        return;
    }
    for (StageAsk *each : std::as_const(m_asks))
        if (each)
            each->setVisible(each == asked);
    m_body->setVisible(asked != nullptr);
    m_because->clear();
    m_title->setText(edits() ? shown::onStage(stage) : tr("To %1").arg(shown::stage(stage)));
    m_move->setText(edits() ? tr("Keep") : tr("Move to %1").arg(shown::stage(stage)));
    m_move->setAccessibleName(m_move->text());
    if (asked)
        asked->fill();
    showObstacles();
    show();
    if (asked)
        asked->focusFirst();
    else if (!m_overrule->isHidden())
        m_because->setFocus();
    else if (m_move->isEnabled())
        m_move->setFocus();
    else
        (m_proofs->isHidden() ? m_loose : m_proofs)->setFocus();
}

void StagePanel::showObstacles()
{
    const InTheWay way = inTheWay(m_work.file(), m_stage);
    const bool some = !way.reasons.isEmpty();
    QStringList lines = way.reasons;
    for (QString &line : lines)
        line[0] = line.at(0).toUpper();
    if (some && !way.canBeOverruled)
        lines << tr("That is put right first: a ready unit can be plugged in by anybody.");
    m_why->setText(lines.join(QLatin1Char('\n')));
    m_why->setVisible(some);
    m_overrule->setVisible(some && way.canBeOverruled);
    m_move->setEnabled(way.canBeOverruled);
    const auto any = [&](const auto &list, const auto &fits) { return some && std::any_of(list.begin(), list.end(), fits); };
    showSafety();
    m_proofs->setVisible(!m_safety->isHidden() || any(m_work.file().all<Proof>(), [](const Proof &proof) { return proof.cameOut == ProofOutcome::Failed; }));
    m_loose->setVisible(any(m_work.file().all<TeardownItem>(), [](const TeardownItem &item) { return item.state == TeardownState::Off; }));
}

// Said plainly and no more: what is not tested may well be sound, and the owner decides.
void StagePanel::showSafety()
{
    const StageAsk *asked = m_asks.value(static_cast<int>(m_stage));
    const bool leaves = handsOn(m_work.file().unit, m_stage, asked ? asked->outcome() : std::nullopt);
    const SafetyGap gap = leaves ? safetyGap(m_work.file()) : SafetyGap();
    QString says;
    if (gap.none)
        says = tr("Electrical safety is not tested: no proof of it is on record.");
    else if (gap.any())
        says = tr("Electrical safety is not tested: %1.").arg(gap.untested.join(QStringLiteral("; ")));
    if (gap.any())
        says += QLatin1Char(' ') + tr("Whoever plugs it in relies on it: local codes and licensed practice come first.");
    if (gap.any() && inTheWay(m_work.file(), m_stage).reasons.isEmpty())
        says += QLatin1Char(' ') + tr("It can be moved all the same; the journal then says that it was not tested.");
    m_safety->setText(says);
    m_safety->setHidden(says.isEmpty());
}

bool StagePanel::commit()
{
    if (!m_move->isEnabled())
        return false;
    StageAsk *asked = askOf(m_stage);
    Maker maker = m_work.maker();
    const QString because = m_overrule->isHidden() ? QString() : m_because->text();
    const bool moved = m_work.record(asked ? asked->change(because) : ruledStageChange(m_work.file(), {.stage = m_stage, .because = because}, maker));
    if (moved)
        putAway();
    return moved;
}

void StagePanel::commitEdits()
{
    if (isHidden() || !edits() || m_unit != m_work.file().unit.id)
        return;
    StageAsk *asked = askOf(m_stage);
    const auto change = asked ? asked->change({}) : Expected<Change>(Change());
    if (change && m_work.record(*change))
        putAway();
}

void StagePanel::putAway()
{
    const bool had = isAncestorOf(focusWidget());
    hide();
    if (had)
        Q_EMIT settled();
}

void StagePanel::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape) {
        putAway();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        auto *pressed = qobject_cast<QPushButton *>(focusWidget());
        pressed && pressed->hasFocus() ? pressed->click() : static_cast<void>(commit());
    } else {
        QFrame::keyPressEvent(event);
    }
}

// What was changed of the stage where the unit stands is kept when the keyboard goes elsewhere.
bool StagePanel::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusOut && edits()) {
        const Qt::FocusReason reason = static_cast<QFocusEvent *>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason)
            QTimer::singleShot(0, this, [this] {
                const QWidget *now = window()->focusWidget();
                if (isVisible() && now && !isAncestorOf(now))
                    commitEdits();
            });
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace ts
