#include "model/exchange/exchange_kinds.h"
#include "model/exchange/workbook_json.h"
#include "model/records/all_records.h"
#include "model/records/maker.h"
#include "tests/testing.h"

#include <QBuffer>
#include <QJsonDocument>

using namespace ts;

class TestExchangeJson : public QObject {
    Q_OBJECT
    SetClock m_clock{QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC)};
    IdMaker m_ids{m_clock, 7};
    QHash<const Kind *, QList<Row>> m_rows;

    template <class R>
    void keep(const R &record)
    {
        m_rows[&description<R>()] << description<R>().toRow(record);
    }
    QByteArray written()
    {
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        const auto count =
            writeWorkbookJson(buffer, [this](const Kind &kind) { return Expected<QList<Row>>(m_rows.value(&kind)); });
        return count ? buffer.data() : QByteArray();
    }
    static Expected<Imported> read(const QByteArray &bytes, const QList<Setting> &settings = {})
    {
        QBuffer buffer;
        buffer.setData(bytes);
        buffer.open(QIODevice::ReadOnly);
        return readWorkbookJson(buffer, QStringLiteral("Cannot import a.json"), settings);
    }

private Q_SLOTS:
    void init()
    {
        m_rows.clear();
        Maker maker(m_ids);
        Unit unit = maker.fresh<Unit>();
        unit.version = 9;
        unit.tag = 42;
        unit.name = QStringLiteral("<script>\"\\ \u202E水");
        unit.category = Category::Tuner;
        unit.year = 1979;
        keep(unit);
        Spend spend = maker.fresh<Spend>();
        spend.unit = unit.id;
        spend.text = QStringLiteral("purchase");
        spend.kind = SpendKind::Purchase;
        spend.amount = Money(3000, *Currency::parse(u"GBP"));
        spend.paidOn = QDate(2026, 11, 1);
        keep(spend);
        Reading reading = maker.fresh<Reading>();
        reading.unit = unit.id;
        reading.name = QStringLiteral("CN2.4");
        reading.value = *Quantity::parse(u"11.92 V");
        reading.wanted = *Limit::parse(u"12 V 5%");
        keep(reading);
        Setting setting = maker.fresh<Setting>();
        setting.name = QStringLiteral("currency");
        setting.value = QStringLiteral("EUR");
        keep(setting);
        Photo photo = maker.fresh<Photo>();
        photo.unit = unit.id;
        photo.sha256 = QStringLiteral("00");
        keep(photo);
        TeardownItem item = maker.fresh<TeardownItem>();
        item.unit = unit.id;
        item.what = QStringLiteral("lid");
        item.photo = photo.id;
        keep(item);
        PhotoPin pin = maker.fresh<PhotoPin>();
        pin.unit = unit.id;
        pin.photo = photo.id;
        keep(pin);
    }

    void everyRecordComesBack()
    {
        const auto imported = read(written());
        testing::wantOk(imported);
        QVERIFY2(imported->problems.isEmpty(), qPrintable(imported->problems.lines().join(QLatin1Char('\n'))));
        QHash<QString, Row> back;
        for (const ChangeItem &item : imported->change.items()) {
            QVERIFY(!item.before);
            testing::wantOk(item.kind->reads(*item.after));
            back.insert(item.kind->table(), *item.after);
        }
        for (const Kind *kind : allKinds()) {
            for (Row row : m_rows.value(kind)) {
                if (kind->table() == QLatin1String("photo") || kind->table() == QLatin1String("photo_pin")) {
                    QVERIFY(!back.contains(kind->table())); // the picture is not in the file
                    continue;
                }
                if (kind->table() == QLatin1String("teardown_item"))
                    row[kind->column(u"photo")] = QVariant();
                QVERIFY2(Kind::sameContent(back.value(kind->table()), row), qPrintable(kind->table()));
                QCOMPARE(back.value(kind->table()).at(Kind::versionColumn).toLongLong(), 0);
            }
        }
        QCOMPARE(imported->warnings.lines().size(), 2);
    }

    void isOneJsonDocumentWithEveryKind()
    {
        const QJsonObject document = QJsonDocument::fromJson(written()).object();
        QCOMPARE(document.value(QLatin1String("format")).toString(), QStringLiteral("turnscrew-workbook"));
        const QJsonObject records = document.value(QLatin1String("records")).toObject();
        QCOMPARE(records.size(), allKinds().size());
        const QJsonObject spend = records.value(QLatin1String("spend")).toArray().at(0).toObject();
        QCOMPARE(spend.value(QLatin1String("amount")).toString(), QStringLiteral("30.00"));
        QCOMPARE(spend.value(QLatin1String("amount_currency")).toString(), QStringLiteral("GBP"));
        m_rows.clear();
        testing::wantOk(read(written()));
    }

    void aSettingThatIsThereIsChangedNotDoubled()
    {
        Maker maker(m_ids);
        Setting there = maker.fresh<Setting>();
        there.version = 3;
        there.name = QStringLiteral("currency");
        there.value = QStringLiteral("GBP");
        const auto imported = read(written(), {there});
        testing::wantOk(imported);
        int settings = 0;
        for (const ChangeItem &item : imported->change.items()) {
            if (item.kind != &description<Setting>())
                continue;
            ++settings;
            QVERIFY(item.before);
            const auto after = description<Setting>().fromRow(*item.after);
            QCOMPARE(after->id, there.id);
            QCOMPARE(after->value, QStringLiteral("EUR"));
        }
        QCOMPARE(settings, 1);
    }

    void aWrongDocumentIsRefused_data()
    {
        QTest::addColumn<QByteArray>("file");
        QTest::addColumn<QString>("says");
        QTest::newRow("empty") << QByteArray(" \n") << QStringLiteral("the file is empty");
        QTest::newRow("no JSON") << QByteArray("tag,name\n1,x\n") << QStringLiteral("line 1: this is no JSON");
        QTest::newRow("cut off") << written().left(200) << QStringLiteral("this is no JSON");
        QTest::newRow("another document") << QByteArray("{\"a\": 1}") << QStringLiteral("this JSON is no exported workbook");
        QTest::newRow("a list") << QByteArray("[1, 2]") << QStringLiteral("this JSON is no exported workbook");
        QTest::newRow("newer") << QByteArray("{\"format\": \"turnscrew-workbook\", \"version\": 2, \"records\": {}}")
                               << QStringLiteral("version 2 and this program reads 1");
    }
    void aWrongDocumentIsRefused()
    {
        QFETCH(QByteArray, file);
        QFETCH(QString, says);
        const QString sentence = testing::refusal(read(file));
        QVERIFY2(sentence.contains(says), qPrintable(sentence));
    }

    void aWrongRecordIsAProblem_data()
    {
        QTest::addColumn<QByteArray>("from");
        QTest::addColumn<QByteArray>("to");
        QTest::addColumn<QString>("says");
        QTest::newRow("strange word") << QByteArray("\"tuner\"") << QByteArray("\"tunner\"") << QStringLiteral("unit number 1: ");
        QTest::newRow("strange field") << QByteArray("\"tag\"") << QByteArray("\"tug\"") << QStringLiteral("unit number 1: ");
        QTest::newRow("strange kind") << QByteArray("\"spend\":") << QByteArray("\"spent\":")
                                      << QStringLiteral("\"spent\" is no kind of record");
        QTest::newRow("bad money") << QByteArray("\"30.00\"") << QByteArray("\"thirty\"") << QStringLiteral("spend number 1: ");
        QTest::newRow("bad limit") << QByteArray("\"12 V 5%\"") << QByteArray("\"12 V 5\"")
                                   << QStringLiteral("reading number 1: ");
        QTest::newRow("no tag") << QByteArray("\"tag\":42") << QByteArray("\"tag\":0")
                                << QStringLiteral("unit number 1: its tag 0000 is missing");
    }
    void aWrongRecordIsAProblem()
    {
        QFETCH(QByteArray, from);
        QFETCH(QByteArray, to);
        QFETCH(QString, says);
        QByteArray file = written();
        QVERIFY(file.contains(from));
        const auto imported = read(file.replace(from, to));
        testing::wantOk(imported);
        const QString first = imported->problems.lines().value(0);
        QVERIFY2(first.startsWith(says), qPrintable(first));
    }

    void aReferenceToNowhereIsAProblem()
    {
        m_rows.remove(&description<Unit>());
        const auto imported = read(written());
        testing::wantOk(imported);
        QVERIFY2(imported->problems.lines().contains(QStringLiteral("spend number 1: its unit is not in the file")),
                 qPrintable(imported->problems.lines().join(QLatin1Char('\n'))));
    }

    void aRecordTwiceIsAProblem()
    {
        m_rows[&description<Spend>()] << m_rows.value(&description<Spend>()).constFirst();
        const auto imported = read(written());
        testing::wantOk(imported);
        QVERIFY(imported->problems.lines().value(0).startsWith(QStringLiteral("spend number 2: its id")));
    }

    void kindsByName()
    {
        testing::wantOk(canImport(QStringLiteral("open-repair-data")));
        testing::wantOk(canExport(QStringLiteral("csv")));
        QVERIFY(testing::refusal(canImport(QStringLiteral("parts"))).contains(QStringLiteral("yet")));
        testing::wantOk(canExport(QStringLiteral("xlsx")));
        QVERIFY(testing::refusal(canExport(QStringLiteral("pdf")))
                    .contains(QStringLiteral("no such kind; choose one of csv, json, open-repair-data")));
    }
};

QTEST_GUILESS_MAIN(TestExchangeJson)
#include "test_exchange_json.moc"
