#include "views/money/resale_picture.h"

#include "views/style/style.h"
#include "views/widgets/locale_text.h"

#include <QPainter>

#include <algorithm>

namespace ts {

ResalePicture::ResalePicture(const Style &style, QWidget *parent) : QWidget(parent), m_style(style)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ResalePicture::show(const Resale &resale, const std::optional<Money> &breakEven)
{
    m_resale = resale;
    m_breakEven = breakEven;
    m_from = resale.bars.isEmpty() ? 0 : resale.bars.first().from.minor();
    m_to = resale.bars.isEmpty() ? 1 : resale.bars.last().to.minor();
    const auto stretch = [this](const Money &money) {
        m_from = std::min(m_from, money.minor());
        m_to = std::max(m_to, money.minor());
    };
    if (!resale.bars.isEmpty()) {
        if (breakEven)
            stretch(*breakEven);
        for (const CountedSale &sale : resale.sold)
            stretch(sale.price);
    }
    QStringList said{resale.heading};
    if (resale.middle)
        said << tr("middle %1").arg(shown::moneyRound(*resale.middle));
    if (breakEven)
        said << tr("break-even %1").arg(shown::moneyRound(*breakEven));
    setAccessibleName(tr("What it should fetch"));
    setAccessibleDescription(said.join(QStringLiteral(", ")));
    setToolTip(resale.why.toHtmlEscaped());
    update();
}

QSize ResalePicture::sizeHint() const
{
    return {m_style.space(90), m_style.space(40)};
}

QSize ResalePicture::minimumSizeHint() const
{
    return {m_style.space(50), m_style.space(34)};
}

double ResalePicture::across(qint64 minor) const
{
    const double margin = m_style.space(10);
    const double width = this->width() - 2 * margin;
    return margin + width * static_cast<double>(minor - m_from) / static_cast<double>(std::max<qint64>(1, m_to - m_from));
}

void ResalePicture::paintLine(QPainter &painter, const Money &at, const QColor &colour, const QString &text, bool toTheLeft) const
{
    const double x = across(at.minor());
    const int line = painter.fontMetrics().height();
    painter.setPen(QPen(colour, 2));
    painter.drawLine(QPointF(x, 2), QPointF(x, height() - 2.6 * line));
    const int wide = painter.fontMetrics().horizontalAdvance(text) + 6;
    // A word that would leave the picture goes to the other side of its line.
    const bool left = toTheLeft ? x - wide > 0 : x + wide > width();
    painter.drawText(QRectF(left ? x - wide : x + 6, 0, wide, line), left ? Qt::AlignLeft : Qt::AlignLeft, text);
}

// The kernel estimate itself, on the bars' scale: a bar's share is its density by its breadth.
void ResalePicture::paintKernel(QPainter &painter, double floor, double room, double most) const
{
    const PriceBar &first = m_resale.bars.first();
    const auto breadth = static_cast<double>(first.to.minor() - first.from.minor());
    if (most <= 0 || breadth <= 0)
        return;
    QPolygonF curve;
    const int points = qMax(2, width() / 3);
    for (int i = 0; i <= points; ++i) {
        const double minor = static_cast<double>(m_from) + static_cast<double>(m_to - m_from) * i / points;
        curve << QPointF(across(qRound64(minor)), qMax(0.0, floor - room * m_resale.density(minor) * breadth / most));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_style.ink().copper, 1.5));
    painter.drawPolyline(curve);
}

void ResalePicture::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(m_style.text(0.92));
    const Ink &ink = m_style.ink();
    if (m_resale.bars.isEmpty())
        return;
    const int line = painter.fontMetrics().height();
    const double floor = height() - 2.6 * line;
    const double room = floor - 1.6 * line;
    double most = 0;
    for (const PriceBar &bar : m_resale.bars)
        most = std::max(most, bar.share);
    QColor fill = ink.copper;
    fill.setAlphaF(0.32f);
    for (const PriceBar &bar : m_resale.bars) {
        const double left = across(bar.from.minor());
        const double high = most > 0 ? room * bar.share / most : 0;
        painter.fillRect(QRectF(left + 1, floor - high, across(bar.to.minor()) - left - 2, high), fill);
    }
    paintKernel(painter, floor, room, most);
    painter.setPen(QPen(ink.line, 1));
    painter.drawLine(QPointF(across(m_from), floor), QPointF(across(m_to), floor));
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink.copper);
    for (const CountedSale &sale : m_resale.sold)
        painter.drawEllipse(QPointF(across(sale.price.minor()), floor + line * 0.5), 3, 3);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.faint, 1.2));
    for (const CountedSale &ask : m_resale.asking)
        if (ask.price.minor() >= m_from && ask.price.minor() <= m_to)
            painter.drawEllipse(QPointF(across(ask.price.minor()), floor + line * 0.5), 3, 3);
    // Words under every few bars, as many as there is room for.
    painter.setPen(ink.faint);
    double free = 0;
    for (const PriceBar &bar : m_resale.bars) {
        const QString text = shown::moneyRound(bar.from);
        const int wide = painter.fontMetrics().horizontalAdvance(text);
        const double x = across(bar.from.minor()) - wide / 2.0;
        if (x < free)
            continue;
        painter.drawText(QPointF(x, height() - 0.5 * line), text);
        free = x + wide + m_style.space(5);
    }
    const bool breakEvenFirst = !m_resale.middle || (m_breakEven && m_breakEven->minor() < m_resale.middle->minor());
    if (m_resale.middle)
        paintLine(painter, *m_resale.middle, ink.within, tr("middle %1").arg(shown::moneyRound(*m_resale.middle)), !breakEvenFirst);
    if (m_breakEven)
        paintLine(painter, *m_breakEven, ink.outside, tr("break-even %1").arg(shown::moneyRound(*m_breakEven)), breakEvenFirst);
}

} // namespace ts
