#include "jot_bench.h"

using namespace ts;
using ts::testing::JotBench;

class TestJotCompletions : public QObject {
    Q_OBJECT
private:
    JotBench m_bench;
    QStringList of(const char *line) { return completions(QString::fromUtf8(line), m_bench.file, m_bench.bench); }
    QString best(const char *line) { return of(line).value(0); }

private Q_SLOTS:
    void initTestCase()
    {
        for (const char *line :
             {"CN2.4 = 11.92 V want 12 V 5%", "CN2.5 = 5 V", "take-up torque = 14 gf.cm want 35..65 gf.cm",
              "saw take-up reel stops after a few seconds", "saw left channel weak", "think clutch felt glazed 40%",
              "think dry joint, left head lead", "check swap head leads", "need belt 78x4x0.6 2.50", "need idler tyre",
              "fitted lamp 12 V", "off lid 5 screws tray A1", "off front panel", "not tested recording"})
            m_bench.put(QString::fromUtf8(line));
    }

    void lines_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("first");
        const auto row = [](const char *typed, const char *first) {
            QTest::newRow(typed) << QString::fromUtf8(typed) << QString::fromUtf8(first);
        };
        row("CN", "CN2.4 = ");
        row("cn2.5", "CN2.5 = ");
        row("torque", "take-up torque = ");
        row("cl", "cleared ");
        row("cleared ", "cleared left channel weak"); // the newest first
        row("cleared take", "cleared take-up reel stops after a few seconds");
        row("cleared reel", "cleared take-up reel stops after a few seconds");
        row("ruled out cl", "ruled out clutch felt glazed");
        row("was dry", "was dry joint, left head lead");
        row("Was dry", "Was dry joint, left head lead");
        row("think worn belt for reel", "think worn belt for take-up reel stops after a few seconds");
        row("check sw", "check swap head leads");
        row("fitted id", "fitted idler tyre");
        row("fitted 78", "fitted belt 78x4x0.6");
        row("back ", "back front panel");
        row("back l", "back lid");
        row("proved rec", "proved recording");
        row("ru", "ruled out ");
        row("CN2.4 = 11.9 V wa", "CN2.4 = 11.9 V want 12 V 5%");
        row("CN2.4 = 11.9 V with in", "CN2.4 = 11.9 V with insulation tester");
        row("CN2.4 = 11.9 V af", "CN2.4 = 11.9 V after");
    }
    void lines()
    {
        QFETCH(QString, typed);
        QFETCH(QString, first);
        const QStringList all = completions(typed, m_bench.file, m_bench.bench);
        QVERIFY2(!all.isEmpty(), "nothing offered");
        QCOMPARE(all.first(), first);
        QVERIFY(all.size() <= 12);
    }

    void notOffered()
    {
        QVERIFY(!of("fitted ").contains(QStringLiteral("fitted lamp 12 V"))); // fitted already
        QCOMPARE(of("zzz"), QStringList());
        QCOMPARE(of("back lid"), QStringList()); // nothing to add
        QCOMPARE(of("CN2.4 = "), QStringList());
        QVERIFY(best("").endsWith(QStringLiteral(" = ")));
    }

    void whatIsOfferedIsUnderstood()
    {
        for (const char *typed :
             {"cleared take", "was dry", "fitted id", "back l", "CN2.4 = 11.9 V wa", "proved rec", "check sw"})
            QVERIFY2(m_bench.preview(best(typed)).what != QLatin1String("note"), typed);
    }
};

QTEST_GUILESS_MAIN(TestJotCompletions)
#include "test_jot_completions.moc"
