#include "views/unit/stage_ribbon.h"

#include "model/records/sale.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/stage_names.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QSet>

namespace ts {

StageRibbon::StageRibbon(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_row = new QWidget(this);
    auto *row = new QHBoxLayout(m_row);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(3);
    auto *menu = new QMenu(this);
    for (const auto &[stage, word] : Words<Stage>::list) {
        auto *button = new QPushButton(shown::stage(stage), m_row);
        button->setProperty("role", QStringLiteral("stage"));
        button->setAutoDefault(false);
        button->setAccessibleName(tr("Move to %1").arg(shown::stage(stage)));
        button->setToolTip(tr("Alt+%1").arg(m_stages.size() + 1));
        connect(button, &QPushButton::clicked, this, [this, stage = stage] { Q_EMIT stageWanted(stage); });
        connect(menu->addAction(shown::stage(stage)), &QAction::triggered, this, [this, stage = stage] { Q_EMIT stageWanted(stage); });
        row->addWidget(button);
        m_stages << button;
    }
    m_one = new QPushButton(this);
    m_one->setProperty("role", QStringLiteral("stage"));
    m_one->setProperty("passed", QStringLiteral("current"));
    m_one->setMenu(menu);
    m_one->hide();
    m_more = wordButton({}, this);
    m_more->setObjectName(QStringLiteral("stageParticulars"));
    connect(m_more, &QPushButton::clicked, this, [this] { Q_EMIT stageWanted(m_work.file().unit.stage); });
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addStretch(1);
    column->addWidget(m_row, 0, Qt::AlignRight);
    column->addWidget(m_one, 0, Qt::AlignRight);
    column->addWidget(m_more, 0, Qt::AlignRight);
    column->addStretch(1);
    connect(&m_work, &Workplace::unitChanged, this, &StageRibbon::refresh);
    connect(&m_work, &Workplace::benchChanged, this, &StageRibbon::refresh);
    refresh();
}

int StageRibbon::wideWidth() const
{
    return m_row->sizeHint().width();
}

void StageRibbon::setCompact(bool compact)
{
    if (compact == m_compact)
        return;
    m_compact = compact;
    m_row->setHidden(compact);
    m_one->setHidden(!compact);
}

void StageRibbon::takeFocus()
{
    if (m_compact)
        m_one->setFocus();
    else
        m_stages.at(static_cast<int>(m_work.file().unit.stage))->setFocus();
}

void StageRibbon::refresh()
{
    const Stage stage = m_work.file().unit.stage;
    const int at = static_cast<int>(stage);
    // Passed is where it has been, not what comes earlier in the row: few units are ever held, and some never scouted.
    QSet<Stage> been;
    for (const StageMove &move : m_work.file().all<StageMove>())
        if (!move.removed)
            been << move.fromStage << move.toStage;
    for (int i = 0; i < m_stages.size(); ++i) {
        const bool passed = i < at && been.contains(static_cast<Stage>(i));
        restyle(m_stages.at(i), "passed", passed ? QStringLiteral("passed") : i == at ? QStringLiteral("current") : QStringLiteral("ahead"));
    }
    m_one->setText(shown::stage(stage));
    m_one->setAccessibleName(tr("Stage: %1").arg(shown::stage(stage)));
    const QString more = m_work.hasUnit() ? particulars() : QString();
    // A long reason does not push the name aside.
    m_more->setText(fontMetrics().elidedText(more, Qt::ElideRight, qMax(220, wideWidth() - 20)));
    m_more->setToolTip(more.toHtmlEscaped());
    m_more->setAccessibleName(tr("%1. Change it").arg(more));
    m_more->setHidden(more.isEmpty());
    setEnabled(m_work.hasUnit());
}

QString StageRibbon::particulars() const
{
    const Unit &unit = m_work.file().unit;
    const QDate today = m_work.today();
    switch (unit.stage) {
    case Stage::Held:
        if (!unit.heldUntil.isValid())
            return tr("Waiting for %1").arg(unit.heldBecause);
        return (unit.heldUntil < today ? tr("Waiting for %1, was due %2") : tr("Waiting for %1 until %2")).arg(unit.heldBecause, shown::day(unit.heldUntil, today));
    case Stage::Offered: {
        const Channel *channel = m_work.bench().find(unit.channel);
        if (!unit.asked)
            return channel ? tr("On %1; say for how much").arg(channel->name) : tr("Say where and for how much");
        return channel ? tr("%1 asked on %2").arg(shown::money(*unit.asked), channel->name) : tr("%1 asked; say where").arg(shown::money(*unit.asked));
    }
    case Stage::Closed: {
        if (!unit.outcome)
            return tr("Say how it ended");
        const Sale sale = saleOf(m_work.file());
        if (*unit.outcome == Outcome::Sold && sale.price)
            return sale.soldOn.isValid() ? tr("Sold for %1 on %2").arg(shown::money(*sale.price), shown::day(sale.soldOn, today))
                                         : tr("Sold for %1").arg(shown::money(*sale.price));
        const QString outcome = shown::outcome(*unit.outcome);
        return outcome.at(0).toUpper() + outcome.mid(1);
    }
    default:
        return {};
    }
}

} // namespace ts
