#include "model/faults/cause_reason.h"

namespace ts {

namespace {

/// "ESR of C214 (3.3 µF, 0.4 Ω)"
QString checkWords(const BoardCheck &check)
{
    const QString text = check.text.simplified(), result = check.result.simplified();
    return result.isEmpty() ? text : QStringLiteral("%1 (%2)").arg(text, result);
}

QString label(const QString &said, const QString &why)
{
    return why.isEmpty() ? said : said + QStringLiteral(": ") + why;
}

} // namespace

QString reasonOf(const FaultBoard &board, qsizetype cause, const QString &settledBecause)
{
    const BoardCause &of = board.causes.at(cause);
    QStringList pointing, against, elsewhere;
    for (const BoardCheck &check : board.checks) {
        const bool abnormal = check.cameOut == CameOut::Abnormal;
        if (!abnormal && check.cameOut != CameOut::Normal)
            continue;
        if (check.marks.at(cause).marked())
            (abnormal ? pointing : against) << checkWords(check);
        else if (abnormal)
            elsewhere << checkWords(check);
    }
    const QString comma = QStringLiteral("; ");
    const QString because = settledBecause.simplified();
    if (of.state == CauseState::Confirmed)
        return label(QStringLiteral("Confirmed"), because.isEmpty() ? pointing.join(comma) : because);
    if (of.state == CauseState::RuledOut)
        return label(QStringLiteral("Ruled out"), because.isEmpty() ? against.join(comma) : because);
    if (!board.confirmed.isEmpty())
        return QStringLiteral("Another cause was confirmed");
    QStringList said;
    if (!pointing.isEmpty())
        said << QStringLiteral("Points to it: ") + pointing.join(comma);
    if (!against.isEmpty())
        said << QStringLiteral("Came out normal: ") + against.join(comma);
    if (!said.isEmpty())
        return said.join(QStringLiteral(". "));
    if (!elsewhere.isEmpty())
        return QStringLiteral("Points elsewhere: ") + elsewhere.join(comma);
    return of.somethingElse ? QStringLiteral("Whatever is not on the list") : QStringLiteral("Nothing rules it out yet");
}

} // namespace ts
