#pragma once

#include <QImage>
#include <QUuid>
#include <QWidget>

class QTimer;

namespace ts {

class Style;

/// A photo with numbered pins. A click puts a pin, dragging moves one; by keys Enter puts one in the middle, Page Up and Down choose one, the
/// arrows move it (with Shift a little at a time) and Delete takes it away. What the arrows did is told once they rest.
class PinnedPhoto : public QWidget {
    Q_OBJECT
public:
    struct Pin {
        QUuid id;
        QString label;
        double x = 0; ///< 0 to 1 from the left of the picture
        double y = 0; ///< 0 to 1 from its top
        bool strong = false; ///< of the item at hand
    };

    explicit PinnedPhoto(const Style &style, QWidget *parent = nullptr);
    void setPicture(const QImage &picture, const QString &caption);
    void setPins(const QList<Pin> &pins);
    void choosePin(const QUuid &id);
    void commitMove(); ///< tells what the arrows did and have not told yet
    [[nodiscard]] QUuid chosen() const { return m_chosen; }
    [[nodiscard]] QPointF placeOf(const Pin &pin) const; ///< on the widget
    [[nodiscard]] const QList<Pin> &pins() const { return m_pins; }
    [[nodiscard]] QSize sizeHint() const override { return {460, 400}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {220, 180}; }

Q_SIGNALS:
    void pinWanted(double x, double y);
    void pinMoved(const QUuid &id, double x, double y);
    void pinChosen(const QUuid &id);
    void pinUnwanted(const QUuid &id);

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    [[nodiscard]] QRectF target() const; ///< where the picture is drawn
    [[nodiscard]] double radius() const;
    [[nodiscard]] Pin *pinAt(QPointF at);
    [[nodiscard]] Pin *chosenPin();
    [[nodiscard]] QPointF shareAt(QPointF at) const;
    void choose(const QUuid &id);

    const Style &m_style;
    QImage m_picture;
    QString m_caption;
    QList<Pin> m_pins;
    QUuid m_chosen;
    QPointF m_pressed;
    bool m_dragging = false;
    bool m_moved = false; ///< the chosen pin stands elsewhere than was told
    QTimer *m_rest;
};

} // namespace ts
