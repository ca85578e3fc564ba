// The large workbook for measuring.
#include "model/demo/demo.h"
#include "model/records/all_records.h"
#include "tests/workbooks.h"

using namespace ts;
using namespace ts::testing;

class TestDemoBulk : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    QList<QList<Row>> made(int units, quint32 seed)
    {
        SetClock clock(QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC));
        IdMaker ids(clock, seed);
        auto store = Store::create(*BookAddress::parse(m_books.fresh(QStringLiteral("sqlite"))), clock.now(), QStringLiteral("bulk"));
        wantOk(store);
        Desk fresh(*std::move(store), ids);
        wantOk(makeBulk(fresh, clock, units, seed));
        if (fresh.verify().value() != QStringList())
            qWarning("%s", qPrintable(fresh.verify().value().join(u' ')));
        QList<QList<Row>> all;
        for (const Kind *kind : allKinds())
            all << fresh.listRows(*kind).value();
        return all;
    }

private Q_SLOTS:
    void aboutFiftyRecordsEachOverAllKinds()
    {
        constexpr int units = 250; // crosses from one change to the next
        const QList<QList<Row>> all = made(units, 1);
        qint64 ofUnits = 0;
        QSet<QString> stages;
        for (qsizetype i = 0; i < all.size(); ++i) {
            const Kind &kind = *allKinds().at(i);
            if (kind.table() == QLatin1String("source_record")) // only import makes these
                continue;
            QVERIFY2(!all.at(i).isEmpty(), qPrintable(kind.table()));
            if (kind.unitColumn() >= 0 || kind.table() == QLatin1String("unit"))
                ofUnits += all.at(i).size();
            if (kind.table() == QLatin1String("unit")) {
                QCOMPARE(all.at(i).size(), units);
                for (const Row &row : all.at(i))
                    stages << row.at(kind.column(u"stage")).toString();
            }
        }
        const double each = static_cast<double>(ofUnits) / units;
        QVERIFY2(each > 40 && each < 62, qPrintable(QString::number(each)));
        QVERIFY2(stages.size() >= 8, qPrintable(QStringList(stages.values()).join(u' ')));
        const QString today = QStringLiteral("2026-11-25T09:00:00.000Z");
        for (const QList<Row> &rows : all)
            for (const Row &row : rows)
                QVERIFY2(row.at(Kind::atColumn).toString() <= today, qPrintable(row.at(Kind::atColumn).toString()));
    }

    void sameSeedSameWorkbook()
    {
        const auto once = made(12, 4);
        QVERIFY(once == made(12, 4));
        QVERIFY(once != made(12, 5));
    }
};

QTEST_GUILESS_MAIN(TestDemoBulk)
#include "test_demo_bulk.moc"
