// take-in: a unit comes in.
#include "app/commands.h"

#include "model/records/tag_text.h"

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

struct Wanted {
    Unit unit;
    QString owner;
    std::optional<Money> paid;
    std::optional<Money> carriage;
};

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

Expected<Wanted> wanted(const Options &options, const Currency &currency, Maker &maker)
{
    Wanted wanted;
    Unit &unit = wanted.unit;
    unit = maker.fresh<Unit>();
    unit.stageSince = unit.at;
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
    wanted.owner = *owner;

    const auto category = parseWord<Category>(options.value(QStringLiteral("category")), QStringLiteral("category"));
    const auto kind = optionWord(options, QStringLiteral("kind"), wanted.owner.isEmpty() ? UnitKind::ToSell : UnitKind::Owners);
    const auto stage = optionWord(options, QStringLiteral("stage"), Stage::Shelved);
    if (!category)
        return category.trouble();
    if (!kind)
        return kind.trouble();
    if (!stage)
        return stage.trouble();
    if (*stage == Stage::Held || *stage == Stage::Closed)
        return Trouble{QStringLiteral("A unit cannot be taken in as %1").arg(toWord(*stage)),
                       {},
                       QStringLiteral("take it in first, then move it with turnscrew stage")};
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
        if (!ok || year < 1850 || year > maker.now().date().year() + 1)
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
    wanted.paid = *paid;
    wanted.carriage = *carriage;
    return wanted;
}

Spend spendOn(const Unit &unit, SpendKind kind, const QString &text, const Money &amount, Maker &maker)
{
    Spend spend = maker.fresh<Spend>();
    spend.unit = unit.id;
    spend.kind = kind;
    spend.text = text;
    spend.amount = amount;
    spend.paidOn = maker.now().date();
    return spend;
}

/// The contact of that name; a second one of the same name would part what belongs to one person.
std::optional<Contact> contactNamed(const BenchFile &bench, const QString &name)
{
    for (const Contact &contact : bench.all<Contact>())
        if (contact.name.simplified().compare(name, Qt::CaseInsensitive) == 0)
            return contact;
    return std::nullopt;
}

Change takingIn(Wanted &wanted, const BenchFile &bench, Maker &maker)
{
    Change change(QStringLiteral("Took in ") + wanted.unit.name);
    if (!wanted.owner.isEmpty()) {
        const auto known = contactNamed(bench, wanted.owner);
        Contact owner = known ? *known : maker.fresh<Contact>();
        wanted.unit.owner = owner.id;
        if (!known) {
            owner.name = wanted.owner;
            change.add(owner);
        }
    }
    change.add(wanted.unit);
    if (wanted.paid)
        change.add(spendOn(wanted.unit, SpendKind::Purchase, QStringLiteral("Bought"), *wanted.paid, maker));
    if (wanted.carriage)
        change.add(spendOn(wanted.unit, SpendKind::CarriageIn, QStringLiteral("Carriage in"), *wanted.carriage, maker));
    return change;
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
    auto asked = wanted(options, bench->currency(), maker);
    if (!asked)
        return run.refuse(asked.trouble());
    if (auto applied = (*desk)->apply(takingIn(*asked, *bench, maker)); !applied)
        return run.refuse(applied.trouble());
    const auto taken = (*desk)->get(asked->unit.id);
    if (!taken)
        return run.refuse(taken.trouble());
    run.out() << tagText(taken->tag) << '\n';
    return Exit::Done;
}

} // namespace ts
