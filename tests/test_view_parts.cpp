// The parts page over a real workbook, by keys alone.
#include "model/sums/need_totals.h"
#include "tests/grid_under_test.h"
#include "tests/page_under_test.h"
#include "views/parts/part_rows.h"
#include "views/parts/parts_page.h"

#include <QAbstractItemModelTester>

using namespace ts;
using namespace ts::testing;

class TestViewParts : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    struct OnPage : PageUnderTest<PartsPage> {
        GridView *table;
        explicit OnPage(const QString &book) : PageUnderTest(book, PageKey::Parts), table(page->table()) {}
        [[nodiscard]] const QList<Need> &needs() const { return all<Need>(); }
        static int column(PartColumn c) { return static_cast<int>(c); }
    };

private Q_SLOTS:
    void totalsAreByStateAndCurrency()
    {
        // Sums by hand: 2 x 1.20 + 0.35 = 2.75; 3 x 4.00 EUR apart; two lines without a price counted, not summed.
        const Currency pounds = Currency::parse(QStringLiteral("GBP")).value();
        const Currency euros = Currency::parse(QStringLiteral("EUR")).value();
        UnitFile file;
        const auto add = [&](NeedState state, int quantity, std::optional<Money> price, bool removed = false) {
            Need need;
            need.id = Id<Need>{QUuid::createUuid()};
            need.state = state;
            need.quantity = quantity;
            need.price = price;
            need.removed = removed;
            file.all<Need>() << need;
        };
        add(NeedState::Needed, 3, Money(400, euros));
        add(NeedState::Needed, 2, Money(120, pounds));
        add(NeedState::Needed, 1, Money(35, pounds));
        add(NeedState::Needed, 1, {});
        add(NeedState::Fitted, 5, {});
        add(NeedState::Fitted, 5, Money(100, pounds), true);
        const QList<NeedTotal> totals = needTotals(file, pounds);
        QCOMPARE(totals.size(), 4);
        QCOMPARE(totals.at(0), (NeedTotal{NeedState::Needed, 4, 7, {Money(275, pounds), Money(1200, euros)}, 1}));
        QCOMPARE(totals.at(1), (NeedTotal{NeedState::Ordered, 0, 0, {}, 0}));
        QCOMPARE(totals.at(3), (NeedTotal{NeedState::Fitted, 1, 5, {}, 1}));
        const NeedTotal all = needTotal(file, pounds);
        QCOMPARE(all.lines, 5);
        QCOMPARE(all.sums.first(), Money(275, pounds));
        QCOMPARE(all.unpriced, 2);
    }

    void partsAreAddedInTheWordsOfTheLog()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.table->editAdding();
        type(QStringLiteral("belt 78x4x0.6 2.50"));
        press(Qt::Key_Return);
        type(QStringLiteral("2x C214 47uF 63V 0.35"));
        press(Qt::Key_Return);
        type(QStringLiteral("to be or not")); // the log takes that as a note; here it is a part
        press(Qt::Key_Return);
        press(Qt::Key_Escape);
        QCOMPARE(on.needs().size(), 3);
        QCOMPARE(on.needs().at(0).text, QStringLiteral("belt 78x4x0.6"));
        QCOMPARE(on.needs().at(0).price->minor(), 250);
        QCOMPARE(on.needs().at(1).quantity, 2);
        QCOMPARE(on.needs().at(1).position, QStringLiteral("C214"));
        QCOMPARE(on.needs().at(2).text, QStringLiteral("to be or not"));
        on.window->work().undo();
        QCOMPARE(on.needs().size(), 2);
        const QAbstractItemModelTester tester(&on.table->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        on.window->work().redo();
        QCOMPARE(rowReading(on.table, QStringLiteral("to be or not")), 3); // under its heading
    }

    void everyFieldIsEditedInPlace()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.table->editAdding();
        type(QStringLiteral("belt"));
        press(Qt::Key_Return);
        press(Qt::Key_Escape);
        const auto put = [&](PartColumn column, const QString &text) {
            stand(on.table, rowReading(on.table, on.needs().first().text), OnPage::column(column));
            press(Qt::Key_F2);
            QVERIFY(openField());
            openField()->selectAll();
            type(text);
            press(Qt::Key_Return);
        };
        put(PartColumn::Quantity, QStringLiteral("3"));
        put(PartColumn::Each, QStringLiteral("2.40"));
        put(PartColumn::Position, QStringLiteral("take-up"));
        put(PartColumn::OldValue, QStringLiteral("80 mm"));
        put(PartColumn::Supplier, QStringLiteral("Brenlow Spares"));
        put(PartColumn::Due, QStringLiteral("2026-11-28"));
        put(PartColumn::Part, QStringLiteral("belt 78"));
        const Need need = on.needs().first();
        QCOMPARE(need.quantity, 3);
        QCOMPARE(need.price->decimal(), QStringLiteral("2.40"));
        QCOMPARE(need.position, QStringLiteral("take-up"));
        QCOMPARE(need.oldValue, QStringLiteral("80 mm"));
        QCOMPARE(need.supplier, QStringLiteral("Brenlow Spares"));
        QCOMPARE(need.due, QDate(2026, 11, 28));
        QCOMPARE(need.text, QStringLiteral("belt 78"));
        QCOMPARE(reads(on.table, 1, OnPage::column(PartColumn::Sum)), QStringLiteral("£7.20"));

        put(PartColumn::Quantity, QStringLiteral("0"));
        QVERIFY(on.notice().contains(QLatin1String("whole number from 1")));
        QCOMPARE(on.needs().first().quantity, 3);
        press(Qt::Key_Escape);
        put(PartColumn::Part, QString());
        press(Qt::Key_Backspace);
        press(Qt::Key_Return);
        QCOMPARE(on.needs().first().text, QStringLiteral("belt 78"));
        press(Qt::Key_Escape);
    }

    void oneKeyMovesAPartOnAndBack()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.table->editAdding();
        type(QStringLiteral("belt 2.50"));
        press(Qt::Key_Return);
        press(Qt::Key_Escape);
        stand(on.table, 1, 0);
        press(Qt::Key_Right, Qt::ControlModifier);
        QCOMPARE(on.needs().first().state, NeedState::Ordered);
        QCOMPARE(on.window->workspace().said()->text(), QStringLiteral("Part ordered: belt"));
        press(Qt::Key_Right, Qt::ControlModifier);
        press(Qt::Key_Right, Qt::ControlModifier);
        press(Qt::Key_Right, Qt::ControlModifier); // no further
        QCOMPARE(on.needs().first().state, NeedState::Fitted);
        press(Qt::Key_Left, Qt::ControlModifier);
        QCOMPARE(on.needs().first().state, NeedState::Here);
        stand(on.table, 1, OnPage::column(PartColumn::State));
        type(QStringLiteral("o"));
        QCOMPARE(on.needs().first().state, NeedState::Ordered);
        QVERIFY(reads(on.table, 0, 0) == QLatin1String("Ordered"));
        press(Qt::Key_Delete);
        QVERIFY(on.needs().isEmpty());
        on.window->work().undo();
        QCOMPARE(on.needs().size(), 1);
    }
};

QTEST_MAIN(TestViewParts)
#include "test_view_parts.moc"
