#include "model/keeping/outgoing_label.h"

#include "model/records/settings.h"

namespace ts {

Expected<Labels> labelsOf(const UnitFile &unit, const BenchFile &bench, const LabelWish &wish, const QDateTime &now)
{
    const QString own = wish.bags ? bench.setting(settings::bagLabelSize, QStringLiteral("57x32")) : bench.setting(settings::labelSize, QStringLiteral("89x36"));
    const auto size = labelSize(wish.size.isEmpty() ? own : wish.size);
    if (!size)
        return size.trouble();
    if (wish.bags)
        return bagLabels(unit, *size, now);
    if (wish.boxes < 1 || wish.boxes > 99)
        return Trouble{QStringLiteral("A unit is kept in 1 to 99 boxes"), {}, {}};
    return tagLabels(unit, bench, *size, now, wish.boxes);
}

Expected<Paper> handOverLabels(Desk &desk, const Unit &unit, const Labels &labels, const SheetWish &wish)
{
    return handOver(desk, unit,
                    {PaperKind::Label, QStringLiteral("Label"), labels.title, labels.madeAt,
                     [&](const Paper &) { return wish.format == QLatin1String("html") ? Expected<QByteArray>(labelsHtml(labels)) : labelsPdf(labels); }},
                    wish);
}

} // namespace ts
