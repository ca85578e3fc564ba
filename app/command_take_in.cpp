// take-in: a unit comes in.
#include "app/commands.h"

#include "model/records/tag_text.h"
#include "model/records/taking_in.h"
#include "model/sums/coming_in.h"

#include <array>

namespace ts {

namespace {

// Options that are texts of the unit.
struct TextOption {
    const char *name;
    QString Unit::*member;
    qsizetype most;
};

constexpr std::array textOptions{TextOption{"name", &Unit::name, shortText},
                                 TextOption{"maker", &Unit::maker, shortText},
                                 TextOption{"model", &Unit::makerModel, shortText},
                                 TextOption{"serial", &Unit::serial, shortText},
                                 TextOption{"mains", &Unit::mains, shortText},
                                 TextOption{"place", &Unit::place, shortText},
                                 TextOption{"claim", &Unit::claim, longText},
                                 TextOption{"accessories", &Unit::accessories, longText},
                                 TextOption{"looks", &Unit::looks, longText},
                                 TextOption{"function", &Unit::function, longText},
                                 TextOption{"earlier-work", &Unit::earlierWork, longText}};

constexpr std::array otherOptions{"category", "year", "class", "owner", "kind", "stage", "paid", "carriage"};

// A word from an option, or the sentence that refuses it.
template <class E>
Expected<E> optionWord(const Options &options, const QString &name, E fallback)
{
    return options.has(name) ? parseWord<E>(options.value(name), name) : Expected<E>(fallback);
}

Expected<std::optional<Money>> optionMoney(const Options &options, const QString &name, const Currency &currency)
{
    if (!options.has(name))
        return std::optional<Money>();
    const auto money = Money::parse(options.value(name), currency);
    if (!money)
        return Trouble{QStringLiteral("--%1: ").arg(name) + money.trouble().sentence(), {}, {}};
    if (money->minor() < 0)
        return Trouble{QStringLiteral("--%1 cannot be below zero").arg(name), {}, {}};
    return std::optional<Money>(*money);
}

Expected<Arrival> arrivalOf(const Options &options, const Currency &currency, Maker &maker)
{
    Arrival arrival;
    Unit &unit = arrival.unit;
    unit = maker.fresh<Unit>();
    for (const TextOption &option : textOptions) {
        const QString name = QString::fromLatin1(option.name);
        const auto text = plainText(options.value(name), QStringLiteral("--") + name, option.most);
        if (!text)
            return text.trouble();
        unit.*option.member = *text;
    }
    if (unit.name.isEmpty())
        return Trouble{
            QStringLiteral("--name is empty"), {}, QStringLiteral("call the unit what it is: maker, model, what kind of thing")};
    const auto owner = plainText(options.value(QStringLiteral("owner")), QStringLiteral("--owner"), shortText);
    if (!owner)
        return owner.trouble();
    arrival.owner = *owner;

    const auto category = parseWord<Category>(options.value(QStringLiteral("category")), QStringLiteral("category"));
    const auto kind = optionWord(options, QStringLiteral("kind"), arrival.owner.isEmpty() ? UnitKind::ToSell : UnitKind::Owners);
    const auto stage = optionWord(options, QStringLiteral("stage"), Stage::Shelved);
    if (!category)
        return category.trouble();
    if (!kind)
        return kind.trouble();
    if (!stage)
        return stage.trouble();
    unit.category = *category;
    unit.kind = *kind;
    unit.stage = *stage;
    if (options.has(QStringLiteral("class"))) {
        const auto protection = fromWord<ProtectionClass>(options.value(QStringLiteral("class")).toUpper());
        if (!protection)
            return Trouble{QStringLiteral("\"%1\" is no protection class").arg(options.value(QStringLiteral("class"))),
                           {},
                           QStringLiteral("choose one of I, II, III")};
        unit.protectionClass = protection;
    }
    if (options.has(QStringLiteral("year"))) {
        bool ok = false;
        const int year = options.value(QStringLiteral("year")).toInt(&ok);
        if (!ok)
            return Trouble{
                QStringLiteral("\"%1\" is no year that a unit can be made in").arg(options.value(QStringLiteral("year"))),
                {},
                {}};
        unit.year = year;
    }
    const auto paid = optionMoney(options, QStringLiteral("paid"), currency);
    const auto carriage = optionMoney(options, QStringLiteral("carriage"), currency);
    if (!paid)
        return paid.trouble();
    if (!carriage)
        return carriage.trouble();
    arrival.paid = *paid;
    arrival.carriage = *carriage;
    return arrival;
}

} // namespace

Exit runTakeIn(Invocation &run)
{
    Options options(run);
    for (const TextOption &option : textOptions)
        options.add(QString::fromLatin1(option.name), QStringLiteral("text"));
    for (const auto *name : otherOptions)
        options.add(QString::fromLatin1(name), QStringLiteral("value"));
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    for (const auto *name : {"name", "category"})
        if (!options.has(QString::fromLatin1(name)))
            return run.misuse(
                QStringLiteral("A unit needs a --%1; turnscrew take-in --help shows the rest.").arg(QLatin1String(name)));
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto bench = (*desk)->benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    Maker maker = (*desk)->maker();
    auto arrival = arrivalOf(options, bench->currency(), maker);
    if (!arrival)
        return run.refuse(arrival.trouble());
    const ComingIn brings = comingIn(arrival->unit, *bench, maker);
    arrival->proofs = brings.proofs;
    const auto change = takingIn(*arrival, *bench, maker);
    if (!change)
        return run.refuse(change.trouble());
    if (auto applied = (*desk)->apply(*change); !applied)
        return run.refuse(applied.trouble());
    const auto taken = (*desk)->get(arrival->unit.id);
    if (!taken)
        return run.refuse(taken.trouble());
    run.out() << tagText(taken->tag) << '\n';
    // The cautions of its category stand in `show`; that it is made for another mains must be read before it is plugged in.
    for (const QString &caution : brings.mains)
        run.remark(caution);
    return Exit::Done;
}

} // namespace ts
