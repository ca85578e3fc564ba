// Find anything: what is typed is looked for when the keys rest, grouped, walked by the keyboard; a scanned tag opens its unit at once.
#include "model/records/all_records.h"
#include "tests/window_under_test.h"
#include "views/find/find_field.h"
#include "views/find/found_model.h"
#include "views/frame/strip.h"
#include "views/rack/rack_pane.h"

#include <QAbstractItemModelTester>
#include <QListView>

using namespace ts;
using namespace ts::testing;

class TestViewFind : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    OpenDesk m_desk;
    Unit m_deck;
    Unit m_tuner;
    Reading m_reading;

    static QStringList linesOf(const FoundModel &found)
    {
        QStringList lines;
        for (int row = 0; row < found.rowCount(); ++row) {
            const QModelIndex index = found.index(row);
            lines << (index.data(FoundModel::IsHeading).toBool() ? index.data().toString()
                                                                 : QStringLiteral("%1 %2 %3").arg(index.data(FoundModel::Tag).toString(), index.data(FoundModel::UnitName).toString(), index.data().toString()).simplified());
        }
        return lines;
    }

private Q_SLOTS:
    void init()
    {
        m_desk.desk.reset();
        wantOk(m_desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        m_deck = benchUnit(*m_desk, QStringLiteral("Pellworth KD-7"));
        m_tuner = benchUnit(*m_desk, QStringLiteral("Tarrick T-9"));
        m_reading = m_desk->maker().fresh<Reading>();
        m_reading.unit = m_deck.id;
        m_reading.name = QStringLiteral("capstan supply CN2.4");
        Note note = m_desk->maker().fresh<Note>();
        note.unit = m_tuner.id;
        note.text = QStringLiteral("capstan <i>of</i> the other\none, and 0001 on its box");
        Part part = m_desk->maker().fresh<Part>();
        part.name = QStringLiteral("capstan belt");
        wantOk(m_desk->apply(Change(QStringLiteral("Records")).add(m_reading).add(note).add(part)));
    }

    void groupsWhatItFinds()
    {
        FoundModel found;
        const QAbstractItemModelTester tester(&found, QAbstractItemModelTester::FailureReportingMode::QtTest);
        found.show(*m_desk->search(QStringLiteral("capstan")));
        QCOMPARE(linesOf(found), QStringList({QStringLiteral("Readings"), QStringLiteral("0001 Pellworth KD-7 capstan supply CN2.4"), QStringLiteral("Parts"), QStringLiteral("capstan belt"),
                                              QStringLiteral("In the log"), QStringLiteral("0002 Tarrick T-9 capstan <i>of</i> the other · one, and 0001 on its box")}));
        QCOMPARE(found.nextFrom(0, 1), 1);
        QCOMPARE(found.nextFrom(2, 1), 3);
        QCOMPARE(found.nextFrom(2, -1), 1);
        QCOMPARE(found.nextFrom(0, -1), -1);
        QVERIFY(!found.at(0) && found.at(1));
        found.show({});
        QCOMPARE(found.rowCount(), 0);
    }

    void everyKindHasAHome()
    {
        for (const Kind *kind : allKinds()) { // what is found of a unit has a page; what is found of the bench a place beside the units
            const bool searched = std::any_of(kind->fields().begin(), kind->fields().end(), [](const FieldInfo &field) { return field.searched; });
            if (searched && kind->unitColumn() < 0 && kind->table() != QLatin1String("unit"))
                QVERIFY2(placeOfKind(kind->table()) != PlaceKey::Units, qPrintable(kind->table()));
        }
        QCOMPARE(pageOfKind(QStringLiteral("reading")), PageKey::Readings);
        QCOMPARE(pageOfKind(QStringLiteral("need")), PageKey::Parts);
        QCOMPARE(pageOfKind(QStringLiteral("note")), PageKey::Log);
    }

    void typingFindsWhenTheKeysRest()
    {
        WindowUnderTest window(*m_desk);
        auto *field = window.workspace().findChild<FindField *>();
        QWidget *before = window.workspace().rackPane()->findChild<QLineEdit *>();
        before->setFocus();
        window.workspace().strip()->focusFind();
        QVERIFY(field->hasFocus());
        QTest::keyClicks(field, QStringLiteral("caps"));
        QVERIFY(!field->isOpen());
        QTRY_VERIFY_WITH_TIMEOUT(field->isOpen(), 1000);
        QCOMPARE(field->list()->currentIndex().row(), 1); // the first that is something found
        QTest::keyClick(field, Qt::Key_Down);
        QTest::keyClick(field, Qt::Key_Down);
        QCOMPARE(field->list()->currentIndex().row(), 5);
        QTest::keyClick(field, Qt::Key_Down);
        QCOMPARE(field->list()->currentIndex().row(), 5);
        QTest::keyClick(field, Qt::Key_Escape);
        QVERIFY(!field->isOpen());
        QVERIFY(before->hasFocus());
        QTest::keyClicks(field, QStringLiteral("nowhere"));
        QTRY_VERIFY(field->isOpen()); // says that there is nothing
        QCOMPARE(field->found()->rowCount(), 0);
        field->clear();
    }

    void enterGoesToThePageAndTheRecord()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_tuner.id);
        QList<std::pair<PageKey, QUuid>> went;
        connect(&window.work(), &Workplace::pageWanted, this, [&](PageKey page, const QString &, const QUuid &record) { went << std::pair(page, record); });
        auto *field = window.workspace().findChild<FindField *>();
        window.workspace().strip()->focusFind();
        QTest::keyClicks(field, QStringLiteral("CN2.4"));
        QTest::keyClick(field, Qt::Key_Return); // before the keys rested
        QCOMPARE(window.work().file().unit.id, m_deck.id);
        QCOMPARE(window.workspace().unitPane()->currentPage(), PageKey::Readings);
        QCOMPARE(went, (QList<std::pair<PageKey, QUuid>>{{PageKey::Readings, m_reading.id.value}}));
        QVERIFY(!field->isOpen());
        field->clear();
        window.workspace().strip()->focusFind();
        QTest::keyClicks(field, QStringLiteral("capstan belt"));
        QTest::keyClick(field, Qt::Key_Return);
        QCOMPARE(window.workspace().place(), PlaceKey::PartsStore);
    }

    void aSerialOpensTheDetails()
    {
        Unit deck = *m_desk->get(m_deck.id);
        deck.serial = QStringLiteral("1180427");
        wantOk(m_desk->apply(Change(QStringLiteral("Serial")).edit(*m_desk->get(m_deck.id), deck)));
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_tuner.id);
        auto *field = window.workspace().findChild<FindField *>();
        const auto find = [&](const QString &words) {
            field->clear();
            window.workspace().strip()->focusFind();
            QTest::keyClicks(field, words);
            QTest::keyClick(field, Qt::Key_Return);
            return window.workspace().unitPane()->currentPage();
        };
        QCOMPARE(find(QStringLiteral("1180427")), PageKey::Details);
        QCOMPARE(window.work().file().unit.id, m_deck.id);
        QCOMPARE(find(QStringLiteral("Tarrick")), PageKey::Log); // by what it is called
        QCOMPARE(window.work().file().unit.id, m_tuner.id);
    }

    void aScannedTagOpensItsUnit()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_tuner.id);
        auto *field = window.workspace().findChild<FindField *>();
        window.workspace().strip()->focusFind();
        QTest::keyClicks(field, QStringLiteral("0001"));
        QTest::keyClick(field, Qt::Key_Return);
        QCOMPARE(window.work().file().unit.id, m_deck.id);
        field->clear();
        window.workspace().strip()->focusFind();
        QTest::keyClicks(field, QStringLiteral("0001")); // the note that has it too stands below the unit
        QTRY_VERIFY(field->isOpen());
        QCOMPARE(linesOf(*field->found()).first(), QStringLiteral("Units"));
        field->clear();
        QTest::keyClicks(field, QStringLiteral("99999999999999999999"));
        QTest::keyClick(field, Qt::Key_Return); // no tag, no unit, and nothing happens
        QCOMPARE(window.work().file().unit.id, m_deck.id);
    }

    void aClickGoesThere()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_tuner.id);
        auto *field = window.workspace().findChild<FindField *>();
        window.workspace().strip()->focusFind();
        QTest::keyClicks(field, QStringLiteral("capstan"));
        QTRY_VERIFY(field->isOpen());
        QTest::mouseClick(field->list()->viewport(), Qt::LeftButton, {}, field->list()->visualRect(field->found()->index(1)).center());
        QCOMPARE(window.work().file().unit.id, m_deck.id);
        QCOMPARE(window.workspace().unitPane()->currentPage(), PageKey::Readings);
    }
};

QTEST_MAIN(TestViewFind)
#include "test_view_find.moc"
