#include "jot_bench.h"
#include "model/paper/putting_back.h"

using namespace ts;
using ts::testing::JotBench;

namespace {

const QDateTime now(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC);

/// The facts, after the lines were jotted.
PuttingBackFacts facts(JotBench &bench, const QStringList &lines)
{
    for (const QString &line : lines)
        bench.put(line);
    const auto gathered = gatherPuttingBack(bench.file, bench.bench, now);
    if (!gathered)
        qFatal("%s", qPrintable(gathered.trouble().sentence()));
    return *gathered;
}

} // namespace

/// The teardown read backwards. What is wanted is worked by hand from the lines.
class TestPaperPuttingBack : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void lastOffFirst();
    void nothingOff();
    void escaped();
    void pdfTwiceTheSame();
};

void TestPaperPuttingBack::lastOffFirst()
{
    JotBench bench;
    const PuttingBackFacts sheet =
        facts(bench,
              {QStringLiteral("off lid 5 screws M3x8 tray A1"), QStringLiteral("off mechanism 3 screws M2.6x10 1 spring tray A4"),
               QStringLiteral("off front panel 4 screws M3x6"), QStringLiteral("back front panel"),
               QStringLiteral("do not power CN5 unplugged"), QStringLiteral("next fit the belt")});
    QCOMPARE(sheet.steps.size(), 2);
    QCOMPARE(sheet.steps[0].what, QStringLiteral("mechanism"));
    QCOMPARE(sheet.steps[0].number, 2);
    QCOMPARE(sheet.steps[0].more, QStringList{QStringLiteral("Springs and washers: 1 spring")});
    QCOMPARE(sheet.steps[1].what, QStringLiteral("lid"));
    QCOMPARE(sheet.steps[1].keptIn, QStringLiteral("tray A1"));
    QCOMPARE(sheet.loose, QStringLiteral("8 screws, 1 spring"));
    QCOMPARE(sheet.back, QStringList{QStringLiteral("front panel")});
    QCOMPARE(sheet.doNotPower, QStringLiteral("CN5 unplugged"));
    QCOMPARE(sheet.next, QStringLiteral("fit the belt"));
    QCOMPARE(sheetName(sheet), QStringLiteral("Putting-back sheet, draft"));
    const QByteArray html = puttingBackHtml(sheet);
    QVERIFY(html.indexOf("mechanism") < html.indexOf(">lid<"));
    QVERIFY(html.contains("Do not power: CN5 unplugged"));
}

void TestPaperPuttingBack::nothingOff()
{
    JotBench bench;
    QVERIFY(testing::refusal(gatherPuttingBack(bench.file, bench.bench, now)).contains(QStringLiteral("nothing of it is off")));
    bench.put(QStringLiteral("off lid 5 screws M3x8"));
    bench.put(QStringLiteral("back lid"));
    QVERIFY(testing::refusal(gatherPuttingBack(bench.file, bench.bench, now)).contains(QStringLiteral("nothing of it is off")));
}

void TestPaperPuttingBack::escaped()
{
    JotBench bench;
    const QByteArray html = puttingBackHtml(facts(bench, {QStringLiteral("off <script>alert(1)</script> & \"lid\" 2 screws")}));
    QVERIFY(!html.contains("<script>"));
    QVERIFY(html.contains("&lt;script&gt;"));
}

void TestPaperPuttingBack::pdfTwiceTheSame()
{
    JotBench bench;
    const PuttingBackFacts sheet = facts(bench, {QStringLiteral("off lid 5 screws M3x8 tray A1")});
    const auto once = puttingBackPdf(sheet, PageSize::A4);
    const auto twice = puttingBackPdf(sheet, PageSize::A4);
    testing::wantOk(once);
    testing::wantOk(twice);
    QVERIFY(once->startsWith("%PDF-"));
    QCOMPARE(*once, *twice);
}

QTEST_MAIN(TestPaperPuttingBack)
#include "test_paper_putting_back.moc"
