// The readings page over a real workbook: a column of values typed without the mouse, what is asked once, what is set right.
#include "model/paper/measured_facts.h"
#include "model/sums/verdict.h"
#include "tests/grid_under_test.h"
#include "tests/page_under_test.h"
#include "views/readings/limit_card.h"
#include "views/readings/limit_picture.h"
#include "views/readings/point_run.h"
#include "views/readings/reading_rows.h"
#include "views/readings/readings_page.h"
#include "views/readings/soak_card.h"
#include "views/unit/record_edit.h"
#include "views/widgets/question_line.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QPushButton>

using namespace ts;
using namespace ts::testing;

class TestViewReadings : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static int column(ReadingColumn c) { return static_cast<int>(c); }

    struct OnPage : PageUnderTest<ReadingsPage> {
        GridView *table;
        explicit OnPage(const QString &book) : PageUnderTest(book, PageKey::Readings), table(page->table()) {}
        /// Points as somebody types them: a name, Enter, what is wanted, Enter.
        void addPoint(const QString &name, const QString &wanted)
        {
            table->editAdding();
            type(name);
            press(Qt::Key_Return);
            type(wanted);
            press(Qt::Key_Return);
        }
        [[nodiscard]] const QList<Reading> &readings() const { return all<Reading>(); }
        [[nodiscard]] const QList<TestPoint> &points() const { return all<TestPoint>(); }
    };

private Q_SLOTS:
    void pointsAreAddedByTheirNameAndWhatIsWanted()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("CN2.4"), QStringLiteral("12 V 5%"));
        on.addPoint(QStringLiteral("torque"), QStringLiteral("35..65 gf.cm"));
        QCOMPARE(on.points().size(), 2);
        QCOMPARE(on.points().at(0).wanted.text(), QStringLiteral("12 V 5%"));
        QCOMPARE(on.points().at(1).position, 2);
        QCOMPARE(reads(on.table, 0, column(ReadingColumn::Wanted)), QStringLiteral("12 V ± 5 %"));
        stand(on.table, 0, 1);
        type(QStringLiteral("rubbish"));
        press(Qt::Key_Return);
        QVERIFY(!on.notice().isEmpty());
        QCOMPARE(on.points().at(0).wanted.text(), QStringLiteral("12 V 5%"));
        press(Qt::Key_Escape);
        const QAbstractItemModelTester tester(&on.table->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        stand(on.table, 1, 0);
        press(Qt::Key_Up, Qt::ControlModifier);
        QCOMPARE(reads(on.table, 0, 0), QStringLiteral("torque"));
        on.window->work().undo();
        QCOMPARE(reads(on.table, 0, 0), QStringLiteral("CN2.4"));
    }

    void aColumnIsTypedDownWithoutTheMouse()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("rail"), QStringLiteral("12 V 5%"));
        on.addPoint(QStringLiteral("torque"), QStringLiteral("35..65 gf.cm"));
        on.addPoint(QStringLiteral("insulation"), QStringLiteral(">= 2 Mohm"));
        on.addPoint(QStringLiteral("flutter"), QStringLiteral("<= 0.12 %"));
        stand(on.table, 0, column(ReadingColumn::Found));
        for (const char *value : {"11.92", "about 14", "OL", "< 0.1"}) {
            type(QString::fromLatin1(value));
            press(Qt::Key_Return);
        }
        QVERIFY(!openField());
        QCOMPARE(on.readings().size(), 4);
        const auto verdict = [&](int row) { return reads(on.table, row, column(ReadingColumn::Verdict)); };
        QCOMPARE(on.readings().at(0).value->text(), QStringLiteral("11.92 V"));
        QCOMPARE(on.readings().at(0).phase, Phase::AsFound);
        QCOMPARE(verdict(0), QStringLiteral("within")); // 11.4 to 12.6 V
        QCOMPARE(on.readings().at(1).value->sense(), Sense::About);
        QCOMPARE(verdict(1), QStringLiteral("outside"));
        QCOMPARE(on.readings().at(2).value->sense(), Sense::OverRange);
        QCOMPARE(verdict(2), QStringLiteral("within"));
        QCOMPARE(on.readings().at(3).value->sense(), Sense::Below);
        QCOMPARE(verdict(3), QStringLiteral("within"));

        stand(on.table, 1, column(ReadingColumn::After));
        type(QStringLiteral("47"));
        press(Qt::Key_Return);
        QCOMPARE(on.readings().last().phase, Phase::AsItLeaves);
        QCOMPARE(verdict(1), QStringLiteral("within"));
        press(Qt::Key_Escape);

        stand(on.table, 0, column(ReadingColumn::Found));
        type(QStringLiteral("grey"));
        press(Qt::Key_Return);
        QVERIFY(on.notice().contains(QLatin1String("grey")));
        QVERIFY(openField());
        QCOMPARE(on.readings().size(), 5);
        press(Qt::Key_Escape);
    }

    // The column of what was read after work is what the sheet calls "as it leaves", whatever stage the unit is at.
    void whatIsTypedAfterWorkIsHowItLeaves()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("rail"), QStringLiteral("12 V 5%"));
        on.addPoint(QStringLiteral("torque"), QStringLiteral("35..65 gf.cm"));
        stand(on.table, 0, column(ReadingColumn::Found));
        type(QStringLiteral("10.9"));
        press(Qt::Key_Return);
        press(Qt::Key_Escape);
        stand(on.table, 0, column(ReadingColumn::After));
        type(QStringLiteral("11.92"));
        press(Qt::Key_Return); // goes on in the row below
        type(QStringLiteral("40 during"));
        press(Qt::Key_Return);
        QCOMPARE(on.window->work().file().unit.stage, Stage::Bench);
        const auto facts = measuredFacts(on.file(), on.window->work().bench());
        QCOMPARE(facts.size(), 2);
        const auto text = [](QString figure) { return figure.replace(QChar(0x00A0), QLatin1Char(' ')); };
        QCOMPARE(text(facts.at(0).found.text), QStringLiteral("10.9 V"));
        QCOMPARE(text(facts.at(0).leaves.text), QStringLiteral("11.92 V"));
        QCOMPARE(facts.at(0).verdict, QStringLiteral("within")); // 11.4 to 12.6 V
        QVERIFY(facts.at(1).leaves.text.isEmpty());
        QCOMPARE(text(facts.at(1).during.text), QStringLiteral("40 gf·cm"));
        QVERIFY(on.table->rows().cell(on.table->rows().index(1, column(ReadingColumn::After))).second.contains(QLatin1String("during work")));
        on.page->setFilter(PointFilter::UnreadAfter);
        QCOMPARE(on.table->rows().rowCount(), 2); // the torque, and the adding row
        QCOMPARE(reads(on.table, 0, 0), QStringLiteral("torque"));
    }

    void tenTimesOffIsAskedOnce()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("rail"), QStringLiteral("12 V 5%"));
        stand(on.table, 0, column(ReadingColumn::Found));
        type(QStringLiteral("119"));
        press(Qt::Key_Return);
        QVERIFY(on.readings().isEmpty());
        QVERIFY(on.page->question()->question().contains(QLatin1String("119 V")));
        QVERIFY(openField());
        press(Qt::Key_Return); // yes
        QCOMPARE(on.readings().size(), 1);
        QVERIFY(on.page->question()->question().isEmpty());

        // Leaving the field is no answer; the button is.
        stand(on.table, 0, column(ReadingColumn::After));
        type(QStringLiteral("1.2"));
        press(Qt::Key_Return);
        QVERIFY(!on.page->question()->question().isEmpty());
        on.page->findChild<QComboBox *>()->setFocus();
        QCOMPARE(on.readings().size(), 1);
        QVERIFY(!on.page->question()->question().isEmpty());
        QPushButton *record = OnPage::button(on.page->question(), QStringLiteral("Record it"));
        QVERIFY(record);
        record->click();
        QCOMPARE(on.readings().size(), 2);
    }

    void aValueTypedAgainIsAReadingOfItsOwn()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("rail"), QStringLiteral("12 V 5%"));
        for (const char *value : {"11.1", "11.9"}) {
            stand(on.table, 0, column(ReadingColumn::Found));
            type(QString::fromLatin1(value));
            press(Qt::Key_Return);
            press(Qt::Key_Escape);
        }
        QCOMPARE(on.readings().size(), 2);
        const QModelIndex cell = on.table->rows().index(0, column(ReadingColumn::Found));
        QCOMPARE(cell.data().toString(), QStringLiteral("11.9 V"));
        QCOMPARE(on.table->rows().cell(cell).second, QStringLiteral("2 readings"));
        QVERIFY(cell.data(Qt::ToolTipRole).toString().contains(QLatin1String("11.1 V")));

        stand(on.table, 0, column(ReadingColumn::Found));
        press(Qt::Key_E, Qt::ControlModifier);
        QVERIFY(openField());
        QCOMPARE(openField()->text(), QStringLiteral("11.9 V"));
        type(QStringLiteral("12.1")); // over what is selected
        press(Qt::Key_Return);
        QCOMPARE(on.readings().size(), 2);
        QCOMPARE(on.readings().at(1).value->text(), QStringLiteral("12.1 V"));
        press(Qt::Key_Escape);

        stand(on.table, 0, column(ReadingColumn::Found));
        press(Qt::Key_Delete);
        QCOMPARE(on.readings().size(), 1);
        QCOMPARE(cell.data().toString(), QStringLiteral("11.1 V"));
        stand(on.table, 0, 0);
        press(Qt::Key_Delete);
        QVERIFY(on.points().isEmpty());
        QVERIFY(on.readings().isEmpty());
        on.window->work().undo();
        QCOMPARE(on.readings().size(), 1);
    }

    void whatIsWantedIsHeldAgainstWhatWasRead()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("rail"), {});
        press(Qt::Key_Escape);
        stand(on.table, 0, column(ReadingColumn::Found));
        type(QStringLiteral("11.92 V"));
        press(Qt::Key_Return);
        QCOMPARE(reads(on.table, 0, column(ReadingColumn::Verdict)), QStringLiteral("no limit"));
        stand(on.table, 0, column(ReadingColumn::Wanted));
        type(QStringLiteral("15 5%")); // in what was read
        press(Qt::Key_Return);
        QCOMPARE(reads(on.table, 0, column(ReadingColumn::Verdict)), QStringLiteral("outside"));
        QCOMPARE(on.readings().first().wanted.text(), QStringLiteral("15 V 5%"));
        stand(on.table, 0, column(ReadingColumn::Wanted));
        type(QStringLiteral("12 A")); // of another measure: refused whole
        press(Qt::Key_Return);
        QVERIFY(!on.notice().isEmpty());
        QCOMPARE(on.points().first().wanted.text(), QStringLiteral("15 V 5%"));
        press(Qt::Key_Escape);
    }

    void theLimitIsDrawnAndSaid()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("logic"), QStringLiteral("5 V 5%"));
        QCOMPARE(on.page->limitCard()->sentence(), QStringLiteral("Not read yet."));
        stand(on.table, 0, column(ReadingColumn::Found));
        type(QStringLiteral("4.76 +-0.05"));
        press(Qt::Key_Return);
        QCOMPARE(reads(on.table, 0, column(ReadingColumn::Verdict)), QStringLiteral("too close to call"));
        // u = 0.05/1.959964 V; z = (4.76 - 4.75)/u = 0.392; the normal law gives 0.652 (table: Phi(0.39) = 0.6517). The far limit adds nothing.
        QVERIFY2(on.page->limitCard()->sentence().startsWith(QStringLiteral("Chance that it is really within: 65 %. A meter good to ± 0.01 V would settle it")),
                 qPrintable(on.page->limitCard()->sentence()));
        const auto span = LimitPicture::spanOf(judge(on.readings().first()).value(), 5.0);
        QVERIFY(span.from < 4.71 && span.to > 5.25);
        on.page->grab(); // painted without a warning
    }

    void filtersCountAndShow()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("a"), QStringLiteral("12 V 5%"));
        on.addPoint(QStringLiteral("b"), QStringLiteral("12 V 5%"));
        on.addPoint(QStringLiteral("c"), QStringLiteral("12 V 5%"));
        stand(on.table, 0, column(ReadingColumn::Found));
        type(QStringLiteral("9"));
        press(Qt::Key_Return);
        press(Qt::Key_Escape);
        QStringList words;
        for (const auto *each : on.page->findChildren<QPushButton *>())
            if (each->isCheckable() && each->isVisible())
                words << each->text();
        QCOMPARE(words, (QStringList{QStringLiteral("All points"), QStringLiteral("Out of spec (1)"), QStringLiteral("Not yet read (2)")}));
        on.page->setFilter(PointFilter::OutOfSpec);
        QCOMPARE(on.table->rows().rowCount(), 2); // and the adding row
        on.page->reveal(QStringLiteral("test_point"), on.points().at(1).id.value); // not among those shown
        QCOMPARE(on.table->currentKey(), on.points().at(1).id.value);
        QCOMPARE(on.table->rows().rowCount(), 4);
    }

    void aMeterChosenGoesWithWhatIsTyped()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        Meter meter = on.desk->maker().fresh<Meter>();
        meter.name = QStringLiteral("hand meter");
        meter.calibrationDue = QDate(2020, 1, 1);
        MeterRange range = on.desk->maker().fresh<MeterRange>();
        range.meter = meter.id;
        range.measure = QStringLiteral("V");
        range.fullScale = 40;
        range.resolution = 0.01;
        range.percentOfReading = 0.5;
        range.counts = 2;
        QVERIFY(on.window->work().record(Change(QStringLiteral("Meter")).add(meter).add(range)));
        on.addPoint(QStringLiteral("rail"), QStringLiteral("12 V 5%"));
        auto *choice = on.page->findChild<QComboBox *>();
        choice->setCurrentIndex(choice->findData(QStringLiteral("hand meter")));
        stand(on.table, 0, column(ReadingColumn::Found));
        type(QStringLiteral("11.92"));
        press(Qt::Key_Return);
        QCOMPARE(on.readings().first().meter, meter.id);
        const QString text = reads(on.table, 0, column(ReadingColumn::Meter));
        QVERIFY2(text.startsWith(QStringLiteral("hand meter, 40 V, ± 0.09 V")), qPrintable(text)); // (0.5 % of 11.92 + 0.02) / sqrt 3 x 1.96 = 0.0901
        QVERIFY2(text.contains(QLatin1String("due for calibration")), qPrintable(text));
    }

    void aSoakIsShownWithItsDrift()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        QVERIFY(on.page->soakCard()->isHidden());
        Maker maker = on.desk->maker();
        Change change(QStringLiteral("Soak"));
        Soak soak = maker.fresh<Soak>();
        soak.unit = on.unit.id;
        soak.name = QStringLiteral("motor current");
        soak.startedAt = soak.at.addSecs(-7200);
        soak.endedAt = soak.at;
        change.add(soak);
        for (int i = 0; i <= 12; ++i) {
            Reading reading = maker.fresh<Reading>();
            reading.unit = on.unit.id;
            reading.name = soak.name;
            reading.soak = soak.id;
            reading.at = soak.startedAt.addSecs(600 * i);
            reading.value = Quantity(75 + (i % 2), Measure::parse(QStringLiteral("mA")).value());
            change.add(reading);
        }
        QVERIFY(on.window->work().record(change));
        QVERIFY(!on.page->soakCard()->isHidden());
        QCOMPARE(on.page->soakCard()->verdict(), QStringLiteral("steady"));
        QVERIFY2(on.page->soakCard()->facts().contains(QLatin1String("13 readings")), qPrintable(on.page->soakCard()->facts()));
        on.page->grab();
    }

    void everyControlHasAName()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addPoint(QStringLiteral("a"), QStringLiteral("12 V 5%"));
        const QStringList unnamed = unnamedControls(*on.page);
        QVERIFY2(unnamed.isEmpty(), qPrintable(unnamed.join(QStringLiteral(", "))));
    }

    void aRunGoesThroughThePointsByOneKey()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.page->startRun();
        QVERIFY(!on.page->run()->isRunning()); // no point yet
        QVERIFY(on.notice().contains(QLatin1String("no test point")));
        Change change(QStringLiteral("Points"));
        int position = 0;
        for (const char *name : {"idle current L", "idle current R", "CN2.4"}) {
            TestPoint point = freshOfUnit<TestPoint>(on.window->work());
            point.name = QString::fromLatin1(name);
            point.wanted = *Limit::parse(position < 2 ? QStringLiteral("20..30 mA") : QStringLiteral("12 V 5%"));
            point.position = ++position;
            change.add(point);
        }
        QVERIFY(on.window->work().record(change));
        on.page->startRun();
        PointRun *run = on.page->run();
        QCOMPARE(run->at(), QStringLiteral("idle current L"));
        QCOMPARE(run->phase(), Phase::AsFound);
        type(QStringLiteral("24"));
        press(Qt::Key_Return); // a bare number is in what is wanted
        QCOMPARE(on.all<Reading>().size(), 1);
        QCOMPARE(on.all<Reading>().first().value->text(), QStringLiteral("24 mA"));
        QCOMPARE(on.all<Reading>().first().phase, Phase::AsFound);
        QCOMPARE(run->at(), QStringLiteral("idle current R"));
        press(Qt::Key_Space); // a foot on the switch
        QCOMPARE(run->at(), QStringLiteral("CN2.4"));
        press(Qt::Key_Up);
        QCOMPARE(run->at(), QStringLiteral("idle current R"));
        type(QStringLiteral("nearly"));
        press(Qt::Key_Return);
        QVERIFY(!on.notice().isEmpty());
        QCOMPARE(run->at(), QStringLiteral("idle current R"));
        run->field()->setText(QStringLiteral("OL"));
        press(Qt::Key_Return);
        QCOMPARE(on.all<Reading>().size(), 2);
        // Three readings, one value: their mean is 11.93 by hand.
        for (const char *value : {"11.92", "11.94"}) {
            type(QString::fromLatin1(value));
            press(Qt::Key_Return, Qt::ShiftModifier);
        }
        type(QStringLiteral("11.93"));
        press(Qt::Key_Return);
        QCOMPARE(on.all<Reading>().size(), 3);
        QVERIFY(std::abs(on.all<Reading>().last().value->base() - 11.93) < 1e-9);
        QVERIFY(on.all<Reading>().last().uncertainty.has_value());
        QVERIFY(!run->isRunning()); // that was the last
        QCOMPARE(unnamedControls(*on.page), QStringList());
    }
};

QTEST_MAIN(TestViewReadings)
#include "test_view_readings.moc"
