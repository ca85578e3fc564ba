#pragma once

#include "model/money/best_use.h"
#include "model/records/settings.h"
#include "tests/testing.h"

namespace ts::testing {

inline const Currency &pounds()
{
    static const Currency currency = *Currency::parse(u"GBP");
    return currency;
}

inline Money money(const char *text)
{
    return *Money::parse(QString::fromUtf8(text), pounds());
}

/// A cassette deck bought on 19 November 2026 for 38.40 in all, asked about six days later; £12 an hour, 10 % to sell.
class DeckSample {
public:
    DeckSample()
    {
        asked.now = QDateTime({2026, 11, 25}, {12, 0}, Qt::UTC);
        asked.file.unit.id = fresh<Unit>();
        asked.file.unit.tag = 42;
        asked.file.unit.name = QStringLiteral("Pellworth KD-7 cassette deck");
        asked.file.unit.category = Category::CassetteDeck;
        asked.file.unit.stage = Stage::Bench;
        set(settings::hourlyRate, "12.00");
        set(settings::channel, "Lantern Lots");
        set(settings::returnsRate, "0");
        Channel channel;
        channel.id = fresh<Channel>();
        channel.name = QStringLiteral("Lantern Lots");
        asked.bench.all<Channel>() << channel;
        FeeRule rule;
        rule.id = fresh<FeeRule>();
        rule.channel = channel.id;
        rule.rate = 100'000;
        asked.bench.all<FeeRule>() << rule;
        spend(SpendKind::Purchase, "30");
        spend(SpendKind::CarriageIn, "8.40");
    }

    template <class R>
    static Id<R> fresh()
    {
        return Id<R>{QUuid::createUuid()};
    }
    /// A new record of the unit, recorded so many minutes before now.
    template <class R>
    R &add(int minutesAgo = 60)
    {
        R record;
        record.id = fresh<R>();
        record.at = asked.now.addSecs(-60 * minutesAgo);
        record.unit = asked.file.unit.id;
        asked.file.all<R>() << record;
        return asked.file.all<R>().last();
    }
    void set(const QString &name, const char *value)
    {
        Setting setting;
        setting.name = name;
        setting.value = QString::fromUtf8(value);
        asked.bench.all<Setting>().prepend(setting);
    }
    void spend(SpendKind kind, const char *amount)
    {
        auto &record = add<Spend>();
        record.text = toWord(kind);
        record.kind = kind;
        record.amount = money(amount);
        record.paidOn = QDate(2026, 11, 19);
    }
    void sold(const char *price, bool working = true)
    {
        auto &record = add<Comparable>();
        record.price = money(price);
        record.working = working;
        record.soldOn = asked.now.date();
    }
    Plan &plan()
    {
        if (asked.file.all<Plan>().isEmpty())
            add<Plan>();
        return asked.file.all<Plan>().last();
    }
    Symptom &symptom(const char *text)
    {
        auto &record = add<Symptom>();
        record.text = QString::fromUtf8(text);
        return record;
    }
    Cause &cause(const Id<Symptom> &of, const char *text, double weight, int minutes, const char *cost)
    {
        auto &record = add<Cause>();
        record.symptom = of;
        record.text = QString::fromUtf8(text);
        record.weight = weight;
        record.fixMinutes = minutes;
        record.fixCost = money(cost);
        return record;
    }
    [[nodiscard]] UnitMoney worked() const { return unitMoney(asked, {20'000, 1, 1}); }

    MoneyQuestion asked;
};

} // namespace ts::testing
