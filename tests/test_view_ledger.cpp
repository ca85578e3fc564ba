// The books on the screen: a year's money, the stock book, and what is written of them.
#include "tests/window_under_test.h"
#include "views/places/ledger_model.h"
#include "views/places/ledger_place.h"
#include "views/places/stock_model.h"
#include "views/widgets/ask.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QTabBar>
#include <QTableView>

using namespace ts;
using namespace ts::testing;

class TestViewLedger : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void aYearIsShownAndWritten()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Currency pounds = Currency::parse(QStringLiteral("GBP")).value();
        Maker maker = desk->maker();
        Change change(QStringLiteral("Money"));
        for (const auto &[name, value] : {std::pair{"currency", "GBP"}, std::pair{"margin_tax", "20"}}) {
            Setting setting = maker.fresh<Setting>();
            setting.name = QString::fromLatin1(name);
            setting.value = QString::fromLatin1(value);
            change.add(setting);
        }
        wantOk(desk->apply(change));
        const Unit unit = benchUnit(*desk, QStringLiteral("Pellworth KD-7"));
        Change money(QStringLiteral("Bought and sold"));
        const auto spend = [&](SpendKind kind, Flow flow, qint64 minor, const QDate &day) {
            Spend made = maker.fresh<Spend>();
            made.unit = unit.id;
            made.kind = kind;
            made.flow = flow;
            made.text = QStringLiteral("as paid");
            made.amount = Money(minor, pounds);
            made.paidOn = day;
            money.add(made);
        };
        const int year = QDate::currentDate().year();
        spend(SpendKind::Purchase, Flow::Out, 3000, QDate(year - 1, 12, 30));
        spend(SpendKind::Sale, Flow::In, 12000, QDate(year, 1, 15));
        wantOk(desk->apply(money));
        WindowUnderTest window(*desk);
        // The work of the window's thread beside it, done at once and with the same desk.
        connect(&window.work(), &Workplace::workWanted, this, [&desk](const QString &, const Workplace::Job &job) { wantOk(job(*desk, {})); });
        window.work().goTo(PlaceKey::Ledger);
        auto *place = window.workspace().findChild<LedgerPlace *>();
        auto *movements = place->findChild<LedgerModel *>();
        auto *stock = place->findChild<StockModel *>();
        QTRY_COMPARE(movements->rowCount(), 1); // this year's
        QAbstractItemModelTester looking(stock);
        QCOMPARE(stock->rowCount(), 1);
        // Margin 120 − 30 = 90, of which 20/120 is tax: 15.00 (row V08 of the margin examples, by hand).
        QCOMPARE(stock->index(0, StockModel::Margin).data().toString(), QStringLiteral("£90.00"));
        QCOMPARE(stock->index(0, StockModel::Tax).data().toString(), QStringLiteral("£15.00"));
        QCOMPARE(stock->index(0, StockModel::Left).data().toString(), QStringLiteral("£75.00"));
        auto *years = place->findChild<QComboBox *>();
        years->setCurrentIndex(years->findData(0));
        QCOMPARE(movements->rowCount(), 2);
        place->findChild<QTabBar *>()->setCurrentIndex(1);
        QCOMPARE(unnamedControls(*place), QStringList());
        const QString file = m_books.path(QStringLiteral("books.xlsx"));
        ask::answerFor(place, [file](const QString &) { return file; });
        QPushButton *write = buttonWith(*place, QStringLiteral("spreadsheet"));
        QVERIFY(write);
        write->click();
        QTRY_VERIFY(QFile::exists(file));
        Q_EMIT place->findChildren<QTableView *>().last()->activated(place->findChildren<QTableView *>().last()->model()->index(0, 0));
        QCOMPARE(window.workspace().place(), PlaceKey::Units);
        QCOMPARE(window.work().file().unit.id, unit.id);
    }
};

QTEST_MAIN(TestViewLedger)
#include "test_view_ledger.moc"
