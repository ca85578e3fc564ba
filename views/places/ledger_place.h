#pragma once

#include "model/money/year_books.h"
#include "views/places/place.h"

class QAbstractItemModel;
class QComboBox;
class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QStackedWidget;
class QTableView;

namespace ts {

class LedgerModel;
class PageTabs;
class StockModel;

/// The books of a year: every sum that went out or came in, and the stock book, with the files that go to whoever keeps them.
class LedgerPlace : public Place {
    Q_OBJECT
public:
    explicit LedgerPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;

private:
    [[nodiscard]] QLayout *makeTop();
    [[nodiscard]] QTableView *makeTable(QSortFilterProxyModel *sorted, const QString &name);
    void show(const BooksInput &input);
    void showYear();
    void total();
    void open(const QModelIndex &index);
    void write(const QString &kind);
    [[nodiscard]] int year() const;

    QComboBox *m_year;
    QLineEdit *m_filter;
    QLabel *m_totals;
    PageTabs *m_tabs;
    QStackedWidget *m_tables;
    LedgerModel *m_model;
    QSortFilterProxyModel *m_sorted;
    QTableView *m_view;
    StockModel *m_stock;
    QSortFilterProxyModel *m_stockSorted;
    QTableView *m_stockView;
    BooksInput m_input;
    YearBooks m_books;
    int m_generation = 0; ///< late answers of an earlier reading are dropped
};

} // namespace ts
