#include "views/places/parts_store_place.h"

#include "views/store/order_pane.h"
#include "views/store/shelf_pane.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QLabel>
#include <QStackedWidget>

namespace ts {

PartsStorePlace::PartsStorePlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_shelfButton = button(tr("On the shelf"), this);
    m_orderButton = button(tr("What to order"), this);
    auto *group = new QButtonGroup(this);
    for (QPushButton *each : {m_shelfButton, m_orderButton}) {
        each->setCheckable(true);
        group->addButton(each);
    }
    m_shelf = new ShelfPane(workplace, this);
    m_order = new OrderPane(workplace, this);
    m_stack = new QStackedWidget(this);
    m_stack->addWidget(m_shelf);
    m_stack->addWidget(m_order);
    m_shelfButton->setChecked(true);
    connect(m_orderButton, &QPushButton::toggled, this, [this](bool order) {
        m_stack->setCurrentIndex(order ? 1 : 0);
        refresh();
    });
    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(styledLabel("heading", tr("Parts store"), this));
    top->addSpacing(gap::wide);
    top->addWidget(m_shelfButton);
    top->addWidget(m_orderButton);
    top->addStretch(1);
    auto *rows = new QVBoxLayout(this);
    rows->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    rows->setSpacing(gap::normal);
    rows->addLayout(top);
    rows->addWidget(m_stack, 1);
}

void PartsStorePlace::focusFirst()
{
    if (m_orderButton->isChecked())
        m_order->focusFirst();
    else
        m_shelf->focusFirst();
}

void PartsStorePlace::showOrder(bool order)
{
    (order ? m_orderButton : m_shelfButton)->setChecked(true);
}

QString PartsStorePlace::help() const
{
    return tr("What lies on the shelf, with what it is rated for, what it cost and where it is. Find by attribute: capacitor 1000u >=63V d<=10mm, belt 78 ± 2 mm. "
              "A part that falls below what you keep at least is marked. “What to order” brings together what all waiting units need: the shelf and donors first, "
              "then one order a supplier with the units it frees. What a unit needs stands on its own page, Parts.");
}

void PartsStorePlace::commitEdits()
{
    m_shelf->commitEdits();
}

void PartsStorePlace::refresh()
{
    if (m_orderButton->isChecked())
        m_order->refresh();
    else
        m_shelf->refresh();
}

} // namespace ts
