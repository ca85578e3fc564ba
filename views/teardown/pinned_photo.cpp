#include "views/teardown/pinned_photo.h"

#include "views/style/style.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QTimer>

#include <algorithm>

namespace ts {

PinnedPhoto::PinnedPhoto(const Style &style, QWidget *parent) : QWidget(parent), m_style(style), m_rest(new QTimer(this))
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_rest->setSingleShot(true);
    m_rest->setInterval(700);
    connect(m_rest, &QTimer::timeout, this, &PinnedPhoto::commitMove);
    connect(&style, &Style::changed, this, qOverload<>(&QWidget::update));
}

void PinnedPhoto::setPicture(const QImage &picture, const QString &caption)
{
    m_picture = picture;
    m_caption = caption;
    update();
}

void PinnedPhoto::setPins(const QList<Pin> &pins)
{
    if (m_dragging || m_moved)
        return; // the hand is on one: what it does comes first
    m_pins = pins;
    if (!chosenPin())
        m_chosen = {};
    update();
}

void PinnedPhoto::choosePin(const QUuid &id)
{
    if (id == m_chosen)
        return;
    commitMove();
    m_chosen = id;
    update();
}

void PinnedPhoto::choose(const QUuid &id)
{
    choosePin(id);
    if (!id.isNull())
        Q_EMIT pinChosen(id);
}

void PinnedPhoto::commitMove()
{
    m_rest->stop();
    if (!std::exchange(m_moved, false))
        return;
    if (const Pin *pin = chosenPin())
        Q_EMIT pinMoved(pin->id, pin->x, pin->y);
}

double PinnedPhoto::radius() const
{
    return m_style.space(3.6);
}

QRectF PinnedPhoto::target() const
{
    if (m_picture.isNull())
        return rect();
    const QSizeF size = QSizeF(m_picture.size()).scaled(QSizeF(this->size()), Qt::KeepAspectRatio);
    return {(width() - size.width()) / 2, 0, size.width(), size.height()};
}

QPointF PinnedPhoto::placeOf(const Pin &pin) const
{
    const QRectF on = target();
    return {on.left() + pin.x * on.width(), on.top() + pin.y * on.height()};
}

QPointF PinnedPhoto::shareAt(QPointF at) const
{
    const QRectF on = target();
    return {std::clamp((at.x() - on.left()) / on.width(), 0.0, 1.0), std::clamp((at.y() - on.top()) / on.height(), 0.0, 1.0)};
}

PinnedPhoto::Pin *PinnedPhoto::pinAt(QPointF at)
{
    for (auto pin = m_pins.rbegin(); pin != m_pins.rend(); ++pin)
        if (QLineF(placeOf(*pin), at).length() <= radius() + 2)
            return &*pin;
    return nullptr;
}

PinnedPhoto::Pin *PinnedPhoto::chosenPin()
{
    const auto found = std::find_if(m_pins.begin(), m_pins.end(), [this](const Pin &pin) { return pin.id == m_chosen; });
    return found == m_pins.end() ? nullptr : &*found;
}

void PinnedPhoto::paintEvent(QPaintEvent *)
{
    const Ink &ink = m_style.ink();
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const QRectF on = target();
    QPainterPath corners;
    corners.addRoundedRect(on, m_style.radius(), m_style.radius());
    painter.save();
    painter.setClipPath(corners);
    painter.fillRect(on, ink.bar);
    if (!m_picture.isNull())
        painter.drawImage(on, m_picture);
    if (!m_caption.isEmpty() && !m_picture.isNull()) {
        painter.setFont(m_style.text(0.92));
        const QFontMetrics metrics(painter.font());
        const QRectF foot(on.left(), on.bottom() - metrics.height() - 10, on.width(), metrics.height() + 10);
        QColor ground = ink.sheet;
        ground.setAlphaF(0.86F);
        painter.fillRect(foot, ground);
        painter.setPen(ink.ink);
        painter.drawText(foot.adjusted(gap::small, 0, -gap::small, 0), Qt::AlignVCenter, metrics.elidedText(m_caption, Qt::ElideRight, qRound(foot.width()) - 2 * gap::small));
    }
    painter.restore();
    for (const Pin &pin : m_pins) {
        const QPointF at = placeOf(pin);
        const bool chosen = pin.id == m_chosen;
        painter.setPen(QPen(pin.strong || chosen ? ink.copper : ink.strong, chosen ? 4 : 2.5));
        painter.setBrush(ink.sheet);
        painter.drawEllipse(at, radius(), radius());
        painter.setFont(m_style.text(0.95, QFont::DemiBold));
        painter.setPen(ink.ink);
        painter.drawText(QRectF(at.x() - radius(), at.y() - radius(), 2 * radius(), 2 * radius()), Qt::AlignCenter, pin.label);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink.copper, 2));
        painter.drawRoundedRect(on.adjusted(1, 1, -1, -1), m_style.radius(), m_style.radius());
    }
}

void PinnedPhoto::mousePressEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton || m_picture.isNull())
        return QWidget::mousePressEvent(event);
    m_pressed = event->position();
    Pin *pin = pinAt(m_pressed);
    choose(pin ? pin->id : QUuid());
    m_dragging = pin != nullptr;
}

void PinnedPhoto::mouseMoveEvent(QMouseEvent *event)
{
    Pin *pin = m_dragging ? chosenPin() : nullptr;
    if (!pin || (!m_moved && (event->position() - m_pressed).manhattanLength() < 4))
        return;
    const QPointF to = shareAt(event->position());
    pin->x = to.x();
    pin->y = to.y();
    m_moved = true;
    update();
}

void PinnedPhoto::mouseReleaseEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton || m_picture.isNull())
        return;
    if (m_dragging) {
        m_dragging = false;
        return commitMove();
    }
    if (target().contains(event->position()) && (event->position() - m_pressed).manhattanLength() < 4) {
        const QPointF at = shareAt(event->position());
        Q_EMIT pinWanted(at.x(), at.y());
    }
}

void PinnedPhoto::keyPressEvent(QKeyEvent *event)
{
    const int key = event->key();
    if ((key == Qt::Key_Return || key == Qt::Key_Enter) && !m_picture.isNull()) {
        Q_EMIT pinWanted(0.5, 0.5);
        return;
    }
    if ((key == Qt::Key_PageDown || key == Qt::Key_PageUp) && !m_pins.isEmpty()) {
        const auto found = std::find_if(m_pins.begin(), m_pins.end(), [this](const Pin &pin) { return pin.id == m_chosen; });
        const qsizetype at = found == m_pins.end() ? (key == Qt::Key_PageDown ? -1 : 0) : found - m_pins.begin();
        const qsizetype count = m_pins.size();
        return choose(m_pins.at((at + (key == Qt::Key_PageDown ? 1 : count - 1)) % count).id);
    }
    Pin *pin = chosenPin();
    if (!pin)
        return QWidget::keyPressEvent(event);
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace) {
        m_moved = false;
        Q_EMIT pinUnwanted(pin->id);
        return;
    }
    const double far = event->modifiers() & Qt::ShiftModifier ? 0.002 : 0.02;
    const double right = key == Qt::Key_Right ? far : key == Qt::Key_Left ? -far : 0;
    const double down = key == Qt::Key_Down ? far : key == Qt::Key_Up ? -far : 0;
    if (right == 0 && down == 0)
        return QWidget::keyPressEvent(event);
    pin->x = std::clamp(pin->x + right, 0.0, 1.0);
    pin->y = std::clamp(pin->y + down, 0.0, 1.0);
    m_moved = true;
    m_rest->start();
    update();
}

void PinnedPhoto::focusOutEvent(QFocusEvent *event)
{
    commitMove();
    QWidget::focusOutEvent(event);
    update();
}

} // namespace ts
