#include "model/exchange/read_units.h"

#include "model/exchange/csv_reader.h"
#include "model/exchange/row_cells.h"

#include <QIODevice>

namespace ts {

namespace {

void addSpend(Imported &imported, Maker &maker, const Unit &unit, SpendKind kind, const QString &text, const Money &amount,
              QDate day)
{
    Spend spend = maker.fresh<Spend>();
    spend.unit = unit.id;
    spend.kind = kind;
    spend.text = text;
    spend.amount = amount;
    spend.paidOn = day;
    imported.change.add(spend);
}

void readStage(RowCells &row, Unit &unit, const QDateTime &now)
{
    unit.stage = row.word<Stage>("stage").value_or(Stage::Shelved);
    unit.outcome = row.word<Outcome>("outcome");
    const QDate since = row.day("since").value_or(QDate());
    unit.stageSince = since.isValid() ? QDateTime(since, QTime(0, 0), Qt::UTC) : now;
    if (unit.stage == Stage::Held)
        unit.heldBecause = row.text("because");
    if (!row.good())
        return;
    if (unit.stage == Stage::Held && unit.heldBecause.isEmpty())
        row.refuse("because", QStringLiteral("a held unit needs a reason"));
    if (unit.stage == Stage::Closed && !unit.outcome)
        row.refuse("outcome",
                   QStringLiteral("a closed unit needs an outcome: ") + allWords<Outcome>().join(QStringLiteral(", ")));
    if (unit.stage != Stage::Closed && unit.outcome)
        row.refuse("outcome", QStringLiteral("only a closed unit has an outcome"));
}

Unit readUnit(RowCells &row, Maker &maker)
{
    Unit unit = maker.fresh<Unit>();
    unit.maker = row.text("maker");
    unit.makerModel = row.text("model");
    unit.name = row.text("name");
    if (unit.name.isEmpty())
        unit.name = (unit.maker + QLatin1Char(' ') + unit.makerModel).simplified();
    if (unit.name.isEmpty())
        row.refuse(nullptr, QStringLiteral("the unit has neither name nor model"));
    unit.category = row.word<Category>("category").value_or(Category::Other);
    unit.kind = row.word<UnitKind>("kind").value_or(UnitKind::ToSell);
    unit.serial = row.text("serial");
    unit.claim = row.text("claim");
    unit.mains = row.text("mains");
    unit.place = row.text("place");
    unit.sourceId = row.text("source id");
    unit.protectionClass = row.value("class", [](const QString &written) {
        QString word = written.toUpper();
        if (word.startsWith(QLatin1String("CLASS ")))
            word = word.mid(6);
        const qsizetype figure = QStringList{QStringLiteral("1"), QStringLiteral("2"), QStringLiteral("3")}.indexOf(word);
        if (figure >= 0)
            word = allWords<ProtectionClass>().at(figure);
        const auto found = fromWord<ProtectionClass>(word);
        return found ? Expected<ProtectionClass>(*found)
                     : Expected<ProtectionClass>(Trouble{quoted(written) + QStringLiteral(" is no protection class"),
                                                         {},
                                                         QStringLiteral("choose one of I, II, III")});
    });
    const int next = maker.now().date().year() + 1;
    unit.year = row.value("year", [next](const QString &written) { return wholeFromCell(written, 1850, next); });
    readStage(row, unit, maker.now());
    return unit;
}

} // namespace

const QList<KnownColumn> &unitColumns()
{
    static const QList<KnownColumn> list{
        knownColumn("name", "item|title|unit|equipment|what"),
        knownColumn("maker", "brand|make|manufacturer"),
        knownColumn("model", "maker model|model name|model no|model number"),
        knownColumn("category", "type"),
        knownColumn("serial", "serial no|serial number|s/n|sn"),
        knownColumn("claim", "fault|problem|reported fault|defect|said to be"),
        knownColumn("paid", "price|price paid|purchase price|cost|bought for|amount"),
        knownColumn("carriage", "carriage in|postage|shipping|delivery"),
        knownColumn("currency"),
        knownColumn("bought on", "date|bought|date bought|purchase date|paid on"),
        knownColumn("mains", "voltage|supply"),
        knownColumn("class", "protection class"),
        knownColumn("place", "location|shelf|where|stored"),
        knownColumn("year", "year made|made|year of manufacture"),
        knownColumn("stage", "status"),
        knownColumn("since", "stage since"),
        knownColumn("because", "held because|reason"),
        knownColumn("outcome"),
        knownColumn("kind", "purpose"),
        knownColumn("source id", "id|ref|reference|their id"),
        knownColumn("note", "notes|comment|comments|remarks"),
        // Of our own list of units; worked out from other records, so not taken in.
        knownColumn("tag"),
        knownColumn("spent"),
        knownColumn("minutes"),
    };
    return list;
}

Expected<Imported> readUnits(QIODevice &device, const QString &did, const BenchFile &bench, const QSet<QString> &known,
                             const QHash<QString, QString> &map, Maker &maker)
{
    CsvReader csv(device, did);
    const auto first = csv.next();
    if (!first)
        return first.trouble();
    if (!*first)
        return Trouble{did, QStringLiteral("the file is empty"), {}};
    const auto columns = ListColumns::match(csv.cells(), unitColumns(), map, did);
    if (!columns)
        return columns.trouble();
    if (!columns->has("name") && !columns->has("model"))
        return Trouble{
            did, QStringLiteral("no column says what the unit is"),
            QStringLiteral("the header needs a column name or model; say which it is with --map \"their column=name\"")};
    Imported imported;
    for (const char *name : {"tag", "spent", "minutes"})
        if (columns->has(name))
            imported.warnings.add(1, QStringLiteral("the column %1 is not taken in").arg(columns->shown(name)));
    if (!columns->has("source id"))
        imported.warnings.add(1,
                              QStringLiteral("there is no column source id, so the same file would add its units a second time"));
    QHash<QString, qint64> seen;
    while (true) {
        const auto more = csv.next();
        if (!more)
            return more.trouble();
        if (!*more)
            return imported;
        if (csv.cells().size() != columns->width()) {
            imported.problems.add(csv.line(), wrongWidth(csv.cells().size(), columns->width()));
            continue;
        }
        RowCells row(*columns, csv.cells(), csv.line(), imported.problems);
        if (const QString id = row.text("source id"); !id.isEmpty()) {
            if (known.contains(id)) {
                ++imported.skipped;
                continue;
            }
            if (seen.contains(id))
                row.refuse("source id", QStringLiteral("it stands already on line %1").arg(seen.value(id)));
            seen.insert(id, csv.line());
        }
        const Unit unit = readUnit(row, maker);
        const Currency currency =
            row.value("currency", [](const QString &text) { return Currency::parse(text); }).value_or(bench.currency());
        const auto paid = row.amount("paid", currency);
        const auto carriage = row.amount("carriage", currency);
        const QDate bought = row.day("bought on").value_or(QDate());
        if (!row.good())
            continue;
        StageMove move = maker.fresh<StageMove>();
        move.unit = unit.id;
        move.fromStage = Stage::Scouted;
        move.toStage = unit.stage;
        move.because = unit.heldBecause;
        move.outcome = unit.outcome;
        imported.change.add(unit).add(move);
        if (paid)
            addSpend(imported, maker, unit, SpendKind::Purchase, QStringLiteral("purchase"), *paid, bought);
        if (carriage)
            addSpend(imported, maker, unit, SpendKind::CarriageIn, QStringLiteral("carriage"), *carriage, bought);
        if (const QString text = row.text("note"); !text.isEmpty()) {
            Note note = maker.fresh<Note>();
            note.unit = unit.id;
            note.text = text;
            imported.change.add(note);
        }
        ++imported.added;
    }
}

} // namespace ts
