#include "views/store/batch_rows.h"

#include "model/money/donor.h"
#include "model/records/tag_text.h"
#include "model/values/plain_text.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

Expected<Id<Unit>> donorNamed(Desk &desk, const QString &typed)
{
    bool ok = false;
    const int tag = typed.toInt(&ok);
    if (!ok || tag <= 0)
        return Trouble{tr("“%1” is no tag").arg(typed), tr("a donor is named by its tag, such as 0022"), {}};
    return desk.unitByTag(tag);
}

/// What the batch takes of its donor's cost: no more than is left on it beside the other batches.
Expected<void> takeCost(Batch &batch, Desk &desk, const Currency &currency)
{
    if (batch.donor.isNull() || !batch.unitCost || batch.quantity < 1)
        return {};
    const auto file = desk.unitFile(batch.donor);
    if (!file)
        return file.trouble();
    auto others = desk.list<Batch>(u"donor"_s, batch.donor.text());
    if (!others)
        return others.trouble();
    others->removeIf([&](const Batch &each) { return each.id == batch.id; });
    const auto taken = takeFromDonor(donorOf(*file, *others, currency).left, *batch.unitCost, batch.quantity);
    if (!taken)
        return taken.trouble();
    batch.unitCost = taken->each;
    return {};
}

Expected<Money> costOf(const QString &typed, const Currency &currency)
{
    auto cost = shown::parseMoney(typed, currency);
    if (cost && cost->minor() < 0)
        return Trouble{tr("A part has no cost below nothing"), {}, tr("leave it empty where it is not known")};
    return cost;
}

} // namespace

QList<GridColumn> batchColumns()
{
    return {{.title = tr("Pieces"), .width = 6, .right = true},   {.title = tr("Left"), .width = 5, .right = true},
            {.title = tr("Each"), .width = 7, .right = true},     {.title = tr("Bought"), .width = 8},
            {.title = tr("Supplier"), .width = 10, .stretch = 2}, {.title = tr("Where"), .width = 8, .stretch = 1},
            {.title = tr("From donor"), .width = 8},              {.title = tr("Tested"), .width = 8, .stretch = 1}};
}

QList<GridRow> batchRows(const QList<Batch> &batches, const QHash<Id<Unit>, int> &tags, QDate today)
{
    QList<GridRow> rows;
    for (const Batch &batch : batches) {
        GridRow row;
        row.key = batch.id.value;
        row.cells = {typedCell(shown::count(batch.quantity)), typedCell(shown::count(batch.left)),
                     batch.unitCost ? typedCell(shown::money(*batch.unitCost), shown::amount(*batch.unitCost)) : typedCell({}),
                     batch.boughtOn.isValid() ? typedCell(shown::day(batch.boughtOn, today), batch.boughtOn.toString(Qt::ISODate)) : typedCell({}),
                     typedCell(batch.supplier), typedCell(batch.place),
                     batch.donor.isNull() ? typedCell({}) : typedCell(tagText(tags.value(batch.donor))), typedCell(batch.tested)};
        rows << row;
    }
    GridCell adding = typedCell(tr("Add a batch: 10 at 0.12 from a supplier, or from 0022"), {});
    adding.quiet = true;
    adding.spoken = tr("Add a batch");
    rows << GridRow{.kind = GridRowKind::Adding, .key = {}, .name = u"batch"_s, .cells = {adding}};
    return rows;
}

Expected<Batch> editedBatch(const Batch &before, BatchColumn column, const QString &typed, Desk &desk, const Currency &currency, QDate today)
{
    const auto text = plainText(typed, tr("The text"), shortText);
    if (!text)
        return text.trouble();
    Batch after = before;
    switch (column) {
    case BatchColumn::Pieces: {
        const auto pieces = typed::whole(typed, tr("number of pieces"), 1, 999999);
        if (!pieces)
            return pieces.trouble();
        after.left = qBound(0, after.left + *pieces - after.quantity, *pieces);
        after.quantity = *pieces;
        break;
    }
    case BatchColumn::Left: {
        const auto left = typed::whole(typed, tr("number of pieces"), 0, after.quantity);
        if (!left)
            return left.trouble();
        after.left = *left;
        return after;
    }
    case BatchColumn::Each: {
        after.unitCost.reset();
        if (typed.isEmpty())
            break;
        const auto cost = costOf(typed, currency);
        if (!cost)
            return cost.trouble();
        after.unitCost = *cost;
        break;
    }
    case BatchColumn::Bought: {
        const auto day = typed::dayOrNone(typed, today);
        if (!day)
            return day.trouble();
        after.boughtOn = *day;
        return after;
    }
    case BatchColumn::Supplier:
        after.supplier = *text;
        return after;
    case BatchColumn::Place:
        after.place = *text;
        return after;
    case BatchColumn::Donor: {
        after.donor = {};
        if (text->isEmpty())
            break;
        const auto donor = donorNamed(desk, *text);
        if (!donor)
            return donor.trouble();
        after.donor = *donor;
        break;
    }
    case BatchColumn::Tested:
        after.tested = *text;
        return after;
    }
    if (auto taken = takeCost(after, desk, currency); !taken)
        return taken.trouble();
    return after;
}

Expected<Batch> typedBatch(const QString &line, Batch fresh, Desk &desk, const Currency &currency, QDate today)
{
    const auto text = plainText(line, tr("The line"), shortText);
    if (!text)
        return text.trouble();
    static const QRegularExpression form(u"^(\\d{1,6})(?:\\s*[x×*])?(?:\\s+at\\s+(\\S+))?(?:\\s+from\\s+(.+?))?$"_s);
    const auto match = form.match(*text);
    if (!match.hasMatch() || match.captured(1).toInt() < 1)
        return Trouble{tr("“%1” is no batch").arg(*text), {}, tr("write it as in “10 at 0.12”, “2 at 4.00 from 0022” or “10 from a supplier”")};
    fresh.quantity = fresh.left = match.captured(1).toInt();
    fresh.boughtOn = today;
    if (!match.captured(2).isEmpty()) {
        const auto cost = costOf(match.captured(2), currency);
        if (!cost)
            return cost.trouble();
        fresh.unitCost = *cost;
    }
    static const QRegularExpression tag(u"^\\d{1,6}$"_s);
    if (tag.match(match.captured(3)).hasMatch()) {
        const auto donor = donorNamed(desk, match.captured(3));
        if (!donor)
            return donor.trouble();
        fresh.donor = *donor;
        if (auto taken = takeCost(fresh, desk, currency); !taken)
            return taken.trouble();
    } else {
        fresh.supplier = match.captured(3);
    }
    return fresh;
}

} // namespace ts
