// set: the settings of a workbook.
#include "app/commands.h"

#include "model/records/settings.h"
#include "model/values/money.h"

namespace ts {

namespace {

struct Known {
    QString name;
    QString says;
};

const QList<Known> &knownSettings()
{
    static const QList<Known> all{
        {settings::benchName, QStringLiteral("the bench's name, as printed on papers")},
        {settings::benchAddress, QStringLiteral("its address, as printed on papers")},
        {settings::worker, QStringLiteral("who does the work, as printed on papers")},
        {settings::terms, QStringLiteral("terms, printed on the restoration sheet")},
        {settings::currency, QStringLiteral("three letters, such as GBP; before the first money is recorded")},
        {settings::hourlyRate, QStringLiteral("what an hour of yours is worth")},
        {settings::overheadRate, QStringLiteral("what the bench costs an hour")},
        {settings::mains, QStringLiteral("the bench's own mains, such as 230 V 50 Hz")},
        {settings::channel, QStringLiteral("name of the channel that break-even is worked out for")},
        {settings::paperSize, QStringLiteral("A4 or Letter")},
    };
    return all;
}

Expected<void> checkSetting(Desk &desk, const QString &name, const QString &value, const Currency &currency)
{
    if (value.isEmpty())
        return {};
    const auto passOn = [](const auto &parsed) { return parsed ? Expected<void>() : Expected<void>(parsed.trouble()); };
    if (name == settings::hourlyRate || name == settings::overheadRate)
        return passOn(Money::parse(value, currency));
    if (name == settings::paperSize && value != QLatin1String("A4") && value != QLatin1String("Letter"))
        return Trouble{QStringLiteral("\"%1\" is no paper size").arg(value), {}, QStringLiteral("choose A4 or Letter")};
    if (name == settings::currency) {
        const auto wanted = Currency::parse(value);
        if (!wanted)
            return wanted.trouble();
        const auto spends = desk.count(description<Spend>());
        if (!spends)
            return spends.trouble();
        if (*spends > 0 && !(*wanted == currency))
            return Trouble{QStringLiteral("The currency stays %1").arg(currency.code()), QStringLiteral("money is recorded in this workbook already"),
                           QStringLiteral("choose it before the first unit is taken in")};
    }
    return {};
}

} // namespace

Exit runSet(Invocation &run)
{
    Options options(QStringLiteral("set"), QStringLiteral("BOOK [NAME VALUE]"));
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
        for (const Known &known : knownSettings())
            run.out() << known.name << " = " << bench->setting(known.name, QStringLiteral("(not set)")) << "\n    " << known.says << '\n';
        return Exit::Done;
    }
    const auto isKnown = [&](const Known &known) { return known.name == name; };
    if (std::none_of(knownSettings().begin(), knownSettings().end(), isKnown))
        return run.misuse(QStringLiteral("There is no setting \"%1\"; turnscrew set BOOK lists them.").arg(name));
    if (options.places().size() == 2) {
        run.out() << bench->setting(name) << '\n';
        return Exit::Done;
    }
    const QString value = options.at(2).trimmed();
    if (auto sound = checkSetting(**desk, name, value, bench->currency()); !sound)
        return run.refuse(sound.trouble());
    Change change(QStringLiteral("Setting %1: %2").arg(name, value));
    Setting after = (*desk)->maker().fresh<Setting>();
    after.name = name;
    after.value = value;
    bool found = false;
    for (const Setting &before : bench->all<Setting>()) {
        if (before.name != name)
            continue;
        found = true;
        after = before;
        after.value = value;
        change.edit(before, after);
    }
    if (!found)
        change.add(after);
    if (auto applied = (*desk)->apply(change); !applied)
        return run.refuse(applied.trouble());
    run.out() << name << " = " << value << '\n';
    return Exit::Done;
}

} // namespace ts
