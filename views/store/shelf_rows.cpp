#include "views/store/shelf_rows.h"

#include "model/values/plain_text.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

QString tr(const char *text, int n = -1)
{
    return QCoreApplication::translate("ts", text, nullptr, n);
}

QString oneLine(const QString &rating)
{
    return QString(rating).replace(u'\n', u", "_s);
}

GridRow rowOf(const Part &part, const QList<Batch> &batches, const PartMatch &match)
{
    int left = 0;
    std::optional<Money> cost;
    QStringList places;
    for (const Batch &batch : batches) {
        if (batch.part != part.id || batch.removed)
            continue;
        left += batch.left;
        if (batch.left > 0 && batch.unitCost)
            cost = batch.unitCost; // the newest that is left
        if (batch.left > 0 && !batch.place.isEmpty() && batch.place != part.place && !places.contains(batch.place))
            places << batch.place;
    }
    GridRow row;
    row.key = part.id.value;
    GridCell name = typedCell(part.name);
    name.strong = true;
    if (match.match == Match::NotSaid)
        name.second = tr("not recorded: %1").arg(match.notSaid.join(u", "_s));
    GridCell pieces = shownCell(shown::count(left));
    if (part.minimumStock && left < *part.minimumStock) {
        pieces.pill = Tone::Outside;
        pieces.tip = tr("Below what you keep at least");
        pieces.spoken = tr("%1, below what you keep at least").arg(pieces.text);
    }
    GridCell place = typedCell(part.place);
    place.second = places.join(u", "_s);
    row.cells = {name, typedCell(part.kind), typedCell(oneLine(part.rating)), pieces, part.minimumStock ? typedCell(shown::count(*part.minimumStock)) : typedCell({}),
                 shownCell(cost ? shown::money(*cost) : QString()), place, typedCell(part.supplier)};
    return row;
}

/// The rating with everything that a line says beside it; refused where a word of it is not understood.
Expected<QString> readRating(const Part &part, const QString &typed)
{
    const ReadRating own = ratingOfPart(part);
    Rating rating;
    for (const QString &piece : typed.split(u',', Qt::SkipEmptyParts)) {
        const Rating line = ratingOfLines(piece, own.kind);
        const QString key = line.values.isEmpty() ? QString() : line.values.first().key;
        if (own.kind && !own.kind->field(key) && !ratingOfLines(part.rating, own.kind).find(key)) {
            const ReadRating words = ratingInText(piece, own.kind);
            if (!words.rest.isEmpty())
                return Trouble{tr("“%1” is no rating of a %2").arg(words.rest.first(), own.kind->name), {}, tr("write it as in “voltage 63 V, diameter 10 mm”")};
            for (const RatingValue &value : words.rating.values)
                rating.put(value);
            continue;
        }
        for (const RatingValue &value : line.values)
            rating.put(value);
    }
    return rating.lines();
}

} // namespace

QList<GridColumn> shelfColumns()
{
    GridColumn kind{.title = tr("Kind"), .width = 11, .stretch = 1};
    kind.completions = [] {
        QStringList names;
        for (const PartKind &each : partKinds())
            names << each.name;
        return names;
    };
    return {{.title = tr("Part"), .width = 18, .stretch = 3},       kind,
            {.title = tr("Rating"), .width = 20, .stretch = 4},     {.title = tr("Left"), .width = 5, .right = true},
            {.title = tr("Keep at least"), .width = 9, .right = true}, {.title = tr("Each"), .width = 7, .right = true},
            {.title = tr("Where"), .width = 9, .stretch = 1},       {.title = tr("Supplier"), .width = 12, .stretch = 1}};
}

QList<GridRow> shelfRows(const QList<Part> &parts, const QList<Batch> &batches, const PartWish &wish, bool shortOnly)
{
    struct Found {
        const Part *part;
        PartMatch match;
    };
    QList<Found> found;
    for (const Part &part : parts) {
        if (shortOnly && !(part.minimumStock && leftOf(part.id, batches) < *part.minimumStock))
            continue;
        if (PartMatch match = matches(part, wish); match.match != Match::No)
            found << Found{&part, std::move(match)};
    }
    std::stable_sort(found.begin(), found.end(), [](const Found &a, const Found &b) {
        if (a.match.match != b.match.match)
            return a.match.match < b.match.match;
        if (const int kind = QString::localeAwareCompare(a.part->kind, b.part->kind); kind != 0)
            return kind < 0;
        return QString::localeAwareCompare(a.part->name, b.part->name) < 0;
    });
    QList<GridRow> rows;
    for (const Found &each : found)
        rows << rowOf(*each.part, batches, each.match);
    GridCell adding = typedCell(tr("Write a part down: 10 × capacitor 100 µF 63 V at 0.12 in drawer C3"), {});
    adding.quiet = true;
    adding.spoken = tr("Write a part down");
    rows << GridRow{.kind = GridRowKind::Adding, .key = {}, .name = u"part"_s, .cells = {adding}};
    return rows;
}

Expected<Part> editedPart(const Part &before, ShelfColumn column, const QString &typed)
{
    const auto text = plainText(typed, tr("The text"), shortText);
    if (!text)
        return text.trouble();
    Part after = before;
    switch (column) {
    case ShelfColumn::Name:
        if (text->isEmpty())
            return Trouble{tr("A part needs a name"), {}, tr("take it off the shelf instead")};
        after.name = *text;
        break;
    case ShelfColumn::Kind:
        after.kind = *text;
        break;
    case ShelfColumn::Rating: {
        const auto rating = readRating(before, *text);
        if (!rating)
            return rating.trouble();
        after.rating = *rating;
        break;
    }
    case ShelfColumn::Minimum: {
        const auto least = typed::wholeOrNone(typed, tr("number of pieces"), 0, 999999);
        if (!least)
            return least.trouble();
        after.minimumStock = *least;
        break;
    }
    case ShelfColumn::Place:
        after.place = *text;
        break;
    case ShelfColumn::Supplier:
        after.supplier = *text;
        break;
    case ShelfColumn::Left:
    case ShelfColumn::Each:
        break;
    }
    return after;
}

Expected<Change> storedPart(const QString &line, const Currency &currency, QDate today, Maker maker, QUuid &id)
{
    const auto clean = plainText(line, tr("The line"), shortText);
    if (!clean)
        return clean.trouble();
    static const QRegularExpression form(u"^(?:(\\d{1,6})\\s*[x×*]\\s+)?(.+?)(?:\\s+at\\s+(\\S+))?(?:\\s+in\\s+(.+))?$"_s);
    const auto match = form.match(*clean);
    Part part = maker.fresh<Part>();
    id = part.id.value;
    part.name = match.captured(2);
    part.place = match.captured(4);
    if (const ReadRating read = ratingInText(part.name); read.kind) {
        part.kind = read.kind->name;
        part.rating = read.rating.lines();
    }
    Batch batch = maker.fresh<Batch>();
    batch.part = part.id;
    batch.quantity = match.captured(1).isEmpty() ? 1 : match.captured(1).toInt();
    batch.left = batch.quantity;
    batch.boughtOn = today;
    if (!match.captured(3).isEmpty()) {
        const auto price = shown::parseMoney(match.captured(3), currency);
        if (!price)
            return price.trouble();
        batch.unitCost = *price;
    }
    return Change(tr("Into the parts store: %1 × %2").arg(shown::count(batch.quantity), part.name)).add(part).add(batch);
}

QList<GridColumn> ratingColumns()
{
    return {{.title = tr("Rating"), .width = 16, .stretch = 1}, {.title = tr("Value"), .width = 14, .stretch = 1, .down = true}};
}

QList<GridRow> ratingRows(const Part &part)
{
    const ReadRating read = ratingOfPart(part);
    const Rating own = ratingOfLines(part.rating, read.kind);
    QList<GridRow> rows;
    const auto add = [&](const QString &key, const QString &hint) {
        const RatingValue *value = own.find(key);
        const RatingValue *named = value ? value : read.rating.find(key);
        GridCell cell = typedCell(named ? named->text() : QString());
        cell.hint = hint;
        cell.quiet = named && !value; // the name of the part says it
        if (cell.quiet)
            cell.tip = tr("from the part's name");
        rows << GridRow{.kind = GridRowKind::Record, .key = QUuid::createUuidV5(part.id.value, key), .name = key, .cells = {shownCell(key), cell}};
    };
    if (read.kind)
        for (const RatingField &field : read.kind->fields)
            add(field.key, field.isWord() ? field.words.join(u", "_s) : field.measure);
    for (const RatingValue &value : own.values)
        if (!read.kind || !read.kind->field(value.key))
            add(value.key, {});
    return rows;
}

Expected<Part> ratedPart(const Part &before, const QString &key, const QString &typed)
{
    const auto text = plainText(typed, tr("The text"), shortText);
    if (!text)
        return text.trouble();
    const PartKind *kind = ratingOfPart(before).kind;
    Rating rating = ratingOfLines(before.rating, kind);
    const RatingField *field = kind ? kind->field(key) : nullptr;
    const RatingField other{key, {}, {}, RatingRule::Remark, 0, {}};
    const auto value = typedRating(field ? *field : other, *text);
    if (!value)
        return value.trouble();
    rating.put(*value);
    Part after = before;
    after.rating = rating.lines();
    return after;
}

} // namespace ts
