// import, export: files in and out.
#include "app/commands.h"

#include "model/exchange/exchange_kinds.h"
#include "model/exchange/export_file.h"
#include "model/exchange/import_file.h"

namespace ts {

Exit runImport(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("as"), QStringLiteral("kind"));
    options.add(QStringLiteral("dry-run"));
    options.add(QStringLiteral("map"), QStringLiteral("theirs=ours"));
    if (auto read = options.read(run.arguments(), 2, 2); !read)
        return run.misuse(read.trouble().sentence());
    if (!options.has(QStringLiteral("as")))
        return run.misuse(QStringLiteral("Say what the file holds: --as units, comparables, open-repair-data, json, model-notes or fault-tables."));
    const QString kind = options.value(QStringLiteral("as"));
    if (auto can = canImport(kind); !can)
        return run.misuse(can.trouble().sentence());
    ImportOptions wish;
    wish.dryRun = options.has(QStringLiteral("dry-run"));
    const QStringList maps = options.values(QStringLiteral("map"));
    for (const QString &map : maps) {
        const qsizetype at = map.lastIndexOf(QLatin1Char('='));
        if (at <= 0)
            return run.misuse(QStringLiteral("--map takes \"Their column=ours\", not \"%1\".").arg(map));
        wish.map.insert(map.left(at).trimmed(), map.mid(at + 1).trimmed());
    }
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto report = importFile(**desk, options.at(1), kind, wish, run.progress(QStringLiteral("Records")));
    if (!report)
        return run.refuse(report.trouble());
    for (const QString &line : report->warnings)
        run.remark(line);
    for (const QString &line : report->problems)
        run.remark(line);
    if (report->refused()) {
        run.remark(report->sentence);
        return Exit::Refused;
    }
    run.out() << report->sentence << '\n';
    return Exit::Done;
}

Exit runExport(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("as"), QStringLiteral("kind"));
    options.add(QStringLiteral("o"), QStringLiteral("FILE"));
    options.add(QStringLiteral("model"), QStringLiteral("maker and model"));
    options.add(QStringLiteral("year"), QStringLiteral("year"));
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    if (!options.has(QStringLiteral("as")))
        return run.misuse(QStringLiteral("Say what is written: --as csv, json, open-repair-data, model-notes or fault-tables."));
    if (auto can = canExport(options.value(QStringLiteral("as"))); !can)
        return run.misuse(can.trouble().sentence());
    const QString file = options.value(QStringLiteral("o"));
    if (file.isEmpty())
        return run.misuse(QStringLiteral("Say where it goes: turnscrew export BOOK --as KIND -o FILE."));
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    if (auto other = notTheBook(file, options.at(0)); !other)
        return run.refuse(other.trouble());
    int year = 0;
    if (options.has(QStringLiteral("year"))) {
        bool ok = false;
        year = options.value(QStringLiteral("year")).toInt(&ok);
        if (!ok || year < 1900 || year > 9999)
            return run.refuse(Trouble{QStringLiteral("\"%1\" is no year").arg(options.value(QStringLiteral("year"))), {}, QStringLiteral("write it like 2026")});
    }
    const auto report = exportFile(**desk, options.value(QStringLiteral("as")), file, {.model = options.value(QStringLiteral("model")), .year = year});
    if (!report)
        return run.refuse(report.trouble());
    run.out() << report->sentence << '\n';
    return Exit::Done;
}

} // namespace ts
