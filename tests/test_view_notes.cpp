// Model notes: what is known of a model typed in its lists, learned from a unit, brought onto the next, shared as a file.
#include "model/records/notes_file.h"
#include "tests/grid_under_test.h"
#include "tests/window_under_test.h"
#include "views/notes/model_notes_place.h"
#include "views/notes/notes_table.h"
#include "views/widgets/ask.h"
#include "views/widgets/notice_bar.h"

#include <QListWidget>
#include <QSignalSpy>
#include <QTabBar>

using namespace ts;
using namespace ts::testing;

namespace {

/// A unit of a model with one test point, one cause and its notes, with the place opened.
struct OnNotes {
    OpenDesk desk;
    Unit unit;
    ModelNotes notes;
    std::unique_ptr<WindowUnderTest> window;
    ModelNotesPlace *place = nullptr;

    explicit OnNotes(const QString &book)
    {
        wantOk(desk.create(book));
        Unit made = benchUnit(*desk, QStringLiteral("Pellworth KD-7 cassette deck"));
        unit = made;
        unit.maker = QStringLiteral("Pellworth");
        unit.makerModel = QStringLiteral("KD-7");
        notes = desk->maker().fresh<ModelNotes>();
        notes.maker = unit.maker;
        notes.makerModel = QStringLiteral("kd-7"); // written otherwise, the same model
        notes.category = unit.category;
        wantOk(desk->apply(Change(QStringLiteral("Set up")).edit(made, unit).add(notes)));
        window = std::make_unique<WindowUnderTest>(*desk);
        window->work().takeInHand(unit.id);
        window->work().goTo(PlaceKey::ModelNotes);
        QCoreApplication::processEvents();
        place = window->workspace().findChild<ModelNotesPlace *>();
    }
    void tab(int index) const { place->findChild<QTabBar *>()->setCurrentIndex(index); }
    [[nodiscard]] GridView *grid(const QString &name) const
    {
        for (GridView *each : place->findChildren<GridView *>())
            if (each->accessibleName() == name)
                return each;
        return nullptr;
    }
    template <class R>
    [[nodiscard]] QList<R> known()
    {
        return desk->list<R>(QStringLiteral("model_notes"), notes.id.text()).value();
    }
    [[nodiscard]] QString notice() const { return window->workspace().notice()->text(); }
};

} // namespace

class TestViewNotes : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void aTestPointIsTypedWithItsLimit()
    {
        OnNotes on(m_books.fresh(QStringLiteral("sqlite")));
        on.tab(1);
        GridView *points = on.grid(QStringLiteral("Test points"));
        QVERIFY(points);
        stand(points, 0, 0);
        type(QStringLiteral("CN2.4"));
        press(Qt::Key_Tab);
        QCOMPARE(on.known<TestPoint>().size(), 1);
        QCOMPARE(on.known<TestPoint>().first().name, QStringLiteral("CN2.4"));
        points->editAt(on.known<TestPoint>().first().id.value, 1);
        openField()->setText(QStringLiteral("twelve or so"));
        press(Qt::Key_Return);
        QVERIFY(!on.notice().isEmpty());
        QVERIFY(on.known<TestPoint>().first().wanted.isNone());
        openField()->setText(QStringLiteral("12 V 5%"));
        press(Qt::Key_Return);
        QCOMPARE(on.known<TestPoint>().first().wanted.text(), QStringLiteral("12 V 5%"));
        on.window->work().undo();
        QVERIFY(on.known<TestPoint>().first().wanted.isNone());
    }

    void aCheckPointsToCausesByTheirNames()
    {
        OnNotes on(m_books.fresh(QStringLiteral("sqlite")));
        Maker maker = on.desk->maker();
        KnownCause felt = maker.fresh<KnownCause>();
        felt.modelNotes = on.notes.id;
        felt.symptom = QStringLiteral("take-up slips");
        felt.text = QStringLiteral("clutch felt glazed");
        KnownCause tyre = maker.fresh<KnownCause>();
        tyre.modelNotes = on.notes.id;
        tyre.symptom = felt.symptom;
        tyre.text = QStringLiteral("idler tyre hard");
        KnownCheck torque = maker.fresh<KnownCheck>();
        torque.modelNotes = on.notes.id;
        torque.symptom = felt.symptom;
        torque.text = QStringLiteral("take-up torque");
        QVERIFY(on.window->work().record(Change(QStringLiteral("Known")).add(felt).add(tyre).add(torque)));
        on.tab(2);
        QCoreApplication::processEvents();
        GridView *checks = on.grid(QStringLiteral("Checks"));
        checks->editAt(torque.id.value, 4);
        openField()->setText(QStringLiteral("clutch; idler tyre hard 80/10"));
        press(Qt::Key_Return);
        QCOMPARE(on.known<KnownMark>().size(), 2);
        for (const KnownMark &mark : on.known<KnownMark>()) {
            QCOMPARE(mark.abnormalIf, mark.cause == tyre.id ? 0.8 : 0.95);
            QCOMPARE(mark.abnormalIfNot, mark.cause == tyre.id ? 0.1 : 0.05);
        }
        checks->editAt(torque.id.value, 4);
        openField()->setText(QStringLiteral("the moon"));
        press(Qt::Key_Return);
        QVERIFY(on.notice().contains(QLatin1String("the moon")));
        QCOMPARE(on.known<KnownMark>().size(), 2);
        openField()->setText(QStringLiteral("idler tyre hard"));
        press(Qt::Key_Return);
        QCOMPARE(on.known<KnownMark>().size(), 1);
        QCOMPARE(on.known<KnownMark>().first().cause, tyre.id);
        QCOMPARE(on.known<KnownMark>().first().abnormalIf, 0.95);
        GridView *causes = on.grid(QStringLiteral("Usual causes"));
        causes->setCurrent(tyre.id.value);
        causes->setFocus();
        press(Qt::Key_Delete); // its mark goes with it
        QVERIFY(on.known<KnownMark>().isEmpty());
        on.window->work().undo();
        QCOMPARE(on.known<KnownMark>().size(), 1);
    }

    void whatWasFoundOnAUnitIsLearned()
    {
        OnNotes on(m_books.fresh(QStringLiteral("sqlite")));
        Maker maker = on.desk->maker();
        TestPoint point = maker.fresh<TestPoint>();
        point.unit = on.unit.id;
        point.name = QStringLiteral("CN2.4");
        TeardownItem lid = maker.fresh<TeardownItem>();
        lid.unit = on.unit.id;
        lid.what = QStringLiteral("lid");
        lid.state = TeardownState::Off;
        QVERIFY(on.window->work().record(Change(QStringLiteral("Found")).add(point).add(lid)));
        QPushButton *learn = buttonWith(*on.place, QStringLiteral("Learn"));
        QVERIFY(learn);
        learn->click();
        QCOMPARE(on.known<KnownTeardown>().size(), 1);
        QCOMPARE(on.known<TestPoint>().size(), 1);
        learn->click(); // nothing new
        QVERIFY(!on.notice().isEmpty());
        QCOMPARE(on.known<TestPoint>().size(), 1);

        const Unit next = benchUnit(*on.desk, QStringLiteral("Another"));
        Unit named = next;
        named.maker = QStringLiteral("Pellworth");
        named.makerModel = QStringLiteral("KD-7");
        wantOk(on.desk->apply(Change(QStringLiteral("Named")).edit(next, named)));
        on.window->work().takeInHand(next.id);
        on.window->work().goTo(PlaceKey::ModelNotes);
        QCoreApplication::processEvents();
        QPushButton *bring = buttonWith(*on.place, QStringLiteral("Bring"));
        QVERIFY(bring && bring->isEnabled());
        bring->click();
        QCOMPARE(on.window->work().file().all<TestPoint>().size(), 1);
        QCOMPARE(on.window->work().file().all<TeardownItem>().first().state, TeardownState::On);
    }

    void notesGoToAFriendAsAFile()
    {
        OnNotes on(m_books.fresh(QStringLiteral("sqlite")));
        on.tab(4);
        GridView *parts = on.grid(QStringLiteral("Parts of the model"));
        stand(parts, 0, 1);
        type(QStringLiteral("capstan belt"));
        press(Qt::Key_Return);
        QCOMPARE(on.known<KnownPart>().size(), 1);
        QTemporaryDir folder;
        const QString file = folder.filePath(QStringLiteral("shared.json"));
        ask::answerFor(on.place, [file](const QString &) { return file; });
        QPushButton *write = buttonWith(*on.place, QStringLiteral("Write to"));
        QVERIFY(write);
        write->click();
        QVERIFY(QFile::exists(file));

        OnNotes friends(m_books.fresh(QStringLiteral("sqlite")));
        ask::answerFor(friends.place, [file](const QString &) { return file; });
        QPushButton *read = buttonWith(*friends.place, QStringLiteral("Read from"));
        read->click();
        QCOMPARE(friends.known<KnownPart>().size(), 1);
        QCOMPARE(friends.known<KnownPart>().first().text, QStringLiteral("capstan belt"));
        QFile broken(file);
        QVERIFY(broken.open(QIODevice::WriteOnly));
        broken.write("{\"notes\": [");
        broken.close();
        read->click();
        QVERIFY(!friends.notice().isEmpty());
        QCOMPARE(friends.known<KnownPart>().size(), 1);
    }

    void aPaperIsKeptAndOpenedAndAProgramIsNot()
    {
        OnNotes on(m_books.fresh(QStringLiteral("sqlite")));
        on.tab(6);
        QTemporaryDir folder;
        const QString sheet = folder.filePath(QStringLiteral("KD-7 service sheet.pdf"));
        QFile file(sheet);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("%PDF-1.4\n%%EOF\n");
        file.close();
        QString opened;
        ask::answerFor(on.place, [&](const QString &title) {
            if (title.contains(QLatin1String("keep")))
                return sheet;
            opened = title;
            return QStringLiteral("yes");
        });
        buttonWith(*on.place, QStringLiteral("Keep a file"))->click();
        QCOMPARE(on.known<KnownPaper>().size(), 1);
        QCOMPARE(on.known<KnownPaper>().first().title, QStringLiteral("KD-7 service sheet"));
        GridView *papers = on.grid(QStringLiteral("Service papers"));
        Q_EMIT papers->opened(on.known<KnownPaper>().first().id.value, 2);
        QFile copy(opened);
        QVERIFY(copy.open(QIODevice::ReadOnly));
        QCOMPARE(copy.readAll(), QByteArray("%PDF-1.4\n%%EOF\n"));

        KnownPaper bad = on.desk->maker().fresh<KnownPaper>();
        bad.modelNotes = on.notes.id;
        bad.title = QStringLiteral("not a paper");
        bad.link = folder.filePath(QStringLiteral("run.sh"));
        QFile script(bad.link);
        QVERIFY(script.open(QIODevice::WriteOnly));
        script.close();
        QVERIFY(on.window->work().record(Change(QStringLiteral("Paper")).add(bad)));
        QCoreApplication::processEvents();
        opened.clear();
        Q_EMIT papers->opened(bad.id.value, 2);
        QVERIFY(opened.isEmpty());
        QVERIFY(on.notice().contains(QLatin1String("neither a web address")));
    }

    void everyControlHasAName()
    {
        OnNotes on(m_books.fresh(QStringLiteral("sqlite")));
        for (int i = 0; i < 7; ++i) {
            on.tab(i);
            QCoreApplication::processEvents();
            QCOMPARE(unnamedControls(*on.place), QStringList());
        }
    }
};

QTEST_MAIN(TestViewNotes)
#include "test_view_notes.moc"
