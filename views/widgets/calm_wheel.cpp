#include "views/widgets/calm_wheel.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>

namespace ts {

bool CalmWheel::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::Wheel && event->type() != QEvent::Polish)
        return false;
    auto *widget = qobject_cast<QWidget *>(watched);
    if (!widget || (!qobject_cast<QComboBox *>(widget) && !qobject_cast<QAbstractSpinBox *>(widget)))
        return false;
    if (widget->focusPolicy() == Qt::WheelFocus)
        widget->setFocusPolicy(Qt::StrongFocus); // else the wheel itself would give it the keyboard
    if (event->type() == QEvent::Polish || widget->hasFocus())
        return false;
    event->ignore(); // the page takes it
    return true;
}

} // namespace ts
