#include "views/unit/typed_day.h"

#include "model/jot/phrase.h"

#include <QCoreApplication>
#include <QLocale>

namespace ts {

Expected<QDate> typedDay(const QString &typed, QDate today)
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("StageAsk", text); };
    const QString text = typed.trimmed();
    if (text.isEmpty())
        return QDate();
    QDate day = QLocale().toDate(text, QLocale::ShortFormat);
    if (day.isValid() && day.year() < 2000)
        day = day.addYears(100); // two figures of the year mean this century
    if (day.isValid())
        return day;
    if (const auto spoken = dateOf(text, today))
        return *spoken;
    return Trouble{tr("“%1” is no day").arg(text), {}, tr("write it as 28 Nov, Friday or 2026-11-28")};
}

} // namespace ts
