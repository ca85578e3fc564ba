#include "model/jot/keywords.h"

#include "model/jot/families.h"

namespace ts {

const std::array<Keyword, 27> &keywords()
{
    static constexpr std::array<Keyword, 27> table{
        Keyword{"do not power", jotDoNotPower, Follows::May, "why"},
        Keyword{"first power", jotFirstPower, Follows::Must, "which step, and its value or what was seen"},
        Keyword{"safety", jotSafety, Follows::Must, "which test, and its value or what was seen"},
        Keyword{"safe to power", jotSafeToPower, Follows::May, ""},
        Keyword{"not applicable", jotNotApplicable, Follows::Must, "which proof"},
        Keyword{"not tested", jotNotTested, Follows::Must, "which proof"},
        Keyword{"ruled out", jotRuledOut, Follows::Must, "which cause"},
        Keyword{"saw", jotSaw, Follows::Must, "what was seen"},
        Keyword{"cleared", jotCleared, Follows::May, "which symptom"},
        Keyword{"think", jotThink, Follows::Must, "which cause, and how likely"},
        Keyword{"was", jotWas, Follows::Must, "which cause it was"},
        Keyword{"check", jotCheck, Follows::Must, "what to check, or how it came out"},
        Keyword{"did", jotDid, Follows::Must, "what was done, and the minutes"},
        Keyword{"need", jotNeed, Follows::Must, "which part, and its price"},
        Keyword{"ordered", jotOrdered, Follows::Must, "which part, its price, when it is due"},
        Keyword{"here", jotHere, Follows::Must, "which part has come"},
        Keyword{"fitted", jotFitted, Follows::Must, "which part, and its price"},
        Keyword{"paid", jotPaid, Follows::Must, "for what, and how much"},
        Keyword{"got", jotGot, Follows::Must, "for what, and how much"},
        Keyword{"off", jotOff, Follows::Must, "what came off, its fasteners, where they are"},
        Keyword{"back", jotBack, Follows::Must, "what was put back"},
        Keyword{"next", jotNext, Follows::Must, "what is to be done next"},
        Keyword{"waiting", jotWaiting, Follows::Must, "for what, and until when"},
        Keyword{"soaked", jotSoaked, Follows::Must, "how long, and at what"},
        Keyword{"flaw", jotFlaw, Follows::Must, "what is not as it should be"},
        Keyword{"proved", jotProved, Follows::Must, "what was proved"},
        Keyword{"failed", jotFailed, Follows::Must, "which proof failed"}};
    return table;
}

Begun keywordOf(const QString &line)
{
    for (const Keyword &keyword : keywords()) {
        const QLatin1String word(keyword.word);
        if (!line.startsWith(word, Qt::CaseInsensitive))
            continue;
        if (line.size() == word.size())
            return {&keyword, {}};
        const QChar next = line.at(word.size());
        if (next.isSpace() || next == QLatin1Char(':'))
            return {&keyword, line.mid(word.size() + 1).trimmed()};
    }
    return {};
}

} // namespace ts
