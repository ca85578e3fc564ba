// The five outcomes of opening a workbook, with migrations of the test's own after those the program carries.
#include "model/store/transaction.h"
#include "tests/workbooks.h"

using namespace ts;
using namespace ts::testing;

namespace {

const QDateTime now({2026, 11, 25}, {9, 0}, Qt::UTC);

/// The migrations of a later program: a kind of its own in step 2, a column in step 3.
QList<Migration> later(bool postgres, int upTo, int leastProgram = 0)
{
    auto migrations = *carriedMigrations(postgres);
    const int carried = migrations.last().number;
    const QStringList texts{QStringLiteral("-- ;;\nCREATE TABLE later_thing (name TEXT NOT NULL, told TEXT DEFAULT 'a;b');\n-- ;;\n"
                                           "INSERT INTO later_thing (name) VALUES ('; -- ')"),
                            QStringLiteral("-- ;;\nALTER TABLE \"unit\" ADD COLUMN \"later\" BIGINT NOT NULL DEFAULT 7")};
    for (int i = 0; carried + i < upTo; ++i)
        migrations << *readMigration(carried + 1 + i, QStringLiteral("-- least-program: %1\n").arg(leastProgram > 0 ? leastProgram : carried + 1 + i) + texts.at(i),
                                     postgres);
    return migrations;
}

QString stepOf(Connection &connection)
{
    return connection.value(QStringLiteral("SELECT value FROM workbook WHERE name = 'schema'"))->toString();
}

/// Every table, column and row count, and the version fields: what must not move when an upgrade fails.
QStringList picture(Connection &connection)
{
    QStringList lines;
    const auto tables = *connection.rows(connection.pick("SELECT name, COALESCE(sql, '') FROM sqlite_master ORDER BY name",
                                                         "SELECT table_name || '.' || column_name, data_type FROM information_schema.columns "
                                                         "WHERE table_schema = current_schema() ORDER BY 1"));
    for (const Row &row : tables)
        lines << row.at(0).toString() + QLatin1Char('=') + row.at(1).toString();
    const auto values = *connection.rows(QStringLiteral("SELECT name, value FROM workbook ORDER BY name"));
    for (const Row &row : values)
        lines << row.at(0).toString() + QLatin1Char('=') + row.at(1).toString();
    const auto units = *connection.rows(QStringLiteral("SELECT * FROM \"unit\" ORDER BY \"tag\""));
    for (const Row &row : units)
        for (const QVariant &value : row)
            lines << value.toString();
    if (!connection.isPostgres())
        lines << connection.value(QStringLiteral("PRAGMA user_version"))->toString() << connection.value(QStringLiteral("PRAGMA application_id"))->toString();
    return lines;
}

std::unique_ptr<Connection> session(const QString &book)
{
    auto connection = Connection::open(*BookAddress::parse(book), Connection::Mode::Existing);
    if (!connection)
        qFatal("%s", qPrintable(connection.trouble().sentence()));
    return *std::move(connection);
}

} // namespace

class TestStoreMigrations : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    int m_carried = 0;

    QString bookWithOneUnit(const QString &engine)
    {
        const QString book = m_books.fresh(engine);
        OpenDesk desk;
        wantOk(desk.create(book));
        Unit unit = desk->maker().fresh<Unit>();
        unit.name = QStringLiteral("Console");
        wantOk(desk->apply(Change(QStringLiteral("Took in")).add(unit)));
        return book;
    }

private Q_SLOTS:
    void initTestCase() { m_carried = carriedMigrations(false)->last().number; }

    void freshThenAgain_data() { engineRows(); }
    void freshThenAgain()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        {
            const auto made = Store::create(*BookAddress::parse(book), now, QStringLiteral("tester"));
            wantOk(made);
            QCOMPARE((*made)->migration().outcome, MigrationOutcome::Upgraded);
            QCOMPARE((*made)->migration().copy, QString()); // nothing was there to copy
        }
        const auto again = Store::open(*BookAddress::parse(book), now, QStringLiteral("tester"));
        wantOk(again);
        QCOMPARE((*again)->migration().outcome, MigrationOutcome::UpToDate);
        QCOMPARE((*again)->migration().copy, QString());
        QCOMPARE(stepOf((*again)->connection()), QString::number(m_carried));
        QVERIFY(refusal(Store::create(*BookAddress::parse(book), now, QStringLiteral("tester"))).contains(QLatin1String("already")));
    }

    void eachOlderStepIsUpgraded_data()
    {
        QTest::addColumn<QString>("engine");
        QTest::addColumn<int>("from");
        const QStringList engines = Workbooks::engines();
        for (const QString &engine : engines)
            for (int from = m_carried; from < m_carried + 2; ++from)
                QTest::addRow("%s from %d", qPrintable(engine), from) << engine << from;
    }
    void eachOlderStepIsUpgraded()
    {
        QFETCH(QString, engine);
        QFETCH(int, from);
        const QString book = bookWithOneUnit(engine);
        const auto connection = session(book);
        const bool postgres = connection->isPostgres();
        if (from > m_carried)
            QCOMPARE(migrate(*connection, later(postgres, from), now).outcome, MigrationOutcome::Upgraded);
        const auto report = migrate(*connection, later(postgres, m_carried + 2), now.addSecs(60));
        QCOMPARE(report.trouble.sentence(), QStringLiteral("."));
        QCOMPARE(report.outcome, MigrationOutcome::Upgraded);
        QCOMPARE(stepOf(*connection), QString::number(m_carried + 2));
        QCOMPARE(connection->value(QStringLiteral("SELECT \"later\" FROM \"unit\""))->toInt(), 7);
        QCOMPARE(connection->value(QStringLiteral("SELECT name || told FROM later_thing"))->toString(), QStringLiteral("; -- a;b"));
        QCOMPARE(connection->value(QStringLiteral("SELECT count(*) FROM later_thing"))->toInt(), 1);
        QCOMPARE(migrate(*connection, later(postgres, m_carried + 2), now).outcome, MigrationOutcome::UpToDate);
        if (postgres)
            return;
        // The copy is the workbook as it was, at its step, and can be worked with.
        QVERIFY(report.copy.endsWith(QStringLiteral(".before-step-%1-20261125-090100.turnscrew").arg(from)));
        QCOMPARE(stepOf(*session(report.copy)), QString::number(from));
        if (from == m_carried) {
            OpenDesk copy;
            wantOk(copy.open(report.copy));
            QCOMPARE(copy->rack()->size(), 1);
            QCOMPARE(*copy->verify(), QStringList());
        }
        QVERIFY(!QFile::exists(report.copy + QStringLiteral(".part")));
    }

    void aNewerOneThatCanBeReadIsUsed_data() { engineRows(); }
    void aNewerOneThatCanBeReadIsUsed()
    {
        QFETCH(QString, engine);
        const QString book = bookWithOneUnit(engine);
        {
            const auto connection = session(book);
            QCOMPARE(migrate(*connection, later(connection->isPostgres(), m_carried + 2, m_carried), now).outcome, MigrationOutcome::Upgraded);
        }
        const auto store = Store::open(*BookAddress::parse(book), now, QStringLiteral("tester"));
        wantOk(store);
        QCOMPARE((*store)->migration().outcome, MigrationOutcome::NewerReadable);
        OpenDesk desk;
        wantOk(desk.open(book));
        Unit unit = desk->maker().fresh<Unit>();
        unit.name = QStringLiteral("Second");
        wantOk(desk->apply(Change(QStringLiteral("Took in")).add(unit)));
        QCOMPARE(desk->get(unit.id)->tag, 2);
        QCOMPARE(*desk->verify(), QStringList());
        QCOMPARE(stepOf(*session(book)), QString::number(m_carried + 2));
    }

    void aNewerOneThatCannotBeReadIsRefused_data() { engineRows(); }
    void aNewerOneThatCannotBeReadIsRefused()
    {
        QFETCH(QString, engine);
        const QString book = bookWithOneUnit(engine);
        const auto connection = session(book);
        QCOMPARE(migrate(*connection, later(connection->isPostgres(), m_carried + 1), now).outcome, MigrationOutcome::Upgraded);
        const QStringList before = picture(*connection);
        const auto refused = Store::open(*BookAddress::parse(book), now, QStringLiteral("tester"));
        QVERIFY(refusal(refused).contains(QLatin1String("newer Turnscrew")));
        QCOMPARE(migrate(*connection, *carriedMigrations(connection->isPostgres()), now).outcome, MigrationOutcome::NewerRefused);
        QCOMPARE(picture(*connection), before);
    }

    void aBrokenOneIsRolledBackWhole_data() { engineRows(); }
    void aBrokenOneIsRolledBackWhole()
    {
        QFETCH(QString, engine);
        const QString book = bookWithOneUnit(engine);
        const auto connection = session(book);
        const QStringList before = picture(*connection);
        auto migrations = later(connection->isPostgres(), m_carried + 1); // this one is well, and must not stay either
        migrations << *readMigration(m_carried + 2,
                                     QStringLiteral("-- ;;\nALTER TABLE \"unit\" ADD COLUMN \"half\" BIGINT\n-- ;;\nUPDATE \"unit\" SET \"name\" = 'lost'\n"
                                                    "-- ;;\nUPDATE \"unit\" SET no_such_column = 1"),
                                     connection->isPostgres());
        const auto report = migrate(*connection, migrations, now);
        QCOMPARE(report.outcome, MigrationOutcome::Failed);
        QVERIFY(report.trouble.sentence().contains(QLatin1String("left as it was")));
        QVERIFY(report.trouble.sentence().contains(QLatin1String("no_such_column")));
        QCOMPARE(picture(*connection), before);
        OpenDesk desk;
        wantOk(desk.open(book));
        QCOMPARE(*desk->verify(), QStringList());
    }

    void withoutACopyNothingIsUpgraded_data()
    {
        QTest::addColumn<QString>("inTheWay");
        QTest::newRow("a file of the copy's name") << QStringLiteral("file");
        QTest::newRow("a folder of the copy's name") << QStringLiteral("folder");
        QTest::newRow("a folder where the copy is begun") << QStringLiteral("part");
    }
    void withoutACopyNothingIsUpgraded()
    {
        QFETCH(QString, inTheWay);
        const QString book = bookWithOneUnit(QStringLiteral("sqlite"));
        const auto connection = session(book);
        const QStringList before = picture(*connection);
        const QString copy = QFileInfo(book).path() + QLatin1Char('/') + QFileInfo(book).completeBaseName()
            + QStringLiteral(".before-step-%1-20261125-090000.turnscrew").arg(m_carried);
        QFile file(copy);
        if (inTheWay == QLatin1String("file"))
            QVERIFY(file.open(QIODevice::WriteOnly) && file.write("mine") == 4 && file.flush());
        else
            QVERIFY(QDir().mkpath(copy + (inTheWay == QLatin1String("part") ? QStringLiteral(".part/full") : QString())));
        const auto report = migrate(*connection, later(false, m_carried + 1), now);
        QCOMPARE(report.outcome, MigrationOutcome::Failed);
        QCOMPARE(report.copy, QString());
        QVERIFY(report.trouble.sentence().contains(QLatin1String("left as it was")));
        QCOMPARE(picture(*connection), before);
        if (inTheWay == QLatin1String("file"))
            QCOMPARE(file.size(), 4);
        QVERIFY(inTheWay == QLatin1String("part") || !QFile::exists(copy + QStringLiteral(".part")));
    }

    void aDamagedOneIsNotUpgraded()
    {
        const QString book = bookWithOneUnit(QStringLiteral("sqlite"));
        QFile file(book);
        QVERIFY(file.open(QIODevice::ReadWrite));
        QVERIFY(file.seek(file.size() - 4096));
        file.write(QByteArray(4096, '\x55'));
        file.close();
        const auto report = migrate(*session(book), later(false, m_carried + 1), now);
        QCOMPARE(report.outcome, MigrationOutcome::Failed);
        QVERIFY(report.trouble.sentence().contains(QLatin1String("damaged")) || report.trouble.sentence().contains(QLatin1String("not sound")));
        QCOMPARE(stepOf(*session(book)), QString::number(m_carried));
        QCOMPARE(QDir(QFileInfo(book).path()).entryList({QFileInfo(book).completeBaseName() + QStringLiteral(".before*")}), QStringList());
    }

    void textsThatAreNoMigration()
    {
        QVERIFY(!readMigration(2, QStringLiteral("-- only a comment\n"), false));
        QVERIFY(!readMigration(2, QStringLiteral("-- ;; postgres\nSELECT 1\n"), false));
        const auto parted = readMigration(2, QStringLiteral("-- ;;\nSELECT ';'; -- it's one\n-- ;; sqlite\nSELECT 2\n-- ;; postgres\nSELECT 3\n-- ;;\nSELECT 4"), true);
        wantOk(parted);
        QCOMPARE(parted->statements, QStringList({QStringLiteral("SELECT ';'; -- it's one"), QStringLiteral("SELECT 3"), QStringLiteral("SELECT 4")}));
        QCOMPARE(parted->leastProgram, 2);
    }
};

QTEST_GUILESS_MAIN(TestStoreMigrations)
#include "test_store_migrations.moc"
