#include "views/standing/stand_line.h"

#include "views/style/style.h"

#include <QEnterEvent>
#include <QFontMetrics>
#include <QPainter>

namespace ts {

StandLine::StandLine(const Style &style, const QString &label, QWidget *parent) : QAbstractButton(parent), m_style(style)
{
    setText(label);
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&m_style, &Style::changed, this, &QWidget::updateGeometry);
    say();
}

void StandLine::say()
{
    setAccessibleName(m_value.isEmpty() ? text() : tr("%1: %2").arg(text(), m_value));
    setToolTip(QFontMetrics(m_style.text()).horizontalAdvance(text() + m_value) + 12 > width() ? accessibleName().toHtmlEscaped() : QString());
    updateGeometry();
    update();
}

void StandLine::setLabel(const QString &label)
{
    setText(label);
    say();
}

void StandLine::setValue(const QString &value, bool strong)
{
    m_value = value;
    m_strong = strong;
    m_pill = false;
    say();
}

void StandLine::setPill(const QString &value, Tone tone)
{
    m_value = value;
    m_tone = tone;
    m_pill = true;
    say();
}

void StandLine::setBar(double share)
{
    m_bar = share;
    say();
}

QSize StandLine::sizeHint() const
{
    const QFontMetrics metrics(m_style.text());
    return {metrics.horizontalAdvance(text()) + metrics.horizontalAdvance(m_value) + 24, metrics.height() + 4 + (m_bar >= 0 ? m_style.space(2.6) : 0)};
}

void StandLine::enterEvent(QEnterEvent *event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void StandLine::leaveEvent(QEvent *event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void StandLine::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Ink &ink = m_style.ink();
    const QFont font = m_style.text();
    const QFontMetrics metrics(font);
    const QRect line(2, 1, width() - 4, metrics.height() + 2);
    if (underMouse())
        painter.fillRect(rect(), ink.bar);
    const QFont valueFont = m_pill ? m_style.text(0.88, QFont::DemiBold) : m_style.text(1.0, m_strong ? QFont::DemiBold : QFont::Normal);
    const QFontMetrics valueMetrics(valueFont);
    // The value keeps at least half of the line; what it is called is known by its place.
    const QString value = valueMetrics.elidedText(m_value, Qt::ElideRight, qMax(line.width() / 2, line.width() - metrics.horizontalAdvance(text()) - 10) - (m_pill ? 16 : 0));
    const int wide = valueMetrics.horizontalAdvance(value) + (m_pill ? 16 : 0);
    painter.setFont(font);
    painter.setPen(ink.ink);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, metrics.elidedText(text(), Qt::ElideRight, line.width() - wide - 8));
    painter.setFont(valueFont);
    if (m_pill && !value.isEmpty()) {
        const ToneInk tone = toneInk(m_tone, m_style);
        const QRectF box(line.right() - wide, line.top() + 1, wide, line.height() - 2);
        painter.setPen(Qt::NoPen);
        painter.setBrush(tone.ground);
        painter.drawRoundedRect(box, box.height() / 2, box.height() / 2);
        painter.setPen(tone.text);
        painter.drawText(box, Qt::AlignCenter, value);
    } else {
        painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, value);
    }
    if (m_bar >= 0) {
        const QRectF bar(2, line.bottom() + 2, width() - 4, m_style.space(1.6));
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink.bar);
        painter.drawRoundedRect(bar, 3, 3);
        painter.setBrush(m_bar > 1 ? ink.outside : ink.copper);
        if (m_bar > 0)
            painter.drawRoundedRect(QRectF(bar.topLeft(), QSizeF(qMax(bar.height(), bar.width() * qMin(1.0, m_bar)), bar.height())), 3, 3);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink.copper, 1));
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    }
}

} // namespace ts
