#pragma once

#include "views/places/place.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QTableView;

namespace ts {

class LedgerModel;

/// One movement of money, as the ledger lists it.
struct LedgerLine {
    QDate day;
    int tag = 0; ///< 0: the bench as a whole
    Id<Unit> unit;
    QString unitName;
    QString text;
    SpendKind kind = SpendKind::Other;
    Flow flow = Flow::Out;
    Money amount; ///< in the currency paid
    std::optional<Money> worth; ///< in the bench's currency; none where no rate was entered
    QUuid record;
};

/// Money out and in, on every unit and on the bench as a whole, by year.
class LedgerPlace : public Place {
    Q_OBJECT
public:
    explicit LedgerPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;

private:
    void show(const QList<LedgerLine> &lines);
    void total();
    void open(const QModelIndex &index);

    QComboBox *m_year;
    QLineEdit *m_filter;
    QLabel *m_totals;
    LedgerModel *m_model;
    QSortFilterProxyModel *m_sorted;
    QTableView *m_view;
    int m_generation = 0; ///< late answers of an earlier reading are dropped
};

} // namespace ts
