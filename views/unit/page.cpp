#include "views/unit/page.h"

#include "views/style/style.h"

namespace ts {

Page::Page(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    connect(&m_work, &Workplace::unitChanged, this, &Page::refreshIfSeen);
    connect(&m_work.style(), &Style::changed, this, &Page::refreshIfSeen);
}

void Page::refreshIfSeen()
{
    m_stale = true;
    if (!isVisible())
        return;
    m_stale = false;
    refresh();
}

void Page::showEvent(QShowEvent *event)
{
    if (m_stale) {
        m_stale = false;
        refresh();
    }
    QWidget::showEvent(event);
}

} // namespace ts
