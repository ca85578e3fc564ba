#include "views/places/place.h"

#include "views/style/style.h"

#include <QKeyEvent>
#include <QTimer>

namespace ts {

Place::Place(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    const auto stale = [this] {
        m_stale = true;
        if (!isVisible() || m_waiting)
            return;
        // One change is told in several ways; it is shown once.
        m_waiting = true;
        QTimer::singleShot(0, this, [this] {
            m_waiting = false;
            if (isVisible() && std::exchange(m_stale, false))
                refresh();
        });
    };
    connect(&m_work, &Workplace::journalChanged, this, stale);
    connect(&m_work, &Workplace::unitTaken, this, stale);
    connect(&m_work.style(), &Style::changed, this, stale);
}

void Place::showEvent(QShowEvent *event)
{
    if (std::exchange(m_stale, false))
        refresh();
    QWidget::showEvent(event);
}

void Place::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        m_work.goTo(PlaceKey::Units);
    else
        QWidget::keyPressEvent(event);
}

} // namespace ts
