#pragma once

#include <QHeaderView>

#include <optional>

namespace ts {

/// The head of a grid. Where its columns need more room than there is, the first and the last of them can be pinned: they stay at the
/// edges while the others go by below them.
class GridHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit GridHeader(QWidget *parent);

    void setPinned(int left, int right);
    /// Where a pinned column stands in the viewport; nothing for one that scrolls, or where all have room.
    [[nodiscard]] std::optional<int> pinnedAt(int column) const;
    [[nodiscard]] int pinnedUnder(int x) const; ///< the pinned column at that place; -1 where there is none
    [[nodiscard]] int freeLeft() const;         ///< where the columns that scroll begin to be seen
    [[nodiscard]] int freeRight() const;        ///< and where they end

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    [[nodiscard]] bool crowded() const { return length() > viewport()->width(); }

    int m_left = 0;
    int m_right = 0;
};

} // namespace ts
