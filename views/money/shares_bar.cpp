#include "views/money/shares_bar.h"

#include "views/style/style.h"
#include "views/widgets/locale_text.h"

#include <QPainter>
#include <QPainterPath>

namespace ts {

SharesBar::SharesBar(const Style &style, QWidget *parent) : QWidget(parent), m_style(style)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SharesBar::show(const QList<PricePart> &parts)
{
    m_parts = parts;
    QStringList said;
    for (const PricePart &part : parts)
        said << word(part.share) + QLatin1Char(' ') + shown::money(part.money);
    setAccessibleName(tr("Where the resale price goes"));
    setAccessibleDescription(said.join(QStringLiteral(", ")));
    setToolTip(said.join(QStringLiteral(" · ")).toHtmlEscaped());
    updateGeometry();
    update();
}

QSize SharesBar::sizeHint() const
{
    return {m_style.space(60), m_style.space(12)};
}

QString SharesBar::word(PriceShare share)
{
    switch (share) {
    case PriceShare::Bought:
        return tr("bought");
    case PriceShare::Work:
        return tr("parts");
    case PriceShare::Fees:
        return tr("fees");
    case PriceShare::Carriage:
        return tr("carriage");
    case PriceShare::Yours:
        return tr("yours");
    case PriceShare::Short:
        return tr("short");
    }
    return {};
}

QColor SharesBar::colour(PriceShare share) const
{
    const Ink &ink = m_style.ink();
    switch (share) {
    case PriceShare::Bought:
        return ink.neutral;
    case PriceShare::Work:
        return ink.tooClose;
    case PriceShare::Fees:
        return ink.copper;
    case PriceShare::Carriage:
        return ink.faint;
    case PriceShare::Yours:
        return ink.within;
    case PriceShare::Short:
        return ink.outside;
    }
    return {};
}

void SharesBar::paintEvent(QPaintEvent *)
{
    qint64 all = 0;
    for (const PricePart &part : m_parts)
        all += qMax<qint64>(0, part.money.minor());
    if (all <= 0)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(m_style.text(0.92));
    const double high = m_style.space(7);
    QPainterPath round;
    round.addRoundedRect(QRectF(0, 0, width(), high), 5, 5);
    const int gapBetween = m_style.space(3);
    double left = 0;
    double below = 0; // where the words under the bar have room again
    for (const PricePart &part : m_parts) {
        if (part.money.minor() <= 0)
            continue;
        const double wide = width() * static_cast<double>(part.money.minor()) / static_cast<double>(all);
        painter.setClipPath(round);
        painter.fillRect(QRectF(left, 0, wide - 1, high), colour(part.share));
        painter.setClipping(false);
        const QString whole = word(part.share) + QLatin1Char(' ') + shown::moneyRound(part.money);
        const auto advance = [&](const QString &text) { return painter.fontMetrics().horizontalAdvance(text); };
        painter.setPen(m_style.ink().sheet);
        if (advance(whole) + 8 < wide) {
            painter.drawText(QRectF(left, 0, wide, high), Qt::AlignCenter, whole);
        } else {
            // No room inside: under its part, in its own colour, as far as the one before leaves room.
            painter.setPen(m_style.ink().quiet);
            const double at = qMax(below, qMin(left, width() - double(advance(whole))));
            painter.drawText(QRectF(at, high + 1, advance(whole) + 2, height() - high), Qt::AlignLeft | Qt::AlignVCenter, whole);
            below = at + advance(whole) + gapBetween;
        }
        left += wide;
    }
}

} // namespace ts
