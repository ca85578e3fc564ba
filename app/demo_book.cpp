#include "app/demo_book.h"

#include "model/demo/demo.h"
#include "model/store/discard.h"
#include "model/store/store.h"

namespace ts {

Expected<QString> makeDemoBook(const QString &book, const DemoWish &wish, const Progress &progress)
{
    const auto address = BookAddress::parse(book);
    if (!address)
        return address.trouble();
    SetClock clock(QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC)); // the demo's own day, so that it is the same every time
    IdMaker ids(clock, wish.seed);
    auto store = Store::create(*address, clock.now(), QStringLiteral("demo"));
    if (!store)
        return store.trouble();
    Expected<void> made;
    QString name;
    {
        Desk desk(*std::move(store), ids);
        name = desk.name();
        made = wish.units > 0 ? makeBulk(desk, clock, wish.units, wish.seed, progress) : playDemo(desk, clock, progress);
    }
    if (made)
        return name;
    if (auto gone = discardNewBook(*address); !gone) {
        const Trouble why = made.trouble();
        return Trouble{why.did, why.wrong, QStringLiteral("what was made of it is still in %1; remove it by hand").arg(name)};
    }
    return made.trouble();
}

} // namespace ts
