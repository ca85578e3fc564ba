// The restoration sheet in the window: the same pages as the PDF, the same sheet as the command line writes, and earlier ones as they were.
#include "model/keeping/outgoing_sheet.h"
#include "model/paper/restoration.h"
#include "model/records/settings.h"
#include "model/records/tag_text.h"
#include "tests/media_samples.h"
#include "tests/program.h"
#include "tests/window_under_test.h"
#include "views/handover/earlier_sheets.h"
#include "views/handover/handover_page.h"
#include "views/handover/note_lines.h"
#include "views/handover/sheet_photos.h"
#include "views/handover/sheet_preview.h"
#include "views/photos/photo_desk.h"
#include "views/widgets/ask.h"
#include "views/widgets/growing_text.h"
#include "views/widgets/notice_bar.h"

#include <QLabel>
#include <QListView>
#include <QPainter>
#include <QSignalSpy>

using namespace ts;
using namespace ts::testing;

class TestViewHandover : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static GrowingText *lastLine(QWidget *lines)
    {
        const auto all = lines->findChildren<GrowingText *>();
        for (GrowingText *each : all)
            if (each->toPlainText().isEmpty() && !each->isHidden())
                return each;
        return nullptr;
    }
    static NoteLines *flaws(HandoverPage *page) { return page->findChildren<NoteLines *>().first(); }
    static void typeFlaw(HandoverPage *page, const char *text)
    {
        GrowingText *line = lastLine(flaws(page));
        line->setFocus();
        QTest::keyClicks(line, QString::fromUtf8(text));
        QTest::keyClick(line, Qt::Key_Return);
    }
    static QList<Paper> papers(OpenDesk &desk, const Unit &unit) { return desk->unitFile(unit.id)->all<Paper>(); }

private Q_SLOTS:
    void thePreviewIsWhatThePdfPaints()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Pellworth KD-7 cassette deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<HandoverPage>(PageKey::Handover);
        QSignalSpy painted(page->preview(), &SheetPreview::painted);
        QTRY_VERIFY(painted.count() > 0);
        const auto facts = restorationFacts(*desk, *desk->unitFile(unit.id), *desk->benchFile(), desk->maker().now().toLocalTime());
        wantOk(facts);
        const PaperPages pages(*facts, PageSize::A4);
        QTRY_COMPARE(page->preview()->pages().size(), pages.count());
        for (int i = 0; i < pages.count(); ++i) {
            const QImage shown = page->preview()->pages().at(i);
            QImage image(shown.size(), QImage::Format_RGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
            painter.scale(shown.width() / pages.pageSize().width(), shown.width() / pages.pageSize().width());
            pages.paint(painter, i);
            painter.end();
            QCOMPARE(shown, image);
            QVERIFY(qAbs(double(shown.height()) / shown.width() - 297.0 / 210) < 0.01); // ISO 216
        }
        const int before = page->preview()->pages().first().width();
        page->preview()->zoomBy(2);
        QTRY_VERIFY(page->preview()->pages().first().width() > before * 3 / 2);
        QVERIFY(window.work().record(*window.work().settingChange(settings::paperSize, QStringLiteral("Letter"))));
        QTRY_VERIFY(qAbs(double(page->preview()->pages().first().height()) / page->preview()->pages().first().width() - 11 / 8.5) < 0.01); // ANSI/ASME Y14.1
    }

    void flawsAndRemarksAreEditedInPlace()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<HandoverPage>(PageKey::Handover);
        const auto notes = [&] { return desk->unitFile(unit.id)->all<Note>(); };
        typeFlaw(page, "scratch on the lid");
        typeFlaw(page, "hazed window");
        QCOMPARE(notes().size(), 2);
        QCOMPARE(notes().first().kind, NoteKind::Flaw);
        GrowingText *first = flaws(page)->findChildren<GrowingText *>().first();
        for (GrowingText *each : flaws(page)->findChildren<GrowingText *>())
            if (each->toPlainText() == QStringLiteral("scratch on the lid"))
                first = each;
        first->setFocus();
        first->selectAll();
        QTest::keyClicks(first, QStringLiteral("scratch, 40 mm"));
        // Another person's note while this is typed.
        Note theirs = desk->maker().fresh<Note>();
        theirs.unit = unit.id;
        theirs.kind = NoteKind::Flaw;
        theirs.text = QStringLiteral("knob missing");
        QVERIFY(window.work().record(Change(QStringLiteral("Flaw")).add(theirs)));
        QCOMPARE(first->toPlainText(), QStringLiteral("scratch, 40 mm"));
        first->commit();
        QCOMPARE(notes().first().text, QStringLiteral("scratch, 40 mm"));
        window.work().undo();
        QCOMPARE(notes().first().text, QStringLiteral("scratch on the lid"));
        first->setFocus();
        first->selectAll();
        QTest::keyClick(first, Qt::Key_Delete);
        QTest::keyClick(first, Qt::Key_Return);
        QCOMPARE(notes().size(), 2); // an emptied line goes
        window.work().undo();
        QCOMPARE(notes().size(), 3);
        QVERIFY2(unnamedControls(*page).isEmpty(), qPrintable(unnamedControls(*page).join(QStringLiteral(", "))));
    }

    void photosAreChosenAndOrdered()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<HandoverPage>(PageKey::Handover);
        const auto photos = [&] { return desk->unitFile(unit.id)->all<Photo>(); };
        window.workspace().photos()->intake().take({{{}, samples::quarters(60, 40)}, {{}, samples::quarters(61, 40)}, {{}, samples::quarters(62, 40)}}, unit.id);
        QTRY_COMPARE(photos().size(), 3);
        auto *card = page->findChild<SheetPhotos *>();
        auto *list = card->findChild<QListView *>();
        QSignalSpy painted(page->preview(), &SheetPreview::painted);
        QTRY_VERIFY(painted.count() > 0);
        const auto goesOn = [&] {
            QStringList widths;
            for (int row = 0; row < list->model()->rowCount(); ++row)
                if (list->model()->index(row, 0).data(PhotoListModel::OnSheet).toBool())
                    widths << QString::number(window.work().file().find(Id<Photo>{list->model()->index(row, 0).data(PhotoListModel::PhotoId).toUuid()})->width);
            return widths;
        };
        QTRY_COMPARE(goesOn(), QStringList{QStringLiteral("60")}); // by itself: the first of those during work
        list->setCurrentIndex(list->model()->index(2, 0));
        QTest::keyClick(list, Qt::Key_Space);
        QTRY_COMPARE(goesOn(), (QStringList{QStringLiteral("60"), QStringLiteral("62")}));
        QTest::keyClick(list, Qt::Key_Left, Qt::AltModifier);
        QTest::keyClick(list, Qt::Key_Left, Qt::AltModifier);
        QTRY_COMPARE(goesOn(), (QStringList{QStringLiteral("62"), QStringLiteral("60")}));
        const auto facts = restorationFacts(*desk, *desk->unitFile(unit.id), *desk->benchFile(), desk->maker().now());
        QCOMPARE(facts->pictures.size(), 2);
        QCOMPARE(facts->pictures.first().width, 62);
        for (int i = 0; i < 3; ++i)
            window.work().undo();
        QTRY_COMPARE(goesOn(), QStringList{QStringLiteral("60")});
    }

    void whatIsWrittenIsWhatTheCommandLineWrites()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        OpenDesk desk;
        wantOk(desk.create(book));
        const Unit unit = benchUnit(*desk, QStringLiteral("Pellworth <KD-7> cassette deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<HandoverPage>(PageKey::Handover);
        typeFlaw(page, "scratch <b>40</b> mm");
        const QString pdf = m_books.path(QStringLiteral("window.pdf"));
        const QString html = m_books.path(QStringLiteral("window.html"));
        QString next = m_books.path(QStringLiteral("window")); // no ending: it is given its own
        ask::answerFor(page, [&](const QString &) { return next; });
        page->writePdf();
        next = html;
        page->writeWebPage();
        QVERIFY2(window.workspace().notice()->text().isEmpty(), qPrintable(window.workspace().notice()->text()));
        QVERIFY(contents(pdf).startsWith("%PDF-"));
        QCOMPARE(papers(desk, unit).size(), 2);
        QCOMPARE(papers(desk, unit).first().edition, 1);
        QCOMPARE(papers(desk, unit).last().edition, 2);
        QCOMPARE(papers(desk, unit).last().format, QStringLiteral("html"));
        QCOMPARE(papers(desk, unit).first().sha256, sha256(contents(pdf)));
        QCOMPARE(papers(desk, unit).last().sha256, sha256(contents(html)));

        // The command line writes an earlier edition byte for byte, and a new one that differs in number, edition and date alone.
        const QString again = m_books.path(QStringLiteral("again.pdf"));
        const QString anew = m_books.path(QStringLiteral("anew.html"));
        TS_RUN(QStringLiteral("paper"), book, tagText(unit.tag), QStringLiteral("restoration"), QStringLiteral("-o"), again, QStringLiteral("--edition"), QStringLiteral("1"));
        QCOMPARE(contents(again), contents(pdf));
        TS_RUN(QStringLiteral("paper"), book, tagText(unit.tag), QStringLiteral("restoration"), QStringLiteral("-o"), anew);
        const auto plain = [](const QByteArray &bytes) {
            QString text = QString::fromUtf8(bytes);
            text.remove(QRegularExpression(QStringLiteral("\\d{1,2} (?:January|February|March|April|May|June|July|August|September|October|November|December) \\d{4}")));
            return text.remove(QRegularExpression(QStringLiteral("(?i)(?:no\\.|number|edition|sheet) ?\\d+")));
        };
        QVERIFY(contents(html) != contents(anew));
        QCOMPARE(plain(contents(html)), plain(contents(anew)));
        QVERIFY(QString::fromUtf8(contents(html)).contains(QLatin1String("scratch &lt;b&gt;40&lt;/b&gt; mm")));
    }

    void whatWasHandedOverStaysAsItWas()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<HandoverPage>(PageKey::Handover);
        const QString html = m_books.path(QStringLiteral("first.html"));
        QString answer = html;
        QStringList asked;
        ask::answerFor(page, [&](const QString &title) {
            asked << title;
            return answer;
        });
        page->writeWebPage();
        const QByteArray handed = contents(html);
        QCOMPARE(papers(desk, unit).size(), 1);
        typeFlaw(page, "dropped since then");
        answer = m_books.path(QStringLiteral("second.html"));
        page->writeWebPage();
        QVERIFY(contents(answer).contains("dropped since then"));
        QVERIFY(!handed.contains("dropped since then"));
        // Edition 1 opens as it was.
        asked.clear();
        page->findChild<EarlierSheets *>()->open(papers(desk, unit).first());
        QCOMPARE(asked.size(), 1);
        QCOMPARE(contents(asked.first()), handed);
        QVERIFY(asked.first().contains(tagText(unit.tag)) && asked.first().endsWith(QLatin1String("1.html")));
        answer.clear(); // nothing opens it
        page->findChild<EarlierSheets *>()->open(papers(desk, unit).last());
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("Nothing on this computer opens HTML files")));
    }

    void whatCannotBeWrittenUsesNoNumberUp()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<HandoverPage>(PageKey::Handover);
        QString answer = m_books.path(QStringLiteral("nowhere/sheet.pdf"));
        ask::answerFor(page, [&](const QString &) { return answer; });
        page->writePdf();
        QVERIFY(window.workspace().notice()->text().startsWith(QLatin1String("Cannot write")));
        QVERIFY(papers(desk, unit).isEmpty());
        answer.clear(); // thought better of it
        page->writePdf();
        page->print();
        QVERIFY(papers(desk, unit).isEmpty());
        answer = m_books.path(QStringLiteral("printed.pdf"));
        page->print();
        QCOMPARE(papers(desk, unit).size(), 1);
        QCOMPARE(papers(desk, unit).first().number, 1);
        QVERIFY(contents(answer).startsWith("%PDF-"));
    }

    void itWarnsOfWhatMustNotBePowered()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<HandoverPage>(PageKey::Handover);
        const auto said = [&] {
            QStringList all;
            for (const QLabel *label : page->findChildren<QLabel *>())
                if (label->isVisible())
                    all << label->text();
            return all.join(QLatin1Char('\n'));
        };
        QVERIFY(!said().contains(QLatin1String("Do not power")));
        LeftOff left = desk->maker().fresh<LeftOff>();
        left.unit = unit.id;
        left.doNotPower = QStringLiteral("primary exposed");
        QVERIFY(window.work().record(Change(QStringLiteral("Left off")).add(left)));
        QTRY_VERIFY(said().contains(QLatin1String("Do not power this unit: primary exposed")));
        QTRY_VERIFY(said().contains(QLatin1String("No electrical safety test"))); // among what was not done
    }
};

QTEST_MAIN(TestViewHandover)
#include "test_view_handover.moc"
