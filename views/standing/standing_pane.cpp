#include "views/standing/standing_pane.h"

namespace ts {

StandingPane::StandingPane(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("standing"));
    setMinimumWidth(230);
    connect(&m_work, &Workplace::unitChanged, this, &StandingPane::refresh);
    refresh();
}

void StandingPane::refresh() {}

} // namespace ts
