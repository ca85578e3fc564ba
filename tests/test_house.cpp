#include "tests/house_rules.h"

#include <QDirIterator>
#include <QtTest>

using namespace ts::house;

/// Holds every source file to the rules of the house, and the rules to snippets that break them.
class TestHouse : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void everyFileKeepsTheRules();
    void noCircles();
    void filesStayShort();
    void topHoldsWhatItShould();
    void goldenFilesAreUsed();
    void rulesCatch_data();
    void rulesCatch();
    void rulesOnManyFilesCatch();

private:
    QHash<QString, QString> m_files;
};

namespace {

QString textOf(const QString &file)
{
    QFile opened(file);
    return opened.open(QIODevice::ReadOnly) ? QString::fromUtf8(opened.readAll()) : QString();
}

QStringList wrongIn(const QString &path, const QString &text)
{
    return wrongIncludes(path, text) + wrongWords(path, text) + wrongHeader(path, text);
}

} // namespace

void TestHouse::initTestCase()
{
    const QDir top(QStringLiteral(SOURCE_DIR));
    static const QRegularExpression source(
        QStringLiteral("\\.(cpp|h|c|sql|sh|cmake|css|html|qss|json)$|/CMakeLists\\.txt$|/(start|run)$"));
    for (const char *folder : {"model", "app", "views", "tests", "resources", "demo-db"})
        for (QDirIterator it(top.filePath(QLatin1String(folder)), QDir::Files, QDirIterator::Subdirectories); it.hasNext();) {
            const QString path = top.relativeFilePath(it.next());
            if (path.contains(source))
                m_files.insert(path, textOf(top.filePath(path)));
        }
    QVERIFY2(m_files.contains(QStringLiteral("model/values/money.h")), "the sources are not where they are looked for");
    // Without the headers no include could be told to be a widget's.
    QCOMPARE(moduleOf(QStringLiteral("QImage")), QStringLiteral("QtGui"));
}

void TestHouse::everyFileKeepsTheRules()
{
    QStringList wrong;
    for (auto it = m_files.cbegin(); it != m_files.cend(); ++it)
        wrong += wrongIn(it.key(), it.value());
    wrong.sort();
    QVERIFY2(wrong.isEmpty(), qPrintable(u'\n' + wrong.join(u'\n')));
}

void TestHouse::noCircles()
{
    const QStringList wrong = circles(m_files);
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(u'\n')));
}

void TestHouse::filesStayShort()
{
    QStringList wrong;
    for (auto it = m_files.cbegin(); it != m_files.cend(); ++it) {
        if (roomOf(it.key()).isEmpty() || !it.key().contains(QRegularExpression(QStringLiteral("\\.(cpp|h)$"))))
            continue;
        const auto count = lines(it.value());
        if (count > tooLong)
            wrong << QStringLiteral("%1 has %2 lines").arg(it.key()).arg(count);
        else if (count > ratherLong)
            qInfo("%s has %lld lines: rather long", qPrintable(it.key()), static_cast<long long>(count));
    }
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(u'\n')));
}

void TestHouse::topHoldsWhatItShould()
{
    const QStringList wrong =
        wrongTop(QDir(QStringLiteral(SOURCE_DIR)).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot));
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(u'\n')));
}

void TestHouse::goldenFilesAreUsed()
{
    QString all;
    for (auto it = m_files.cbegin(); it != m_files.cend(); ++it)
        if (it.key().startsWith(QLatin1String("tests/")))
            all += it.value();
    const QStringList wrong = unused(QDir(QStringLiteral(SOURCE_DIR "/tests/golden")).entryList(QDir::Files), all);
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(u'\n')));
}

void TestHouse::rulesCatch_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<QString>("text");
    QTest::addColumn<bool>("good");
    const auto row = [](const char *name, const char *path, const char *text, bool good = false) {
        QTest::newRow(name) << QString::fromLatin1(path) << QString::fromLatin1(text).replace(u'~', QString()) << good;
    };
    // A tilde inside a word keeps this file from breaking the rule it tests; it is taken out before the rule reads.
    row("widget by name", "model/desk/a.cpp", "#include <QPushButton>\n");
    row("widget by folder", "model/desk/a.cpp", "#include <QtWidgets/QWidget>\n");
    row("widget by small letters", "model/desk/a.cpp", "#include <QtWidgets/qwidget.h>\n");
    row("widget by small letters alone", "model/desk/a.cpp", "#include <qwidget.h>\n");
    row("whole module", "model/desk/a.cpp", "#include <QtWidgets>\n");
    row("widget in quotes and spaces", "model/desk/a.cpp", "  #  include \"QWidget\"\n");
    row("unknown Qt header", "model/desk/a.cpp", "#include <QNoSuchThing>\n");
    row("images in a pure room", "model/sums/a.cpp", "#include <QImage>\n");
    row("SQL in the desk", "model/desk/a.cpp", "#include <QSqlQuery>\n");
    row("SQL by the engine's own library", "model/desk/a.cpp", "#include <sqlite3.h>\n");
    row("SQL in the views", "views/a.cpp", "#include <QtSql/QSqlDatabase>\n");
    row("charts in the app", "app/a.cpp", "#include <QChartView>\n");
    row("store from the views", "views/a.cpp", "#include \"model/store/store.h\"\n");
    row("store from the views with <>", "views/a.cpp", "#include <model/store/store.h>\n");
    row("upward", "model/values/a.cpp", "#include \"model/records/unit.h\"\n");
    row("sideways", "model/sums/a.cpp", "#include \"model/store/store.h\"\n");
    row("views from the model", "model/paper/a.cpp", "#include \"views/rack.h\"\n");
    row("app from the views", "views/a.cpp", "#include \"app/main.h\"\n");
    row("relative", "model/desk/a.cpp", "#include \"../store/store.h\"\n");
    row("bare name", "model/desk/a.cpp", "#include \"desk.h\"\n");
    row("by macro", "model/desk/a.cpp", "#include HEADER\n");
    row("system time", "model/desk/a.cpp", "auto t = QDateTime::currentDateTimeUtc();\n");
    row("system date", "app/a.cpp", "auto t = QDate::currentDate ();\n");
    row("system clock", "views/a.cpp", "auto t = std::chrono::system_clock::now();\n");
    row("singleton", "model/desk/a.cpp", "Desk::instance()->undo();\n");
    row("shared data", "model/desk/a.cpp", "extern int units;\n");
    row("left undone", "model/desk/a.cpp", "int a; // TO~DO later\n");
    row("left undone in a test", "tests/test_a.cpp", "// FIX~ME\n");
    row("path", "model/desk/a.cpp", "auto f = u\"/ho~me/me/x\";\n");
    row("path in a script", "tests/run", "cd /tm~p/x\n");
    row("unguarded header", "model/desk/a.h", "struct A {};\n");

    row("store to its own room", "model/store/a.cpp",
        "#include \"model/store/store.h\"\n#include <QSqlQuery>\n#include <vector>\n", true);
    row("desk to store", "model/desk/a.cpp", "#include \"model/store/store.h\"\n#include <QObject>\n#include \"a.moc\"\n", true);
    row("images in media", "model/media/a.cpp", "#include <QImageReader>\n#include <QtGui/QImage>\n", true);
    row("charts in the views", "views/a.cpp", "#include <QChartView>\n#include <QtCharts/QLineSeries>\n#include <QWidget>\n",
        true);
    row("app to all", "app/a.cpp", "#include \"model/store/store.h\"\n#include \"views/rack.h\"\n", true);
    row("the clock itself", "model/values/clock.cpp", "return QDateTime::currentDateTimeUtc();\n", true);
    row("words in a comment", "model/desk/a.cpp", "// no extern data, no instance()\n/* extern\n */ int a;\n", true);
    row("asking whether Qt is up", "model/paper/a.cpp", "return QCoreApplication::instance() != nullptr;\n", true);
    row("a C header", "model/store/a.cpp", "extern \"C\" int f();\n", true);
    row("an address", "model/desk/a.cpp", "auto a = u\"https://example.org/ho~me/x\"; // a comment\n", true);
}

void TestHouse::rulesCatch()
{
    QFETCH(QString, path);
    QFETCH(QString, text);
    QFETCH(bool, good);
    const QStringList wrong = wrongIn(path, text);
    QVERIFY2(wrong.isEmpty() == good, qPrintable(wrong.join(u'\n')));
}

void TestHouse::rulesOnManyFilesCatch()
{
    const auto includes = [](const char *path) { return QStringLiteral("#include \"%1\"\n").arg(QLatin1String(path)); };
    QHash<QString, QString> files{{QStringLiteral("model/values/a.h"), includes("model/values/b.h")},
                                  {QStringLiteral("model/values/b.h"), includes("model/values/c.h")},
                                  {QStringLiteral("model/values/c.h"), QString()}};
    QVERIFY(circles(files).isEmpty());
    files[QStringLiteral("model/values/c.h")] = includes("model/values/a.h");
    QCOMPARE(circles(files),
             QStringList{QStringLiteral("model/values/a.h > model/values/b.h > model/values/c.h > model/values/a.h")});

    QCOMPARE(lines(QStringLiteral("a\nb\n")), 2);
    QCOMPARE(lines(QStringLiteral("a\nb")), 2);
    QCOMPARE(lines(QString()), 0);

    QStringList top =
        QStringLiteral("CMakeLists.txt README.md DEVELOPERS.md LICENSE app model views resources tests demo-db .ci build out")
            .split(u' ');
    QVERIFY(wrongTop(top).isEmpty());
    QCOMPARE(wrongTop(top + QStringList{QStringLiteral("scripts")}).size(), 1);
    top.removeOne(QStringLiteral("README.md"));
    QCOMPARE(wrongTop(top).size(), 1);

    QCOMPARE(unused({QStringLiteral("a.html"), QStringLiteral("b.json"), QStringLiteral("c.txt")},
                    QStringLiteral("golden(\"a.html\") golden(\"b\")")),
             QStringList{QStringLiteral("tests/golden/c.txt is used by no test")});
}

QTEST_GUILESS_MAIN(TestHouse)
#include "test_house.moc"
