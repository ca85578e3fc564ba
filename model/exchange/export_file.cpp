#include "model/exchange/export_file.h"

#include "model/exchange/csv_writer.h"
#include "model/exchange/exchange_kinds.h"
#include "model/exchange/knowledge_files.h"
#include "model/exchange/open_repair.h"
#include "model/exchange/whole_file.h"
#include "model/exchange/workbook_json.h"
#include "model/exchange/write_open_repair.h"
#include "model/exchange/write_units.h"
#include "model/exchange/year_files.h"
#include "model/records/settings.h"
#include "model/records/stage_move.h"
#include "model/records/symptom.h"

#include <QFileInfo>

#include <algorithm>

namespace ts {

namespace {

Expected<QList<Unit>> unitsByTag(Desk &desk)
{
    auto units = desk.list<Unit>();
    if (units)
        std::sort(units->begin(), units->end(), [](const Unit &a, const Unit &b) { return a.tag < b.tag; });
    return units;
}

Expected<qint64> writeList(Desk &desk, QIODevice &device)
{
    const auto units = unitsByTag(desk);
    if (!units)
        return units.trouble();
    const auto rack = desk.rack();
    if (!rack)
        return rack.trouble();
    writeUnits(device, *units, *rack);
    return static_cast<qint64>(units->size());
}

/// All records of a kind, by their unit.
template <class R>
Expected<QHash<QUuid, QList<R>>> byUnit(Desk &desk)
{
    auto list = desk.list<R>();
    if (!list)
        return list.trouble();
    QHash<QUuid, QList<R>> sorted;
    for (R &record : *list)
        sorted[record.unit.value] << std::move(record);
    return sorted;
}

Expected<qint64> writeRepairData(Desk &desk, QIODevice &device)
{
    const auto units = unitsByTag(desk);
    const auto sources = byUnit<SourceRecord>(desk);
    const auto symptoms = byUnit<Symptom>(desk);
    const auto moves = byUnit<StageMove>(desk);
    const auto bench = desk.benchFile();
    if (!units || !sources)
        return units ? sources.trouble() : units.trouble();
    if (!symptoms || !moves)
        return symptoms ? moves.trouble() : symptoms.trouble();
    if (!bench)
        return bench.trouble();
    const RepairProvider provider{bench->setting(settings::benchName), bench->setting(settings::country)};
    CsvWriter csv(device, CsvFor::Standard);
    csv.row(openrepair::columns());
    for (const Unit &unit : *units) {
        RepairFacts facts;
        facts.unit = unit;
        if (const auto own = sources->constFind(unit.id.value); own != sources->constEnd())
            facts.source = own->constFirst();
        for (const Symptom &symptom : symptoms->value(unit.id.value))
            if (symptom.state == SymptomState::Open)
                facts.openSymptoms << symptom.text;
        if (const auto own = moves->constFind(unit.id.value); own != moves->constEnd())
            facts.lastBecause = own->constLast().because;
        csv.row(openRepairRow(facts, provider));
    }
    return static_cast<qint64>(units->size());
}

/// The books of a year, as movements in CSV or as the whole spreadsheet; answers how many movements.
Expected<qint64> writeBooks(Desk &desk, QIODevice &device, const QString &kind, int year)
{
    const auto input = readBooks(desk);
    if (!input)
        return input.trouble();
    const YearBooks books = yearBooks(year, *input);
    if (kind == QLatin1String("ledger-csv"))
        return writeYearCsv(device, books);
    const auto bench = desk.benchFile();
    const auto costs = readCostSheets(desk, books);
    if (!bench || !costs)
        return bench ? costs.trouble() : bench.trouble();
    const auto bytes = yearSpreadsheet(books, *costs, bench->setting(settings::benchName));
    if (!bytes)
        return bytes.trouble();
    device.write(*bytes);
    return static_cast<qint64>(books.lines.size());
}

/// Why the file must not be written over; empty where it may.
QString mustStay(const QString &file)
{
    const QFileInfo info(file);
    if (info.isDir())
        return QStringLiteral("it is a folder");
    if (!info.exists())
        return {};
    if (!info.isFile())
        return QStringLiteral("it is no plain file");
    QFile there(file);
    // Every SQLite file begins so (the SQLite file format, section 1.3); ours and anybody's stays.
    if (there.open(QIODevice::ReadOnly) && there.read(15) == "SQLite format 3")
        return QStringLiteral("it is a workbook");
    return {};
}

} // namespace

Expected<ExportReport> exportFile(Desk &desk, const QString &kind, const QString &file, const ExportWish &wish)
{
    if (const auto can = canExport(kind); !can)
        return can.trouble();
    const QString shown = QFileInfo(file).fileName().isEmpty() ? file : QFileInfo(file).fileName();
    const QString did = QStringLiteral("Cannot write ") + shown;
    if (const QString why = mustStay(file); !why.isEmpty())
        return Trouble{did, why, QStringLiteral("choose another file name")};
    WholeFile device(file);
    if (!device.start())
        return Trouble{did, device.errorString(), {}};
    const auto written = kind == QLatin1String("csv") ? writeList(desk, device)
                         : kind == QLatin1String("model-notes")  ? writeNotesFile(desk, device, wish.model)
                         : kind == QLatin1String("fault-tables") ? writeTablesFile(desk, device)
                         : kind == QLatin1String("xlsx") || kind == QLatin1String("ledger-csv") ? writeBooks(desk, device, kind, wish.year)
                         : kind == QLatin1String("json")
                             ? writeWorkbookJson(device, [&desk](const Kind &each) { return desk.listRows(each); })
                             : writeRepairData(desk, device);
    if (!written)
        return written.trouble(); // the half-written copy goes with `device`
    if (!device.commit())
        return Trouble{did, device.errorString(), QStringLiteral("make room, or choose another place")};
    const QString noun = kind == QLatin1String("json")           ? QStringLiteral("record")
                         : kind == QLatin1String("model-notes")  ? QStringLiteral("model")
                         : kind == QLatin1String("fault-tables") ? QStringLiteral("fault table")
                         : kind == QLatin1String("xlsx") || kind == QLatin1String("ledger-csv") ? QStringLiteral("movement")
                                                                 : QStringLiteral("unit");
    return ExportReport{
        *written,
        QStringLiteral("%1 %2%3 written to %4").arg(*written).arg(noun, *written == 1 ? QString() : QStringLiteral("s"), shown)};
}

} // namespace ts
