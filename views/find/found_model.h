#pragma once

#include "views/find/found_groups.h"

#include <QAbstractListModel>

namespace ts {

/// What was found, under headings.
class FoundModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { IsHeading = Qt::UserRole + 1, Tag, UnitName };

    using QAbstractListModel::QAbstractListModel;
    void show(const QList<Found> &found);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    [[nodiscard]] const Found *at(int row) const; ///< nullptr for a heading, or outside
    /// The next row from `row` on that is something found, upwards or downwards; -1 where there is none.
    [[nodiscard]] int nextFrom(int row, int by) const;

private:
    struct Line {
        FoundGroup group = FoundGroup::Units;
        int found = -1; ///< -1: the heading
    };
    QList<Found> m_found;
    QList<Line> m_lines;
};

} // namespace ts
