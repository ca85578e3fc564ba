#include "views/photos/photo_canvas.h"

#include "views/style/style.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <cmath>

namespace ts {

namespace {
constexpr double closest = 8; // screen pixels for one of the picture's
}

PhotoCanvas::PhotoCanvas(const Style &style, QWidget *parent) : QWidget(parent), m_style(style)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Photo"));
    setMinimumSize(240, 180);
}

void PhotoCanvas::setPicture(const QString &sha256, const QImage &picture, const QImage &small, const QSize &size)
{
    if (sha256 != m_sha256) {
        m_sha256 = sha256;
        m_zoom = 0;
        m_middle = QRectF(QPointF(), QSizeF(size)).center();
    }
    m_picture = picture.isNull() ? small : picture;
    m_size = size.isEmpty() ? m_picture.size() : size;
    settle();
    Q_EMIT zoomed();
}

void PhotoCanvas::clear()
{
    setPicture({}, {}, {}, {});
}

double PhotoCanvas::fitted() const
{
    if (m_size.isEmpty())
        return 1;
    // Never larger than its own pixels: what is not in the picture is not made up.
    return std::min({1.0, width() / double(m_size.width()), height() / double(m_size.height())});
}

double PhotoCanvas::zoom() const
{
    return m_zoom == 0 ? fitted() : m_zoom;
}

QRectF PhotoCanvas::target() const
{
    const QSizeF size = QSizeF(m_size) * zoom();
    return {QPointF(width() / 2.0, height() / 2.0) - m_middle * zoom(), size};
}

void PhotoCanvas::zoomAbout(double factor, QPointF at)
{
    const double before = zoom();
    const double after = std::clamp(before * factor, fitted(), closest);
    const QPointF under = m_middle + (at - QPointF(width() / 2.0, height() / 2.0)) / before; // stays where it is
    m_zoom = after <= fitted() ? 0 : after;
    m_middle = under - (at - QPointF(width() / 2.0, height() / 2.0)) / after;
    settle();
    Q_EMIT zoomed();
}

void PhotoCanvas::zoomBy(double factor)
{
    zoomAbout(factor, QPointF(width() / 2.0, height() / 2.0));
}

void PhotoCanvas::fit()
{
    m_zoom = 0;
    settle();
    Q_EMIT zoomed();
}

void PhotoCanvas::ownPixels()
{
    m_zoom = 1;
    settle();
    Q_EMIT zoomed();
}

// The picture never leaves more of the place empty than it must.
void PhotoCanvas::settle()
{
    const QSizeF window = QSizeF(size()) / zoom();
    const auto along = [](double middle, double seen, double whole) { return seen >= whole ? whole / 2 : std::clamp(middle, seen / 2, whole - seen / 2); };
    m_middle = {along(m_middle.x(), window.width(), m_size.width()), along(m_middle.y(), window.height(), m_size.height())};
    setCursor(m_zoom == 0 ? Qt::ArrowCursor : Qt::OpenHandCursor);
    update();
}

void PhotoCanvas::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_style.ink().bar);
    if (!m_picture.isNull()) {
        painter.setRenderHint(QPainter::SmoothPixmapTransform, zoom() < 3);
        painter.drawImage(target(), m_picture);
    }
    if (hasFocus()) {
        painter.setPen(QPen(m_style.ink().copper, 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void PhotoCanvas::wheelEvent(QWheelEvent *event)
{
    zoomAbout(std::pow(1.0015, event->angleDelta().y()), event->position());
    event->accept();
}

void PhotoCanvas::mousePressEvent(QMouseEvent *event)
{
    m_dragFrom = event->pos();
}

void PhotoCanvas::mouseMoveEvent(QMouseEvent *event)
{
    if (!(event->buttons() & Qt::LeftButton) || m_zoom == 0)
        return;
    m_middle -= QPointF(event->pos() - m_dragFrom) / zoom();
    m_dragFrom = event->pos();
    settle();
}

void PhotoCanvas::mouseDoubleClickEvent(QMouseEvent *)
{
    if (m_zoom == 0)
        ownPixels();
    else
        fit();
}

void PhotoCanvas::resizeEvent(QResizeEvent *)
{
    settle();
    Q_EMIT zoomed();
}

} // namespace ts
