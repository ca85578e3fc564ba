// Labels are read back by libraries that did not make them: the PDF is drawn by poppler (pdftoppm) and its codes are decoded by ZBar.
#include "jot_bench.h"
#include "model/media/tag_in_picture.h"
#include "model/paper/tag_code.h"
#include "model/paper/tag_label.h"

#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>

using namespace ts;
using namespace Qt::StringLiterals;
using ts::testing::JotBench;

namespace {

const QDateTime now(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC);

/// The pages of a PDF as pictures, at so many dots an inch; empty where poppler is not there.
QList<QImage> drawn(const QByteArray &pdf, int dots)
{
    QTemporaryDir folder;
    QFile file(folder.filePath(u"labels.pdf"_s));
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
        return {};
    file.close();
    if (QProcess::execute(u"pdftoppm"_s, {u"-r"_s, QString::number(dots), u"-png"_s, file.fileName(), folder.filePath(u"page"_s)}) != 0)
        return {};
    QList<QImage> pages;
    for (const QString &name : QDir(folder.path()).entryList({u"*.png"_s}, QDir::Files, QDir::Name))
        pages << QImage(folder.filePath(name));
    return pages;
}

/// Either half of a label alone, so that each of its two codes is seen to be read by itself.
QImage part(const QImage &page, bool square, bool wide)
{
    const int w = page.width(), h = page.height();
    if (wide)
        return square ? page.copy(w * 62 / 100, 0, w - w * 62 / 100, h) : page.copy(0, 0, w * 64 / 100, h);
    return square ? page.copy(0, h * 68 / 100, w, h - h * 68 / 100) : page.copy(0, 0, w, h * 71 / 100);
}

void fill(JotBench &bench)
{
    bench.file.unit.tag = 42;
    bench.file.unit.name = u"Pellworth KD-7 cassette deck"_s;
    bench.file.unit.place = u"shelf 3"_s;
    for (const QString &line : {u"do not power primary exposed"_s, u"need belt 78x4x0.6 2.50"_s, u"off lid 5 screws M3x8 tray A1"_s, u"off mechanism 3 screws M2.6x10 1 spring tray A4"_s})
        bench.put(line);
}

} // namespace

class TestPaperLabel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void codeIsDecoded();
    void sizes();
    void labelReadsBack_data();
    void labelReadsBack();
    void whatItSays();
    void bags();
    void escaped();
};

void TestPaperLabel::codeIsDecoded()
{
    // ISO/IEC 15417: start, two pairs of digits in code set C, check and stop: 4 × 11 + 13 modules.
    const auto bars = code128(u"0042"_s);
    QVERIFY(bars);
    QCOMPARE(bars->width, 57.0);
    // ISO/IEC 18004: version 1 has 21 × 21 modules.
    const auto square = qrCode(u"0042"_s);
    QVERIFY(square);
    QCOMPARE(square->width, 21.0);
    QCOMPARE(square->height, 21.0);
    QVERIFY(!code128(QString()));
}

void TestPaperLabel::sizes()
{
    for (const QString &size : commonLabelSizes())
        QVERIFY2(labelSize(size), qPrintable(size));
    QCOMPARE(*labelSize(u"62 x 29 mm"_s), QSizeF(62, 29));
    for (const QString &bad : {u"62"_s, u"x"_s, u"5x5"_s, u"1000x20"_s, u"62x29in"_s, u"-62x29"_s})
        QVERIFY2(!labelSize(bad), qPrintable(bad));
}

void TestPaperLabel::labelReadsBack_data()
{
    QTest::addColumn<QString>("size");
    for (const QString &size : commonLabelSizes())
        QTest::newRow(qPrintable(size)) << size;
    QTest::newRow("smallest of the common tape") << u"45x18"_s;
}

void TestPaperLabel::labelReadsBack()
{
    QFETCH(QString, size);
    JotBench bench;
    fill(bench);
    const QSizeF mm = *labelSize(size);
    const auto pdf = labelsPdf(tagLabels(bench.file, bench.bench, mm, now, 2));
    QVERIFY2(pdf, qPrintable(pdf ? QString() : pdf.trouble().sentence()));
    QCOMPARE(*labelsPdf(tagLabels(bench.file, bench.bench, mm, now, 2)), *pdf);
    const auto pages = drawn(*pdf, 300);
    if (pages.isEmpty())
        QSKIP("pdftoppm is not there");
    QCOMPARE(pages.size(), 2); // a label for each box
    for (const QImage &page : pages) {
        QVERIFY2(std::abs(page.width() / 300.0 * 25.4 - mm.width()) < 0.3, qPrintable(QString::number(page.width()))); // one to one
        QCOMPARE(codesIn(page), QStringList(u"0042"_s));
        const bool wide = mm.width() >= mm.height();
        QCOMPARE(codesIn(part(page, true, wide)), QStringList(u"0042"_s));
        QCOMPARE(codesIn(part(page, false, wide)), QStringList(u"0042"_s));
        QCOMPARE(tagInPicture(page), 42);
    }
    // as a telephone sees it: small in the picture, turned a little, on something that is not white
    QImage photo(2400, 1800, QImage::Format_RGB32);
    photo.fill(QColor(120, 110, 90));
    QPainter painter(&photo);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(700, 500);
    painter.rotate(7);
    painter.drawImage(QPointF(), pages.first().scaledToWidth(std::min(pages.first().width(), 900), Qt::SmoothTransformation));
    painter.end();
    QCOMPARE(tagInPicture(photo), 42);
}

void TestPaperLabel::whatItSays()
{
    JotBench bench;
    fill(bench);
    const Labels labels = tagLabels(bench.file, bench.bench, {89, 36}, now, 2);
    QCOMPARE(labels.labels.size(), 2);
    const LabelFacts &label = labels.labels.last();
    QCOMPARE(label.tag, u"0042"_s);
    QCOMPARE(label.beside, u"box 2 of 2"_s);
    QCOMPARE(label.doNotPower, u"primary exposed"_s);
    QVERIFY(label.lines.contains(u"Place: shelf 3"_s));
    QVERIFY(label.lines.contains(u"Waits for: belt 78x4x0.6"_s));
    QVERIFY(tagLabels(bench.file, bench.bench, {89, 36}, now).labels.first().beside.isEmpty());
    bench.put(u"safe to power"_s);
    QVERIFY(tagLabels(bench.file, bench.bench, {89, 36}, now).labels.first().doNotPower.isEmpty());
}

void TestPaperLabel::bags()
{
    JotBench bench;
    fill(bench);
    const auto labels = bagLabels(bench.file, {57, 32}, now);
    QVERIFY(labels);
    QCOMPARE(labels->labels.size(), 2);
    QCOMPARE(labels->labels.first().beside, u"step 1"_s);
    QCOMPARE(labels->labels.first().name, u"lid"_s);
    QVERIFY(labels->labels.first().lines.contains(u"Kept in: tray A1"_s));
    bench.put(u"back lid"_s);
    bench.put(u"back mechanism"_s);
    QVERIFY(testing::refusal(bagLabels(bench.file, {57, 32}, now)).contains(u"nothing of it is off"_s));
}

void TestPaperLabel::escaped()
{
    JotBench bench;
    fill(bench);
    bench.file.unit.name = u"<script>alert(1)</script> & co"_s;
    const QByteArray html = labelsHtml(tagLabels(bench.file, bench.bench, {89, 36}, now));
    QVERIFY(!html.contains("<script>"));
    QVERIFY(html.contains("&lt;script&gt;"));
    QVERIFY(html.contains("DO NOT POWER: primary exposed"));
}

QTEST_MAIN(TestPaperLabel)
#include "test_paper_label.moc"
