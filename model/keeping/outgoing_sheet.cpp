#include "model/keeping/outgoing_sheet.h"

#include "model/exchange/whole_file.h"
#include "model/paper/restoration.h"
#include "model/records/settings.h"
#include "model/records/tag_text.h"

namespace ts {

namespace {

Trouble cannotWrite(const QString &name, const WholeFile &file, const QString &todo = QStringLiteral("choose another place"))
{
    return Trouble{QStringLiteral("Cannot write %1").arg(name), file.errorString(), todo};
}

Expected<void> filled(const QString &name, WholeFile &file, const QByteArray &bytes)
{
    if (!file.start() || file.write(bytes) != bytes.size())
        return cannotWrite(name, file);
    return {};
}

} // namespace

Expected<RestorationFacts> restorationFacts(Desk &desk, const UnitFile &unit, const BenchFile &bench, const QDateTime &now)
{
    const auto photos = photosForSheet(unit.all<Photo>(), [&desk](const Photo &photo) { return desk.kept(photo.sha256); });
    if (!photos)
        return photos.trouble();
    return gatherRestoration(unit, bench, *photos, now);
}

PageSize benchPageSize(const BenchFile &bench)
{
    return bench.setting(settings::paperSize) == QLatin1String("Letter") ? PageSize::Letter : PageSize::A4;
}

Expected<Paper> handOver(Desk &desk, const Unit &unit, const OutgoingPaper &outgoing, const SheetWish &wish)
{
    Paper paper = desk.maker().fresh<Paper>();
    paper.unit = unit.id;
    paper.kind = outgoing.kind;
    paper.madeAt = outgoing.madeAt.toUTC();
    paper.format = wish.format;
    paper.title = outgoing.title;
    const bool printed = wish.file.isEmpty();
    const QString of = unit.id.isNull() ? QStringLiteral("all units") : tagText(unit.tag);
    const auto sentence = QStringLiteral("%1 of %2 %3").arg(outgoing.noun, of,
                                                           printed ? QStringLiteral("printed") : QStringLiteral("written"));
    WholeFile file(wish.file);
    const auto kept = desk.applyPaper(paper, sentence, [&](const Paper &numbered) -> Expected<QByteArray> {
        auto bytes = outgoing.make(numbered);
        if (bytes && !printed)
            if (auto written = filled(wish.file, file, *bytes); !written)
                return written.trouble();
        return bytes;
    });
    if (kept && !printed && !file.commit())
        return cannotWrite(wish.file, file, QStringLiteral("the workbook kept its copy as edition %1").arg(kept->edition));
    return kept;
}

Expected<Paper> handOver(Desk &desk, const Id<Unit> &unit, RestorationFacts facts, const SheetWish &wish)
{
    const auto of = desk.get(unit);
    if (!of)
        return of.trouble();
    return handOver(desk, *of,
                    {PaperKind::Restoration, QStringLiteral("Restoration sheet"), facts.name, facts.madeAt,
                     [&](const Paper &numbered) {
                         facts.number = numbered.number;
                         facts.edition = numbered.edition;
                         return wish.format == QLatin1String("html") ? Expected<QByteArray>(restorationHtml(facts))
                                                                     : restorationPdf(facts, wish.size);
                     }},
                    wish);
}

Expected<void> writeWhole(const QString &file, const QByteArray &bytes)
{
    WholeFile target(file);
    if (auto written = filled(file, target, bytes); !written)
        return written.trouble();
    if (!target.commit())
        return cannotWrite(file, target);
    return {};
}

} // namespace ts
