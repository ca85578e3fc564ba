// Bench sums on the screen: found by a few letters, worked out while they are typed, put into the log.
#include "tests/grid_under_test.h"
#include "tests/window_under_test.h"
#include "views/sums/sum_form.h"
#include "views/sums/sum_words.h"
#include "views/sums/sums_place.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>

using namespace ts;
using namespace ts::testing;

class TestViewSums : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static SumsPlace *place(WindowUnderTest &window)
    {
        window.work().goTo(PlaceKey::Sums);
        QCoreApplication::processEvents();
        return window.workspace().findChild<SumsPlace *>();
    }
    static QLineEdit *field(const QWidget *on, const QString &name)
    {
        for (QLineEdit *each : on->findChildren<QLineEdit *>())
            if (each->accessibleName() == name)
                return each;
        return nullptr;
    }
    static bool says(const QWidget *on, const QString &text)
    {
        for (const QLabel *each : on->findChildren<QLabel *>())
            if (each->isVisible() && each->text().contains(text))
                return true;
        return false;
    }

private Q_SLOTS:
    void aSumIsFoundFilledAndNoted()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Ardmoor RX-440"));
        WindowUnderTest window(*desk);
        window.work().takeInHand(unit.id);
        SumsPlace *sums = place(window);
        QVERIFY(sums);
        field(sums, QStringLiteral("Narrow the sums"))->setFocus();
        type(QStringLiteral("discharge"));
        press(Qt::Key_Return);
        const auto *form = sums->findChild<SumForm *>();
        type(QStringLiteral("10m"));
        press(Qt::Key_Tab);
        type(QStringLiteral("4k7"));
        press(Qt::Key_Tab);
        QVERIFY(says(form, QStringLiteral("Still to be said: from")));
        type(QStringLiteral("46"));
        press(Qt::Key_Tab);
        type(QStringLiteral("5"));
        QCoreApplication::processEvents();
        // t = R C ln(V0/V) = 4700 Ω × 0.01 F × ln(46/5) = 104.30 s: definition of the RC discharge, by hand.
        QVERIFY(says(form, QStringLiteral("104.3")));
        QVERIFY(says(form, QStringLiteral("Local codes")));
        QPushButton *note = buttonWith(*sums, QStringLiteral("Note it"));
        QVERIFY(note && note->isEnabled());
        note->click();
        const auto &notes = window.work().file().all<Note>();
        QCOMPARE(notes.size(), 1);
        QVERIFY2(notes.first().text.contains(QLatin1String("time 104.3")), qPrintable(notes.first().text));
        QVERIFY(notes.first().text.contains(QLatin1String("capacitance 10m")));
    }

    void rubbishIsSaidAndNothingComesOut()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Ardmoor RX-440"));
        WindowUnderTest window(*desk);
        window.work().takeInHand(unit.id);
        SumsPlace *sums = place(window);
        field(sums, QStringLiteral("Narrow the sums"))->setFocus();
        type(QStringLiteral("idle"));
        press(Qt::Key_Return);
        type(QStringLiteral("many"));
        press(Qt::Key_Tab);
        type(QStringLiteral("0.22"));
        QVERIFY(says(sums, QStringLiteral("many")));
        QVERIFY(!buttonWith(*sums, QStringLiteral("Note it"))->isEnabled());
        QLineEdit *drop = field(sums, QStringLiteral("Drop"));
        drop->setText(QStringLiteral("11 mV"));
        // I = U / R = 11 mV / 0.22 Ω = 50 mA: Ohm's law, by hand.
        QVERIFY(says(sums, QStringLiteral("50\u00a0mA")));
        buttonWith(*sums, QStringLiteral("Take it as a reading"))->click();
        QCoreApplication::processEvents();
        type(QStringLiteral("idle current L"));
        press(Qt::Key_Return);
        const auto &readings = window.work().file().all<Reading>();
        QCOMPARE(readings.size(), 1);
        QVERIFY(std::abs(readings.first().value->base() - 0.05) < 1e-9);
    }

    void everySumHasAFormWithNames()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        SumsPlace *sums = place(window);
        auto *form = sums->findChild<SumForm *>();
        for (const Sum &sum : allSums()) {
            form->show(sum);
            QCoreApplication::processEvents();
            QVERIFY2(sumGroup(sum.name) != QLatin1String("More"), qPrintable(sum.name));
            QVERIFY2(unnamedControls(*sums).isEmpty(), qPrintable(sum.name + unnamedControls(*sums).join(QLatin1Char(' '))));
        }
    }

    void valuesReadWell_data()
    {
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("unit");
        QTest::addColumn<QString>("reads");
        // SI prefixes: SI Brochure, 9th edition, table 7.
        QTest::newRow("milli") << 0.0123 << "A" << "12.3\u00a0mA";
        QTest::newRow("kilo") << 4700.0 << "Ω" << "4.7\u00a0kΩ";
        QTest::newRow("at the step") << 1000.0 << "Hz" << "1\u00a0kHz";
        QTest::newRow("pico") << 33e-12 << "F" << "33\u00a0pF";
        QTest::newRow("no prefix") << 3180.0 << "µs" << "3,180\u00a0µs";
        QTest::newRow("zero") << 0.0 << "V" << "0\u00a0V";
    }
    void valuesReadWell()
    {
        QFETCH(double, value);
        QFETCH(QString, unit);
        QFETCH(QString, reads);
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        QCOMPARE(sumValue({.name = QStringLiteral("x"), .meaning = {}, .unit = unit}, value), reads);
        QLocale::setDefault(QLocale::c());
    }
};

QTEST_MAIN(TestViewSums)
#include "test_view_sums.moc"
