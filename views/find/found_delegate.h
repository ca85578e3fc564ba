#pragma once

#include <QStyledItemDelegate>

namespace ts {

class Style;

/// A line of what was found: the tag in copper, the words, and whose it is.
class FoundDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit FoundDelegate(const Style &style, QObject *parent = nullptr) : QStyledItemDelegate(parent), m_style(style) {}
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    const Style &m_style;
};

} // namespace ts
