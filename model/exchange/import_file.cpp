#include "model/exchange/import_file.h"

#include "model/exchange/exchange_kinds.h"
#include "model/exchange/knowledge_files.h"
#include "model/exchange/read_comparables.h"
#include "model/exchange/read_open_repair.h"
#include "model/exchange/read_units.h"
#include "model/exchange/workbook_json.h"

#include <QFile>
#include <QFileInfo>

namespace ts {

namespace {

Expected<QSet<QString>> knownSourceIds(Desk &desk)
{
    const Kind &kind = description<Unit>();
    const auto rows = desk.listRows(kind);
    if (!rows)
        return rows.trouble();
    const int column = kind.column(u"source_id");
    QSet<QString> ids;
    ids.reserve(rows->size());
    for (const Row &row : *rows)
        if (const QString id = row.at(column).toString(); !id.isEmpty())
            ids.insert(id);
    return ids;
}

Expected<Imported> readUnitList(Desk &desk, QIODevice &device, const QString &did, const ImportOptions &options)
{
    const auto known = knownSourceIds(desk);
    if (!known)
        return known.trouble();
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    Maker maker = desk.maker();
    return readUnits(device, did, *bench, *known, options.map, maker);
}

Expected<Imported> readComparableList(Desk &desk, QIODevice &device, const QString &did, const ImportOptions &options)
{
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    const auto known = desk.list<Comparable>();
    if (!known)
        return known.trouble();
    const auto units = desk.list<Unit>();
    if (!units)
        return units.trouble();
    QHash<int, Id<Unit>> byTag;
    for (const Unit &unit : *units)
        byTag.insert(unit.tag, unit.id);
    Maker maker = desk.maker();
    return readComparables(device, did, *bench, *known, byTag, options.map, maker);
}

Expected<Imported> readRepairData(Desk &desk, QIODevice &device, const QString &did)
{
    const auto known = knownSourceIds(desk);
    if (!known)
        return known.trouble();
    Maker maker = desk.maker();
    return readOpenRepair(device, did, *known, maker);
}

Expected<Imported> readWorkbook(Desk &desk, QIODevice &device, const QString &did)
{
    const auto units = desk.count(description<Unit>());
    if (!units)
        return units.trouble();
    if (*units > 0)
        return Trouble{did, QStringLiteral("the workbook has units already, and an exported workbook keeps its tags"),
                       QStringLiteral("make an empty workbook with turnscrew new and import into that")};
    const auto settings = desk.list<Setting>();
    if (!settings)
        return settings.trouble();
    return readWorkbookJson(device, did, *settings);
}

QString counted(qint64 count, const QString &kind)
{
    const QString one = kind == QLatin1String("comparables") ? QStringLiteral("comparable")
                        : kind == QLatin1String("json")      ? QStringLiteral("record")
                        : kind == QLatin1String("model-notes")  ? QStringLiteral("model")
                        : kind == QLatin1String("fault-tables") ? QStringLiteral("fault table")
                                                             : QStringLiteral("unit");
    return QString::number(count) + QLatin1Char(' ') + one + (count == 1 ? QString() : QStringLiteral("s"));
}

} // namespace

Expected<ImportReport> importFile(Desk &desk, const QString &file, const QString &kind, const ImportOptions &options,
                                  const Progress &progress)
{
    if (const auto can = canImport(kind); !can)
        return can.trouble();
    const QFileInfo info(file);
    const QString did = QStringLiteral("Cannot import ") + info.fileName();
    if (!info.exists())
        return Trouble{did, QStringLiteral("there is no such file"), {}};
    if (info.isDir())
        return Trouble{did, QStringLiteral("it is a folder"), QStringLiteral("name a file")};
    QFile device(file);
    if (!device.open(QIODevice::ReadOnly))
        return Trouble{did, device.errorString(), {}};

    const bool isList = kind == QLatin1String("units") || kind == QLatin1String("comparables");
    if (!options.map.isEmpty() && !isList)
        return Trouble{did, QStringLiteral("the columns of %1 are fixed").arg(kind), QStringLiteral("leave --map away")};
    auto imported = kind == QLatin1String("units")         ? readUnitList(desk, device, did, options)
                    : kind == QLatin1String("comparables") ? readComparableList(desk, device, did, options)
                    : kind == QLatin1String("json")        ? readWorkbook(desk, device, did)
                    : kind == QLatin1String("model-notes")  ? readNotesFile(desk, device, did)
                    : kind == QLatin1String("fault-tables") ? readTablesFile(desk, device, did)
                                                           : readRepairData(desk, device, did);
    if (!imported)
        return imported.trouble();

    ImportReport report;
    report.problems = imported->problems.lines();
    report.warnings = imported->warnings.lines();
    report.skipped = imported->skipped;
    if (report.refused()) {
        report.sentence = QStringLiteral("Nothing imported from %1").arg(info.fileName());
        return report;
    }
    report.added = imported->added;
    const QString what = counted(report.added, kind);
    if (!imported->change.isEmpty() && !options.dryRun) {
        imported->change.setSentence(QStringLiteral("Imported %1 from %2").arg(what, info.fileName()));
        if (const auto applied = desk.apply(imported->change, progress); !applied)
            return applied.trouble();
    }
    report.sentence =
        QStringLiteral("%1 %2 from %3")
            .arg(what, options.dryRun ? QStringLiteral("would be imported") : QStringLiteral("imported"), info.fileName());
    if (report.skipped > 0)
        report.sentence += QStringLiteral(", %1 already there").arg(report.skipped);
    return report;
}

} // namespace ts
