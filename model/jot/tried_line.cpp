#include "model/jot/tried_line.h"

#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace ts {

std::optional<TriedRest> triedRest(const QString &rest)
{
    static const QRegularExpression form(u"^\\s*(?:(stop|failed|fail)|(not applicable))?\\s*(?:([:=])\\s*(.*))?$"_s, QRegularExpression::CaseInsensitiveOption);
    const auto match = form.match(rest);
    if (!match.hasMatch())
        return std::nullopt;
    return TriedRest{match.hasCaptured(1) ? Said::Wrong : match.hasCaptured(2) ? Said::NotApplicable : Said::Nothing, match.captured(4).trimmed()};
}

LeadTold takeLead(const QString &typed)
{
    static const QRegularExpression lead(u"\\blead\\s+([0-9]+(?:[.,][0-9]+)?)\\s*(mΩ|mohm|Ω|ohms?|R|m)(?=\\s|$)"_s);
    const auto match = lead.match(typed);
    if (!match.hasMatch())
        return {{}, {}, typed};
    LeadTold told;
    const double number = match.captured(1).replace(u',', u'.').toDouble();
    const QString unit = match.captured(2);
    if (unit == u"m")
        told.metres = number;
    else
        told.ohms = unit.startsWith(u'm') ? number / 1000 : number;
    told.rest = (typed.left(match.capturedStart()) + typed.mid(match.capturedEnd())).simplified();
    return told;
}

} // namespace ts
