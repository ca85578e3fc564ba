#include "model/jot/teardown_line.h"

#include "model/jot/phrase.h"

#include <QSet>

#include <algorithm>

namespace ts {

namespace {

enum class Sort { None, Fastener, Spring, Connector, Keeper };

Sort sortOf(QString word)
{
    static const QSet<QString> fasteners{QStringLiteral("screw"),    QStringLiteral("bolt"), QStringLiteral("nut"),
                                         QStringLiteral("rivet"),    QStringLiteral("stud"), QStringLiteral("pin"),
                                         QStringLiteral("standoff"), QStringLiteral("peg")};
    static const QSet<QString> springs{QStringLiteral("spring"),  QStringLiteral("washer"), QStringLiteral("clip"),
                                       QStringLiteral("circlip"), QStringLiteral("e-clip"), QStringLiteral("spacer"),
                                       QStringLiteral("shim")};
    static const QSet<QString> connectors{QStringLiteral("plug"),   QStringLiteral("ribbon"), QStringLiteral("connector"),
                                          QStringLiteral("socket"), QStringLiteral("lead"),   QStringLiteral("wire")};
    static const QSet<QString> keepers{QStringLiteral("tray"),   QStringLiteral("cup"),     QStringLiteral("bag"),
                                       QStringLiteral("box"),    QStringLiteral("tin"),     QStringLiteral("jar"),
                                       QStringLiteral("drawer"), QStringLiteral("tub"),     QStringLiteral("dish"),
                                       QStringLiteral("pot"),    QStringLiteral("envelope")};
    word = word.toLower();
    while (!word.isEmpty() && !word.back().isLetter())
        word.chop(1);
    const QString single = word.endsWith(QLatin1Char('s')) ? word.chopped(1) : word;
    if (fasteners.contains(single))
        return Sort::Fastener;
    if (springs.contains(single))
        return Sort::Spring;
    if (connectors.contains(single))
        return Sort::Connector;
    return keepers.contains(word) ? Sort::Keeper : Sort::None;
}

/// 5 for "5", "5x" and "five"; 0 where the piece is no count.
int countOf(const QString &piece)
{
    static const QStringList words{QStringLiteral("one"),   QStringLiteral("two"),    QStringLiteral("three"),
                                   QStringLiteral("four"),  QStringLiteral("five"),   QStringLiteral("six"),
                                   QStringLiteral("seven"), QStringLiteral("eight"),  QStringLiteral("nine"),
                                   QStringLiteral("ten"),   QStringLiteral("eleven"), QStringLiteral("twelve")};
    QString number = piece.toLower();
    if (number.endsWith(QLatin1Char('x')) || number.endsWith(QChar(u'×')))
        number.chop(1);
    bool ok = false;
    const int count = number.toInt(&ok);
    if (ok && count > 0 && count < 1000 && number.at(0).isDigit())
        return count;
    return static_cast<int>(words.indexOf(number)) + 1;
}

bool hasDigit(const QString &piece)
{
    return std::any_of(piece.begin(), piece.end(), [](QChar c) { return c.isDigit(); });
}

/// A thread by itself counts as a fastener: "4 M3x8", "4x M2.6x10".
bool isThread(const QString &piece)
{
    return piece.size() > 1 && (piece.at(0) == QLatin1Char('M') || piece.at(0) == QLatin1Char('m')) && piece.at(1).isDigit();
}

/// What the count at `at` counts, by the next pieces up to a comma or another count; None where it counts nothing known.
Sort counted(const QStringList &all, qsizetype at)
{
    for (qsizetype i = at + 1; i < all.size() && i <= at + 4; ++i) {
        if (i > at + 1 && countOf(all.at(i)) > 0)
            break;
        if (const Sort sort = sortOf(all.at(i)); sort != Sort::None && sort != Sort::Keeper)
            return sort;
        if (isThread(all.at(i)))
            return Sort::Fastener;
        if (all.at(i).endsWith(QLatin1Char(',')))
            break;
    }
    return Sort::None;
}

/// "tray A1", "cup 3": takes the last such pair out of the pieces. A tray that is itself what came off has no such name behind
/// it.
QString takeKeeper(QStringList &all)
{
    for (qsizetype i = all.size() - 2; i >= 1; --i) {
        if (sortOf(all.at(i)) != Sort::Keeper || all.at(i).endsWith(QLatin1Char(',')))
            continue;
        QString name = all.at(i + 1);
        while (name.endsWith(QLatin1Char(',')))
            name.chop(1);
        const bool label = !name.isEmpty() && (hasDigit(name) || name.size() == 1) && name.size() <= 6;
        if (!label || (countOf(name) > 0 && counted(all, i + 1) != Sort::None))
            continue;
        const QString kept = all.at(i) + QLatin1Char(' ') + name;
        const bool in =
            i >= 2 && (all.at(i - 1).toLower() == QLatin1String("in") || all.at(i - 1).toLower() == QLatin1String("into"));
        all.remove(in ? i - 1 : i, in ? 3 : 2);
        return kept;
    }
    return {};
}

QString joined(const QStringList &list)
{
    QString text = list.join(QLatin1Char(' '));
    while (text.endsWith(QLatin1Char(',')) || text.endsWith(QLatin1String(" and")) || text.endsWith(QLatin1String(" +")))
        text.chop(text.endsWith(QLatin1String(" and")) ? 4 : 1);
    return text.trimmed();
}

void append(QString &to, const QString &text)
{
    if (!text.isEmpty())
        to += to.isEmpty() ? text : QStringLiteral(", ") + text;
}

} // namespace

TeardownLine splitTeardown(const QString &text)
{
    TeardownLine line;
    QStringList all = pieces(text);
    line.keptIn = takeKeeper(all);

    Sort current = Sort::None;
    QStringList run;
    const auto close = [&] {
        const QString words = joined(run);
        run.clear();
        switch (current) {
        case Sort::Fastener:
            return append(line.fasteners, words);
        case Sort::Spring:
            return append(line.springs, words);
        case Sort::Connector:
            return append(line.connectors, words);
        default:
            return append(line.what, words);
        }
    };
    for (qsizetype i = 0; i < all.size(); ++i) {
        // What came off is named first, so the first piece begins nothing else.
        Sort next = Sort::None;
        const bool afterComma = i > 0 && (all.at(i - 1).endsWith(QLatin1Char(',')) || all.at(i - 1) == QLatin1String("and") ||
                                          all.at(i - 1) == QLatin1String("+"));
        const int count = i > 0 ? countOf(all.at(i)) : 0;
        if (count > 0)
            next = counted(all, i);
        else if (i > 0 && (afterComma || (i + 1 < all.size() && hasDigit(all.at(i + 1)))))
            next = sortOf(all.at(i));
        if (next == Sort::Keeper || (next == Sort::Fastener && count == 0 && !afterComma) ||
            (next == Sort::Spring && count == 0 && !afterComma))
            next = Sort::None;
        const bool wholeCount = count == 0 && next != Sort::None && current == next && !afterComma; // "2 plugs CN2": the same run
        if (next != Sort::None && !wholeCount) {
            close();
            current = next;
            if (next == Sort::Fastener && count > 0)
                line.fastenerCount = line.fastenerCount.value_or(0) + count;
        }
        run << all.at(i);
    }
    close();
    if (line.what.isEmpty())
        line.what = text.simplified();
    return line;
}

} // namespace ts
