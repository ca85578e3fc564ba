#include "views/clock/clock_box.h"

namespace ts {

ClockBox::ClockBox(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("clock"));
    hide();
}

void ClockBox::toggle() {}

} // namespace ts
