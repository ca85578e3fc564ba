#include "views/parts/part_rows.h"

#include "model/values/plain_text.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>

namespace ts {

namespace {

QString tr(const char *text, int n = -1)
{
    return QCoreApplication::translate("ts", text, nullptr, n);
}

Tone toneOf(NeedState state)
{
    switch (state) {
    case NeedState::Ordered:
        return Tone::Hint;
    case NeedState::Here:
        return Tone::TooClose;
    case NeedState::Fitted:
        return Tone::Within;
    case NeedState::Needed:
        break;
    }
    return Tone::Neutral;
}

GridRow recordRow(const Need &need, QDate today)
{
    GridRow row;
    row.key = need.id.value;
    GridCell part = typedCell(need.text);
    part.strong = true;
    GridCell price = need.price ? typedCell(shown::money(*need.price), shown::amount(*need.price)) : typedCell({});
    GridCell sum = need.price && need.quantity != 1 ? shownCell(shown::money(need.price->times(need.quantity))) : shownCell({});
    sum.quiet = true;
    GridCell state = typedCell(needStateText(need.state), toWord(need.state));
    state.pill = toneOf(need.state);
    state.tip = tr("since %1").arg(shown::dayAndTime(need.stateSince.isValid() ? need.stateSince : need.at));
    GridCell due = need.due.isValid() ? typedCell(shown::day(need.due, today), need.due.toString(Qt::ISODate)) : typedCell({});
    if (need.due.isValid() && need.due < today && need.state <= NeedState::Ordered)
        due.second = tr("overdue");
    row.cells = {part,  typedCell(shown::count(need.quantity)), price, sum, state, typedCell(need.position), typedCell(need.oldValue),
                 typedCell(need.supplier), due};
    return row;
}

QString groupTitle(NeedState state)
{
    switch (state) {
    case NeedState::Needed:
        return tr("Needed");
    case NeedState::Ordered:
        return tr("Ordered");
    case NeedState::Here:
        return tr("Here");
    case NeedState::Fitted:
        break;
    }
    return tr("Fitted");
}

Expected<Money> priceOf(const QString &typed, const Currency &bench)
{
    auto price = shown::parseMoney(typed, bench);
    if (price && price->minor() < 0)
        return Trouble{tr("A part has no price below nothing"), {}, tr("leave the price empty where it is not known")};
    return price;
}

} // namespace

QList<GridColumn> partColumns()
{
    GridColumn state{.title = tr("State"), .width = 8};
    for (const auto &[value, word] : Words<NeedState>::list) {
        const QString text = needStateText(value);
        state.choices << GridChoice{QString::fromLatin1(word), text, text.at(0).toLower()};
    }
    return {{.title = tr("Part"), .width = 20, .stretch = 4},    {.title = tr("Pieces"), .width = 6, .right = true},
            {.title = tr("Price each"), .width = 9, .right = true}, {.title = tr("Sum"), .width = 8, .right = true},
            state,                                               {.title = tr("Position"), .width = 8, .stretch = 1},
            {.title = tr("Old value"), .width = 9, .stretch = 1}, {.title = tr("Supplier"), .width = 9, .stretch = 1},
            {.title = tr("Due"), .width = 8}};
}

QList<GridRow> partRows(const UnitFile &file, const Currency &bench, QDate today)
{
    QList<GridRow> rows;
    for (const NeedTotal &total : needTotals(file, bench)) {
        if (total.lines == 0)
            continue;
        GridRow head{.kind = GridRowKind::Group, .key = {}, .name = toWord(total.state), .cells = {shownCell(groupTitle(total.state))}};
        head.cells.first().after = needTotalText(total);
        rows << head;
        for (const Need &need : file.all<Need>())
            if (need.state == total.state)
                rows << recordRow(need, today);
    }
    GridCell adding = typedCell(tr("Add a part: belt 78x4x0.6 2.50"), {});
    adding.quiet = true;
    adding.spoken = tr("Add a part");
    rows << GridRow{.kind = GridRowKind::Adding, .key = {}, .name = QStringLiteral("part"), .cells = {adding}};
    return rows;
}

QString needStateText(NeedState state)
{
    switch (state) {
    case NeedState::Needed:
        return tr("needed");
    case NeedState::Ordered:
        return tr("ordered");
    case NeedState::Here:
        return tr("here");
    case NeedState::Fitted:
        break;
    }
    return tr("fitted");
}

QString needTotalText(const NeedTotal &total)
{
    QStringList words;
    if (total.lines > 0)
        words << (total.lines == 1 ? tr("1 line") : tr("%n lines", total.lines));
    for (const Money &sum : total.sums)
        words << shown::money(sum);
    if (total.unpriced > 0)
        words << tr("%n without a price", total.unpriced);
    return words.join(QStringLiteral(" · "));
}

Need movedNeed(const Need &before, NeedState state, const QDateTime &now)
{
    Need after = before;
    if (after.state == state)
        return after;
    after.state = state;
    after.stateSince = now;
    return after;
}

Expected<Need> editedNeed(const Need &before, PartColumn column, const QString &typed, const Currency &bench, const QDateTime &now)
{
    Need after = before;
    const auto text = plainText(typed, tr("The text"), shortText);
    if (!text)
        return text.trouble();
    switch (column) {
    case PartColumn::Part:
        if (text->isEmpty())
            return Trouble{tr("A part needs a name"), {}, tr("take the line off the list instead")};
        after.text = *text;
        break;
    case PartColumn::Quantity: {
        const auto pieces = typed::whole(typed, tr("number of pieces"), 1, 9999);
        if (!pieces)
            return pieces.trouble();
        after.quantity = *pieces;
        break;
    }
    case PartColumn::Each: {
        after.price.reset();
        if (typed.isEmpty())
            break;
        const auto price = priceOf(typed, bench);
        if (!price)
            return price.trouble();
        after.price = *price;
        break;
    }
    case PartColumn::State:
        return movedNeed(before, fromWord<NeedState>(typed).value_or(before.state), now);
    case PartColumn::Position:
        after.position = *text;
        break;
    case PartColumn::OldValue:
        after.oldValue = *text;
        break;
    case PartColumn::Supplier:
        after.supplier = *text;
        break;
    case PartColumn::Due: {
        const auto day = typed::dayOrNone(typed, now.toLocalTime().date());
        if (!day)
            return day.trouble();
        after.due = *day;
        break;
    }
    case PartColumn::Sum:
        break;
    }
    return after;
}

} // namespace ts
