#pragma once

#include "model/sums/parts/order_list.h"
#include "views/workplace.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ts {

class Card;
class EmptyPlace;

/// What all waiting units need: what the shelf has, one order a supplier with what it frees, and what is under way.
class OrderPane : public QWidget {
    Q_OBJECT
public:
    explicit OrderPane(Workplace &workplace, QWidget *parent = nullptr);
    void refresh();
    void focusFirst();

private:
    void addShelf(const OrderList &list);
    void addOrder(const SupplierOrder &order);
    void addUnderWay(const UnderWay &order);
    Card *addCard(const QString &heading, const QString &remark);

    Workplace &m_work;
    QPushButton *m_write;
    EmptyPlace *m_empty;
    QWidget *m_cards;
    QVBoxLayout *m_column;
};

} // namespace ts
