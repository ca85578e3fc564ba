#pragma once

#include <QDir>
#include <QFileInfo>
#include <QHash>
#include <QLibraryInfo>
#include <QRegularExpression>
#include <QSet>
#include <QStringList>

/// The rules of the house as functions of a file's path (from the top) and its text; each answers what breaks it.
namespace ts::house {

using Arrows = QHash<QString, QStringList>;

/// What each room may include beside itself.
inline const Arrows &arrows()
{
    static const Arrows known = [] {
        const auto rooms = [](const char *names) {
            QStringList list;
            for (const QString &name : QString::fromLatin1(names).split(QLatin1Char(' '), Qt::SkipEmptyParts))
                list << (name == QLatin1String("views") ? name : QStringLiteral("model/") + name);
            return list;
        };
        Arrows all{
            {QStringLiteral("model/values"), {}},
            {QStringLiteral("model/records"), rooms("values")},
            {QStringLiteral("model/sums"), rooms("values records")},
            {QStringLiteral("model/faults"), rooms("values records sums")},
            {QStringLiteral("model/money"), rooms("values records sums faults")},
            {QStringLiteral("model/jot"), rooms("values records sums")},
            {QStringLiteral("model/store"), rooms("values records")},
            {QStringLiteral("model/desk"), rooms("values records store")},
            {QStringLiteral("model/exchange"), rooms("values records sums faults money desk")},
            {QStringLiteral("model/media"), rooms("values records")},
            {QStringLiteral("model/meters"), rooms("values")},
            {QStringLiteral("model/paper"), rooms("values records sums")},
            {QStringLiteral("model/keeping"), rooms("values records sums desk exchange media paper")},
            {QStringLiteral("model/worth"), rooms("values records sums faults money desk")},
            {QStringLiteral("model/demo"), rooms("values records sums desk jot media paper keeping")},
            {QStringLiteral("views"), rooms("values records sums faults money worth jot desk paper media exchange keeping meters")},
        };
        all.insert(QStringLiteral("app"), all.keys());
        return all;
    }();
    return known;
}

/// What each room may use of Qt, and of the databases' own libraries (counted as QtSql).
inline QStringList allowedModules(const QString &room)
{
    QStringList modules{QStringLiteral("QtCore")};
    const auto among = [&](const char *names) { return QString::fromLatin1(names).split(QLatin1Char(' ')).contains(room); };
    if (among("model/store"))
        modules << QStringLiteral("QtSql");
    if (among("model/meters"))
        modules << QStringLiteral("QtNetwork") << QStringLiteral("QtSerialPort");
    if (among("model/media model/paper model/keeping model/demo views app"))
        modules << QStringLiteral("QtGui");
    if (among("views app"))
        modules << QStringLiteral("QtWidgets");
    if (among("views"))
        modules << QStringLiteral("QtCharts") << QStringLiteral("QtPrintSupport");
    return modules;
}

/// "model/desk" of "model/desk/desk.h", "views" of "views/rack.h"; empty for what stands in no room.
inline QString roomOf(const QString &path)
{
    const QString folder = path.section(QLatin1Char('/'), 0, path.startsWith(QLatin1String("model/")) ? 1 : 0);
    return arrows().contains(folder) && path != folder ? folder : QString();
}

/// The Qt module of a header, as the installed headers have it: "QtWidgets" of "QPushButton" and of "QtWidgets/qwidget.h".
inline QString moduleOf(const QString &header)
{
    const QDir headers(QLibraryInfo::path(QLibraryInfo::HeadersPath));
    const QString first = header.section(u'/', 0, 0);
    if (first.startsWith(QLatin1String("Qt")) && (first != header || QFileInfo(headers.filePath(first)).isDir()))
        return first;
    if (header == QLatin1String("sqlite3.h") || header == QLatin1String("libpq-fe.h"))
        return QStringLiteral("QtSql");
    static QHash<QString, QString> known;
    if (known.isEmpty()) {
        for (const QString &module : headers.entryList({QStringLiteral("Qt*")}, QDir::Dirs))
            for (const QString &file : QDir(headers.filePath(module)).entryList(QDir::Files))
                if (!known.contains(file) || module == QLatin1String("QtCore"))
                    known.insert(file, module);
    }
    return known.value(header);
}

struct Include {
    QString what;
    bool quoted;
};

inline QList<Include> includesIn(const QString &text)
{
    static const QRegularExpression line(QStringLiteral("^[ \\t]*#[ \\t]*include[ \\t]*(?:\"([^\"]*)\"|<([^>]*)>|(\\S+))"),
                                         QRegularExpression::MultilineOption);
    QList<Include> found;
    for (auto it = line.globalMatch(text); it.hasNext();) {
        const auto match = it.next();
        if (match.hasCaptured(2))
            found << Include{match.captured(2), false};
        else
            found << Include{match.hasCaptured(3) ? match.captured(3) : match.captured(1), true};
    }
    return found;
}

/// Includes that go against the arrows, that are no full path, or that bring in a part of Qt the room has no use for.
inline QStringList wrongIncludes(const QString &path, const QString &text)
{
    QStringList wrong;
    const QString room = roomOf(path);
    if (room.isEmpty())
        return wrong;
    const QStringList modules = allowedModules(room);
    for (const Include &include : includesIn(text)) {
        // Written with <> or "", a path of ours is a path of ours, and a header of Qt's one of Qt's.
        const QString other = roomOf(include.what);
        const QString module = moduleOf(include.what);
        if (!other.isEmpty()) {
            if (other != room && !arrows().value(room).contains(other))
                wrong << QStringLiteral("%1 may not include %2 (%3)").arg(room, include.what, path);
        } else if (!module.isEmpty()) {
            if (!modules.contains(module))
                wrong << QStringLiteral("%1 may not use %2 of %3 (%4)").arg(room, include.what, module, path);
        } else if (include.what.startsWith(u'Q') || (include.quoted && !include.what.endsWith(QLatin1String(".moc")))) {
            wrong << QStringLiteral("include \"%1\" is no full path from the top (%2)").arg(include.what, path);
        }
    }
    return wrong;
}

/// A circle among the includes of these files (path and text), each written out; empty where there is none.
inline QStringList circles(const QHash<QString, QString> &files)
{
    QStringList found, trail;
    QSet<QString> done;
    const auto walk = [&](const auto &self, const QString &path) -> void {
        if (const auto at = trail.indexOf(path); at >= 0) {
            found << (trail.mid(at) << path).join(QStringLiteral(" > "));
            return;
        }
        if (done.contains(path) || !files.contains(path))
            return;
        trail << path;
        for (const Include &include : includesIn(files.value(path)))
            self(self, include.what);
        trail.removeLast();
        done << path;
    };
    QStringList paths = files.keys();
    paths.sort();
    for (const QString &path : paths)
        walk(walk, path);
    return found;
}

/// The text without its comments, for rules on code alone. Marks of comments inside of literals are left alone.
inline QString withoutComments(const QString &text)
{
    QString code;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QStringView rest = QStringView(text).mid(i);
        if (rest.startsWith(u"//")) {
            const auto end = text.indexOf(u'\n', i);
            i = (end < 0 ? text.size() : end) - 1;
        } else if (rest.startsWith(u"/*")) {
            const auto end = text.indexOf(QLatin1String("*/"), i + 2);
            i = (end < 0 ? text.size() : end + 2) - 1;
        } else if (text[i] == u'"' || text[i] == u'\'') {
            auto end = i + 1;
            while (end < text.size() && text[end] != text[i] && text[end] != u'\n')
                end += text[end] == u'\\' ? 2 : 1;
            code += text.mid(i, end + 1 - i);
            i = end;
        } else {
            code += text[i];
        }
    }
    return code;
}

struct Word {
    QString pattern;
    QString why;
    bool inComments; ///< looked for in comments too
    bool inTests;    ///< looked for in tests too
};

/// What the house does not want to read. The patterns are put together from pieces, so that this file passes them itself.
inline const QList<Word> &forbidden()
{
    static const QList<Word> words{
        {QStringLiteral(
             "current(?:DateTime|Date|Time|MSecs|Secs)[A-Za-z]*\\s*\\(|system_clock|\\btime\\s*\\(\\s*(?:nullptr|NULL|0)\\s*\\)"),
         QStringLiteral("asks the system for the time; take a Clock"), false, false},
        {QStringLiteral("(?<!QCoreApplication::)\\binstance\\s*\\(\\s*\\)|\\bqApp\\b"),
         QStringLiteral("is a singleton; take it through the constructor"), false, false},
        {QStringLiteral("\\bextern\\b(?!\\s*\"C\")"), QStringLiteral("is data shared behind the back"), false, false},
        {QStringLiteral("\\b(?:TO") + QStringLiteral("DO|FIX") + QStringLiteral("ME)\\b"), QStringLiteral("is work left undone"),
         true, true},
        {QStringLiteral("(?<![\\w.*~-])/(?:home|tmp|root|work)") + QStringLiteral("/\\w"),
         QStringLiteral("is a path of one computer"), true, true},
    };
    return words;
}

inline QStringList wrongWords(const QString &path, const QString &text)
{
    QStringList wrong;
    const bool inTests = path.startsWith(QLatin1String("tests/"));
    const QString code = withoutComments(text);
    for (const Word &word : forbidden()) {
        if ((inTests && !word.inTests) ||
            (path == QLatin1String("model/values/clock.cpp") && word.pattern.startsWith(QLatin1String("current"))))
            continue;
        const auto match = QRegularExpression(word.pattern).match(word.inComments ? text : code);
        if (match.hasMatch())
            wrong << QStringLiteral("\"%1\" %2 (%3)").arg(match.captured(), word.why, path);
    }
    return wrong;
}

/// A header without its guard.
inline QStringList wrongHeader(const QString &path, const QString &text)
{
    if (path.endsWith(QLatin1String(".h")) && !text.contains(QLatin1String("#pragma once")))
        return {QStringLiteral("no #pragma once (%1)").arg(path)};
    return {};
}

constexpr int tooLong = 400;    // a file beyond this fails
constexpr int ratherLong = 300; // a file beyond this is mentioned

inline qsizetype lines(const QString &text)
{
    return text.count(u'\n') + (text.isEmpty() || text.endsWith(u'\n') ? 0 : 1);
}

/// Names that stand at the top and should not, or should and do not. Dotfiles and what a build leaves are passed over.
inline QStringList wrongTop(const QStringList &names)
{
    const QStringList wanted =
        QStringLiteral("CMakeLists.txt README.md DEVELOPERS.md LICENSE app model views resources tests demo-db").split(u' ');
    static const QRegularExpression left(QStringLiteral("^(\\..*|build.*|out|.*\\.user|compile_commands\\.json)$"));
    QStringList wrong;
    for (const QString &name : names)
        if (!wanted.contains(name) && !left.match(name).hasMatch())
            wrong << QStringLiteral("%1 does not belong at the top").arg(name);
    for (const QString &name : wanted)
        if (!names.contains(name))
            wrong << QStringLiteral("%1 is missing at the top").arg(name);
    return wrong;
}

/// Golden files that no test names, by full name or by the part before the ending.
inline QStringList unused(const QStringList &golden, const QString &allTests)
{
    QStringList wrong;
    for (const QString &name : golden)
        if (!allTests.contains(name) && !allTests.contains(u'"' + QFileInfo(name).completeBaseName() + u'"'))
            wrong << QStringLiteral("tests/golden/%1 is used by no test").arg(name);
    return wrong;
}

} // namespace ts::house
