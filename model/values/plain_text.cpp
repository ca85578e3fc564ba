#include "model/values/plain_text.h"

#include <QStringList>

#include <algorithm>

namespace ts {

Expected<QString> plainText(const QString &given, const QString &what, qsizetype most)
{
    const QString text = given.simplified();
    const auto control = std::find_if(text.begin(), text.end(), [](QChar c) { return c.category() == QChar::Other_Control; });
    if (control != text.end())
        return Trouble{
            QStringLiteral("%1 holds a control character (U+%2)").arg(what).arg(control->unicode(), 4, 16, QLatin1Char('0')),
            {},
            QStringLiteral("take it out")};
    if (text.size() > most)
        return Trouble{
            QStringLiteral("%1 has %2 characters").arg(what).arg(text.size()), {}, QStringLiteral("%1 is the most").arg(most)};
    return text;
}

Expected<QString> plainLines(const QString &given, const QString &what, qsizetype most)
{
    QStringList lines;
    for (const QString &line : given.trimmed().split(QLatin1Char('\n'))) {
        const auto text = plainText(line, what, most);
        if (!text)
            return text.trouble();
        lines << *text;
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace ts
