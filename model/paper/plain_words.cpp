#include "model/paper/plain_words.h"

#include <QRegularExpression>
#include <QSet>
#include <QStringList>

#include <algorithm>

namespace ts {

namespace {

bool isBidiControl(QChar c)
{
    return (c >= QChar(0x202A) && c <= QChar(0x202E)) || (c >= QChar(0x2066) && c <= QChar(0x2069));
}

QSet<QString> setOf(const char *words)
{
    const QStringList list = QString::fromLatin1(words).split(QLatin1Char(' '));
    return QSet<QString>(list.cbegin(), list.cend());
}

// What is claimed of a unit without a fact behind it, and the words that usually stand around it.
const QSet<QString> &bareWords()
{
    static const QSet<QString> words =
        setOf("serviced service restored restoration tested refurbished refurbed refurb overhauled overhaul checked "
              "reconditioned repaired renovated");
    return words;
}

const QSet<QString> &fillers()
{
    static const QSet<QString> words =
        setOf("100 a all also amplifier and as been by care carefully complete completely deck done electrically "
              "everything expert expertly fine full fully function functionally good has have in is it just "
              "lovingly machine newly ok okay order perfect perfectly player professional professionally properly "
              "radio receiver recently recorder the this thoroughly to tuner turntable unit was well were with work "
              "working works");
    return words;
}

enum class Says { Something, Claim, Filler };

Says whatSays(const QString &clause)
{
    static const QRegularExpression notWord(QStringLiteral("[^\\p{L}\\p{N}]+"));
    Says says = Says::Filler;
    for (const QString &word : clause.toLower().split(notWord, Qt::SkipEmptyParts)) {
        if (bareWords().contains(word))
            says = Says::Claim;
        else if (!fillers().contains(word))
            return Says::Something;
    }
    return says;
}

struct Clause {
    QString text;
    QString parting; // what stood behind it: ", " or ". " or a line break
};

QList<Clause> clausesOf(const QString &text)
{
    // A comma or point inside a number or an abbreviation has no space behind it.
    static const QRegularExpression parting(QStringLiteral("(?:[,;.!:]+(?:[ \\t]+|(?=\\n)|$))|[ \\t]*\\n+"));
    QList<Clause> clauses;
    qsizetype at = 0;
    for (auto it = parting.globalMatch(text); it.hasNext();) {
        const auto match = it.next();
        clauses << Clause{text.mid(at, match.capturedStart() - at), match.captured()};
        at = match.capturedEnd();
    }
    if (at < text.size())
        clauses << Clause{text.mid(at), {}};
    return clauses;
}

} // namespace

QString plainText(const QString &text)
{
    QString out;
    out.reserve(text.size());
    const QString unix = QString(text).replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    for (qsizetype i = 0; i < unix.size(); ++i) {
        const QChar c = unix.at(i);
        if (c == QLatin1Char('\n') || c == QChar(0x2028) || c == QChar(0x2029) || c == QLatin1Char('\r'))
            out += QLatin1Char('\n');
        else if (c == QLatin1Char('\t'))
            out += QLatin1Char(' ');
        else if (c.isHighSurrogate() && i + 1 < unix.size() && unix.at(i + 1).isLowSurrogate())
            out += c, out += unix.at(++i);
        else if (c.isSurrogate() || c.category() == QChar::Other_Control || c == QChar(0xFFFC) || c == QChar(0xFFFE) ||
                 c == QChar(0xFFFF) || c == QChar(0xFEFF) || isBidiControl(c))
            continue;
        else
            out += c;
    }
    return out.trimmed();
}

QString withoutBareClaims(const QString &text)
{
    const QString plain = plainText(text);
    const auto clauses = clausesOf(plain);
    if (std::none_of(clauses.cbegin(), clauses.cend(), [](const Clause &clause) { return whatSays(clause.text) == Says::Claim; }))
        return plain;
    QString out;
    for (const Clause &clause : clauses) {
        // "tested, working": what only dresses the claim goes with it.
        if (whatSays(clause.text) != Says::Something) {
            // "new belt, fully serviced." keeps the full stop of what went.
            if (!out.isEmpty() && clause.parting.contains(QLatin1Char('.'))) {
                while (out.endsWith(QLatin1Char(' ')) || out.endsWith(QLatin1Char(',')))
                    out.chop(1);
                if (!out.endsWith(QLatin1Char('.')))
                    out += clause.parting;
                else
                    out += QLatin1Char(' ');
            }
            continue;
        }
        out += clause.text + clause.parting;
    }
    out = out.trimmed();
    while (out.endsWith(QLatin1Char(',')) || out.endsWith(QLatin1Char(';')) || out.endsWith(QLatin1Char(':')))
        out.chop(1);
    return out;
}

QString isolated(const QString &text)
{
    for (const QChar c : text) {
        const auto direction = c.direction();
        if (direction == QChar::DirR || direction == QChar::DirAL || direction == QChar::DirRLO || direction == QChar::DirRLE ||
            c.isSurrogate())
            return QChar(0x2068) + text + QChar(0x2069);
    }
    return text;
}

} // namespace ts
