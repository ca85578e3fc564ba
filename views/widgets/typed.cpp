#include "views/widgets/typed.h"

#include "model/jot/phrase.h"
#include "model/values/quantity.h"
#include "model/values/quoted.h"

#include <QCoreApplication>
#include <QLocale>

namespace ts::typed {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts::typed", text);
}

} // namespace

Expected<int> whole(const QString &text, const QString &what, int low, int high)
{
    bool isNumber = false;
    const int number = QLocale().toInt(text.trimmed(), &isNumber);
    if (isNumber && number >= low && number <= high)
        return number;
    return Trouble{tr("%1 is no %2").arg(quoted(text.trimmed()), what), {}, tr("type a whole number from %1 to %2").arg(QLocale().toString(low), QLocale().toString(high))};
}

Expected<std::optional<int>> wholeOrNone(const QString &text, const QString &what, int low, int high)
{
    if (text.trimmed().isEmpty())
        return std::optional<int>();
    const auto number = whole(text, what, low, high);
    return number ? Expected<std::optional<int>>(*number) : number.trouble();
}

Expected<std::optional<double>> shareOrNone(const QString &text, const QString &what)
{
    QString figures = text.trimmed();
    if (figures.isEmpty())
        return std::optional<double>();
    if (figures.endsWith(QLatin1Char('%')))
        figures = figures.chopped(1).trimmed();
    const auto percent = parseNumber(figures);
    if (percent && *percent >= 0 && *percent <= 100)
        return std::optional<double>(*percent / 100);
    return Trouble{tr("%1 is no %2").arg(quoted(text.trimmed()), what), {}, tr("type a percentage from 0 to 100")};
}

Expected<QDate> dayOrNone(const QString &text, QDate today)
{
    const QString day = text.trimmed();
    if (day.isEmpty())
        return QDate();
    if (const auto read = dateOf(day, today))
        return *read;
    QDate local = QLocale().toDate(day, QLocale::ShortFormat);
    if (local.isValid() && local.year() < 2000 && !day.contains(QLatin1String("19")))
        local = local.addYears(100); // a short form of two figures means this century
    if (local.isValid())
        return local;
    return Trouble{tr("%1 is no day").arg(quoted(day)), {}, tr("type it like 28 Nov, Friday or 2026-11-28")};
}

Expected<std::optional<int>> minutesOrNone(const QString &text)
{
    const QString time = text.trimmed();
    if (time.isEmpty())
        return std::optional<int>();
    bool isNumber = false;
    if (const int minutes = QLocale().toInt(time, &isNumber); isNumber && minutes >= 0 && minutes <= 100000)
        return std::optional<int>(minutes);
    // The jot line takes a time behind a text; here it stands alone.
    if (const auto taken = takeMinutes(QStringLiteral("x ") + time); taken && taken->rest == QLatin1String("x"))
        return std::optional<int>(taken->value);
    return Trouble{tr("%1 is no time").arg(quoted(time)), {}, tr("type minutes, like 20, 20m or 1h20")};
}

Trouble inField(const QString &field, const Trouble &trouble)
{
    return {tr("%1: %2").arg(field, trouble.did), trouble.wrong, trouble.todo};
}

} // namespace ts::typed
