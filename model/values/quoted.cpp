#include "model/values/quoted.h"

namespace ts {

QString quoted(QStringView text)
{
    constexpr qsizetype most = 40; // a refusal is one line
    QString shown = text.left(4 * most).toString().simplified();
    if (shown.isEmpty() && !text.isEmpty())
        shown = QLatin1Char(' ');
    for (QChar &each : shown)
        if (!each.isPrint() && !each.isSurrogate())
            each = QChar(QChar::ReplacementCharacter);
    if (shown.size() > most || text.size() > 4 * most) {
        shown.truncate(most);
        if (shown.back().isHighSurrogate())
            shown.chop(1);
        shown += QChar(0x2026);
    }
    return QLatin1Char('"') + shown + QLatin1Char('"');
}

} // namespace ts
