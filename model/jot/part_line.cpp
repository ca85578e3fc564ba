#include "model/jot/part_line.h"

#include "model/jot/designator.h"

#include <QRegularExpression>

namespace ts {

namespace {

void takePriceInto(PartLine &part, QString &text, const Currency &bench)
{
    if (part.price)
        return;
    if (const auto taken = takePrice(text, bench, Amounts::Marked)) {
        part.price = taken->value;
        text = taken->rest;
    }
}

} // namespace

PartLine splitPart(const QString &whole, const Currency &bench, QDate today, bool ordering)
{
    PartLine part;
    QString text = whole.simplified();
    takePriceInto(part, text, bench);
    if (ordering) {
        if (const qsizetype at = text.lastIndexOf(QLatin1String(" due "), -1, Qt::CaseInsensitive); at > 0)
            if (const auto day = dateOf(text.mid(at + 5), today)) {
                part.due = *day;
                text = text.left(at);
            }
        takePriceInto(part, text, bench);
        if (const qsizetype at = text.lastIndexOf(QLatin1String(" from "), -1, Qt::CaseInsensitive); at > 0) {
            part.supplier = text.mid(at + 6).trimmed();
            text = text.left(at);
        }
        takePriceInto(part, text, bench);
    }
    static const QRegularExpression count(QStringLiteral("^(\\d{1,4}) ?[x×X] (.+)$"));
    if (const auto match = count.match(text); match.hasMatch() && match.captured(1).toInt() > 0) {
        part.quantity = match.captured(1).toInt();
        text = match.captured(2);
    }
    if (const qsizetype at = text.indexOf(QLatin1String(" was "), 0, Qt::CaseInsensitive); at > 0) {
        part.oldValue = text.mid(at + 5).trimmed();
        text = text.left(at).trimmed();
        takePriceInto(part, text, bench);
    }
    const Placed placed = takePlaces(text);
    if (placed.places > 0) {
        part.position = placed.position;
        // "Q605, Q607 matched pair 6.80": a price typed for several places is the price of them all.
        if (placed.places > 1 && !part.quantity && !part.price)
            part.quantity = placed.places;
        text = placed.rest.isEmpty() ? placed.position : placed.rest;
    }
    part.text = text;
    return part;
}

} // namespace ts
