#include "views/store/order_pane.h"

#include "model/keeping/waiting_parts.h"
#include "model/records/tag_text.h"
#include "views/store/write_paper.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/empty_place.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

QString unitsText(const QList<OrderUnit> &units)
{
    QStringList tags;
    for (const OrderUnit &unit : units)
        tags << tagText(unit.tag);
    return tags.join(u", "_s);
}

QString forText(const QList<OrderNeed> &needs)
{
    QStringList all;
    for (const OrderNeed &of : needs) {
        const QString text = of.need.position.isEmpty() ? tagText(of.tag) : OrderPane::tr("%1 at %2").arg(tagText(of.tag), of.need.position);
        if (!all.contains(text))
            all << text;
    }
    return all.join(u", "_s);
}

GridCell named(const QString &text, const QString &second)
{
    GridCell cell = shownCell(text);
    cell.strong = true;
    cell.second = second;
    return cell;
}

QList<GridColumn> columns(const QStringList &last)
{
    QList<GridColumn> all{{.title = OrderPane::tr("Pieces"), .width = 6, .right = true},
                          {.title = OrderPane::tr("Part"), .width = 24, .stretch = 4},
                          {.title = OrderPane::tr("For"), .width = 12, .stretch = 2}};
    for (const QString &title : last)
        all << GridColumn{.title = title, .width = 10, .stretch = last.size() == 1 ? 2 : 0, .right = last.size() > 1};
    return all;
}

} // namespace

OrderPane::OrderPane(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_write = button(tr("Write the order list…"), this);
    m_write->setToolTip(tr("One list of all waiting units, as a PDF or a web page"));
    connect(m_write, &QPushButton::clicked, this, [this] { writeOrderList(m_work, this, nullptr); });
    m_empty = new EmptyPlace(tr("No unit waits for a part. What a unit needs is written on its Parts page; here it comes together, by supplier."), {}, this);
    m_cards = new QWidget(this);
    m_column = new QVBoxLayout(m_cards);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(gap::normal);
    m_column->addStretch(1);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(m_cards);
    auto *top = new QHBoxLayout;
    top->addWidget(m_write);
    top->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_empty);
    column->addWidget(scroll, 1);
}

void OrderPane::focusFirst()
{
    m_write->setFocus();
}

void OrderPane::refresh()
{
    const auto list = readOrderList(m_work.desk());
    if (!list)
        return m_work.refuse(list.trouble());
    // A card's own button may be what asked for this: the cards go when the event loop comes round.
    while (m_column->count() > 1) {
        QLayoutItem *item = m_column->takeAt(0);
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    m_empty->setVisible(list->isEmpty());
    m_cards->setVisible(!list->isEmpty());
    m_write->setEnabled(!list->isEmpty());
    if (!list->shelf.isEmpty())
        addShelf(*list);
    for (const SupplierOrder &order : list->orders)
        addOrder(order);
    for (const UnderWay &order : list->underWay)
        addUnderWay(order);
}

Card *OrderPane::addCard(const QString &heading, const QString &remark)
{
    auto *card = new Card(heading, m_cards);
    card->setRemark(remark);
    m_column->insertWidget(m_column->count() - 1, card);
    return card;
}

void OrderPane::addShelf(const OrderList &list)
{
    Card *card = addCard(tr("From the shelf and from donors"), list.shelfFrees.isEmpty() ? QString() : tr("frees %1 without any order").arg(unitsText(list.shelfFrees)));
    auto *take = button(tr("Take them"), card);
    take->setToolTip(tr("The parts are here for their units, and the shelf has so many less"));
    connect(take, &QPushButton::clicked, this, [this, picks = list.shelf] { m_work.record(takeFromShelf(picks, m_work.maker())); });
    card->headRow()->addWidget(take);
    auto *table = new GridView(m_work.style(), tr("From the shelf"), columns({tr("Lies in")}), card);
    table->setWhole(true);
    QList<GridRow> rows;
    for (const ShelfPick &pick : list.shelf) {
        QStringList where;
        if (!pick.place.isEmpty())
            where << pick.place;
        if (pick.donorTag > 0)
            where << tr("from donor %1").arg(tagText(pick.donorTag));
        rows << GridRow{.kind = GridRowKind::Record, .key = {}, .name = pick.of.need.id.text() + pick.batch.id.text(),
                        .cells = {shownCell(shown::count(pick.of.pieces)), named(pick.part.name, pick.of.need.text), shownCell(forText({pick.of})), shownCell(where.join(u", "_s))}};
    }
    table->setRows(rows);
    card->body()->addWidget(table);
}

void OrderPane::addOrder(const SupplierOrder &order)
{
    Card *card = addCard(order.supplier.isEmpty() ? tr("To order, no supplier named") : tr("To order: %1").arg(order.supplier),
                         order.frees.isEmpty() ? tr("frees no unit by itself") : tr("frees %1").arg(unitsText(order.frees)));
    auto *supplier = new QLineEdit(order.supplier, card);
    supplier->setPlaceholderText(tr("Supplier"));
    supplier->setAccessibleName(tr("Supplier of this order"));
    supplier->setVisible(order.supplier.isEmpty());
    supplier->setMaximumWidth(180);
    auto *due = new QLineEdit(card);
    due->setPlaceholderText(tr("due, such as 28 Nov"));
    due->setAccessibleName(tr("Due from %1").arg(order.supplier.isEmpty() ? tr("the supplier") : order.supplier));
    due->setMaximumWidth(150);
    auto *ordered = button(tr("Mark as ordered"), card);
    const auto place = [this, order, supplier, due] {
        const auto day = typed::dayOrNone(due->text(), m_work.today());
        if (!day)
            return m_work.refuse(day.trouble());
        SupplierOrder placed = order;
        placed.supplier = supplier->text().simplified();
        m_work.record(placeOrder(placed, *day, m_work.maker()));
    };
    connect(ordered, &QPushButton::clicked, this, place);
    connect(due, &QLineEdit::returnPressed, this, place);
    for (QWidget *each : QList<QWidget *>{supplier, due, ordered})
        card->headRow()->addWidget(each);
    for (const OrderUnit &unit : order.helps) {
        auto *helps = styledLabel("quiet", tr("%1 also waits for %2").arg(tagText(unit.tag), unit.alsoWaits.join(u", "_s)), card);
        helps->setWordWrap(true);
        card->body()->addWidget(helps);
    }
    auto *table = new GridView(m_work.style(), card->accessibleName(), columns({tr("Each"), tr("Sum")}), card);
    table->setAccessibleName(tr("Lines of the order"));
    table->setWhole(true);
    QList<GridRow> rows;
    for (const OrderLine &line : order.lines) {
        QStringList second;
        if (!line.rating.isEmpty())
            second << line.rating;
        for (const QString &look : line.look)
            second << tr("on the shelf, look first: %1").arg(look);
        rows << GridRow{.kind = GridRowKind::Record, .key = {}, .name = line.of.first().need.id.text(),
                        .cells = {shownCell(shown::count(line.pieces)), named(line.text, second.join(u" · "_s)), shownCell(forText(line.of)),
                                  shownCell(line.each ? shown::money(*line.each) : QString()), shownCell(line.each ? shown::money(line.each->times(line.pieces)) : QString())}};
    }
    table->setRows(rows);
    card->body()->addWidget(table);
    QStringList total;
    for (const Money &sum : order.sums)
        total << shown::money(sum);
    if (order.unpriced > 0)
        total << tr("%n without a price", nullptr, order.unpriced);
    auto *sum = styledLabel("strong", total.join(u" · "_s), card);
    sum->setAlignment(Qt::AlignRight);
    card->body()->addWidget(sum);
}

void OrderPane::addUnderWay(const UnderWay &order)
{
    Card *card = addCard(order.supplier.isEmpty() ? tr("Under way, no supplier named") : tr("Under way from %1").arg(order.supplier), {});
    auto *arrived = button(tr("It has arrived"), card);
    arrived->setToolTip(tr("All of it is here; its units come up on the rack"));
    connect(arrived, &QPushButton::clicked, this, [this, order] { m_work.record(orderArrived(order, m_work.maker())); });
    card->headRow()->addWidget(arrived);
    auto *table = new GridView(m_work.style(), tr("Under way"), columns({tr("Due")}), card);
    table->setWhole(true);
    QList<GridRow> rows;
    for (const OrderNeed &of : order.needs) {
        GridCell due = shownCell(of.need.due.isValid() ? shown::day(of.need.due, m_work.today()) : QString());
        if (of.need.due.isValid() && of.need.due < m_work.today())
            due.second = tr("overdue");
        rows << GridRow{.kind = GridRowKind::Record, .key = of.need.id.value, .name = {},
                        .cells = {shownCell(shown::count(of.pieces)), named(of.need.text, {}), shownCell(forText({of})), due}};
    }
    table->setRows(rows);
    card->body()->addWidget(table);
}

} // namespace ts
