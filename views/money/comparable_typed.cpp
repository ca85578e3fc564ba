#include "views/money/comparables_card.h"

#include "model/values/plain_text.h"
#include "views/widgets/locale_text.h"

#include <QRegularExpression>

namespace ts {

namespace {

// "27 Sep", "27 Sep 2026", "2026-09-27", "27/9/2026"; a day without a year is the last one that has been.
QDate takeDay(QString &text, const QDate &today)
{
    static const QRegularExpression iso(QStringLiteral("\\b(\\d{4}-\\d{2}-\\d{2})\\b"));
    if (const auto match = iso.match(text); match.hasMatch()) {
        const QDate day = QDate::fromString(match.captured(1), Qt::ISODate);
        if (day.isValid())
            text.remove(match.capturedStart(), match.capturedLength());
        return day;
    }
    static const QRegularExpression words(QStringLiteral("\\b(\\d{1,2})\\.?\\s+([^\\W\\d_]{3,})\\.?(?:\\s+(\\d{4}))?"), QRegularExpression::UseUnicodePropertiesOption);
    const auto match = words.match(text);
    if (!match.hasMatch())
        return {};
    for (const QLocale &locale : {QLocale(), QLocale::c()})
        for (int month = 1; month <= 12; ++month) {
            const QString name = match.captured(2);
            if (!locale.monthName(month).startsWith(name.left(3), Qt::CaseInsensitive) || !locale.monthName(month).startsWith(name, Qt::CaseInsensitive))
                continue;
            const int year = match.captured(3).isEmpty() ? today.year() : match.captured(3).toInt();
            QDate day(year, month, match.captured(1).toInt());
            if (!day.isValid())
                return {};
            if (match.captured(3).isEmpty() && day > today)
                day = day.addYears(-1);
            text.remove(match.capturedStart(), match.capturedLength());
            return day;
        }
    return {};
}

bool takeWords(QString &text, const QString &words)
{
    const QRegularExpression whole(QStringLiteral("\\b%1\\b").arg(QRegularExpression::escape(words)), QRegularExpression::CaseInsensitiveOption);
    const auto match = whole.match(text);
    if (!match.hasMatch())
        return false;
    text.remove(match.capturedStart(), match.capturedLength());
    return true;
}

} // namespace

Expected<Comparable> comparableTyped(const QString &line, const Unit &unit, const Currency &currency, const QDate &today, Maker &maker)
{
    const auto clean = plainText(line, ComparablesCard::tr("The line"), shortText);
    if (!clean)
        return clean.trouble();
    QString text = *clean;
    Comparable sale = maker.fresh<Comparable>();
    sale.unit = unit.id;
    sale.maker = unit.maker;
    sale.makerModel = unit.makerModel;
    sale.category = unit.category;
    sale.asking = takeWords(text, QStringLiteral("asking")) || takeWords(text, ComparablesCard::tr("asking"));
    sale.carriageIncluded = takeWords(text, QStringLiteral("carriage included")) || takeWords(text, ComparablesCard::tr("carriage included"));
    text = text.trimmed();
    const QString first = text.section(QLatin1Char(' '), 0, 0);
    const auto price = shown::parseMoney(first, currency);
    if (!price || price->minor() <= 0)
        return Trouble{ComparablesCard::tr("No sale was recorded"), ComparablesCard::tr("“%1” is no price").arg(first),
                       ComparablesCard::tr("begin with the price: 118.00 27 Sep working")};
    sale.price = *price;
    text.remove(0, first.size());
    sale.soldOn = takeDay(text, today);
    if (takeWords(text, QStringLiteral("not working")) || takeWords(text, ComparablesCard::tr("not working")))
        sale.working = false;
    else if (takeWords(text, QStringLiteral("working")) || takeWords(text, ComparablesCard::tr("working")))
        sale.working = true;
    static const QRegularExpression edges(QStringLiteral("^[\\s,;]+|[\\s,;]+$"));
    sale.condition = text.simplified().remove(edges);
    return sale;
}

} // namespace ts
