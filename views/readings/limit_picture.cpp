#include "views/readings/limit_picture.h"

#include "views/style/style.h"
#include "views/widgets/measured_text.h"
#include "views/widgets/pill.h"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

double placeOf(double value, const LimitPicture::Span &span, const QRectF &line)
{
    const double share = (value - span.from) / (span.to - span.from);
    return line.left() + line.width() * std::clamp(share, -0.02, 1.02);
}

} // namespace

LimitPicture::LimitPicture(const Style &style, QWidget *parent) : QWidget(parent), m_style(style)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&style, &Style::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void LimitPicture::show(const std::optional<Judgement> &judged, Sense sense, std::optional<double> nominal)
{
    m_judged = judged && (judged->low || judged->high) && sense != Sense::OverRange ? judged : std::nullopt;
    m_sense = sense;
    m_nominal = nominal;
    setHidden(!m_judged);
    update();
}

QSize LimitPicture::sizeHint() const
{
    return {220, m_style.space(18)};
}

LimitPicture::Span LimitPicture::spanOf(const Judgement &judged, std::optional<double> nominal)
{
    const double spread = judged.uncertainty95.value_or(0);
    double from = judged.value - spread;
    double to = judged.value + spread;
    for (const auto &mark : {judged.low, judged.high, nominal})
        if (mark) {
            from = std::min(from, *mark);
            to = std::max(to, *mark);
        }
    double room = (to - from) * 0.14;
    if (!(room > 0))
        room = std::max(std::abs(to) * 0.1, 1e-12);
    return {from - room, to + room};
}

void LimitPicture::paintEvent(QPaintEvent *)
{
    if (!m_judged)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Span span = spanOf(*m_judged, m_nominal);
    const double high = m_style.space(3.4);
    const QRectF line(8, m_style.space(5), width() - 16, high);
    painter.setPen(QPen(m_style.ink().line, 1));
    painter.drawLine(QPointF(line.left(), line.center().y()), QPointF(line.right(), line.center().y()));
    drawBand(painter, line, span);
    drawValue(painter, line, span);
    drawFigures(painter, line, span);
}

// The ground on which a value is well, closed by a stroke at each end that is a limit.
void LimitPicture::drawBand(QPainter &painter, const QRectF &line, const Span &span) const
{
    const Ink &ink = m_style.ink();
    const double from = m_judged->low ? placeOf(*m_judged->low, span, line) : line.left();
    const double to = m_judged->high ? placeOf(*m_judged->high, span, line) : line.right();
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink.withinPaper);
    painter.drawRect(QRectF(from, line.top() - line.height() * 0.25, to - from, line.height() * 1.5));
    painter.setPen(QPen(ink.within, 2));
    const double reach = line.height() * 0.9;
    for (const auto &bound : {m_judged->low, m_judged->high})
        if (bound) {
            const double x = placeOf(*bound, span, line);
            painter.drawLine(QPointF(x, line.center().y() - reach), QPointF(x, line.center().y() + reach));
        }
}

void LimitPicture::drawValue(QPainter &painter, const QRectF &line, const Span &span) const
{
    const ToneInk tone = toneInk(toneOf(m_judged->verdict), m_style);
    const double spread = m_judged->uncertainty95.value_or(0);
    double from = placeOf(m_judged->value - spread, span, line);
    double to = placeOf(m_judged->value + spread, span, line);
    if (m_sense == Sense::Below)
        from = line.left();
    if (m_sense == Sense::Above)
        to = line.right();
    QColor ground = tone.text;
    ground.setAlphaF(0.42F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    if (to - from > 1)
        painter.drawRoundedRect(QRectF(from, line.center().y() - line.height() * 0.3, to - from, line.height() * 0.6), 2, 2);
    const double x = placeOf(m_judged->value, span, line);
    painter.setPen(QPen(tone.text, 3, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(x, line.center().y() - line.height() * 0.5), QPointF(x, line.center().y() + line.height() * 0.5));
}

// The limits and the middle that was named, each where it stands; one that would run into another is left out.
void LimitPicture::drawFigures(QPainter &painter, const QRectF &line, const Span &span) const
{
    painter.setFont(m_style.text(0.92));
    painter.setPen(m_style.ink().quiet);
    const QFontMetrics metrics(painter.font());
    QList<double> marks;
    for (const auto &mark : {m_judged->low, m_judged->high, m_nominal})
        if (mark)
            marks << *mark;
    QList<QRectF> taken;
    for (qsizetype i = 0; i < marks.size(); ++i) {
        const double mark = shown::rounded(marks.at(i), 6);
        const QString text = i + 1 == marks.size() || marks.size() == 1 || i == 1 ? shown::withMeasure(mark, m_judged->measure) : shown::withMeasure(mark, {});
        const double wide = metrics.horizontalAdvance(text) + 8;
        QRectF rect(placeOf(marks.at(i), span, line) - wide / 2, line.bottom() + m_style.space(2), wide, metrics.height());
        rect.moveLeft(std::clamp(rect.left(), 0.0, std::max(0.0, width() - wide)));
        if (std::any_of(taken.begin(), taken.end(), [&rect](const QRectF &each) { return each.intersects(rect); }))
            continue;
        painter.drawText(rect, Qt::AlignCenter, text);
        taken << rect;
    }
}

} // namespace ts
