#pragma once

#include "model/sums/at_completion.h"
#include "views/workplace.h"

#include <QAbstractTableModel>

namespace ts {

/// The cost sheet as a table: what for, planned at purchase, to date, at completion. What the plan holds can be edited.
class CostModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { What, Planned, ToDate, AtCompletion, Columns };
    enum Role { IsTotal = Qt::UserRole + 1 };

    explicit CostModel(Workplace &workplace, QObject *parent = nullptr);
    void refresh(const CostSheet &sheet, const Completion &completion);

    [[nodiscard]] CostKey keyOf(int row) const { return m_sheet.lines.at(row).key; }
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role = Qt::EditRole) override;

private:
    [[nodiscard]] QString text(const CostLine &line, int column) const;
    [[nodiscard]] QString forEditing(const CostLine &line) const;
    [[nodiscard]] static bool isPlanned(CostKey key);

    Workplace &m_work;
    CostSheet m_sheet;
    Completion m_completion;
};

} // namespace ts
