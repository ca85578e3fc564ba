#include "tests/paper_samples.h"
#include "tests/testing.h"

#include <QProcess>
#include <QStandardPaths>

using namespace ts;
using namespace ts::testing;

namespace {

/// The record with every text that a person can type set to one text; fields that take only texts of a form keep theirs.
template <class R>
R withText(const R &record, const QString &text)
{
    const Description<R> &kind = description<R>();
    Row row = kind.toRow(record);
    for (qsizetype i = 0; i < kind.fields().size(); ++i) {
        if (kind.fields().at(i).type != FieldType::Text)
            continue;
        Row changed = row;
        changed[i] = text;
        if (kind.fromRow(changed))
            row = changed;
    }
    return *kind.fromRow(row);
}

template <class... Rs>
void setTexts(std::tuple<QList<Rs>...> &lists, const QString &text)
{
    const auto each = [&text](auto &list) {
        for (auto &record : list)
            record = withText(record, text);
    };
    (each(std::get<QList<Rs>>(lists)), ...);
}

/// A full story in which whatever can be typed is this text.
PaperSample sampleSaying(const QString &text)
{
    PaperSample sample = richSample(true);
    sample.file.unit = withText(sample.file.unit, text);
    for (Setting &setting : sample.bench.all<Setting>())
        setting.value = text;
    const QList<Setting> settings = sample.bench.all<Setting>(); // their names have to stay
    setTexts(sample.file.lists, text);
    setTexts(sample.bench.lists, text);
    sample.bench.all<Setting>() = settings;
    for (PaperPhoto &photo : sample.photos)
        photo.record.caption = text;
    // A point's name joins readings; one row must not swallow the others.
    for (TestPoint &point : sample.file.all<TestPoint>())
        point.name = text + QString::number(point.position);
    return sample;
}

} // namespace

/// Whatever is typed anywhere comes out as text, on paper and on the web page.
class PaperEscaping : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingTypedBecomesMarkup_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::newRow("script") << QStringLiteral("<script>alert(1)</script>");
        QTest::newRow("attribute") << QStringLiteral("x\" onerror=\"alert(1)");
        QTest::newRow("single quote") << QStringLiteral("x' onerror='alert(1)");
        QTest::newRow("comment") << QStringLiteral("--><img src=x onerror=alert(1)><!-- if name -->");
        QTest::newRow("placeholder") << QStringLiteral("[[name]] [[name|lines]]");
        QTest::newRow("style") << QStringLiteral("</style></title><style>*{color:red}");
        QTest::newRow("entity") << QStringLiteral("&lt;b&gt; &amp; &#60;");
    }
    void nothingTypedBecomesMarkup()
    {
        QFETCH(QString, typed);
        const QString page = QString::fromUtf8(restorationHtml(sampleSaying(typed).facts()));
        const QString harmless(typed.size(), QLatin1Char('q')); // as long: long captions are printed twice
        const QString plain = QString::fromUtf8(restorationHtml(sampleSaying(harmless).facts()));
        // The page has as many tags, comments and quoted attributes as one where only a plain word was typed.
        for (const char16_t sign : {u'<', u'>', u'"'})
            QCOMPARE(page.count(QChar(sign)), plain.count(QChar(sign)));
        QVERIFY(page.count(escaped(typed)) > 40);
        QCOMPARE(page.count(escaped(typed), Qt::CaseInsensitive),
                 plain.count(harmless, Qt::CaseInsensitive)); // sentences start large
        QVERIFY(!page.contains(QStringLiteral("<script"), Qt::CaseInsensitive));
    }

    void paperPrintsItAsText()
    {
        const QString tool = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
        if (tool.isEmpty())
            QSKIP("pdftotext is not installed");
        const auto pdf = restorationPdf(sampleSaying(QStringLiteral("<b>x</b>&amp;")).facts(), PageSize::A4);
        QVERIFY2(pdf.ok(), qPrintable(refusal(pdf)));
        QProcess process;
        process.start(tool, {QStringLiteral("-"), QStringLiteral("-")});
        process.write(*pdf);
        process.closeWriteChannel();
        QVERIFY(process.waitForFinished());
        QVERIFY(process.readAllStandardOutput().count("<b>x</b>&amp;") > 40);
    }
};

QTEST_MAIN(PaperEscaping)
#include "test_paper_escaping.moc"
