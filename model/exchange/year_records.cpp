#include "model/exchange/year_records.h"

#include "model/sums/money_settings.h"

#include <algorithm>

namespace ts {

Expected<BooksInput> readBooks(Desk &desk)
{
    BooksInput input;
    std::optional<Trouble> trouble;
    const auto read = [&]<class R>(QList<R> &into) {
        if (trouble)
            return;
        auto list = desk.list<R>();
        if (list)
            into = *std::move(list);
        else
            trouble = list.trouble();
    };
    QList<Contact> contacts;
    read(input.units);
    read(input.spends);
    read(input.needs);
    read(contacts);
    const auto bench = desk.benchFile();
    if (trouble || !bench)
        return trouble ? *trouble : bench.trouble();
    for (const Contact &contact : contacts)
        input.contacts.insert(contact.id, contact.name);
    for (const Channel &channel : bench->all<Channel>())
        input.channels.insert(channel.id, channel.name);
    const MoneySettings settings = MoneySettings::of(*bench);
    input.currency = settings.currency;
    input.rates = settings.marginRates;
    return input;
}

Expected<QList<UnitCosts>> readCostSheets(Desk &desk, const YearBooks &books, const Progress &progress)
{
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    QList<int> tags;
    for (const StockLine &line : books.stock)
        tags << line.tag;
    std::sort(tags.begin(), tags.end());
    QList<UnitCosts> all;
    for (const int tag : tags) {
        const auto id = desk.unitByTag(tag);
        const auto file = id ? desk.unitFile(*id) : Expected<UnitFile>(id.trouble());
        if (!file)
            return file.trouble();
        all << UnitCosts{tag, file->unit.name, toWord(file->unit.stage), costSheet(*file, *bench, desk.maker().now())};
        if (progress && !progress(all.size(), tags.size()))
            return Trouble{QStringLiteral("Stopped before everything was written"), {}, {}};
    }
    return all;
}

} // namespace ts
