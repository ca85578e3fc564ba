#include "views/unit/page_tabs.h"

#include "views/style/style.h"

#include <QFontMetrics>
#include <QLocale>
#include <QPainter>

namespace ts {

namespace {
constexpr int side = 13; // left and right of a tab's word
}

PageTabs::PageTabs(const Style &style, QWidget *parent) : QTabBar(parent), m_style(style)
{
    setObjectName(QStringLiteral("pageTabs"));
    setAccessibleName(tr("Pages of the unit"));
    setExpanding(false);
    setDrawBase(false);
    setUsesScrollButtons(true);
    setFocusPolicy(Qt::TabFocus);
    connect(&m_style, &Style::changed, this, &QWidget::updateGeometry);
}

void PageTabs::setBadge(int index, int count, Tone tone)
{
    if (m_badges.size() <= index)
        m_badges.resize(index + 1);
    if (m_badges.at(index).count == count && m_badges.at(index).tone == tone)
        return;
    m_badges[index] = {count, tone};
    setTabToolTip(index, count > 0 ? tr("%1: %2 open").arg(tabText(index).remove(QLatin1Char('&')), QLocale().toString(count)) : QString());
    // A tab bar lays itself out again when a text is set anew.
    const QString text = tabText(index);
    setTabText(index, QString());
    setTabText(index, text);
}

void PageTabs::setAside(bool aside)
{
    m_aside = aside;
    update();
}

QString PageTabs::badgeText(int index) const
{
    const int count = m_badges.value(index).count;
    return count == 0 ? QString() : count > 99 ? QStringLiteral("99+") : QLocale().toString(count);
}

int PageTabs::badgeWidth(int index) const
{
    const QString text = badgeText(index);
    return text.isEmpty() ? 0 : QFontMetrics(m_style.text(0.88, QFont::DemiBold)).horizontalAdvance(text) + 12;
}

QSize PageTabs::sizeHint() const
{
    return {QTabBar::sizeHint().width(), m_style.space(9)};
}

QSize PageTabs::tabSizeHint(int index) const
{
    const int badge = badgeWidth(index);
    return {QFontMetrics(m_style.text(1.02, QFont::DemiBold)).horizontalAdvance(tabText(index)) + 2 * side + (badge > 0 ? badge + 7 : 0), m_style.space(9)};
}

QSize PageTabs::minimumTabSizeHint(int index) const
{
    return tabSizeHint(index);
}

void PageTabs::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Ink &ink = m_style.ink();
    for (int i = 0; i < count(); ++i) {
        const QRect tab = tabRect(i);
        const bool current = i == currentIndex() && !m_aside;
        const QFont font = m_style.text(1.02, current ? QFont::DemiBold : QFont::Normal);
        painter.setFont(font);
        painter.setPen(current ? ink.ink : ink.quiet);
        const int badge = badgeWidth(i);
        const QRect word = tab.adjusted(side, 0, -side - (badge > 0 ? badge + 7 : 0), 0);
        painter.drawText(word, Qt::AlignLeft | Qt::AlignVCenter, tabText(i));
        if (badge > 0) {
            const ToneInk tone = toneInk(m_badges.at(i).tone, m_style);
            const int height = m_style.space(4.4);
            const int after = word.left() + QFontMetrics(font).horizontalAdvance(tabText(i)) + 7;
            const QRect box(after, tab.center().y() - height / 2, badge, height);
            painter.setPen(Qt::NoPen);
            painter.setBrush(tone.ground);
            painter.drawRoundedRect(box, height / 2.0, height / 2.0);
            painter.setPen(tone.text);
            painter.setFont(m_style.text(0.88, QFont::DemiBold));
            painter.drawText(box, Qt::AlignCenter, badgeText(i));
        }
        if (current)
            painter.fillRect(QRect(tab.left(), tab.bottom() - 1, tab.width(), 2), ink.copper);
        if (i == currentIndex() && hasFocus()) {
            painter.setPen(QPen(ink.copper, 1));
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(tab.adjusted(2, 4, -3, -5), 4, 4);
        }
    }
}

} // namespace ts
