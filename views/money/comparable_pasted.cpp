#include "views/money/comparable_pasted.h"

#include "model/exchange/read_comparables.h"
#include "views/money/comparables_card.h"
#include "views/widgets/locale_text.h"

#include <QBuffer>
#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

QString did()
{
    return ComparablesCard::tr("No sale was recorded");
}

/// One line as it would be typed: its cells side by side. A comma inside a number stays.
QString asTyped(QString line)
{
    static const QRegularExpression cells(QStringLiteral("[\\t;]|(?<=\\.\\d\\d),|,(?!\\d{1,3}(?:[.,\\s]|$))"));
    return line.replace(cells, QStringLiteral(" ")).remove(QLatin1Char('"')).simplified();
}

Expected<QList<Comparable>> listed(const QString &text, const BenchFile &bench, Maker &maker)
{
    QByteArray bytes = text.toUtf8();
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    const auto read = readComparables(buffer, did(), bench, {}, {}, {}, maker);
    if (!read)
        return read.trouble();
    if (const QStringList problems = read->problems.lines(); !problems.isEmpty())
        return Trouble{did(), problems.first(), {}};
    QList<Comparable> sales;
    for (const ChangeItem &item : read->change.items()) {
        auto sale = description<Comparable>().fromRow(*item.after);
        if (!sale)
            return sale.trouble();
        sales << *std::move(sale);
    }
    return sales;
}

Expected<QList<Comparable>> typedLines(const QStringList &lines, const UnitFile &file, const BenchFile &bench, const QDate &today, Maker &maker)
{
    QList<Comparable> sales;
    for (int i = 0; i < lines.size(); ++i) {
        if (lines.at(i).trimmed().isEmpty())
            continue;
        auto sale = comparableTyped(asTyped(lines.at(i)), file.unit, bench.currency(), today, maker);
        if (!sale)
            return Trouble{did(), ComparablesCard::tr("line %1: %2").arg(shown::count(i + 1), sale.trouble().wrong), sale.trouble().todo};
        sales << *std::move(sale);
    }
    return sales;
}

bool sameSale(Comparable a, const Comparable &b)
{
    a.id = b.id;
    a.at = b.at;
    a.version = b.version;
    return a == b;
}

} // namespace

Expected<PastedSales> salesPasted(const QString &text, const UnitFile &file, const BenchFile &bench, const QDate &today, Maker &maker)
{
    static const QRegularExpression ends(QStringLiteral("\\r\\n|\\r|\\n"));
    static const QRegularExpression digit(QStringLiteral("\\d"));
    const QStringList lines = text.trimmed().split(ends);
    if (lines.size() > 10'000)
        return Trouble{did(), ComparablesCard::tr("these are more than 10,000 lines"), {}};
    // A line without any figure is no sale: it names the columns.
    const auto sales = lines.first().contains(digit) ? typedLines(lines, file, bench, today, maker) : listed(text.trimmed(), bench, maker);
    if (!sales)
        return sales.trouble();
    PastedSales made;
    QList<Comparable> known = file.all<Comparable>();
    for (Comparable sale : *sales) {
        sale.unit = file.unit.id;
        if (sale.makerModel.isEmpty()) {
            sale.maker = file.unit.maker;
            sale.makerModel = file.unit.makerModel;
        }
        if (sale.category == Category::Other)
            sale.category = file.unit.category;
        if (std::any_of(known.cbegin(), known.cend(), [&](const Comparable &each) { return sameSale(sale, each); })) {
            ++made.there;
            continue;
        }
        known << sale;
        made.change.add(sale);
        ++made.added;
    }
    made.change.setSentence(ComparablesCard::tr("%n comparable sale(s) pasted", nullptr, made.added));
    return made;
}

} // namespace ts
