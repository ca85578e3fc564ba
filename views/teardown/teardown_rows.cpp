#include "views/teardown/teardown_rows.h"

#include "model/values/plain_text.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>

#include <algorithm>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

QString besideFasteners(const TeardownItem &item)
{
    QStringList more{item.springs, item.connectors};
    more.removeAll(QString());
    return more.join(QStringLiteral(", "));
}

GridRow recordRow(const TeardownItem &item, TeardownWay way)
{
    GridCell number = shownCell(shown::count(item.position));
    number.tick = way == TeardownWay::Apart ? item.state != TeardownState::On : item.state == TeardownState::Back;
    number.spoken = way == TeardownWay::Apart ? (*number.tick ? tr("%1, came off") : tr("%1, still on")).arg(number.text) : (*number.tick ? tr("%1, back") : tr("%1, still off")).arg(number.text);
    GridCell what = typedCell(item.what);
    what.strong = true;
    what.quiet = item.state == TeardownState::On;
    what.struck = item.state == TeardownState::LeftOut;
    if (item.state == TeardownState::LeftOut)
        what.second = item.leftOutBecause.isEmpty() ? tr("left out") : tr("left out: %1").arg(item.leftOutBecause);
    else if (item.state == TeardownState::On)
        what.second = tr("still on");
    else if (way == TeardownWay::Apart && item.state == TeardownState::Back)
        what.second = tr("back again");
    GridCell fasteners = typedCell(item.fasteners);
    fasteners.second = besideFasteners(item);
    return {.key = item.id.value, .cells = {number, what, fasteners, typedCell(item.keptIn)}};
}

GridRow detailRow(const QString &word, const QString &value, TeardownDetail detail)
{
    GridCell name = shownCell(word);
    name.quiet = true;
    return {.name = QString::number(static_cast<int>(detail)), .cells = {name, typedCell(value)}};
}

} // namespace

QList<TeardownItem> inOrder(const UnitFile &file)
{
    QList<TeardownItem> items;
    for (const TeardownItem &item : file.all<TeardownItem>())
        if (!item.removed)
            items << item;
    std::stable_sort(items.begin(), items.end(), [](const TeardownItem &a, const TeardownItem &b) { return a.position < b.position; });
    return items;
}

QList<GridColumn> teardownColumns(TeardownWay way)
{
    return {{.title = way == TeardownWay::Apart ? tr("Off") : tr("Back"), .width = 5},
            {.title = tr("What came off"), .width = 10, .stretch = 5},
            {.title = tr("Fasteners"), .width = 10, .stretch = 5},
            {.title = tr("Kept in"), .width = 7, .stretch = 2}};
}

QList<GridRow> teardownRows(const UnitFile &file, TeardownWay way)
{
    QList<TeardownItem> items = inOrder(file);
    if (way == TeardownWay::Back)
        std::reverse(items.begin(), items.end());
    QList<GridRow> rows;
    for (const TeardownItem &item : items)
        if (way == TeardownWay::Apart || item.state != TeardownState::On)
            rows << recordRow(item, way);
    if (way == TeardownWay::Back)
        return rows;
    GridCell adding = typedCell(tr("Came off: lid 5 screws M3x8 tray A1"), {});
    adding.quiet = true;
    adding.spoken = tr("Add what came off");
    rows << GridRow{.kind = GridRowKind::Adding, .name = QStringLiteral("off"), .cells = {shownCell({}), adding}};
    return rows;
}

QList<GridColumn> detailColumns()
{
    return {{.title = tr("More of it"), .width = 14, .stretch = 1}, {.title = tr("As noted"), .width = 12, .stretch = 2}};
}

QList<GridRow> detailRows(const TeardownItem &item)
{
    return {detailRow(tr("Number of fasteners"), item.fastenerCount ? shown::count(*item.fastenerCount) : QString(), TeardownDetail::Count),
            detailRow(tr("Connectors: ways, key side, colours"), item.connectors, TeardownDetail::Connectors),
            detailRow(tr("Springs and washers"), item.springs, TeardownDetail::Springs),
            detailRow(tr("Marked before it was moved"), item.marks, TeardownDetail::Marks),
            detailRow(tr("Caution"), item.caution, TeardownDetail::Caution)};
}

Expected<TeardownItem> editedItem(const TeardownItem &before, TeardownColumn column, const QString &typed)
{
    const auto text = plainText(typed, tr("The text"), shortText);
    if (!text)
        return text.trouble();
    TeardownItem after = before;
    if (column == TeardownColumn::What) {
        if (text->isEmpty())
            return Trouble{tr("What came off needs a name"), {}, tr("Delete takes it off the list")};
        after.what = *text;
    } else if (column == TeardownColumn::Fasteners) {
        after.fasteners = *text;
        if (*text != before.fasteners)
            after.fastenerCount.reset(); // it was of the text before
    } else if (column == TeardownColumn::KeptIn) {
        after.keptIn = *text;
    }
    return after;
}

Expected<TeardownItem> editedDetail(const TeardownItem &before, TeardownDetail detail, const QString &typed)
{
    const auto text = plainText(typed, tr("The text"), longText);
    if (!text)
        return text.trouble();
    TeardownItem after = before;
    switch (detail) {
    case TeardownDetail::Count: {
        const auto count = typed::wholeOrNone(typed, tr("number of fasteners"), 0, 999);
        if (!count)
            return count.trouble();
        after.fastenerCount = *count;
        break;
    }
    case TeardownDetail::Connectors:
        after.connectors = *text;
        break;
    case TeardownDetail::Springs:
        after.springs = *text;
        break;
    case TeardownDetail::Marks:
        after.marks = *text;
        break;
    case TeardownDetail::Caution:
        after.caution = *text;
        break;
    }
    return after;
}

TeardownItem tickedItem(const TeardownItem &before, TeardownWay way, bool ticked, const QDateTime &now)
{
    TeardownItem after = before;
    after.backAt = {};
    after.leftOutBecause.clear();
    if (way == TeardownWay::Apart) {
        after.state = ticked ? TeardownState::Off : TeardownState::On;
    } else {
        after.state = ticked ? TeardownState::Back : TeardownState::Off;
        if (ticked)
            after.backAt = now;
    }
    return after;
}

} // namespace ts
