#include "model/money/year_books.h"

#include "model/sums/spent.h"

#include <algorithm>

namespace ts {

namespace {

QDate dayOf(const Spend &spend)
{
    return spend.paidOn.isValid() ? spend.paidOn : spend.at.toUTC().date();
}

void addTo(std::optional<Money> &sum, const Money &money)
{
    sum = sum ? *sum + money : money;
}

/// The stock book's line of a unit, from all its spends and needs of whatever year.
StockLine stockLine(const Unit &unit, const QList<const Spend *> &spends, const QList<const Need *> &needs, const BooksInput &input)
{
    StockLine line;
    line.tag = unit.tag;
    line.unit = unit.id;
    line.name = unit.name;
    line.serial = unit.serial;
    line.costs = Money(0, input.currency);
    for (const Spend *spend : spends) {
        const auto worth = inCurrency(*spend, input.currency);
        const QDate day = dayOf(*spend);
        if (spend->kind == SpendKind::Purchase && spend->flow == Flow::Out) {
            if (!line.boughtOn.isValid() || day < line.boughtOn)
                line.boughtOn = day;
            if (line.from.isEmpty())
                line.from = input.contacts.value(spend->contact);
            if (worth)
                addTo(line.bought, *worth);
        } else if (spend->kind == SpendKind::Sale && spend->flow == Flow::In) {
            line.goneOn = day;
            if (const QString to = spend->channel.isNull() ? input.contacts.value(spend->contact) : input.channels.value(spend->channel); !to.isEmpty())
                line.to = to;
            if (worth)
                addTo(line.sold, *worth);
        } else if (worth && spend->kind == SpendKind::Refund && spend->flow == Flow::Out && line.sold) {
            addTo(line.sold, -*worth); // given back to the buyer
        } else if (worth) {
            line.costs += spendSign(*spend) > 0 ? *worth : spendSign(*spend) < 0 ? -*worth : Money(0, input.currency);
        }
    }
    for (const Need *need : needs)
        if (need->state != NeedState::Needed)
            if (const auto worth = inCurrency(*need, input.currency))
                line.costs += *worth;
    if (!line.boughtOn.isValid())
        line.boughtOn = unit.at.toUTC().date();
    if (unit.stage == Stage::Closed) {
        line.how = unit.outcome ? toWord(*unit.outcome) : QStringLiteral("closed");
        if (!line.goneOn.isValid())
            line.goneOn = unit.stageSince.toUTC().date();
    } else if (line.sold) {
        line.how = QStringLiteral("sold");
    }
    if (line.sold) {
        Money tax(0, input.currency);
        if (line.bought && (line.rate = input.rates.on(line.goneOn))) {
            line.margin = marginTax(*line.bought, *line.sold, *line.rate);
            tax = line.margin->tax;
        }
        line.profit = *line.sold - line.bought.value_or(Money(0, input.currency)) - line.costs - tax;
    }
    return line;
}

bool inYear(const QDate &day, int year)
{
    return year == 0 || day.year() == year;
}

} // namespace

YearBooks yearBooks(int year, const BooksInput &input)
{
    const Money none(0, input.currency);
    YearBooks books{.year = year, .currency = input.currency, .lines = {}, .stock = {}, .out = none, .in = none, .byKind = {}, .withoutRate = 0, .margin = none, .tax = none, .stockAtCost = none};
    QHash<Id<Unit>, const Unit *> units;
    for (const Unit &unit : input.units)
        units.insert(unit.id, &unit);
    QHash<Id<Unit>, QList<const Spend *>> spends;
    QHash<Id<Unit>, QList<const Need *>> needs;
    for (const Need &need : input.needs)
        needs[need.unit] << &need;
    QMap<int, Money> byKind;
    for (const Spend &spend : input.spends) {
        spends[spend.unit] << &spend;
        if (!inYear(dayOf(spend), year))
            continue;
        BookLine line{.day = dayOf(spend), .tag = 0, .unitId = spend.unit, .spend = spend.id, .unit = {}, .text = spend.text, .with = spend.channel.isNull() ? input.contacts.value(spend.contact) : input.channels.value(spend.channel),
                      .kind = spend.kind, .flow = spend.flow, .amount = spend.amount.value_or(none), .worth = inCurrency(spend, input.currency)};
        if (const Unit *unit = units.value(spend.unit)) {
            line.tag = unit->tag;
            line.unit = unit->name;
        }
        if (line.worth) {
            (line.flow == Flow::Out ? books.out : books.in) += *line.worth;
            const bool income = line.kind == SpendKind::Sale || line.kind == SpendKind::Deposit;
            byKind[static_cast<int>(line.kind)] += (line.flow == Flow::Out) == income ? -*line.worth : *line.worth;
        } else {
            ++books.withoutRate;
        }
        books.lines << line;
    }
    std::stable_sort(books.lines.begin(), books.lines.end(), [](const BookLine &a, const BookLine &b) { return a.day < b.day; });
    for (auto it = byKind.cbegin(); it != byKind.cend(); ++it)
        books.byKind << std::pair(static_cast<SpendKind>(it.key()), it.value());

    const QDate begins(year == 0 ? 1 : year, 1, 1);
    const QDate ends(year == 0 ? 9999 : year, 12, 31);
    for (const Unit &unit : input.units) {
        if (unit.kind != UnitKind::ToSell || unit.stage == Stage::Scouted)
            continue;
        StockLine line = stockLine(unit, spends.value(unit.id), needs.value(unit.id), input);
        if (line.boughtOn > ends || (line.goneOn.isValid() && line.goneOn < begins))
            continue;
        if (line.goneOn > ends) { // still in stock then
            line.goneOn = {};
            line.how.clear();
            line.to.clear();
            line.sold.reset();
            line.rate.reset();
            line.margin.reset();
            line.profit.reset();
        }
        if (line.margin) {
            books.margin += line.margin->margin.minor() > 0 ? line.margin->margin : none;
            books.tax += line.margin->tax;
        }
        if (!line.goneOn.isValid())
            books.stockAtCost += line.bought.value_or(none) + line.costs;
        books.stock << line;
    }
    std::stable_sort(books.stock.begin(), books.stock.end(), [](const StockLine &a, const StockLine &b) { return a.boughtOn < b.boughtOn; });
    return books;
}

} // namespace ts
