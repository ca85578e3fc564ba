// set: the settings of a workbook.
#include "app/commands.h"

#include "model/records/settings.h"
#include "model/sums/money_settings.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

struct Known {
    QString name;
    QString says;
    QString unset = {}; ///< what holds where it is not set
};

const QList<Known> &knownSettings()
{
    static const QList<Known> all{
        {settings::benchName, QStringLiteral("the bench's name, as printed on papers")},
        {settings::benchAddress, QStringLiteral("its address, as printed on papers")},
        {settings::worker, QStringLiteral("who does the work, as printed on papers")},
        {settings::terms, QStringLiteral("terms, printed on the restoration sheet")},
        {settings::country, QStringLiteral("three letters, such as GBR; for open-repair-data")},
        {settings::currency, QStringLiteral("three letters, such as GBP; before the first money is recorded"),
         QStringLiteral("GBP")},
        {settings::hourlyRate, QStringLiteral("what an hour of yours is worth")},
        {settings::overheadRate, QStringLiteral("what the bench costs an hour")},
        {settings::mains, QStringLiteral("the bench's own mains, such as 230 V 50 Hz")},
        {settings::channel, QStringLiteral("name of the channel that break-even is worked out for")},
        {settings::paperSize, QStringLiteral("A4 or Letter"), QStringLiteral("A4")},
        {settings::resaleHalfLife, QStringLiteral("days after which a comparable sale counts half"), QStringLiteral("120")},
        {settings::looksStep, QStringLiteral("percent of the price for a grade of looks"), QStringLiteral("7")},
        {settings::returnsRate, QStringLiteral("percent of sales that come back"), QStringLiteral("5")},
        {settings::returnsDrop, QStringLiteral("percent of its price that a unit loses that came back"), QStringLiteral("25")},
        {settings::wantedGain, QStringLiteral("what a unit should leave beside your hours"), QStringLiteral("0")},
        {settings::marginTax, QStringLiteral("percent of tax on the margin, where you sell under such a scheme")},
        {settings::daysToSell, QStringLiteral("days from offered to sold"), QStringLiteral("30")},
        {settings::benchHours, QStringLiteral("hours a week that you work at the bench"), QStringLiteral("8")},
        {settings::sellingMinutes, QStringLiteral("minutes to offer, pack and send a unit"), QStringLiteral("45")},
        {settings::capitalRate, QStringLiteral("percent a year that money tied up costs"), QStringLiteral("0")},
    };
    return all;
}

// Money keeps the currency it was recorded in, so another bench currency would leave it out of every total.
Expected<void> checkCurrency(Desk &desk, const QString &value, const Currency &currency)
{
    const auto wanted = Currency::parse(value);
    if (!wanted)
        return wanted.trouble();
    if (*wanted == currency)
        return {};
    for (const Kind *kind : {static_cast<const Kind *>(&description<Spend>()), static_cast<const Kind *>(&description<Need>()),
                             static_cast<const Kind *>(&description<Batch>()), static_cast<const Kind *>(&description<Plan>())}) {
        const auto count = desk.count(*kind);
        if (!count)
            return count.trouble();
        if (*count > 0)
            return Trouble{QStringLiteral("The currency stays %1").arg(currency.code()),
                           QStringLiteral("money is recorded in this workbook already"),
                           QStringLiteral("choose it before the first unit is taken in")};
    }
    return {};
}

Expected<void> checkChannel(const BenchFile &bench, const QString &value)
{
    QStringList names;
    for (const Channel &channel : bench.all<Channel>())
        names << channel.name;
    if (names.contains(value))
        return {};
    return Trouble{QStringLiteral("There is no channel \"%1\"").arg(value),
                   names.isEmpty() ? QStringLiteral("this workbook has none yet") : QString(),
                   names.isEmpty() ? QString() : QStringLiteral("choose one of ") + names.join(QStringLiteral(", "))};
}

Expected<void> checkSetting(Desk &desk, const BenchFile &bench, const QString &name, const QString &value)
{
    if (value.isEmpty())
        return {};
    if (name == settings::currency)
        return checkCurrency(desk, value, bench.currency());
    if (name == settings::channel)
        return checkChannel(bench, value);
    if (name == settings::paperSize && value != QLatin1String("A4") && value != QLatin1String("Letter"))
        return Trouble{QStringLiteral("\"%1\" is no paper size").arg(value), {}, QStringLiteral("choose A4 or Letter")};
    static const QRegularExpression country(QStringLiteral("^[A-Z]{3}$"));
    if (name == settings::country && !country.match(value).hasMatch())
        return Trouble{QStringLiteral("\"%1\" is no country").arg(value),
                       {},
                       QStringLiteral("write its three letters of ISO 3166-1, such as GBR")};
    return MoneySettings::check(name, value, bench.currency());
}

/// The value as it is kept: line breaks stay, since an address and terms have lines.
Expected<QString> valueOf(const QString &given)
{
    QStringList lines;
    for (const QString &line : given.trimmed().split(QLatin1Char('\n'))) {
        const auto text = plainText(line, QStringLiteral("The value"));
        if (!text)
            return text.trouble();
        lines << *text;
    }
    return lines.join(QLatin1Char('\n'));
}

void list(QTextStream &out, const BenchFile &bench)
{
    for (const Known &known : knownSettings()) {
        const QString value = bench.setting(known.name);
        out << known.name << " = "
            << (!value.isEmpty()        ? value
                : known.unset.isEmpty() ? QStringLiteral("(not set)")
                                        : QStringLiteral("(not set: %1)").arg(known.unset))
            << "\n    " << known.says << '\n';
    }
}

} // namespace

Exit runSet(Invocation &run)
{
    Options options(run);
    if (auto read = options.read(run.arguments(), 1, 3); !read)
        return run.misuse(read.trouble().sentence());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto bench = (*desk)->benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    const QString name = options.at(1);
    if (name.isEmpty()) {
        list(run.out(), *bench);
        return Exit::Done;
    }
    const auto isKnown = [&](const Known &known) { return known.name == name; };
    if (std::none_of(knownSettings().begin(), knownSettings().end(), isKnown))
        return run.misuse(QStringLiteral("There is no setting \"%1\"; turnscrew set BOOK lists them.").arg(name));
    if (options.places().size() == 2) {
        run.out() << bench->setting(name) << '\n';
        return Exit::Done;
    }
    const auto value = valueOf(options.at(2));
    if (!value)
        return run.refuse(value.trouble());
    if (auto sound = checkSetting(**desk, *bench, name, *value); !sound)
        return run.refuse(sound.trouble());
    Change change(QStringLiteral("Setting %1: %2").arg(name, *value));
    Setting after = (*desk)->maker().fresh<Setting>();
    after.name = name;
    after.value = *value;
    bool found = false;
    for (const Setting &before : bench->all<Setting>()) {
        if (before.name != name)
            continue;
        found = true;
        after = before;
        after.value = *value;
        change.edit(before, after);
    }
    if (!found)
        change.add(after);
    if (auto applied = (*desk)->apply(change); !applied)
        return run.refuse(applied.trouble());
    run.out() << name << " = " << *value << '\n';
    return Exit::Done;
}

} // namespace ts
