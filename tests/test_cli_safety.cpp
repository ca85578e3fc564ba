// A first-power ladder and an electrical safety test done from the command line alone, and what JSON and the sheet say of them.
#include "tests/program.h"
#include "tests/workbooks.h"

#include <QJsonArray>

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

class TestCliSafety : public QObject {
    Q_OBJECT
private:
    QTemporaryDir m_dir;
    QString m_book;

    void run(const QStringList &arguments)
    {
        const Answer answer = program(arguments);
        QVERIFY2(answer.status == 0, answer.told());
    }
    void jot(const QString &line) { run({u"jot"_s, m_book, u"1"_s, line}); }
    [[nodiscard]] QJsonObject shown() const { return program({u"show"_s, m_book, u"1"_s, u"--json"_s}).json(); }
    static QJsonObject entry(const QJsonObject &of, const QString &list, const QString &key, const QString &word)
    {
        for (const QJsonValue &each : of.value(list).toArray())
            if (each[key].toString() == word)
                return each.toObject();
        return {};
    }

private Q_SLOTS:
    void initTestCase()
    {
        m_book = m_dir.filePath(u"bench.turnscrew"_s);
        run({u"new"_s, m_book});
        run({u"set"_s, m_book, u"mains"_s, u"230 V 50 Hz"_s});
        run({u"set"_s, m_book, u"worker"_s, u"R. M."_s});
        run({u"take-in"_s, m_book, u"--name"_s, u"Pellworth KD-7"_s, u"--category"_s, u"cassette_deck"_s, u"--class"_s, u"II"_s});
    }

    void aSettingThatIsNoRuleSet()
    {
        const Answer answer = program({u"set"_s, m_book, u"safety_rules"_s, u"mine"_s});
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.err.contains(u"en_50678"_s));
    }

    void theLadder()
    {
        QCOMPARE(shown()[u"first_power"][u"verdict"].toString(), u"open"_s);
        jot(u"first power plate: 230 V 50 Hz"_s);
        jot(u"first power primary = 0.3 Ω"_s);
        QJsonObject unit = shown();
        QCOMPARE(unit[u"first_power"][u"verdict"].toString(), u"stopped"_s);
        const QJsonObject primary = entry(unit[u"first_power"].toObject(), u"steps"_s, u"step"_s, u"primary"_s);
        QCOMPARE(primary[u"came_out"].toString(), u"stop"_s);
        QCOMPARE(primary[u"value"].toDouble(), 0.3);
        QCOMPARE(primary[u"wanted_low"].toDouble(), 1.0);
        QCOMPARE(primary[u"initials"].toString(), u"R. M."_s);
        QVERIFY(unit[u"left_off"][u"do_not_power"].toString().contains(u"first power, primary"_s));
        run({u"undo"_s, m_book}); // flag and step are one change
        unit = shown();
        QVERIFY(unit[u"left_off"][u"do_not_power"].isNull());
        QVERIFY(entry(unit[u"first_power"].toObject(), u"steps"_s, u"step"_s, u"primary"_s)[u"came_out"].isNull());
        for (const QString &line : {u"lead: sound"_s, u"fuse = T500mA want T500mA"_s, u"inside: dust"_s, u"emptied: no tape"_s, u"primary = 180 Ω"_s, u"metal = OL MΩ"_s, u"lamp: 40 W, flashed and dimmed"_s,
                                    u"rails: +12.1 V"_s, u"heat: 24, 31 and 34 °C"_s, u"direct: as before"_s})
            jot(u"first power "_s + line);
        QCOMPARE(shown()[u"first_power"][u"verdict"].toString(), u"passed"_s);
        QVERIFY(program({u"show"_s, m_book, u"1"_s}).out.contains(u"First power: passed"_s));
    }

    void theSafetyTest()
    {
        jot(u"safety look: plug, lead and cover whole"_s);
        jot(u"safety insulation = 200 MΩ with insulation tester"_s);
        jot(u"safety touch = 0.08 mA with leakage clamp"_s);
        jot(u"safety heat: lead cool after two hours"_s);
        const QJsonObject safety = shown()[u"electrical_safety"].toObject();
        QCOMPARE(safety[u"verdict"].toString(), u"passed"_s);
        QCOMPARE(safety[u"rule_set"].toString(), u"en_50678"_s);
        const QJsonObject insulation = entry(safety, u"tests"_s, u"test"_s, u"insulation"_s);
        QCOMPARE(insulation[u"wanted_low"].toDouble(), 2.0); // DIN VDE 0701-0702, class II: ../shared/checks 06, S07
        QCOMPARE(insulation[u"verdict"].toString(), u"within"_s);
        QCOMPARE(insulation[u"instrument"].toString(), u"insulation tester"_s);
    }

    void theSheetSaysThem()
    {
        const QString file = m_dir.filePath(u"sheet.html"_s);
        run({u"paper"_s, m_book, u"1"_s, u"restoration"_s, u"-o"_s, file});
        QFile sheet(file);
        QVERIFY(sheet.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(sheet.readAll()).replace(QChar(0x00A0), u' ');
        for (const QString &said : {u"EN 50678"_s, u"200 MΩ"_s, u"at least 2 MΩ"_s, u"insulation tester"_s, u"R. M."_s, u"no certificate"_s, u"First power, step by step"_s})
            QVERIFY2(text.contains(said), qPrintable(said));
    }
};

QTEST_GUILESS_MAIN(TestCliSafety)
#include "test_cli_safety.moc"
