#pragma once

#include <QFrame>
#include <QStringList>

namespace ts {

class Style;

/// What a line may become, above the line: calm, never with the focus, one of them marked. A click takes one.
class OfferList : public QFrame {
    Q_OBJECT
public:
    /// Stands in `over`, above whatever is there.
    OfferList(const Style &style, QWidget *over);

    /// Shows the offers with their foot at `foot` (in the coordinates of its parent); nothing to offer hides it.
    void offer(const QStringList &lines, const QPoint &foot, int width);
    void mark(int index); ///< -1: none
    [[nodiscard]] int marked() const { return m_marked; }
    [[nodiscard]] QStringList lines() const { return m_lines; }

Q_SIGNALS:
    void taken(int index);

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;

private:
    [[nodiscard]] int rowHeight() const;

    const Style &m_style;
    QStringList m_lines;
    int m_marked = -1;
};

} // namespace ts
