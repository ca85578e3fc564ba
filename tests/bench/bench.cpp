// Measures the program on a large workbook beside a floor that does the same work with plain SQLite calls.
#include "model/demo/demo.h"
#include "model/exchange/import_file.h"
#include "model/jot/jot.h"
#include "model/paper/restoration.h"
#include "model/store/store.h"
#include "tests/bench/floor.h"
#include "tests/bench/import_floor.h"
#include "tests/bench/rack_floor.h"
#include "tests/bench/timing.h"

#include <QCommandLineParser>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QJsonDocument>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTextStream>

#include <memory>

using namespace ts;
using namespace ts::bench;

namespace {

const QDateTime today({2026, 11, 25}, {9, 0}, Qt::UTC);

template <class T>
T sure(Expected<T> result)
{
    if (!result)
        qFatal("%s", qPrintable(result.trouble().sentence()));
    if constexpr (!std::is_void_v<T>)
        return *std::move(result);
}

struct Book {
    explicit Book(const QString &path) : file(path), clock(today), ids(clock) {}
    void create() { desk = std::make_unique<Desk>(sure(Store::create(sure(BookAddress::parse(file)), today, QStringLiteral("bench"))), ids); }
    void open() { desk = std::make_unique<Desk>(sure(Store::open(sure(BookAddress::parse(file)), today, QStringLiteral("bench"))), ids); }

    QString file;
    SetClock clock;
    IdMaker ids;
    std::unique_ptr<Desk> desk;
};

void say(const QString &line)
{
    QTextStream(stderr) << line << Qt::endl;
}

/// A few letters that change with the schema.
QString schemaMark()
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const Migration &migration : sure(carriedMigrations(false)))
        hash.addData(migration.statements.join(QLatin1Char('\n')).toUtf8());
    return QString::fromLatin1(hash.result().toHex().left(8));
}

/// The large workbook, made once for a number of units and a schema.
QString bulkBook(const QString &folder, int units)
{
    const QString file = QDir(folder).filePath(QStringLiteral("bulk-%1-%2.turnscrew").arg(units).arg(schemaMark()));
    if (QFile::exists(file))
        return file;
    QDir().mkpath(folder);
    removeBookFile(file + QStringLiteral(".half"));
    say(QStringLiteral("Making a workbook of %1 units, once").arg(units));
    {
        Book book(file + QStringLiteral(".half"));
        book.create();
        sure(makeBulk(*book.desk, book.clock, units, 1));
    }
    QFile::rename(file + QStringLiteral(".half"), file);
    return file;
}

void measureRack(Table &table, const QString &file)
{
    QList<RackRow> rows;
    std::vector<RackFloorRow> floorRows;
    const Pair pair = medians(
        9,
        [&] {
            Book book(file);
            book.open();
            rows = sure(book.desk->rack());
        },
        [&] {
            Floor floor(file.toUtf8());
            floorRows = rackFloor(floor, "GBP", toStored(today).toStdString());
        });
    bool same = rows.size() == static_cast<qsizetype>(floorRows.size());
    for (qsizetype i = 0; same && i < rows.size(); ++i) {
        const RackRow &ours = rows.at(i);
        const RackFloorRow &plain = floorRows.at(static_cast<size_t>(i));
        same = ours.id.text().toStdString() == plain.id && ours.spent.minor() == plain.spent && ours.minutes == plain.minutes
            && ours.symptom.toStdString() == plain.symptom && ours.doNotPower == plain.doNotPower && ours.tag == plain.tag;
    }
    if (!same)
        qFatal("the rack and the floor's rack differ");
    table.add(QStringLiteral("open and list the rack (%1 units)").arg(rows.size()), pair, 2);

    Book book(file);
    book.open();
    const double page = median(21, [&] { sure(book.desk->rack({0, 100, {}})); });
    table.remark(QStringLiteral("A first page of 100 units of an open workbook takes %1 ms.").arg(page, 0, 'f', 2));
}

void measureUnit(Table &table, Book &book, Floor &floor)
{
    QByteArrayList statements{"SELECT * FROM \"unit\" WHERE \"id\" = ?"};
    for (const Kind *kind : allKinds())
        if (kind->unitColumn() >= 0)
            statements << "SELECT * FROM \"" + kind->table().toUtf8() + "\" WHERE \"removed\" = 0 AND \"unit\" = ? ORDER BY \"at\", \"id\"";
    const auto rack = sure(book.desk->rack({0, 400, {}}));
    qsizetype ours = 0;
    qsizetype plain = 0;
    size_t records = 0;
    const Pair pair = medians(
        400, [&] { sure(book.desk->unitFile(rack.at(ours++ % rack.size()).id)); },
        [&] {
            for (const auto &list : floor.unit(statements, rack.at(plain++ % rack.size()).id.text().toLatin1()))
                records += list.size();
        },
        10);
    table.add(QStringLiteral("load one unit whole (%1 records)").arg(records / static_cast<size_t>(plain)), pair, 2);
}

void measureSearch(Table &table, Book &book, Floor &floor)
{
    const QStringList words{QStringLiteral("belt"), QStringLiteral("reel"), QStringLiteral("capa"), QStringLiteral("deck"), QStringLiteral("moto")};
    for (int letters = 1; letters <= 4; ++letters) {
        Pair sum;
        qsizetype hits = 0;
        for (const QString &word : words) {
            const QString typed = word.left(letters);
            const Pair pair = medians(
                41, [&] { hits += sure(book.desk->search(typed)).size(); }, [&] { hits -= static_cast<qsizetype>(floor.search(typed.toUtf8(), 50).size()); }, 3);
            sum.ours += pair.ours / static_cast<double>(words.size());
            sum.floor += pair.floor / static_cast<double>(words.size());
        }
        if (hits != 0)
            qFatal("the search finds %lld more than the floor", static_cast<long long>(hits));
        table.add(QStringLiteral("one search keystroke, %1 letter%2").arg(letters).arg(letters > 1 ? QStringLiteral("s") : QString()), sum, 2);
    }
}

void measureJot(Table &table, Book &book, Floor &floor)
{
    const auto rack = sure(book.desk->rack({0, 400, {}}));
    const auto bench = sure(book.desk->benchFile());
    Maker maker = book.desk->maker();
    QList<UnitFile> files;
    for (const RackRow &row : rack.mid(0, 40))
        files << sure(book.desk->unitFile(row.id));
    const QString line = QStringLiteral("CN2.4 = 11.92 V want 12 V 5%");
    const auto once = sure(jot(line, files.first(), bench, maker));
    const QByteArray json = QJsonDocument(once.change.items().first().kind->toJson(*once.change.items().first().after)).toJson(QJsonDocument::Compact);
    qsizetype ours = 0;
    qsizetype plain = 0;
    const Pair pair = medians(
        400, [&] { sure(book.desk->apply(sure(jot(line, files.at(ours++ % files.size()), bench, maker)).change)); },
        [&] { floor.jot(files.at(plain++ % files.size()).unit.id.text().toLatin1(), "CN2.4", json); }, 50);
    table.add(QStringLiteral("one jot read and committed"), pair, 1.5);
}

void measureImport(Table &table, const QString &list)
{
    const QTemporaryDir folder;
    int made = 0;
    const auto fresh = [&] { return folder.filePath(QStringLiteral("import%1.turnscrew").arg(++made)); };
    Book first(fresh());
    first.create();
    const auto report = sure(importFile(*first.desk, list, QStringLiteral("open-repair-data")));
    QByteArrayList tables;
    for (const Kind *kind : allKinds())
        tables << kind->table().toUtf8();
    tables << "search_entry" << "journal" << "journal_item" << "counter";
    const ImportFloor rows(first.file.toUtf8(), tables);
    first.desk.reset();
    // A fresh workbook for each turn, made outside of what is timed.
    std::unique_ptr<Book> ours;
    QString plain;
    QList<double> a;
    QList<double> b;
    for (int i = 0; i < 5; ++i) {
        ours = std::make_unique<Book>(fresh());
        ours->create();
        a << median(1, [&] { sure(importFile(*ours->desk, list, QStringLiteral("open-repair-data"))); });
        Book empty(fresh());
        empty.create();
        plain = empty.file;
        empty.desk.reset();
        b << median(1, [&] { rows.insertInto(plain.toUtf8()); });
    }
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    table.add(QStringLiteral("import of %1 repair records (%2 rows)").arg(report.added).arg(rows.rows()), {a.at(2), b.at(2)}, 4, QStringLiteral("rows from memory"));
}

void measureSheet(Table &table, Book &book)
{
    // Without photos: a picture costs what its size costs.
    const auto rack = sure(book.desk->rack({0, 400, {}}));
    const auto unit = sure(book.desk->unitFile(rack.first().id));
    const auto bench = sure(book.desk->benchFile());
    QByteArray pdf;
    const auto draw = [&] { pdf = sure(restorationPdf(gatherRestoration(unit, bench, {}, today), PageSize::A4)); };
    draw(); // fonts are loaded once
    const double ours = median(15, draw);
    const QString suite = QStandardPaths::findExecutable(QStringLiteral("soffice"));
    if (suite.isEmpty()) {
        table.remark(QStringLiteral("The restoration sheet as PDF takes %1 ms (%2 KiB); no office suite is installed to compare it with.").arg(ours, 0, 'f', 1).arg(pdf.size() / 1024));
        return;
    }
    const QTemporaryDir folder;
    QFile html(folder.filePath(QStringLiteral("sheet.html")));
    if (!html.open(QIODevice::WriteOnly) || html.write(restorationHtml(gatherRestoration(unit, bench, {}, today))) <= 0)
        qFatal("the page cannot be written");
    html.close();
    const double theirs = median(4, [&] {
        QProcess::execute(suite, {QStringLiteral("-env:UserInstallation=file://") + folder.filePath(QStringLiteral("profile")), QStringLiteral("--headless"),
                                  QStringLiteral("--convert-to"), QStringLiteral("pdf"), QStringLiteral("--outdir"), folder.path(), html.fileName()});
    });
    table.add(QStringLiteral("the restoration sheet as PDF"), {ours, theirs}, 0.1, QStringLiteral("an office suite on the same page"));
}

} // namespace

int main(int argc, char **argv)
{
    const QGuiApplication application(argc, argv);
    QCommandLineParser parser;
    parser.addOptions({{QStringLiteral("folder"), QStringLiteral("where large workbooks are kept"), QStringLiteral("folder"), QDir::tempPath()},
                       {QStringLiteral("units"), QStringLiteral("how many"), QStringLiteral("number"), QStringLiteral("10000")},
                       {QStringLiteral("only"), QStringLiteral("rack, unit, search, jot, import, sheet"), QStringLiteral("names")}});
    parser.process(application);
    const QStringList only = parser.value(QStringLiteral("only")).split(QLatin1Char(','), Qt::SkipEmptyParts);
    const auto wanted = [&only](const char *name) { return only.isEmpty() || only.contains(QLatin1String(name)); };

    // The kept workbook stays as it was made: what is measured works on a copy.
    const QString kept = bulkBook(parser.value(QStringLiteral("folder")), parser.value(QStringLiteral("units")).toInt());
    const QString file = kept + QStringLiteral(".used");
    removeBookFile(file);
    if (!QFile::copy(kept, file))
        qFatal("%s cannot be copied", qPrintable(kept));

    Table table;
    if (wanted("rack"))
        measureRack(table, file);
    {
        Book book(file);
        book.open();
        Floor floor(file.toUtf8());
        if (wanted("unit"))
            measureUnit(table, book, floor);
        if (wanted("search"))
            measureSearch(table, book, floor);
        if (wanted("jot"))
            measureJot(table, book, floor);
        if (wanted("sheet"))
            measureSheet(table, book);
    }
    const QString set = qEnvironmentVariable("TURNSCREW_SHARED", QStringLiteral(SOURCE_DIR "/../shared"));
    const QString list = QDir(set).filePath(QStringLiteral("ords/audio_and_home_electronics.csv"));
    if (wanted("import") && QFile::exists(list))
        measureImport(table, list);
    else if (wanted("import"))
        table.remark(QStringLiteral("The repair records are not there, so no import was measured."));
    removeBookFile(file);
    table.print();
    return table.allMet() ? 0 : 1;
}
