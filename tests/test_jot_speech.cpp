// Plain speech at the bench that must not become a fact, work and parts aimed at a symptom, and soaks.
#include "jot_bench.h"

using namespace ts;
using ts::testing::JotBench;

class TestJotSpeech : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void plainSpeechIsANote_data()
    {
        QTest::addColumn<QString>("line");
        for (const auto *line : {"did not get to the tuner yet", "need to look at the tuner", "off to lunch", "off home", "soaked the label in water"})
            QTest::newRow(line) << QString::fromLatin1(line);
    }
    void plainSpeechIsANote()
    {
        QFETCH(QString, line);
        JotBench bench;
        QCOMPARE(bench.put(line).what, QStringLiteral("note"));
        QCOMPARE(bench.last<Note>().text, line);
    }

    void workAndPartsGoToTheSymptomTheyName()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw no sound left channel"));
        bench.put(QStringLiteral("saw volume crackles"));
        const auto first = bench.file.all<Symptom>().first().id;
        bench.put(QStringLiteral("did replaced the output pair 30m for no sound left"));
        QCOMPARE(bench.last<Step>().symptom, first);
        QCOMPARE(bench.last<Step>().text, QStringLiteral("replaced the output pair"));
        QCOMPARE(bench.last<Step>().minutes.value_or(0), 30);
        bench.put(QStringLiteral("fitted Q605, Q607 matched pair 6.80 for no sound left"));
        QCOMPARE(bench.last<Need>().symptom, first);
        QCOMPARE(bench.last<Need>().position, QStringLiteral("Q605, Q607"));
        QCOMPARE(bench.last<Need>().quantity, 1); // the price is that of the pair
        QCOMPARE(bench.last<Need>().price->decimal(), QStringLiteral("6.80"));
        bench.put(QStringLiteral("did cleaned the volume control 5m"));
        QCOMPARE(bench.last<Step>().symptom, bench.last<Symptom>().id); // the newest open one
        bench.put(QStringLiteral("did cleaned the head for azimuth 5m"));
        QCOMPARE(bench.last<Step>().text, QStringLiteral("cleaned the head for azimuth"));
    }

    void soaks_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("name");
        QTest::addColumn<int>("minutes");
        QTest::newRow("time first") << QStringLiteral("soaked 3 h on a dummy load, steady") << QStringLiteral("on a dummy load, steady") << 180;
        QTest::newRow("time last") << QStringLiteral("soaked both directions 1h30") << QStringLiteral("both directions") << 90;
        QTest::newRow("hours of something") << QStringLiteral("soaked 2 h of play in each direction, steady") << QStringLiteral("play in each direction, steady") << 120;
        QTest::newRow("time alone") << QStringLiteral("soaked 45 min") << QStringLiteral("running") << 45;
    }
    void soaks()
    {
        QFETCH(QString, line);
        QFETCH(QString, name);
        QFETCH(int, minutes);
        JotBench bench;
        QCOMPARE(bench.put(line).what, QStringLiteral("soak"));
        const Soak soak = bench.last<Soak>();
        QCOMPARE(soak.name, name);
        QCOMPARE(soak.startedAt.secsTo(soak.endedAt), 60LL * minutes);
        QCOMPARE(soak.endedAt, bench.now());
    }
};

QTEST_GUILESS_MAIN(TestJotSpeech)
#include "test_jot_speech.moc"
