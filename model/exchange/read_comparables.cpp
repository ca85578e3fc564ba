#include "model/exchange/read_comparables.h"

#include "model/exchange/csv_reader.h"
#include "model/exchange/row_cells.h"
#include "model/records/tag_text.h"

#include <QIODevice>

namespace ts {

namespace {

/// Everything but identity and time of recording, as one text.
QString content(Comparable comparable)
{
    comparable.id = {};
    comparable.version = 0;
    comparable.at = {};
    QStringList texts;
    for (const QVariant &value : description<Comparable>().toRow(comparable))
        texts << value.toString();
    return texts.join(QChar(0x1F));
}

std::optional<bool> readWorking(RowCells &row)
{
    return row.value("working", [](const QString &written) {
        const QString word = written.toLower();
        if (word == QLatin1String("working"))
            return Expected<bool>(true);
        if (word == QLatin1String("not working") || word == QLatin1String("faulty"))
            return Expected<bool>(false);
        return yesNoFromCell(written);
    });
}

std::optional<bool> readAsking(RowCells &row)
{
    return row.value("asking", [](const QString &written) {
        const QString word = written.toLower();
        if (word == QLatin1String("asking") || word == QLatin1String("sold"))
            return Expected<bool>(word == QLatin1String("asking"));
        return yesNoFromCell(written);
    });
}

/// "60 %" or "0.6".
Expected<double> likenessFromCell(const QString &written)
{
    const bool percent = written.contains(QLatin1Char('%'));
    const auto rate = Rate::parse(percent ? written : written + QLatin1Char('%'));
    const double value = rate ? static_cast<double>(rate->millionths()) / (percent ? 1e6 : 1e4) : -1;
    if (value < 0 || value > 1)
        return Trouble{QStringLiteral("\"%1\" is no likeness").arg(written), {}, QStringLiteral("write 0 to 100 %")};
    return value;
}

} // namespace

const QList<KnownColumn> &comparableColumns()
{
    static const QList<KnownColumn> list{
        knownColumn("maker", "brand|make|manufacturer"),
        knownColumn("model", "maker model|model name|model no|model number|name|item|title"),
        knownColumn("category", "type"),
        knownColumn("price", "sold for|amount|sum"),
        knownColumn("currency"),
        knownColumn("date", "sold on|date sold|sold|day"),
        knownColumn("condition"),
        knownColumn("working", "works"),
        knownColumn("asking", "asking price|asked"),
        knownColumn("carriage included", "postage included|shipping included|with carriage"),
        knownColumn("source", "where|seen at|channel"),
        knownColumn("converted", "in bench currency|converted price"),
        knownColumn("likeness", "like"),
        knownColumn("tag", "unit"),
    };
    return list;
}

Expected<Imported> readComparables(QIODevice &device, const QString &did, const BenchFile &bench, const QList<Comparable> &known,
                                   const QHash<int, Id<Unit>> &units, const QHash<QString, QString> &map, Maker &maker)
{
    CsvReader csv(device, did);
    const auto first = csv.next();
    if (!first)
        return first.trouble();
    if (!*first)
        return Trouble{did, QStringLiteral("the file is empty"), {}};
    const auto columns = ListColumns::match(csv.cells(), comparableColumns(), map, did);
    if (!columns)
        return columns.trouble();
    if (!columns->has("price"))
        return Trouble{did, QStringLiteral("no column says the price"),
                       QStringLiteral("the header needs a column price; say which it is with --map \"their column=price\"")};
    QHash<QString, int> there;
    for (const Comparable &each : known)
        ++there[content(each)];
    Imported imported;
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
        Comparable sale = maker.fresh<Comparable>();
        sale.maker = row.text("maker");
        sale.makerModel = row.text("model");
        sale.category = row.word<Category>("category").value_or(Category::Other);
        const Currency currency =
            row.value("currency", [](const QString &text) { return Currency::parse(text); }).value_or(bench.currency());
        sale.price = row.amount("price", currency);
        if (row.text("price").isEmpty())
            row.refuse("price", QStringLiteral("it is empty"));
        sale.soldOn = row.day("date").value_or(QDate());
        sale.condition = row.text("condition");
        sale.working = readWorking(row);
        sale.asking = readAsking(row).value_or(false);
        sale.carriageIncluded = row.yesNo("carriage included").value_or(false);
        sale.source = row.text("source");
        sale.inBenchCurrency = row.amount("converted", bench.currency());
        sale.likeness = row.value("likeness", likenessFromCell);
        if (const auto tag = row.value("tag", [](const QString &text) { return wholeFromCell(text, 1, 99'999'999); })) {
            sale.unit = units.value(*tag);
            if (sale.unit.isNull())
                row.refuse("tag", QStringLiteral("there is no unit ") + tagText(*tag));
        }
        if (!row.good())
            continue;
        if (int &left = there[content(sale)]; left > 0) {
            --left;
            ++imported.skipped;
            continue;
        }
        imported.change.add(sale);
        ++imported.added;
    }
}

} // namespace ts
