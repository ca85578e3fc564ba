#pragma once

#include <QImage>
#include <QWidget>

namespace ts {

class Style;

/// One picture, whole or closer: wheel and + and - zoom about where one looks, dragging moves it, F fits it, 1 shows its own pixels.
class PhotoCanvas : public QWidget {
    Q_OBJECT
public:
    explicit PhotoCanvas(const Style &style, QWidget *parent = nullptr);

    /// Shows a picture; `small` is shown in its place as long as `picture` is null. `size` is that of the whole picture in pixels.
    /// Keeps the zoom where the picture is the same as before.
    void setPicture(const QString &sha256, const QImage &picture, const QImage &small, const QSize &size);
    void clear();
    void zoomBy(double factor);
    void fit();
    void ownPixels();
    [[nodiscard]] bool isFitted() const { return m_zoom == 0; }
    /// Screen pixels for one of the picture's.
    [[nodiscard]] double zoom() const;

Q_SIGNALS:
    void zoomed();

protected:
    void paintEvent(QPaintEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    [[nodiscard]] double fitted() const;
    [[nodiscard]] QRectF target() const;
    void zoomAbout(double factor, QPointF at);
    void settle();

    const Style &m_style;
    QString m_sha256;
    QImage m_picture;
    QSize m_size;
    double m_zoom = 0;  ///< 0: fitted
    QPointF m_middle;   ///< of the window on the picture, in the picture's pixels
    QPoint m_dragFrom;
};

} // namespace ts
