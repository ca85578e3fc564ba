#include "model/jot/jot.h"

#include "model/jot/families.h"
#include "model/jot/keywords.h"
#include "model/jot/phrase.h"

namespace ts {

namespace {

constexpr qsizetype longestLine = 4000;

/// The line as it can be recorded, or why it cannot.
Expected<QString> recordable(const QString &typed)
{
    const QString did = QStringLiteral("Nothing was recorded");
    QString line = typed;
    line.replace(QLatin1Char('\t'), QLatin1Char(' '));
    line = line.trimmed();
    if (line.isEmpty())
        return Trouble{did, QStringLiteral("the line is empty"), QStringLiteral("type what was seen, read or done")};
    if (line.size() > longestLine)
        return Trouble{did, QStringLiteral("the line has %1 characters, and %2 is the most").arg(line.size()).arg(longestLine),
                       QStringLiteral("split it into several")};
    for (const QChar c : line)
        if (c.category() == QChar::Other_Control)
            return Trouble{did,
                           QStringLiteral("the line holds a control character (U+%1)")
                               .arg(QString::number(c.unicode(), 16).toUpper().rightJustified(4, QLatin1Char('0'))),
                           QStringLiteral("take it out")};
    if (!line.isValidUtf16())
        return Trouble{did, QStringLiteral("the line holds half a character"), QStringLiteral("type it again")};
    return line;
}

Jotted understood(const Jotting &jotting, const Begun &begun)
{
    if (!begun.keyword) {
        if (auto reading = jotReading(jotting))
            return *reading;
        return asNote(jotting);
    }
    // A test point may be called "off time" or "next stage": a name that the unit knows comes before the word it begins with.
    const bool known = namesKnownPoint(jotting);
    if (known || begun.rest.startsWith(QLatin1Char('=')))
        if (auto reading = jotReading(jotting); reading && (known || reading->what == QLatin1String("reading")))
            return *reading;
    if (begun.rest.isEmpty() && begun.keyword->follows == Follows::Must) {
        Jotted jotted = asNote(jotting);
        jotted.preview += QStringLiteral(" · go on with ") + QString::fromLatin1(begun.keyword->hint);
        return jotted;
    }
    return begun.keyword->jot(jotting);
}

} // namespace

Expected<Jotted> jot(const QString &line, const UnitFile &unit, const BenchFile &bench, Maker &maker)
{
    const auto plain = recordable(line);
    if (!plain)
        return plain.trouble();
    const Begun begun = keywordOf(*plain);
    return understood(Jotting{*plain, begun.rest, unit, bench, maker}, begun);
}

} // namespace ts
