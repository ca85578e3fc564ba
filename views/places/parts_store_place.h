#pragma once

#include "views/places/place.h"

class QPushButton;
class QStackedWidget;

namespace ts {

class OrderPane;
class ShelfPane;

/// The parts store: what lies where and what it is rated for, and beside it what all waiting units need.
class PartsStorePlace : public Place {
    Q_OBJECT
public:
    explicit PartsStorePlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;
    /// Turns to what is to be ordered, or back to the shelf.
    void showOrder(bool order);

protected:
    void refresh() override;

private:
    QPushButton *m_shelfButton;
    QPushButton *m_orderButton;
    QStackedWidget *m_stack;
    ShelfPane *m_shelf;
    OrderPane *m_order;
};

} // namespace ts
