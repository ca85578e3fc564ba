#include "model/store/discard.h"
#include "tests/workbooks.h"

#include <QDir>
#include <QFileInfo>

using namespace ts;
using namespace ts::testing;

/// What was begun and could not be finished leaves nothing behind.
class TestStoreDiscard : public QObject {
    Q_OBJECT

    Workbooks m_books;

private Q_SLOTS:
    void nothingIsLeft_data() { engineRows(); }
    void nothingIsLeft()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        const auto address = BookAddress::parse(book);
        wantOk(address);
        {
            OpenDesk desk;
            wantOk(desk.create(book));
            Unit unit = desk->maker().fresh<Unit>();
            unit.name = QStringLiteral("Pellworth KD-7");
            wantOk(desk->apply(Change(QStringLiteral("Taken in")).add(unit)));
            wantOk(desk->keep("bytes of a photo"));
        }
        wantOk(discardNewBook(*address));
        if (address->engine == BookAddress::Engine::Sqlite) {
            const QFileInfo file(address->file);
            QCOMPARE(file.dir().entryList({file.fileName() + QLatin1Char('*')}, QDir::Files), QStringList());
        } else {
            const auto connection = Connection::open(*address, Connection::Mode::Existing);
            wantOk(connection);
            for (const char *left : {"SELECT count(*) FROM pg_tables WHERE schemaname = current_schema()",
                                     "SELECT count(*) FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace "
                                     "WHERE n.nspname = current_schema()"}) {
                const auto count = (*connection)->value(QString::fromLatin1(left));
                wantOk(count);
                QCOMPARE(count->toInt(), 0);
            }
            QVERIFY(!refusal(discardNewBook(*address)).isEmpty()); // there is none to remove
        }
        OpenDesk again;
        wantOk(again.create(book)); // the place is free
    }
};

QTEST_GUILESS_MAIN(TestStoreDiscard)
#include "test_store_discard.moc"
