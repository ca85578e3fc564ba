#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"
#include "model/sums/parts/part_fit.h"

namespace ts {

/// A need and whose it is: what an order is made up from.
struct OrderNeed {
    Need need;
    int tag = 0;
    QString unitName;
    Stage stage = Stage::Bench;
    int pieces = 1; ///< of the need, those that this line is about
};

/// So many pieces for a need that lie on the shelf.
struct ShelfPick {
    OrderNeed of;
    Part part;
    Batch batch;
    int donorTag = 0; ///< of the unit it was taken from; 0: it was bought
    QString place;
};

/// One line of an order: the same part, for one unit or several.
struct OrderLine {
    QString text;
    QString rating; ///< what has to be held to, one line
    int pieces = 0;
    std::optional<Money> each;
    QList<OrderNeed> of;
    QStringList look; ///< what of the shelf might do, but has to be looked at first
};

/// A unit beside an order: freed by it, or waiting for something else as well.
struct OrderUnit {
    Id<Unit> id;
    int tag = 0;
    QString name;
    QStringList alsoWaits; ///< empty: nothing else is awaited once this order is here
    bool underWay = false; ///< something of `alsoWaits` is ordered already
};

/// What is to be ordered from one supplier, and what that frees.
struct SupplierOrder {
    QString supplier; ///< empty: nobody is named
    QList<OrderLine> lines;
    QList<OrderUnit> frees;
    QList<OrderUnit> helps; ///< units that wait for more than this order
    QList<Money> sums;      ///< one a currency
    int unpriced = 0;       ///< lines without a price: in no sum
};

/// What was ordered and is not here.
struct UnderWay {
    QString supplier;
    QList<OrderNeed> needs; ///< soonest due first
};

/// Everything that the waiting units need: from the shelf and from donors first, the rest in one order a supplier.
struct OrderList {
    QList<ShelfPick> shelf;
    QList<OrderUnit> shelfFrees; ///< units that wait for nothing that is not on the shelf
    QList<SupplierOrder> orders; ///< what frees most units first, then what has most lines
    QList<UnderWay> underWay;
    [[nodiscard]] bool isEmpty() const { return shelf.isEmpty() && orders.isEmpty() && underWay.isEmpty(); }
};

/// Where the pieces of a need come from in the batches of one part: a donor's first, then the oldest; fewer where less is left.
[[nodiscard]] QList<ShelfPick> picksFrom(const OrderNeed &of, const Part &part, const QList<Batch> &batches);

/// Works the list out. `needs` are those of the units to order for, in the order in which the shelf serves them; those that are here
/// or fitted count for nothing. What the shelf surely fits (FitWord::Fits) is not ordered; of several parts that fit, a donor's
/// comes first, then the oldest batch. A supplier is the need's own, else that of a part in the store that would fit.
[[nodiscard]] OrderList orderList(const QList<OrderNeed> &needs, const QList<Part> &parts, const QList<Batch> &batches, const QHash<Id<Unit>, int> &donorTags = {});

/// The waiting needs among all, in the order of the rack: the bench first, then what is held, the oldest need first.
[[nodiscard]] QList<OrderNeed> waitingNeeds(const QList<Need> &needs, const QList<Unit> &units);

/// The change that marks an order as placed: its needs are ordered from that supplier, due that day (an invalid one: not known). Of a
/// need of which the shelf has some pieces only, the rest is ordered as a need of its own.
[[nodiscard]] Change placeOrder(const SupplierOrder &order, QDate due, Maker maker);
/// The change that says that these needs have arrived: they are here, and their units hang where what moved last hangs.
[[nodiscard]] Change orderArrived(const UnderWay &order, Maker maker);
/// The change that takes what the shelf has for the waiting units: the needs are here, with part, batch and what it cost, and the
/// batches have less left.
[[nodiscard]] Change takeFromShelf(const QList<ShelfPick> &picks, Maker maker);

} // namespace ts
