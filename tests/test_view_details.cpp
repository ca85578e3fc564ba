// The unit's details: every one of its own particulars can be changed in place, is kept with a sentence of its own, and is undone.
#include "tests/page_under_test.h"
#include "views/details/details_page.h"
#include "views/unit/unit_head.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPlainTextEdit>

using namespace ts;
using namespace ts::testing;

namespace {

class Details : public PageUnderTest<DetailsPage> {
public:
    explicit Details(const QString &book) : PageUnderTest(book, PageKey::Details) {}

    template <class W>
    W *field(const QString &name)
    {
        for (W *each : page->findChildren<W *>())
            if (each->accessibleName() == name)
                return each;
        return nullptr;
    }
    void type(const QString &name, const QString &text)
    {
        auto *line = field<QLineEdit>(name);
        QVERIFY2(line, qPrintable(name));
        line->setFocus();
        line->selectAll();
        QTest::keyClick(line, Qt::Key_Delete);
        QTest::keyClicks(line, text);
    }
    void enter(const QString &name, const QString &text)
    {
        type(name, text);
        QTest::keyClick(field<QLineEdit>(name), Qt::Key_Return);
    }
    void choose(const QString &name, const QString &text)
    {
        auto *box = field<QComboBox>(name);
        QVERIFY2(box && box->findText(text) >= 0, qPrintable(name));
        box->setFocus();
        box->setCurrentIndex(box->findText(text));
        Q_EMIT box->activated(box->currentIndex());
    }
    [[nodiscard]] const Unit &now() const { return file().unit; }
    [[nodiscard]] QString said() const { return desk->undoSentence()->value_or(QString()); }
};

} // namespace

class TestViewDetails : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    QString fresh() { return m_books.fresh(QStringLiteral("sqlite")); }

private Q_SLOTS:
    void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }

    void everyLineIsKeptWithItsSentence_data()
    {
        QTest::addColumn<QString>("label");
        QTest::addColumn<QString>("noun");
        QTest::addColumn<int>("at");
        const QList<std::tuple<const char *, const char *>> lines{{"Name", "Name"},
                                                                 {"Maker", "Maker"},
                                                                 {"Model", "Model"},
                                                                 {"Serial number", "Serial"},
                                                                 {"How the year is known", "How the year is known"},
                                                                 {"Mains voltage and frequency, as on the plate", "Mains"},
                                                                 {"Where it stands", "Place"}};
        int at = 0;
        for (const auto &[label, noun] : lines)
            QTest::newRow(label) << QString::fromLatin1(label) << QString::fromLatin1(noun) << at++;
    }

    void everyLineIsKeptWithItsSentence()
    {
        QFETCH(QString, label);
        QFETCH(QString, noun);
        QFETCH(int, at);
        const QList<QString Unit::*> members{&Unit::name, &Unit::maker, &Unit::makerModel, &Unit::serial, &Unit::yearBasis, &Unit::mains, &Unit::place};
        Details on(fresh());
        const QString before = on.now().*members.at(at);
        on.enter(label, QStringLiteral(" 47 <b>11</b> "));
        QCOMPARE(on.now().*members.at(at), QStringLiteral("47 <b>11</b>"));
        QCOMPARE(on.said(), QStringLiteral("%1 of unit %2: 47 <b>11</b>").arg(noun, QStringLiteral("%1").arg(on.unit.tag, 4, 10, QLatin1Char('0'))));
        QCOMPARE(on.window->workspace().said()->text(), on.said());
        // As another program on the same workbook reads it.
        QCOMPARE(on.desk->get(on.unit.id).value().*members.at(at), QStringLiteral("47 <b>11</b>"));
        on.window->work().undo();
        QCOMPARE(on.now().*members.at(at), before);
        QCOMPARE(on.field<QLineEdit>(label)->text(), before);
        on.window->work().redo();
        QCOMPARE(on.field<QLineEdit>(label)->text(), QStringLiteral("47 <b>11</b>"));
    }

    void longTextsAreKeptWhenTheyAreLeft()
    {
        Details on(fresh());
        const QList<std::tuple<QString, QString Unit::*>> texts{{QStringLiteral("What the seller or owner says is wrong"), &Unit::claim},
                                                               {QStringLiteral("What came with it, and what is missing"), &Unit::accessories},
                                                               {QStringLiteral("Looks on arrival"), &Unit::looks},
                                                               {QStringLiteral("Function on arrival"), &Unit::function},
                                                               {QStringLiteral("Signs of earlier work"), &Unit::earlierWork}};
        for (const auto &[label, member] : texts) {
            auto *text = on.field<QPlainTextEdit>(label);
            QVERIFY2(text, qPrintable(label));
            text->setFocus();
            QTest::keyClicks(text, QStringLiteral("lights up, does not play"));
            QTest::keyClick(text, Qt::Key_Tab); // goes on, and is no part of the text
            QTRY_COMPARE(on.now().*member, QStringLiteral("lights up, does not play"));
        }
        QVERIFY(on.said().startsWith(QLatin1String("Earlier work of unit")));
        for (qsizetype i = 0; i < texts.size(); ++i)
            on.window->work().undo();
        for (const auto &[label, member] : texts) {
            QVERIFY((on.now().*member).isEmpty());
            QVERIFY(on.field<QPlainTextEdit>(label)->toPlainText().isEmpty());
        }
    }

    void leavingAFieldKeepsIt()
    {
        Details on(fresh());
        on.type(QStringLiteral("Serial number"), QStringLiteral("4711"));
        QCOMPARE(on.now().serial, QString());
        QTest::keyClick(on.field<QLineEdit>(QStringLiteral("Serial number")), Qt::Key_Tab);
        QCOMPARE(on.now().serial, QStringLiteral("4711"));
        // Esc puts back, and the next Esc goes to the page that was there before.
        on.type(QStringLiteral("Serial number"), QStringLiteral("not this"));
        QTest::keyClick(on.field<QLineEdit>(QStringLiteral("Serial number")), Qt::Key_Escape);
        QCOMPARE(on.field<QLineEdit>(QStringLiteral("Serial number"))->text(), QStringLiteral("4711"));
        QCOMPARE(on.window->workspace().unitPane()->currentPage(), PageKey::Details);
        QTest::keyClick(on.field<QLineEdit>(QStringLiteral("Serial number")), Qt::Key_Escape);
        QCOMPARE(on.window->workspace().unitPane()->currentPage(), PageKey::Log);
        QCOMPARE(on.now().serial, QStringLiteral("4711"));
    }

    void whatIsTypedStaysWithItsUnit()
    {
        Details on(fresh());
        const Unit other = benchUnit(*on.desk, QStringLiteral("Tarrick T-9"));
        on.type(QStringLiteral("Serial number"), QStringLiteral("4711"));
        on.window->work().takeInHand(other.id); // as Alt+Down does, with the keyboard still in the field
        QCOMPARE(on.desk->get(on.unit.id)->serial, QStringLiteral("4711"));
        QCOMPARE(on.desk->get(other.id)->serial, QString());
        QCOMPARE(on.field<QLineEdit>(QStringLiteral("Serial number"))->text(), QString());
        QCOMPARE(on.field<QLineEdit>(QStringLiteral("Name"))->text(), QStringLiteral("Tarrick T-9"));
    }

    void anothersChangeLeavesWhatIsBeingTyped()
    {
        Details on(fresh());
        on.type(QStringLiteral("Serial number"), QStringLiteral("47"));
        Unit after = on.now();
        after.maker = QStringLiteral("Pellworth");
        wantOk(on.desk->apply(Change(QStringLiteral("Maker")).edit(on.now(), after)));
        QTRY_COMPARE(on.field<QLineEdit>(QStringLiteral("Maker"))->text(), QStringLiteral("Pellworth"));
        QCOMPARE(on.field<QLineEdit>(QStringLiteral("Serial number"))->text(), QStringLiteral("47"));
        QTest::keyClicks(on.field<QLineEdit>(QStringLiteral("Serial number")), QStringLiteral("11\r"));
        QCOMPARE(on.now().serial, QStringLiteral("4711"));
        QCOMPARE(on.now().maker, QStringLiteral("Pellworth"));
    }

    void choicesAreKeptAtOnce()
    {
        Details on(fresh());
        on.choose(QStringLiteral("Category"), QStringLiteral("Tuner"));
        QCOMPARE(on.now().category, Category::Tuner);
        QVERIFY(on.said().contains(QLatin1String("Category of unit")) && on.said().endsWith(QLatin1String(": Tuner")));
        on.choose(QStringLiteral("Protection class"), QStringLiteral("II"));
        QCOMPARE(on.now().protectionClass, std::optional(ProtectionClass::II));
        on.choose(QStringLiteral("Protection class"), QStringLiteral("Not known"));
        QCOMPARE(on.now().protectionClass, std::nullopt);
        QVERIFY(on.said().contains(QLatin1String("taken out")));
        // A wheel over a choice changes nothing of the record.
        auto *box = on.field<QComboBox>(QStringLiteral("Category"));
        QWheelEvent wheel(box->rect().center(), box->mapToGlobal(box->rect().center()), {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(box, &wheel);
        QCOMPARE(on.now().category, Category::Tuner);
        QCOMPARE(box->currentText(), QStringLiteral("Tuner"));
    }

    void theOwnerIsAskedForOfAnOwnersUnitAlone()
    {
        Details on(fresh());
        auto *owner = on.field<QLineEdit>(QStringLiteral("Owner’s name"));
        QVERIFY(owner && !owner->isEnabled());
        on.choose(QStringLiteral("Kind"), QStringLiteral("An owner’s"));
        QVERIFY(owner->isEnabled());
        on.enter(QStringLiteral("Owner’s name"), QStringLiteral("J. Example"));
        QCOMPARE(on.desk->get(on.now().owner)->name, QStringLiteral("J. Example"));
        on.enter(QStringLiteral("Owner’s name"), QStringLiteral("j. example")); // the same person
        QCOMPARE(on.desk->list<Contact>()->size(), 1);
        on.choose(QStringLiteral("Kind"), QStringLiteral("To sell"));
        QVERIFY(on.now().owner.isNull());
        QVERIFY(!owner->isEnabled());
        on.window->work().undo();
        QCOMPARE(on.desk->get(on.now().owner)->name, QStringLiteral("J. Example"));
    }

    void thePurchaseIsItsSpends()
    {
        Details on(fresh());
        on.enter(QStringLiteral("Bought from"), QStringLiteral("Dennis Ravell"));
        QVERIFY2(on.notice().startsWith(QLatin1String("Bought from: ")) && on.notice().contains(QLatin1String("what was paid first")), qPrintable(on.notice()));
        QTest::keyClick(on.field<QLineEdit>(QStringLiteral("Bought from")), Qt::Key_Escape);
        on.enter(QStringLiteral("Price paid"), QStringLiteral("30"));
        QCOMPARE(on.all<Spend>().size(), 1);
        QCOMPARE(on.all<Spend>().first().kind, SpendKind::Purchase);
        QCOMPARE(on.all<Spend>().first().amount->decimal(), QStringLiteral("30.00"));
        QCOMPARE(on.all<Spend>().first().paidOn, on.now().at.toLocalTime().date()); // until somebody says when
        QCOMPARE(on.field<QLineEdit>(QStringLiteral("Price paid"))->text(), QStringLiteral("£30.00"));
        QVERIFY(on.said().startsWith(QLatin1String("Price paid of unit")));
        on.enter(QStringLiteral("Carriage to you"), QStringLiteral("£8.40"));
        on.enter(QStringLiteral("Bought from"), QStringLiteral("Dennis Ravell"));
        on.enter(QStringLiteral("Bought on"), QStringLiteral("2026-11-19"));
        QCOMPARE(on.all<Spend>().size(), 2);
        for (const Spend &spend : on.all<Spend>()) {
            QCOMPARE(spend.flow, Flow::Out);
            QCOMPARE(spend.paidOn, QDate(2026, 11, 19));
            QCOMPARE(on.desk->get(spend.contact)->name, QStringLiteral("Dennis Ravell"));
        }
        QCOMPARE(on.field<QLineEdit>(QStringLiteral("Bought on"))->text(), QStringLiteral("19/11/2026"));
        on.enter(QStringLiteral("Price paid"), QString());
        QCOMPARE(on.all<Spend>().size(), 1);
        for (int i = 0; i < 5; ++i)
            on.window->work().undo();
        QVERIFY(on.all<Spend>().isEmpty());
        QVERIFY(on.field<QLineEdit>(QStringLiteral("Price paid"))->text().isEmpty());
        QVERIFY(on.desk->list<Contact>()->isEmpty());
    }

    void severalSumsAreLeftToTheLog()
    {
        Details on(fresh());
        for (const int pounds : {10, 20}) {
            Spend spend = on.desk->maker().fresh<Spend>();
            spend.unit = on.unit.id;
            spend.text = QStringLiteral("Bought");
            spend.kind = SpendKind::Purchase;
            spend.amount = Money(pounds * 100, *Currency::parse(u"GBP"));
            QVERIFY(on.window->work().record(Change(QStringLiteral("Bought")).add(spend)));
        }
        QCOMPARE(on.field<QLineEdit>(QStringLiteral("Price paid"))->text(), QStringLiteral("£30.00"));
        on.enter(QStringLiteral("Price paid"), QStringLiteral("25"));
        QVERIFY2(on.notice().contains(QLatin1String("2 spends")), qPrintable(on.notice()));
        on.enter(QStringLiteral("Bought on"), QStringLiteral("2026-11-19"));
        QVERIFY2(on.notice().contains(QLatin1String("2 sums")), qPrintable(on.notice()));
        QCOMPARE(on.all<Spend>().size(), 2);
    }

    void whatIsWrongIsSaidByTheFieldsName_data()
    {
        QTest::addColumn<QString>("label");
        QTest::addColumn<QString>("typed");
        QTest::newRow("no name") << QStringLiteral("Name") << QString();
        QTest::newRow("a year of letters") << QStringLiteral("Year made, or about") << QStringLiteral("<i>old</i>");
        QTest::newRow("a year to come") << QStringLiteral("Year made, or about") << QStringLiteral("2199");
        QTest::newRow("a year before all") << QStringLiteral("Year made, or about") << QStringLiteral("12");
        QTest::newRow("too long") << QStringLiteral("Serial number") << QString(301, QLatin1Char('x'));
        QTest::newRow("no price") << QStringLiteral("Price paid") << QStringLiteral("3o");
        QTest::newRow("below nothing") << QStringLiteral("Price paid") << QStringLiteral("-3");
        QTest::newRow("no carriage") << QStringLiteral("Carriage to you") << QStringLiteral("much");
        QTest::newRow("no day") << QStringLiteral("Bought on") << QStringLiteral("32 Nov");
    }

    void whatIsWrongIsSaidByTheFieldsName()
    {
        QFETCH(QString, label);
        QFETCH(QString, typed);
        Details on(fresh());
        const Unit before = on.now();
        const QString undo = on.said();
        on.enter(label, typed);
        // The first words of the label are enough to find the field.
        QVERIFY2(on.notice().startsWith(label.section(QLatin1Char(','), 0, 0)), qPrintable(on.notice()));
        QCOMPARE(on.notice().count(QLatin1Char('\n')), 0);
        QCOMPARE(on.now(), before);
        QVERIFY(on.all<Spend>().isEmpty());
        QCOMPARE(on.said(), undo);
        auto *line = on.field<QLineEdit>(label);
        QCOMPARE(line->text(), typed); // stays to be mended
        QVERIFY(line->property("wrong").toBool());
        QTest::keyClick(line, Qt::Key_Escape);
        QVERIFY(!line->property("wrong").toBool());
        QCOMPARE(line->text(), label == QLatin1String("Name") ? before.name : QString());
    }

    void theYearIsAWholeNumber()
    {
        Details on(fresh());
        on.enter(QStringLiteral("Year made, or about"), QStringLiteral("1979"));
        QCOMPARE(on.now().year, std::optional(1979));
        on.enter(QStringLiteral("Year made, or about"), QString());
        QCOMPARE(on.now().year, std::nullopt);
    }

    void theMainsCautionStandsBesideThePlate()
    {
        Details on(fresh());
        QVERIFY(on.window->work().record(on.window->work().settingChange(QStringLiteral("mains"), QStringLiteral("230 V 50 Hz"))));
        const auto warned = [&](const QString &words) {
            for (const QLabel *each : on.page->findChildren<QLabel *>())
                if (each->isVisible() && each->text().contains(words))
                    return true;
            return false;
        };
        const QString plate = QStringLiteral("Mains voltage and frequency, as on the plate");
        on.enter(plate, QStringLiteral("230 V 50 Hz"));
        QVERIFY(!warned(QStringLiteral("120 V")));
        on.enter(plate, QStringLiteral("120 V 60 Hz"));
        QVERIFY(warned(QStringLiteral("120 V")));
        on.enter(plate, QStringLiteral("wall socket"));
        QVERIFY(warned(QStringLiteral("No voltage can be read")));
    }

    void itIsReachedFromTheHeadAndByFind()
    {
        Details on(fresh());
        UnitPane *pane = on.window->workspace().unitPane();
        auto *head = on.window->workspace().findChild<UnitHead *>();
        pane->showPage(PageKey::Readings);
        QTest::mouseClick(on.button(head, QStringLiteral("Details…")), Qt::LeftButton);
        QCOMPARE(pane->currentPage(), PageKey::Details);
        QVERIFY(on.field<QLineEdit>(QStringLiteral("Name"))->hasFocus());
        QTest::mouseClick(on.button(head, QStringLiteral("Details…")), Qt::LeftButton);
        QCOMPARE(pane->currentPage(), PageKey::Readings); // the page that was there before
        for (QLabel *each : head->findChildren<QLabel *>())
            if (each->text() == QLatin1String("Pellworth KD-7"))
                QTest::mouseClick(each, Qt::LeftButton);
        QCOMPARE(pane->currentPage(), PageKey::Details);
        pane->showPage(PageKey::Readings);
        QCOMPARE(pane->currentPage(), PageKey::Readings);
        on.window->work().goTo(on.unit.id, PageKey::Details);
        QCOMPARE(pane->currentPage(), PageKey::Details);
        pane->showPage(PageKey::Log);
        QCOMPARE(pane->currentPage(), PageKey::Log);
    }

    void tabGoesThroughInTheOrderOfThePage()
    {
        Details on(fresh());
        QVERIFY(unnamedControls(*on.page).isEmpty());
        on.choose(QStringLiteral("Kind"), QStringLiteral("An owner’s"));
        on.field<QLineEdit>(QStringLiteral("Name"))->setFocus();
        QStringList went;
        for (int i = 0; i < 20; ++i) {
            QWidget *at = on.window->workspace().window()->focusWidget();
            went << at->accessibleName();
            QTest::keyClick(at, Qt::Key_Tab);
        }
        const QStringList wanted{QStringLiteral("Name"),
                                 QStringLiteral("Maker"),
                                 QStringLiteral("Model"),
                                 QStringLiteral("Category"),
                                 QStringLiteral("Serial number"),
                                 QStringLiteral("Year made, or about"),
                                 QStringLiteral("How the year is known"),
                                 QStringLiteral("Mains voltage and frequency, as on the plate"),
                                 QStringLiteral("Protection class"),
                                 QStringLiteral("Kind"),
                                 QStringLiteral("Owner’s name"),
                                 QStringLiteral("Where it stands"),
                                 QStringLiteral("What the seller or owner says is wrong"),
                                 QStringLiteral("What came with it, and what is missing"),
                                 QStringLiteral("Looks on arrival"),
                                 QStringLiteral("Function on arrival"),
                                 QStringLiteral("Signs of earlier work"),
                                 QStringLiteral("Price paid"),
                                 QStringLiteral("Carriage to you"),
                                 QStringLiteral("Bought from")};
        QCOMPARE(went, wanted);
    }
};

QTEST_MAIN(TestViewDetails)
#include "test_view_details.moc"
