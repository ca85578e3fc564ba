// Meters and their ranges typed in Settings, and what a reading then says of itself.
#include "model/sums/meter_spec.h"
#include "tests/grid_under_test.h"
#include "tests/window_under_test.h"
#include "views/settings/meter_list.h"
#include "views/settings/settings_place.h"
#include "views/widgets/calm_wheel.h"
#include "views/widgets/notice_bar.h"

#include <QComboBox>
#include <QWheelEvent>

using namespace ts;
using namespace ts::testing;

class TestViewMeters : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void aMeterIsTypedWithItsRange()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.work().goTo(PlaceKey::Settings);
        QCoreApplication::processEvents();
        auto *list = window.workspace().findChild<MeterList *>();
        QVERIFY(list);
        stand(list->meters(), 0, 0);
        type(QStringLiteral("hand meter"));
        press(Qt::Key_Return);
        QCoreApplication::processEvents();
        const auto meters = window.work().bench().all<Meter>();
        QCOMPARE(meters.size(), 1);
        list->meters()->setCurrent(meters.first().id.value);
        QCoreApplication::processEvents();
        stand(list->ranges(), 0, 0);
        type(QStringLiteral("V"));
        press(Qt::Key_Return);
        QCoreApplication::processEvents();
        QCOMPARE(window.work().bench().all<MeterRange>().size(), 1);
        const QUuid range = window.work().bench().all<MeterRange>().first().id.value;
        // 40 V range, 0.5 % of reading and 2 counts of 10 mV.
        const QStringList figures{QStringLiteral("40"), QStringLiteral("10m"), QStringLiteral("0.5"), {}, QStringLiteral("2")};
        for (int i = 0; i < figures.size(); ++i) {
            if (figures.at(i).isEmpty())
                continue;
            list->ranges()->editAt(range, i + 1);
            openField()->setText(figures.at(i));
            press(Qt::Key_Return);
            QCoreApplication::processEvents();
        }
        const MeterRange typed = window.work().bench().all<MeterRange>().first();
        QCOMPARE(typed.fullScale, 40.0);
        QCOMPARE(typed.resolution, 0.01);
        QCOMPARE(typed.counts, 2.0);
        // JCGM 100:2008, 4.3.7: a = 0.5 % of 20 V + 2 × 0.01 V = 0.12 V, U = 1.96 × 0.12 / sqrt 3 = 0.1358 V.
        QCOMPARE(reads(list->ranges(), 0, 7), QStringLiteral("± 140\u00a0mV"));
        list->ranges()->editAt(range, 3);
        openField()->setText(QStringLiteral("-1"));
        press(Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("below zero")));
        press(Qt::Key_Escape);
        QCOMPARE(window.work().bench().all<MeterRange>().first().percentOfReading, 0.5);

        list->meters()->editAt(meters.first().id.value, 2);
        openField()->setText(QStringLiteral("2020-01-31"));
        press(Qt::Key_Return);
        QCoreApplication::processEvents();
        QCOMPARE(window.work().bench().all<Meter>().first().calibrationDue, QDate(2020, 1, 31));
        QVERIFY(list->meters()->rows().row(0).cells.at(2).pill.has_value()); // overdue, marked
        list->meters()->setFocus();
        list->meters()->setCurrent(meters.first().id.value, 0);
        press(Qt::Key_Delete);
        QVERIFY(window.work().bench().all<Meter>().isEmpty());
        QVERIFY(window.work().bench().all<MeterRange>().isEmpty());
        window.work().undo();
        QCOMPARE(window.work().bench().all<MeterRange>().size(), 1);
    }

    void theWheelPassesOverChoices()
    {
        QComboBox box;
        box.addItems({QStringLiteral("one"), QStringLiteral("two"), QStringLiteral("three")});
        box.show();
        const auto turn = [&box] {
            QWheelEvent down(QPointF(5, 5), box.mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, -120), Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
            QApplication::sendEvent(&box, &down);
        };
        box.clearFocus();
        turn();
        QCOMPARE(box.currentIndex(), 1); // as Qt has it
        CalmWheel calm;
        qobject_cast<QApplication *>(QCoreApplication::instance())->installEventFilter(&calm);
        turn();
        QCOMPARE(box.currentIndex(), 1);
        QCOMPARE(box.focusPolicy(), Qt::StrongFocus);
        box.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&box));
        box.setFocus();
        turn();
        QCOMPARE(box.currentIndex(), 2);
    }
};

QTEST_MAIN(TestViewMeters)
#include "test_view_meters.moc"
