#include "model/paper/pdf_date.h"
#include "tests/paper_samples.h"
#include "tests/testing.h"

#include <QAbstractTextDocumentLayout>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextLayout>

using namespace ts;
using namespace ts::testing;

namespace {

/// A receiver with more readings than anybody takes, long stories and letters from the right.
PaperSample longSample()
{
    PaperSample sample;
    sample.file.unit.tag = 1234;
    sample.file.unit.name =
        QStringLiteral("Ardmoor receiver with a name that goes on until it needs a second line and then some");
    sample.file.unit.serial = QStringLiteral("\u0645\u0633\u062C\u0644 12");
    sample.file.unit.accessories = QStringLiteral("Oneverylongwordwithoutanyplacetobreakit").repeated(8);
    sample.setting(
        settings::terms,
        QStringLiteral("A first line too long for the foot of the page, because it goes on and on well past its width. ")
            .repeated(9));
    const auto symptom = sample.symptom(QStringLiteral("It began quietly. ").repeated(200), {}, SymptomState::Open);
    sample.step(symptom, StepKind::Other, QStringLiteral("Much was done about it. ").repeated(160));
    for (int i = 0; i < 300; ++i) {
        const auto point = sample.point(QStringLiteral("Point%1.").arg(i), QStringLiteral("12 V 5%"),
                                        i % 3 ? QString() : QStringLiteral("cold"), {}, i);
        sample.reading(point, QStringLiteral("11.%1 V").arg(i % 10), Phase::AsFound, 0.05);
        sample.reading(point, QStringLiteral("12.%1 V").arg(i % 7), Phase::AsItLeaves, 0.05);
    }
    return sample;
}

QString output(const QString &tool, const QStringList &arguments, const QByteArray &input)
{
    QProcess process;
    process.start(tool, arguments);
    process.write(input);
    process.closeWriteChannel();
    process.waitForFinished();
    return QString::fromUtf8(process.readAllStandardOutput());
}

QStringList pagesOf(const QByteArray &pdf)
{
    QStringList pages =
        output(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), QStringLiteral("-"), QStringLiteral("-")}, pdf)
            .split(QLatin1Char('\f'));
    pages.removeLast();
    return pages;
}

int pageObjects(const QByteArray &pdf)
{
    static const QRegularExpression page(QStringLiteral("/Type /Page\\s"));
    return static_cast<int>(QString::fromLatin1(pdf).count(page));
}

bool hasPdfTools()
{
    return !QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty();
}

QImage painted(const PaperPages &pages, int number)
{
    QImage image(pages.pageSize().toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    pages.paint(painter, number);
    return image;
}

} // namespace

/// The sheet as pages: what a PDF reader gets, and where the pages are cut.
class PaperPdf : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void opensInBothSizes_data()
    {
        QTest::addColumn<PageSize>("size");
        QTest::addColumn<QByteArray>("box");
        // ISO 216 A4 is 595.3 × 841.9 points, ANSI Letter 612 × 792; Qt writes whole points.
        QTest::newRow("A4") << PageSize::A4 << QByteArray("/MediaBox [0 0 595.000000 842.000000]");
        QTest::newRow("Letter") << PageSize::Letter << QByteArray("/MediaBox [0 0 612.000000 792.000000]");
    }
    void opensInBothSizes()
    {
        QFETCH(PageSize, size);
        QFETCH(QByteArray, box);
        const RestorationFacts facts = richSample(true).facts();
        const auto pdf = restorationPdf(facts, size);
        QVERIFY2(pdf.ok(), qPrintable(refusal(pdf)));
        QVERIFY(pdf->startsWith("%PDF-1."));
        QVERIFY(pdf->trimmed().endsWith("%%EOF"));
        QVERIFY2(pdf->contains(box), pdf->mid(pdf->indexOf("/MediaBox"), 60).constData());
        QCOMPARE(pageObjects(*pdf), PaperPages(facts, size).count());
    }

    void theSameFactsGiveTheSameBytes()
    {
        const RestorationFacts facts = richSample(true).facts();
        const QByteArray first = *restorationPdf(facts, PageSize::A4);
        QHashSeed::resetRandomGlobalSeed();
        QCOMPARE(*restorationPdf(facts, PageSize::A4), first);
        QVERIFY(first.contains("/CreationDate (D:20261128160500Z)"));
    }

    void theDateTakesThePlaceOfTheComputersOwn()
    {
        // As Qt writes it east of Greenwich; the table's places behind it move by six.
        QByteArray pdf("%PDF-1.4\n1 0 obj\n/CreationDate (D:20200101000000+01'00')\nendobj\n2 0 obj\nendobj\n");
        const qsizetype second = pdf.indexOf("2 0 obj");
        const qsizetype table = pdf.size();
        const auto entry = [](qsizetype place) { return QByteArray::number(place).rightJustified(10, '0') + " 00000 n \n"; };
        pdf += "xref\n0 3\n0000000000 65535 f \n" + entry(9) + entry(second) + "trailer\nstartxref\n" +
               QByteArray::number(table) + "\n%%EOF\n";
        setCreationDate(pdf, QDateTime({2026, 11, 28}, {16, 5}, Qt::UTC));
        QVERIFY(pdf.contains("(D:20261128160500Z)\n"));
        QVERIFY(pdf.contains(entry(9) + entry(pdf.indexOf("2 0 obj"))));
        QVERIFY(pdf.contains("startxref\n" + QByteArray::number(pdf.indexOf("xref\n0 3")) + "\n"));
    }

    void anEmptyUnitFitsOnOneSheet()
    {
        QCOMPARE(PaperPages(bareSample().facts(), PageSize::A4).count(), 1);
        QCOMPARE(PaperPages(bareSample().facts(), PageSize::Letter).count(), 1);
        PaperSample nothing;
        QCOMPARE(PaperPages(nothing.facts(), PageSize::Letter).count(), 1);
    }

    void itsTextCanBeFound()
    {
        if (!hasPdfTools())
            QSKIP("pdftotext is not installed");
        const QString text = pagesOf(*restorationPdf(richSample(true).facts(), PageSize::A4)).join(QString());
        // Figures, signs and captions as they were given; the space before a unit may be a no-break one.
        const QString plain = QString(text).replace(QChar(0x00A0), QLatin1Char(' '));
        for (const char *words :
             {"Pellworth KD-7 cassette deck", "3121 Hz", "3148 Hz", "11.8 V", "± 0.069 V", "14 gf·cm", "382 mV", "> 200 MΩ",
              "387 mV ± 2 dB", "(IEC 60386)", "about 118 mA", "too close to call", "As it arrived, 22 November",
              "Take-up clutch, glazed felt", "4 h 10 m", "Questions: quote tag 0042 and sheet 17.", "Page 1 of", "C214, C215"})
            QVERIFY2(plain.contains(QString::fromUtf8(words)), words);
    }

    void titleAndProgramStandInTheFile()
    {
        if (QStandardPaths::findExecutable(QStringLiteral("pdfinfo")).isEmpty())
            QSKIP("pdfinfo is not installed");
        const QString info = output(QStringLiteral("pdfinfo"), {QStringLiteral("-")},
                                    *restorationPdf(richSample(false).facts(), PageSize::Letter));
        QVERIFY(info.contains(
            QRegularExpression(QStringLiteral("Title: +Restoration sheet 17, edition 2: Pellworth KD-7 cassette deck, tag 0042\n"))));
        QVERIFY(info.contains(QRegularExpression(QStringLiteral("Creator: +Turnscrew\n"))));
        QVERIFY(info.contains(QRegularExpression(QStringLiteral("Page size: +612 x 792 pts"))));
    }

    void longTablesGoOnUnderTheirHead()
    {
        if (!hasPdfTools())
            QSKIP("pdftotext is not installed");
        for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
            const QStringList pages = pagesOf(*restorationPdf(longSample().facts(), size));
            QHash<int, int> seen;
            static const QRegularExpression point(QStringLiteral("^ *Point(\\d+)\\. .*$"), QRegularExpression::MultilineOption);
            for (const QString &page : pages) {
                bool any = false;
                for (auto it = point.globalMatch(page); it.hasNext(); any = true)
                    ++seen[it.next().captured(1).toInt()];
                QCOMPARE(any, page.contains(QStringLiteral("As it leaves")));
                // A heading is never the last thing above the footer.
                const QStringList lines = page.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
                QVERIFY(lines.last().contains(QStringLiteral("Page ")));
                QVERIFY2(
                    !QStringList({QStringLiteral("Proved"), QStringLiteral("Measured before and after"), QStringLiteral("Terms")})
                         .contains(lines.at(lines.size() - 2).trimmed()),
                    qPrintable(page));
            }
            QCOMPARE(seen.size(), 300);
            for (auto it = seen.cbegin(); it != seen.cend(); ++it)
                QVERIFY2(it.value() == 1,
                         qPrintable(QStringLiteral("point %1 stands on %2 pages").arg(it.key()).arg(it.value())));
        }
    }

    void nothingRunsOutOfTheMargins()
    {
        for (const auto &facts : {richSample(true).facts(), longSample().facts()}) {
            const PaperPages pages(facts, PageSize::Letter);
            for (int number = 0; number < pages.count(); ++number) {
                const QImage image = painted(pages, number);
                // Half an inch at the sides stays white, as many printers need it; above and below a sixth and a third of one.
                const QRect inside = image.rect().adjusted(48, 16, -48, -32);
                int dark = 0;
                QPoint outside(-1, -1);
                for (int y = 0; y < image.height(); ++y) {
                    const auto *line = reinterpret_cast<const QRgb *>(image.constScanLine(y));
                    for (int x = 0; x < image.width(); ++x) {
                        if (qGray(line[x]) >= 200)
                            continue;
                        ++dark;
                        if (!inside.contains(x, y))
                            outside = {x, y};
                    }
                }
                QVERIFY2(outside.x() < 0,
                         qPrintable(QStringLiteral("page %1 at %2, %3").arg(number).arg(outside.x()).arg(outside.y())));
                QVERIFY(dark > 200);
            }
        }
    }

    void cutsLeaveNoLineOutAndNoneTwice()
    {
        QTextDocument document;
        QString html;
        for (int i = 0; i < 40; ++i)
            html += QStringLiteral("<h4>Heading %1</h4><p>%2</p><table><thead><tr><th>head</th></tr></thead>%3</table>")
                        .arg(i)
                        .arg(QStringLiteral("some words ").repeated(i))
                        .arg(QStringLiteral("<tr><td><p>one</p><p>two</p></td><td>side</td></tr>").repeated(i % 5 + 1));
        document.setHtml(html);
        document.setTextWidth(300);
        const qreal height = 260;
        const QList<PageCut> cuts = pageCuts(document, height);
        QVERIFY(cuts.size() > 10);
        for (qsizetype i = 0; i < cuts.size(); ++i) {
            QVERIFY(cuts[i].bottom - cuts[i].top + cuts[i].headHeight() <= height + 0.5);
            if (i > 0)
                QVERIFY(cuts[i].top >= cuts[i - 1].bottom - 0.5);
        }
        for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
            if (block.text().isEmpty())
                continue;
            const QRectF place = document.documentLayout()->blockBoundingRect(block);
            for (int i = 0; i < block.layout()->lineCount(); ++i) {
                const QRectF line = block.layout()->lineAt(i).rect().translated(place.topLeft());
                const auto holds = [&line](const PageCut &cut) {
                    return line.top() >= cut.top - 0.5 && line.bottom() <= cut.bottom + 0.5;
                };
                QCOMPARE(std::count_if(cuts.cbegin(), cuts.cend(), holds), 1);
            }
        }
    }
};

QTEST_MAIN(PaperPdf)
#include "test_paper_pdf.moc"
