#pragma once

#include "views/widgets/grid_row.h"

#include <QAbstractTableModel>

namespace ts {

/// Rows that were worked out beforehand, as a table model. Handing it new ones moves, adds and takes away only what is different, so
/// that selection, scrolling and an open field stay where they are.
class GridModel : public QAbstractTableModel {
    Q_OBJECT
public:
    /// Records what was typed in a cell. Answers the row that shows it now (the same, or the one that was added), or nothing where
    /// it was refused; whoever refuses says why.
    using Commit = std::function<std::optional<QUuid>(const GridRow &row, int column, const QString &typed)>;

    explicit GridModel(QList<GridColumn> columns, QObject *parent = nullptr);

    void setCommit(Commit commit) { m_commit = std::move(commit); }
    void setRows(const QList<GridRow> &rows);
    /// Other columns: everything is new.
    void setColumns(QList<GridColumn> columns);

    [[nodiscard]] const QList<GridColumn> &columns() const { return m_columns; }
    [[nodiscard]] const QList<GridRow> &rows() const { return m_rows; }
    [[nodiscard]] const GridRow &row(int row) const { return m_rows.at(row); }
    /// The cell of an index; an empty one where the row is shorter.
    [[nodiscard]] const GridCell &cell(const QModelIndex &index) const;
    [[nodiscard]] int rowOf(const QUuid &key) const; ///< -1: no such row
    [[nodiscard]] QUuid landed() const { return m_landed; } ///< the row that the last commit answered
    /// Whether what is being committed comes from a field that is merely left, and not from Enter or Tab: no answer to a question.
    [[nodiscard]] bool leaving() const { return m_leaving; }
    void setLeaving(bool leaving) { m_leaving = leaving; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    /// Commits what was typed (Qt::EditRole) or ticked (Qt::CheckStateRole); what is the same as before is done already.
    bool setData(const QModelIndex &index, const QVariant &value, int role = Qt::EditRole) override;

private:
    QList<GridColumn> m_columns;
    QList<GridRow> m_rows;
    Commit m_commit;
    QUuid m_landed;
    bool m_leaving = false;
};

} // namespace ts
