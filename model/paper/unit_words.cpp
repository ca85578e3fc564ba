#include "model/paper/unit_words.h"

#include "model/paper/plain_words.h"
#include "model/records/tag_text.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

QString categoryText(Category category)
{
    return category == Category::Other ? QString() : toWord(category).replace(QLatin1Char('_'), QLatin1Char(' '));
}

} // namespace

QString dayText(const QDate &day)
{
    return QLocale::c().toString(day, QStringLiteral("d MMMM yyyy"));
}

QString stageOf(const Unit &unit)
{
    QString text = toWord(unit.stage);
    if (unit.stage == Stage::Closed && unit.outcome)
        text += QStringLiteral(", ") + toWord(*unit.outcome);
    return text.replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString nameOf(const Unit &unit)
{
    // A name that is only praise gives way to maker and model.
    for (const QString &name :
         {withoutBareClaims(unit.name), plainText(unit.maker + QLatin1Char(' ') + unit.makerModel), categoryText(unit.category)})
        if (!name.isEmpty())
            return QString(name).replace(QLatin1Char('\n'), QLatin1Char(' '));
    return QStringLiteral("Unit ") + tagText(unit.tag);
}

QStringList identityOf(const Unit &unit, const QString &name)
{
    QStringList parts;
    const QString category = categoryText(unit.category);
    const QStringList words = category.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const bool said =
        std::any_of(words.begin(), words.end(), [&](const QString &word) { return name.contains(word, Qt::CaseInsensitive); });
    if (!category.isEmpty() && !said)
        parts << category.at(0).toUpper() + category.mid(1);
    QStringList make;
    for (const QString &text : {plainText(unit.maker), plainText(unit.makerModel)})
        if (!text.isEmpty() && !name.contains(text, Qt::CaseInsensitive))
            make << text;
    if (!make.isEmpty())
        parts << make.join(QLatin1Char(' '));
    const QString serial = plainText(unit.serial);
    parts << (serial.isEmpty() ? QStringLiteral("serial number not recorded") : QStringLiteral("serial ") + serial);
    if (unit.year)
        parts << QStringLiteral("made about %1").arg(*unit.year);
    const QString mains = plainText(unit.mains);
    const QString protection = unit.protectionClass ? QStringLiteral("class ") + toWord(*unit.protectionClass) : QString();
    if (const QString supply =
            QStringList{mains, protection}.filter(QRegularExpression(QStringLiteral("."))).join(QStringLiteral(", "));
        !supply.isEmpty())
        parts << supply;
    parts << QStringLiteral("tag ") + tagText(unit.tag);
    parts.first() = parts.first().at(0).toUpper() + parts.first().mid(1);
    return parts;
}

} // namespace ts
