// What placing an order, its arrival and taking from the shelf do to the needs.
#include "model/sums/parts/order_list.h"

#include "model/records/tag_text.h"

#include <QHash>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// Moves pieces of needs on: where not all of a need move, the rest stays what it was and those that moved become a need of their
/// own, as the jot line does it.
class Pieces {
public:
    Pieces(Change &change, Maker &maker) : m_change(change), m_maker(maker) {}

    template <class Do>
    void move(const OrderNeed &of, Do set)
    {
        const auto found = std::find_if(m_moves.begin(), m_moves.end(), [&](const Move &each) { return each.before.id == of.need.id; });
        Need moved = of.need;
        moved.quantity = of.pieces;
        moved.stateSince = m_maker.now();
        set(moved);
        if (found == m_moves.end())
            m_moves << Move{of.need, {moved}};
        else
            found->moved << moved;
    }

    void finish()
    {
        for (Move &each : m_moves) {
            int rest = each.before.quantity;
            for (const Need &moved : each.moved)
                rest -= moved.quantity;
            Need first = each.before;
            if (rest > 0) {
                first.quantity = rest;
            } else {
                first = each.moved.takeFirst();
            }
            m_change.edit(each.before, first);
            for (Need moved : each.moved) {
                const Need fresh = m_maker.fresh<Need>();
                moved.id = fresh.id;
                moved.at = fresh.at;
                moved.version = 0;
                m_change.add(moved);
            }
        }
    }

private:
    struct Move {
        Need before;
        QList<Need> moved;
    };
    Change &m_change;
    Maker &m_maker;
    QList<Move> m_moves;
};

QString named(const QString &supplier)
{
    return supplier.isEmpty() ? QString() : u" from "_s + supplier;
}

QString tagsOf(const QList<OrderNeed> &needs)
{
    QStringList tags;
    for (const OrderNeed &of : needs)
        if (const QString tag = tagText(of.tag); !tags.contains(tag))
            tags << tag;
    return tags.join(u", "_s);
}

} // namespace

Change placeOrder(const SupplierOrder &order, QDate due, Maker maker)
{
    QList<OrderNeed> needs;
    for (const OrderLine &line : order.lines)
        needs += line.of;
    Change change(u"Ordered%1 for %2"_s.arg(named(order.supplier), tagsOf(needs)));
    Pieces pieces(change, maker);
    for (const OrderNeed &of : needs)
        pieces.move(of, [&](Need &need) {
            need.state = NeedState::Ordered;
            need.supplier = order.supplier;
            if (due.isValid())
                need.due = due;
        });
    pieces.finish();
    return change;
}

Change orderArrived(const UnderWay &order, Maker maker)
{
    Change change(u"Arrived%1 for %2"_s.arg(named(order.supplier), tagsOf(order.needs)));
    Pieces pieces(change, maker);
    for (const OrderNeed &of : order.needs)
        pieces.move(of, [](Need &need) { need.state = NeedState::Here; });
    pieces.finish();
    return change;
}

Change takeFromShelf(const QList<ShelfPick> &picks, Maker maker)
{
    QList<OrderNeed> needs;
    for (const ShelfPick &pick : picks)
        needs << pick.of;
    Change change(u"From the shelf for %1"_s.arg(tagsOf(needs)));
    Pieces pieces(change, maker);
    QHash<Id<Batch>, Batch> left;
    for (const ShelfPick &pick : picks) {
        pieces.move(pick.of, [&](Need &need) {
            need.state = NeedState::Here;
            need.part = pick.part.id;
            need.batch = pick.batch.id;
            if (pick.batch.unitCost)
                need.price = pick.batch.unitCost;
        });
        Batch &batch = left.contains(pick.batch.id) ? left[pick.batch.id] : *left.insert(pick.batch.id, pick.batch);
        batch.left = std::max(0, batch.left - pick.of.pieces);
    }
    pieces.finish();
    for (const ShelfPick &pick : picks)
        if (left.contains(pick.batch.id))
            change.edit(pick.batch, left.take(pick.batch.id));
    return change;
}

} // namespace ts
