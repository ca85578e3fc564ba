#pragma once

#include "model/money/year_books.h"

#include <QAbstractTableModel>

namespace ts {

class Style;

/// The ledger's lines as a table; sorts by the values, not by their texts.
class LedgerModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Day, Tag, What, Kind, Out, In, Columns };
    enum Role { SortRole = Qt::UserRole + 1, YearRole };

    explicit LedgerModel(const Style &style, QObject *parent = nullptr);
    void setLines(QList<BookLine> lines);
    [[nodiscard]] const BookLine &line(int row) const { return m_lines.at(row); }
    [[nodiscard]] static QString kindText(SpendKind kind);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    [[nodiscard]] QVariant text(const BookLine &line, int column) const;

    const Style &m_style;
    QList<BookLine> m_lines;
};

} // namespace ts
