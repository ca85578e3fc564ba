// Taking units in by keyboard alone, as the command line would have recorded them.
#include "model/records/settings.h"
#include "model/records/tag_text.h"
#include "model/sums/category_guess.h"
#include "tests/media_samples.h"
#include "tests/window_under_test.h"
#include "views/take_in/take_in_page.h"
#include "views/widgets/notice_bar.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>

using namespace ts;
using namespace ts::testing;

class TestViewTakeIn : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static TakeInPage *page(WindowUnderTest &window) { return window.workspace().findChild<TakeInPage *>(); }
    static QLineEdit *field(WindowUnderTest &window, const char *name)
    {
        for (QLineEdit *each : page(window)->findChildren<QLineEdit *>())
            if (each->accessibleName() == QString::fromUtf8(name))
                return each;
        return nullptr;
    }
    static QWidget *focused(WindowUnderTest &window) { return window.workspace().window()->focusWidget(); }
    static void type(WindowUnderTest &window, const char *text) { QTest::keyClicks(focused(window), QString::fromUtf8(text)); }
    static void press(WindowUnderTest &window, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) { QTest::keyClick(focused(window), key, modifiers); }
    static QList<Unit> units(OpenDesk &desk) { return *desk->list<Unit>(); }

private Q_SLOTS:
    void aNameAndACategoryAreEnough()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        type(window, "Ardmoor RX-440 receiver"); // which names its category, too
        press(window, Qt::Key_Return);
        QCOMPARE(units(desk).size(), 1);
        const Unit unit = units(desk).first();
        QCOMPARE(unit.name, QStringLiteral("Ardmoor RX-440 receiver"));
        QCOMPARE(unit.category, Category::AmplifierReceiver);
        QCOMPARE(unit.stage, Stage::Shelved);
        QCOMPARE(unit.stageSince, unit.at);
        QCOMPARE(page(window)->findChild<QLabel *>(QStringLiteral("tagGiven"))->text(), tagText(unit.tag));
        press(window, Qt::Key_Return); // opens it
        QCOMPARE(window.work().file().unit.id, unit.id);
        QCOMPARE(window.workspace().place(), PlaceKey::Units);
        window.work().undo();
        QVERIFY(units(desk).isEmpty());
    }

    void whatIsKnownOfTheModelIsOfferedAtOnce()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        Maker maker = desk->maker();
        ModelNotes notes = maker.fresh<ModelNotes>();
        notes.maker = QStringLiteral("Brenlow");
        notes.makerModel = QStringLiteral("TT-21");
        KnownTeardown platter = maker.fresh<KnownTeardown>();
        platter.modelNotes = notes.id;
        platter.what = QStringLiteral("platter");
        TestPoint speed = maker.fresh<TestPoint>();
        speed.modelNotes = notes.id;
        speed.name = QStringLiteral("speed");
        wantOk(desk->apply(Change(QStringLiteral("Notes")).add(notes).add(platter).add(speed)));
        WindowUnderTest window(*desk);
        for (const bool known : {false, true}) {
            window.workspace().takeIn();
            for (const char *text : {"Brenlow thing", "Turn", "Brenlow", known ? "tt-21" : "TT-99"}) {
                type(window, text);
                press(window, Qt::Key_Tab);
            }
            press(window, Qt::Key_Return);
            QPushButton *bring = buttonWith(*page(window), QStringLiteral("Bring it all"));
            QCOMPARE(bring != nullptr, known);
            if (bring)
                bring->click();
        }
        const auto points = desk->list<TestPoint>(QStringLiteral("unit"), units(desk).last().id.text());
        QCOMPARE(points->size(), 1);
        QCOMPARE(points->first().name, QStringLiteral("speed"));
        QCOMPARE(desk->list<TeardownItem>()->size(), 1);
        QVERIFY(!buttonWith(*page(window), QStringLiteral("Bring it all")));
    }

    void everythingElseByTab()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        // In the order of the page; a combo box is typed into as well.
        const char *const typed[]{"Brenlow thing", "Turn", "Brenlow", "TT-21", "S 900", "230 V 50 Hz", "II", "runs fast"};
        for (const char *text : typed) {
            type(window, text);
            press(window, Qt::Key_Tab);
        }
        press(window, Qt::Key_Right); // an owner's
        press(window, Qt::Key_Tab);
        for (const char *text : {"J. Example", "30", "8.40", "120", "4.5"}) {
            type(window, text);
            if (text != std::string_view("4.5"))
                press(window, Qt::Key_Tab);
        }
        press(window, Qt::Key_Return);
        QCOMPARE(units(desk).size(), 1);
        const Unit unit = units(desk).first();
        QCOMPARE(unit.category, Category::Turntable);
        QCOMPARE(unit.maker, QStringLiteral("Brenlow"));
        QCOMPARE(unit.makerModel, QStringLiteral("TT-21"));
        QCOMPARE(unit.serial, QStringLiteral("S 900"));
        QCOMPARE(unit.mains, QStringLiteral("230 V 50 Hz"));
        QCOMPARE(unit.protectionClass, ProtectionClass::II);
        QCOMPARE(unit.claim, QStringLiteral("runs fast"));
        QCOMPARE(unit.kind, UnitKind::Owners);
        QCOMPARE(desk->get(unit.owner)->name, QStringLiteral("J. Example"));
        const UnitFile file = *desk->unitFile(unit.id);
        QCOMPARE(file.all<Spend>().size(), 2);
        QCOMPARE(file.all<Spend>().first().amount->decimal(), QStringLiteral("30.00"));
        QCOMPARE(file.all<Spend>().first().kind, SpendKind::Purchase);
        QCOMPARE(file.all<Spend>().last().amount->decimal(), QStringLiteral("8.40"));
        QCOMPARE(file.all<Spend>().last().kind, SpendKind::CarriageIn);
        QCOMPARE(file.all<Plan>().first().minutes, 270); // 4.5 h
        QCOMPARE(file.all<Plan>().first().resaleLikely->decimal(), QStringLiteral("120.00"));
    }

    void theOwnerIsAskedForOfAnOwnersUnitAlone()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        QLineEdit *owner = field(window, "Owner’s name");
        const auto choose = [&](const QString &kind) {
            for (QRadioButton *each : page(window)->findChildren<QRadioButton *>())
                if (each->text() == kind)
                    each->click();
        };
        QVERIFY(!owner->isEnabled());
        choose(QStringLiteral("An owner’s"));
        QVERIFY(owner->isEnabled());
        choose(QStringLiteral("To keep"));
        QVERIFY(!owner->isEnabled());
        // It looks it, too: a field that is shut has the ground of the page.
        const auto ground = [&] { return owner->grab().toImage().pixelColor(owner->width() - 8, owner->height() / 2); };
        const QColor shut = ground();
        choose(QStringLiteral("An owner’s"));
        QVERIFY(ground() != shut);
    }

    void whatIsWrongIsSaidAndNothingIsLost()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        press(window, Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("no name")));
        type(window, "Some thing");
        press(window, Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("what kind of thing")));
        QVERIFY(qobject_cast<QComboBox *>(focused(window)));
        type(window, "Radio");
        field(window, "Price paid")->setText(QStringLiteral("3o"));
        press(window, Qt::Key_Return);
        QVERIFY2(window.workspace().notice()->text().contains(QLatin1String("Price paid")), qPrintable(window.workspace().notice()->text()));
        QCOMPARE(focused(window), field(window, "Price paid"));
        field(window, "Price paid")->setText(QStringLiteral("-3"));
        press(window, Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("cannot be below zero")));
        field(window, "Price paid")->clear();
        field(window, "Planned hours")->setText(QStringLiteral("soon"));
        press(window, Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("no time")));
        QVERIFY(units(desk).isEmpty());
        // Esc leaves; what was typed waits.
        press(window, Qt::Key_Escape);
        QVERIFY(!page(window)->isVisible());
        window.workspace().takeIn();
        QCOMPARE(field(window, "Name")->text(), QStringLiteral("Some thing"));
    }

    void aLikeUnitIsCopied()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        Unit like = desk->maker().fresh<Unit>();
        like.name = QStringLiteral("Pellworth KD-7 cassette deck");
        like.maker = QStringLiteral("Pellworth");
        like.makerModel = QStringLiteral("KD-7");
        like.category = Category::CassetteDeck;
        like.mains = QStringLiteral("230 V 50 Hz");
        like.protectionClass = ProtectionClass::II;
        like.serial = QStringLiteral("1180427");
        like.stageSince = like.at;
        TestPoint point = desk->maker().fresh<TestPoint>();
        point.unit = like.id;
        point.name = QStringLiteral("CN2.4");
        point.wanted = *Limit::parse(QStringLiteral("12 V 5%"));
        wantOk(desk->apply(Change(QStringLiteral("Unit")).add(like).add(point)));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        type(window, "pellworth kd-7, no lid");
        press(window, Qt::Key_L, Qt::AltModifier);
        QCOMPARE(focused(window), field(window, "Serial number"));
        type(window, "2200113");
        press(window, Qt::Key_Return);
        QCOMPARE(units(desk).size(), 2);
        const Unit unit = units(desk).last();
        QCOMPARE(unit.name, like.name);
        QCOMPARE(unit.maker, like.maker);
        QCOMPARE(unit.makerModel, like.makerModel);
        QCOMPARE(unit.category, like.category);
        QCOMPARE(unit.mains, like.mains);
        QCOMPARE(unit.protectionClass, like.protectionClass);
        QCOMPARE(unit.serial, QStringLiteral("2200113"));
        const UnitFile file = *desk->unitFile(unit.id);
        QCOMPARE(file.all<TestPoint>().size(), 1);
        QCOMPARE(file.all<TestPoint>().first().name, point.name);
        QCOMPARE(file.all<TestPoint>().first().wanted, point.wanted);
        QVERIFY(file.all<TestPoint>().first().id.value != point.id.value);
        QCOMPARE(desk->unitFile(like.id)->all<TestPoint>().size(), 1);
    }

    void mainsAndCategoryCautionAtOnce()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        Setting setting = desk->maker().fresh<Setting>();
        setting.name = settings::mains;
        setting.value = QStringLiteral("230 V 50 Hz");
        wantOk(desk->apply(Change(QStringLiteral("Setting")).add(setting)));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        type(window, "Solvane D-16 disc player");
        const auto said = [&] {
            QStringList all;
            for (const QLabel *label : page(window)->findChildren<QLabel *>())
                if (label->isVisible())
                    all << label->text();
            return all.join(QLatin1Char('\n'));
        };
        QVERIFY(said().contains(QLatin1String("invisible")) && said().contains(QLatin1String("laser"), Qt::CaseInsensitive)); // a disc player's own
        QVERIFY(!said().contains(QLatin1String("Do not plug it in here")));
        field(window, "Mains, as on the plate")->setText(QStringLiteral("120 V 60 Hz"));
        QVERIFY2(said().contains(QLatin1String("Do not plug it in here")), qPrintable(said()));
        field(window, "Mains, as on the plate")->setText(QStringLiteral("230 V 50 Hz"));
        QVERIFY(!said().contains(QLatin1String("Do not plug it in here")));
    }

    void photosGoWithIt()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        type(window, "Tarrick T-9 tuner");
        page(window)->addPhotos({{{}, samples::quarters(64, 48)}});
        press(window, Qt::Key_Return);
        QCOMPARE(units(desk).size(), 1);
        const auto photos = [&] { return desk->unitFile(units(desk).first().id)->all<Photo>(); };
        QTRY_COMPARE(photos().size(), 1);
        QCOMPARE(photos().first().phase, Phase::AsFound); // it has only just come in
        QCOMPARE(QSize(photos().first().width, photos().first().height), QSize(64, 48));
        page(window)->addPhotos({{{}, samples::quarters(48, 64)}}); // while its tag is shown
        QTRY_COMPARE(photos().size(), 2);
    }

    void everyControlHasAName()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.workspace().takeIn();
        QVERIFY2(unnamedControls(*page(window)).isEmpty(), qPrintable(unnamedControls(*page(window)).join(QStringLiteral(", "))));
    }

    void namesTellTheirCategory()
    {
        // The trade's own words; no source lists them.
        const std::pair<const char *, std::optional<Category>> cases[]{{"Pellworth KD-7 cassette deck", Category::CassetteDeck},
                                                                       {"Quenby R-3 reel recorder", Category::ReelRecorder},
                                                                       {"Ardmoor tuner amplifier", Category::AmplifierReceiver},
                                                                       {"Wexmere L-8 loudspeakers, pair", Category::Loudspeaker},
                                                                       {"Dunsgate P-12 transistor radio", Category::Radio},
                                                                       {"Ilverton S-20 oscilloscope", Category::TestGear},
                                                                       {"Cadwick 64K home computer", Category::OldComputer},
                                                                       {"Solvane D-16 CD player", Category::DiscPlayer},
                                                                       {"box of knobs", std::nullopt}};
        for (const auto &[name, category] : cases)
            QVERIFY2(categoryNamed(QString::fromUtf8(name)) == category, name);
    }
};

QTEST_MAIN(TestViewTakeIn)
#include "test_view_take_in.moc"
