#include "views/log/offer_list.h"

#include "views/style/style.h"

#include <QMouseEvent>
#include <QPainter>

namespace ts {

OfferList::OfferList(const Style &style, QWidget *over) : QFrame(over), m_style(style)
{
    setObjectName(QStringLiteral("offers"));
    setFocusPolicy(Qt::NoFocus);
    hide();
}

int OfferList::rowHeight() const
{
    return QFontMetrics(m_style.figures()).height() + 6;
}

void OfferList::offer(const QStringList &lines, const QPoint &foot, int width)
{
    m_lines = lines;
    m_marked = -1;
    if (lines.isEmpty()) {
        hide();
        return;
    }
    const int height = static_cast<int>(lines.size()) * rowHeight() + 2 * gap::tight;
    setGeometry(foot.x(), foot.y() - height, width, height);
    raise();
    show();
    update();
}

void OfferList::mark(int index)
{
    m_marked = index;
    update();
}

void OfferList::paintEvent(QPaintEvent *event)
{
    QFrame::paintEvent(event);
    const Ink &ink = m_style.ink();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(m_style.figures());
    const QFontMetrics metrics(painter.font());
    for (int i = 0; i < m_lines.size(); ++i) {
        const QRect row(gap::tight, gap::tight + i * rowHeight(), width() - 2 * gap::tight, rowHeight());
        if (i == m_marked) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink.copperPaper);
            painter.drawRoundedRect(row, 4, 4);
        }
        painter.setPen(i == m_marked ? ink.ink : ink.quiet);
        const QRect text = row.adjusted(gap::small, 0, -gap::small, 0);
        painter.drawText(text, Qt::AlignVCenter | Qt::AlignLeft, metrics.elidedText(m_lines.at(i), Qt::ElideRight, text.width()));
    }
}

void OfferList::mousePressEvent(QMouseEvent *event)
{
    const int index = (event->pos().y() - gap::tight) / rowHeight();
    if (index >= 0 && index < m_lines.size())
        Q_EMIT taken(index);
}

} // namespace ts
