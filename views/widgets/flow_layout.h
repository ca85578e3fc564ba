#pragma once

#include <QLayout>

namespace ts {

/// Lays its widgets out like words: from the left, on as many lines as the width asks for.
class FlowLayout : public QLayout {
    Q_OBJECT
public:
    explicit FlowLayout(int gap, QWidget *parent = nullptr);
    ~FlowLayout() override;

    void addItem(QLayoutItem *item) override;
    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem *itemAt(int index) const override { return m_items.value(index); }
    QLayoutItem *takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override; ///< of its widest item alone
    void setGeometry(const QRect &rect) override;

private:
    /// Goes through the lines of a width; answers the height, and places the items where that is asked.
    int layOut(const QRect &rect, bool place) const;

    QList<QLayoutItem *> m_items;
    int m_gap;
};

} // namespace ts
