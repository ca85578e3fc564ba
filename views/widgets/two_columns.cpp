#include "views/widgets/two_columns.h"

#include "views/style/style.h"

#include <QResizeEvent>
#include <QVBoxLayout>

namespace ts {

TwoColumns::TwoColumns(int narrow, int leftShare, int rightShare, QWidget *parent) : QWidget(parent), m_narrow(narrow)
{
    const auto column = [this](int share) {
        auto *made = new QVBoxLayout;
        made->setSpacing(gap::normal);
        m_both->addLayout(made, share);
        return made;
    };
    m_both = new QBoxLayout(QBoxLayout::LeftToRight, this);
    m_both->setContentsMargins(0, 0, 0, 0);
    m_both->setSpacing(gap::normal);
    m_left = column(leftShare);
    m_right = column(rightShare);
}

// The width of one column is enough, whichever way they stand; else the layout would never let it become narrow.
QSize TwoColumns::minimumSizeHint() const
{
    const QSize left = m_left->minimumSize();
    const QSize right = m_right->minimumSize();
    const bool sideBySide = m_both->direction() == QBoxLayout::LeftToRight;
    return {qMax(left.width(), right.width()), sideBySide ? qMax(left.height(), right.height()) : left.height() + right.height() + m_both->spacing()};
}

void TwoColumns::resizeEvent(QResizeEvent *event)
{
    const bool room = event->size().width() >= m_narrow * fontMetrics().height() / 16;
    m_both->setDirection(room ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    QWidget::resizeEvent(event);
}

} // namespace ts
