// The schema that the migrations make against the descriptions, and every kind there and back through rows, tables and JSON.
#include "model/records/all_records.h"
#include "model/store/transaction.h"
#include "tests/generated_rows.h"
#include "tests/workbooks.h"

#include <QJsonDocument>

using namespace ts;
using namespace ts::testing;

namespace {

struct Column {
    QString name;
    QString type;
    bool nullable = false;
    QString refersTo;
    bool operator==(const Column &) const = default;
};

// What a column of a field type is called by the engine itself.
QString typeOf(const FieldInfo &field, bool postgres)
{
    switch (field.type) {
    case FieldType::Integer:
    case FieldType::Minor:
    case FieldType::Bool:
        return postgres ? QStringLiteral("bigint") : QStringLiteral("BIGINT");
    case FieldType::Real:
        return postgres ? QStringLiteral("double precision") : QStringLiteral("DOUBLE PRECISION");
    default:
        return postgres ? QStringLiteral("text") : QStringLiteral("TEXT");
    }
}

QList<Column> described(const Kind &kind, bool postgres)
{
    QList<Column> columns;
    for (const FieldInfo &field : kind.fields()) {
        // A required reference or instant is null in no record, so the schema may and does forbid it.
        const bool nullable = field.nullable && !field.required;
        columns << Column{field.name, typeOf(field, postgres), nullable, field.refersTo};
    }
    return columns;
}

// Of the engine's own catalogue: SQLite's table_info and foreign_key_list, PostgreSQL's pg_attribute and pg_constraint.
Expected<QList<Column>> stored(Connection &connection, const QString &table)
{
    const auto rows = connection.isPostgres()
        ? connection.rows(QStringLiteral(
                              "SELECT a.attname, format_type(a.atttypid, a.atttypmod), CASE WHEN a.attnotnull THEN 1 ELSE 0 END, COALESCE(r.relname, '') "
                              "FROM pg_attribute a LEFT JOIN pg_constraint c ON c.conrelid = a.attrelid AND c.contype = 'f' AND c.conkey = ARRAY[a.attnum] "
                              "LEFT JOIN pg_class r ON r.oid = c.confrelid WHERE a.attrelid = CAST(? AS regclass) AND a.attnum > 0 AND NOT a.attisdropped "
                              "ORDER BY a.attnum"),
                          {QLatin1Char('"') + table + QLatin1Char('"')})
        : connection.rows(QStringLiteral("SELECT i.name, i.type, i.\"notnull\", COALESCE(f.\"table\", '') FROM pragma_table_info(?) i "
                                         "LEFT JOIN pragma_foreign_key_list(?) f ON f.\"from\" = i.name ORDER BY i.cid"),
                          {table, table});
    if (!rows)
        return rows.trouble();
    QList<Column> columns;
    for (const Row &row : *rows)
        columns << Column{row.at(0).toString(), row.at(1).toString(), row.at(2).toInt() == 0, row.at(3).toString()};
    return columns;
}

QString shown(const QList<Column> &columns)
{
    QStringList lines;
    for (const Column &column : columns)
        lines << QStringLiteral("%1 %2%3%4").arg(column.name, column.type, column.nullable ? QString() : QStringLiteral(" NOT NULL"),
                                                 column.refersTo.isEmpty() ? QString() : QStringLiteral(" > ") + column.refersTo);
    return lines.join(QLatin1Char('\n'));
}

/// An id for every table to refer to.
QHash<QString, QStringList> someIds()
{
    QHash<QString, QStringList> ids;
    for (const Kind *kind : allKinds())
        ids[kind->table()] = {QUuid::createUuid().toString(QUuid::WithoutBraces)};
    return ids;
}

} // namespace

class TestStoreSchema : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void columnsAreTheDescriptions_data() { engineRows(); }
    void columnsAreTheDescriptions()
    {
        QFETCH(QString, engine);
        const auto address = BookAddress::parse(m_books.fresh(engine));
        const auto store = Store::create(*address, QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC), QStringLiteral("tester"));
        wantOk(store);
        Connection &connection = (*store)->connection();
        QVERIFY(allKinds().size() >= 33);
        for (const Kind *kind : allKinds()) {
            const auto columns = stored(connection, kind->table());
            wantOk(columns);
            QCOMPARE(kind->table() + QLatin1Char('\n') + shown(*columns),
                     kind->table() + QLatin1Char('\n') + shown(described(*kind, connection.isPostgres())));
            QCOMPARE(columns->at(Kind::idColumn).name, QStringLiteral("id"));
        }
    }

    void referencesAreLookedUpByAnIndex()
    {
        const auto address = BookAddress::parse(m_books.fresh(QStringLiteral("sqlite")));
        const auto store = Store::create(*address, QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC), QStringLiteral("tester"));
        wantOk(store);
        for (const Kind *kind : allKinds()) {
            if (kind->unitColumn() < 0)
                continue;
            const auto plan = (*store)->connection().rows(
                QStringLiteral("EXPLAIN QUERY PLAN SELECT * FROM \"%1\" WHERE \"removed\" = 0 AND \"unit\" = ?").arg(kind->table()), {QStringLiteral("x")});
            wantOk(plan);
            QVERIFY2(plan->first().last().toString().startsWith(QLatin1String("SEARCH")), qPrintable(kind->table()));
        }
    }

    void aFileSaysWhatItIs()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        OpenDesk desk;
        wantOk(desk.create(book));
        desk.desk.reset();
        // SQLite's "Database File Format", 1.3: write version 2 at 18 is the write-ahead log, 60 the user version, 68 the application id.
        QFile file(book);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray header = file.read(100);
        QCOMPARE(header.first(16), QByteArray("SQLite format 3\0", 16));
        QCOMPARE(header.at(18), '\2');
        QCOMPARE(header.at(19), '\2');
        QCOMPARE(header.mid(68, 4), QByteArray("TSCW"));
        const auto carried = carriedMigrations(false);
        wantOk(carried);
        QCOMPARE(qFromBigEndian<qint32>(header.constData() + 60), carried->last().number);
        QVERIFY(!QFile::exists(book + QStringLiteral("-wal"))); // closed well
    }

    void everySessionIsSetUp()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        OpenDesk desk;
        wantOk(desk.create(book));
        const auto session = Connection::open(*BookAddress::parse(book), Connection::Mode::Existing);
        wantOk(session);
        // SQLite's list of pragmas: synchronous 2 is FULL.
        const QList<std::pair<QString, QString>> wanted{{QStringLiteral("foreign_keys"), QStringLiteral("1")},
                                                        {QStringLiteral("trusted_schema"), QStringLiteral("0")},
                                                        {QStringLiteral("synchronous"), QStringLiteral("2")},
                                                        {QStringLiteral("journal_mode"), QStringLiteral("wal")},
                                                        {QStringLiteral("busy_timeout"), QStringLiteral("8000")}};
        for (const auto &[pragma, value] : wanted)
            QCOMPARE(pragma + (*session)->value(QStringLiteral("PRAGMA ") + pragma)->toString(), pragma + value);
    }

    void aBackupGoesOnWithTheLog()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const QString file = m_books.path(QStringLiteral("copy.turnscrew"));
        wantOk(desk->backup(file));
        OpenDesk copy;
        wantOk(copy.open(file));
        const auto session = Connection::open(*BookAddress::parse(file), Connection::Mode::Existing);
        wantOk(session);
        QCOMPARE((*session)->value(QStringLiteral("PRAGMA journal_mode"))->toString(), QStringLiteral("wal"));
    }

    void everyKindGoesThroughJson()
    {
        const auto ids = someIds();
        GeneratedRows generated(20261125);
        for (const Kind *kind : allKinds()) {
            for (int round = 0; round < 20; ++round) {
                const Row row = generated.row(*kind, QUuid::createUuid().toString(QUuid::WithoutBraces), ids.value(QStringLiteral("unit")).first(), ids);
                wantOk(kind->reads(row));
                for (int i = 0; i < row.size(); ++i)
                    QVERIFY2(!row.at(i).isNull() || kind->fields().at(i).type == FieldType::Ref, qPrintable(kind->table() + kind->fields().at(i).name));
                const QByteArray text = QJsonDocument(kind->toJson(row)).toJson();
                const auto back = kind->fromJson(QJsonDocument::fromJson(text).object());
                wantOk(back);
                for (int i = 0; i < row.size(); ++i)
                    QVERIFY2(back->at(i) == row.at(i), qPrintable(QStringLiteral("%1.%2: %3 became %4").arg(kind->table(), kind->fields().at(i).name,
                                                                                                  row.at(i).toString(), back->at(i).toString())));
            }
            // Nothing but what is required, too.
            const auto blank = kind->fromJson(kind->toJson(kind->blank()));
            wantOk(blank);
            QVERIFY(Kind::sameContent(*blank, kind->blank()));
        }
    }

    void everyKindGoesThroughItsTable_data() { engineRows(); }
    void everyKindGoesThroughItsTable()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        const QString book = m_books.fresh(engine);
        wantOk(desk.create(book));
        GeneratedRows generated(7);
        QHash<QString, QStringList> ids;
        QHash<QString, Row> recorded;
        QString unit;
        for (const Kind *kind : allKinds()) { // in an order in which references point backwards
            const QString id = desk.ids.nextUuid().toString(QUuid::WithoutBraces);
            if (kind->table() == QLatin1String("unit"))
                unit = id;
            Row row = generated.row(*kind, id, unit, ids);
            const auto applied = desk->apply(Change(kind->noun()).addItem({kind, std::nullopt, row}));
            wantOk(applied);
            recorded[kind->table()] = *applied->items().first().after;
            row[Kind::versionColumn] = QVariant(1LL);
            if (const int tag = kind->column(u"tag"); tag >= 0)
                row[tag] = QVariant(1LL);
            for (int i = 0; i < row.size(); ++i)
                QCOMPARE(recorded[kind->table()].at(i), row.at(i));
            ids[kind->table()] << id;
        }
        OpenDesk again;
        wantOk(again.open(book));
        for (const Kind *kind : allKinds()) {
            const auto back = again->getRow(*kind, QUuid::fromString(ids.value(kind->table()).first()));
            wantOk(back);
            for (int i = 0; i < back->size(); ++i)
                QVERIFY2(back->at(i) == recorded[kind->table()].at(i) && back->at(i).typeId() == recorded[kind->table()].at(i).typeId(),
                         qPrintable(QStringLiteral("%1.%2: %3 became %4").arg(kind->table(), kind->fields().at(i).name,
                                                                             recorded[kind->table()].at(i).toString(), back->at(i).toString())));
            QCOMPARE(again->count(*kind).value(), 1);
        }
    }

    void aNumberThatIsNoneIsRefused()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        Unit unit = desk->maker().fresh<Unit>();
        unit.name = QStringLiteral("Meter");
        Reading reading = desk->maker().fresh<Reading>();
        reading.unit = unit.id;
        reading.name = QStringLiteral("CN2.4");
        for (const double none : {qQNaN(), qInf(), -qInf()}) { // JSON, and so the journal, has no words for them
            reading.uncertainty = none;
            QVERIFY(refusal(desk->apply(Change(QStringLiteral("Reading")).add(unit).add(reading))).contains(QLatin1String("uncertainty")));
        }
        QCOMPARE(desk->rack()->size(), 0);
    }
};

QTEST_GUILESS_MAIN(TestStoreSchema)
#include "test_store_schema.moc"
