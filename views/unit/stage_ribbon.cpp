#include "views/unit/stage_ribbon.h"

#include "model/records/stage_change.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>

namespace ts {

StageRibbon::StageRibbon(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(3);
    for (const auto &[stage, word] : Words<Stage>::list) {
        auto *button = new QPushButton(stageText(stage), this);
        button->setProperty("role", QStringLiteral("stage"));
        button->setAccessibleName(tr("Move to %1").arg(stageText(stage)));
        connect(button, &QPushButton::clicked, this, [this, stage = stage] { moveTo(stage); });
        row->addWidget(button);
        m_stages << button;
    }
    connect(&m_work, &Workplace::unitChanged, this, &StageRibbon::refresh);
    refresh();
}

void StageRibbon::refresh()
{
    const int at = static_cast<int>(m_work.file().unit.stage);
    for (int i = 0; i < m_stages.size(); ++i)
        restyle(m_stages.at(i), "passed", i < at ? QStringLiteral("passed") : i == at ? QStringLiteral("current") : QStringLiteral("ahead"));
    setEnabled(m_work.hasUnit());
}

void StageRibbon::moveTo(Stage stage)
{
    Maker maker = m_work.maker();
    m_work.record(stageChange(m_work.file().unit, {.stage = stage, .because = {}, .until = {}, .outcome = {}}, maker));
}

} // namespace ts
