#pragma once

#include <QStyledItemDelegate>

namespace ts {

class Style;
struct TagWords;

/// Paints the rack: manila tags with their eyelets, and the headings of the stages.
class TagDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit TagDelegate(const Style &style, QObject *parent = nullptr);
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

    [[nodiscard]] int headingHeight() const { return m_headingHeight; }
    [[nodiscard]] int tagHeight() const { return m_tagHeight; }
    /// Whose tag is outlined.
    void setInHand(const QUuid &unit) { m_inHand = unit; }
    void measure(); ///< after the style changed

private:
    void paintHeading(QPainter &painter, const QStyleOptionViewItem &option, const QModelIndex &index) const;
    void paintTag(QPainter &painter, const QRect &tag, const TagWords &words) const;
    void paintFoot(QPainter &painter, const QRect &line, const TagWords &words) const;

    const Style &m_style;
    QUuid m_inHand;
    QFont m_figures, m_name, m_quiet, m_foot, m_mark, m_group;
    int m_headingHeight = 0;
    int m_tagHeight = 0;
};

} // namespace ts
