// set: the settings of a workbook.
#include "app/commands.h"

#include "model/desk/money_recorded.h"
#include "model/sums/setting_rules.h"

namespace ts {

namespace {

void list(QTextStream &out, const BenchFile &bench)
{
    for (const KnownSetting &known : knownSettings()) {
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
    if (!isKnownSetting(name))
        return run.misuse(QStringLiteral("There is no setting \"%1\"; turnscrew set BOOK lists them.").arg(name));
    if (options.places().size() == 2) {
        run.out() << bench->setting(name) << '\n';
        return Exit::Done;
    }
    const auto recorded = moneyIsRecorded(**desk);
    if (!recorded)
        return run.refuse(recorded.trouble());
    Maker maker = (*desk)->maker();
    const auto change = settingChange(*bench, name, options.at(2), *recorded, maker);
    if (!change)
        return run.refuse(change.trouble());
    if (auto applied = (*desk)->apply(*change); !applied)
        return run.refuse(applied.trouble());
    const auto kept = (*desk)->benchFile();
    if (!kept)
        return run.refuse(kept.trouble());
    run.out() << name << " = " << kept->setting(name) << '\n';
    return Exit::Done;
}

} // namespace ts
