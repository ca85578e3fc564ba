// bench, decide: what to work on today, and which way out was chosen.
#include "app/commands.h"
#include "app/json_values.h"

#include "model/records/tag_text.h"
#include "model/worth/bench_today.h"
#include "model/worth/money_asked.h"

namespace ts {

namespace {

QJsonObject useObject(const BenchUse &use)
{
    return {{QStringLiteral("tag"), tagText(use.tag)},
            {QStringLiteral("name"), use.name},
            {QStringLiteral("pull"), toWord(use.pull)},
            {QStringLiteral("workable"), use.workable},
            {QStringLiteral("minutes"), use.minutes},
            {QStringLiteral("per_hour"), moneyOrNull(use.perHour)},
            {QStringLiteral("gain"), moneyOrNull(use.gain)},
            {QStringLiteral("tied_up"), use.tiedUp.decimal()},
            {QStringLiteral("due"), textOrNull(use.due.toString(Qt::ISODate))},
            {QStringLiteral("why"), use.why}};
}

Expected<WayOut> wayOf(const QString &typed)
{
    return parseWord<WayOut>(typed, QStringLiteral("way out"));
}

} // namespace

Exit runBench(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("json"));
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto bench = (*desk)->benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    const auto uses = benchToday(**desk, *bench, run.clock().now());
    if (!uses)
        return run.refuse(uses.trouble());
    QJsonArray list;
    for (const BenchUse &use : *uses)
        list << useObject(use);
    if (options.has(QStringLiteral("json"))) {
        run.print({{QStringLiteral("currency"), bench->currency().code()}, {QStringLiteral("units"), list}});
        return Exit::Done;
    }
    if (uses->isEmpty())
        run.out() << "Nothing is on the bench, held, proving or ready.\n";
    for (const BenchUse &use : *uses)
        run.out() << tagText(use.tag) << "  " << use.name << "\n      " << use.why << '\n';
    return Exit::Done;
}

Exit runDecide(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("because"), QStringLiteral("text"));
    if (auto read = options.read(run.arguments(), 3, 3); !read)
        return run.misuse(read.trouble().sentence());
    const auto way = wayOf(options.at(2));
    if (!way)
        return run.refuse(way.trouble());
    const auto because = plainText(options.value(QStringLiteral("because")), QStringLiteral("The reason"));
    if (!because)
        return run.refuse(because.trouble());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto bench = (*desk)->benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    const auto id = unitOf(**desk, options.at(1));
    if (!id)
        return run.refuse(id.trouble());
    const auto file = (*desk)->unitFile(*id);
    if (!file)
        return run.refuse(file.trouble());
    const auto asked = moneyQuestion(**desk, *file, *bench, run.clock().now());
    if (!asked)
        return run.refuse(asked.trouble());
    const UnitMoney money = unitMoney(*asked);
    const WayFigures *figures = money.ways.of(*way);
    if (!figures || !figures->open)
        return run.refuse({QStringLiteral("Cannot decide to %1").arg(wayText(*way).toLower()),
                           figures ? figures->why : QStringLiteral("the question is not open for this unit"),
                           {}});
    Maker maker = (*desk)->maker();
    const auto done = (*desk)->apply(decide(*asked, money.ways, *way, *because, money.sheet.hours.minutes(), maker));
    if (!done)
        return run.refuse(done.trouble());
    run.out() << done->sentence() << '\n';
    return Exit::Done;
}

} // namespace ts
