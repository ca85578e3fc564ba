#include "model/exchange/cell_values.h"

#include "model/values/quoted.h"

#include <QLocale>
#include <QStringList>

namespace ts {

Expected<QDate> dayFromCell(const QString &text)
{
    const QString written = text.trimmed();
    if (const QDate iso = QDate::fromString(written, Qt::ISODate); iso.isValid() && written.size() == 10)
        return iso;
    const QLocale english = QLocale::c();
    for (const auto &form : {QStringLiteral("d MMM yyyy"), QStringLiteral("d MMMM yyyy"), QStringLiteral("d.M.yyyy")})
        if (const QDate day = english.toDate(written, form); day.isValid())
            return day;
    return Trouble{quoted(text) + QStringLiteral(" is no date"), {}, QStringLiteral("write it as 2026-11-28")};
}

Expected<bool> yesNoFromCell(const QString &text)
{
    static const QStringList yes{QStringLiteral("yes"), QStringLiteral("y"), QStringLiteral("true"), QStringLiteral("1")};
    static const QStringList no{QStringLiteral("no"), QStringLiteral("n"), QStringLiteral("false"), QStringLiteral("0")};
    const QString word = text.trimmed().toLower();
    if (yes.contains(word))
        return true;
    if (no.contains(word))
        return false;
    return Trouble{quoted(text) + QStringLiteral(" is neither yes nor no"), {}, {}};
}

Expected<int> wholeFromCell(const QString &text, int low, int high)
{
    bool ok = false;
    const int number = text.trimmed().toInt(&ok);
    if (ok && number >= low && number <= high)
        return number;
    return Trouble{quoted(text) + QStringLiteral(" is no whole number from %1 to %2").arg(low).arg(high), {}, {}};
}

} // namespace ts
