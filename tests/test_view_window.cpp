// The window over a real workbook, driven as a person would: choose a unit, undo, see another's change.
#include "model/records/stage_change.h"
#include "tests/window_under_test.h"
#include "views/widgets/notice_bar.h"

#include <QSignalSpy>

#include <cmath>

using namespace ts;
using namespace ts::testing;

class TestViewWindow : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static void addUnits(Desk &desk, int count)
    {
        Change change(QStringLiteral("Units"));
        for (int i = 0; i < count; ++i) {
            Unit unit = desk.maker().fresh<Unit>();
            unit.name = QStringLiteral("Unit <b>%1</b>").arg(i);
            unit.stage = Stage::Bench;
            unit.stageSince = unit.at;
            change.add(unit);
        }
        wantOk(desk.apply(change));
    }

private Q_SLOTS:
    void theUnitInHandIsShownAndFollowsTheRecord()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        OpenDesk desk;
        wantOk(desk.create(book));
        addUnits(*desk, 2);
        WindowUnderTest window(*desk);
        QVERIFY(window.work().hasUnit());
        const auto id = window.work().file().unit.id;
        QSignalSpy changed(&window.work(), &Workplace::unitChanged);

        Note note = desk->maker().fresh<Note>();
        note.unit = id;
        note.text = QStringLiteral("noted here");
        QVERIFY(window.work().record(Change(QStringLiteral("Note: noted here")).add(note)));
        QCOMPARE(changed.count(), 1);
        QCOMPARE(window.work().file().all<Note>().size(), 1);
        QCOMPARE(window.workspace().said()->text(), QStringLiteral("Note: noted here"));
        window.work().undo();
        QVERIFY(window.work().file().all<Note>().isEmpty());
        window.work().redo();
        QCOMPARE(window.work().file().all<Note>().size(), 1);

        OpenDesk other; // another program on the same file
        wantOk(other.open(book));
        Note theirs = other->maker().fresh<Note>();
        theirs.unit = id;
        theirs.text = QStringLiteral("from the other window");
        wantOk(other->apply(Change(QStringLiteral("Note")).add(theirs)));
        QTRY_COMPARE_WITH_TIMEOUT(window.work().file().all<Note>().size(), 2, 2000);
    }

    void whatIsRefusedIsSaidAndChangesNothing()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addUnits(*desk, 1);
        WindowUnderTest window(*desk);
        Maker maker = desk->maker();
        QVERIFY(!window.work().record(stageChange(window.work().file().unit, {.stage = Stage::Held, .because = {}, .until = {}, .outcome = {}}, maker)));
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("needs a reason")));
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
    }

    void everyControlHasAName()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addUnits(*desk, 1);
        WindowUnderTest window(*desk);
        for (int page = 0; page <= static_cast<int>(PageKey::Details); ++page) {
            window.workspace().unitPane()->showPage(static_cast<PageKey>(page));
            const QStringList unnamed = unnamedControls(window.workspace());
            QVERIFY2(unnamed.isEmpty(), qPrintable(unnamed.join(QStringLiteral(", "))));
        }
    }

    void eachSchemeIsReadable()
    {
        // WCAG 2.1, 1.4.3: contrast of at least 4.5:1 for text, by the relative luminance of its definition.
        const auto luminance = [](const QColor &colour) {
            const auto part = [](qreal c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
            return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) + 0.0722 * part(colour.blueF());
        };
        const auto contrast = [&](const QColor &a, const QColor &b) {
            const auto [dark, light] = std::minmax(luminance(a), luminance(b));
            return (light + 0.05) / (dark + 0.05);
        };
        QCOMPARE(qRound(contrast(Qt::black, Qt::white)), 21);
        for (const Ink &c : {lightInk(), darkInk()}) {
            for (const QColor &ground : {c.paper, c.raised, c.sheet, c.rack, c.copperPaper})
                for (const QColor &text : {c.ink, c.quiet, c.faint, c.copper})
                    QVERIFY2(contrast(text, ground) >= 4.5, qPrintable(text.name() + QStringLiteral(" on ") + ground.name() + QStringLiteral(": ") + QString::number(contrast(text, ground))));
            const QList<std::pair<QColor, QColor>> pairs{{c.onCopper, c.copper},         {c.within, c.withinPaper},   {c.outside, c.outsidePaper}, {c.tooClose, c.tooClosePaper},
                                                         {c.neutral, c.neutralPaper},    {c.hint, c.hintPaper},       {c.ink, c.outsidePaper},     {c.ink, c.withinPaper},
                                                         {c.ink, c.passed},              {c.within, c.sheet},         {c.outside, c.sheet},        {c.tooClose, c.sheet},
                                                         {c.outside, c.raised},          {c.faint, c.neutralPaper}};
            for (const auto &[text, ground] : pairs)
                QVERIFY2(contrast(text, ground) >= 4.5, qPrintable(text.name() + QStringLiteral(" on ") + ground.name() + QStringLiteral(": ") + QString::number(contrast(text, ground))));
        }
    }
};

QTEST_MAIN(TestViewWindow)
#include "test_view_window.moc"
