#pragma once

#include "model/money/year_books.h"

#include <QAbstractTableModel>

namespace ts {

class Style;

/// The stock book as a table, a unit a row; sorts by the values, not by their texts.
class StockModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Tag, From, BoughtOn, Bought, Gone, Sold, Margin, Tax, Costs, Left, Columns };
    enum Role { SortRole = Qt::UserRole + 1 };

    explicit StockModel(const Style &style, QObject *parent = nullptr);
    void setLines(QList<StockLine> lines);
    [[nodiscard]] const StockLine &line(int row) const { return m_lines.at(row); }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    [[nodiscard]] static std::optional<Money> sum(const StockLine &line, int column);
    [[nodiscard]] static QString text(const StockLine &line, int column);

    const Style &m_style;
    QList<StockLine> m_lines;
};

} // namespace ts
