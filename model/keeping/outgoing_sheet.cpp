#include "model/keeping/outgoing_sheet.h"

#include "model/paper/gather_restoration.h"
#include "model/records/settings.h"

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

Expected<OutgoingSheet> OutgoingSheet::begin(Desk &desk, const Id<Unit> &unit, const RestorationFacts &facts, const QByteArray &bytes,
                                             const QString &format, const QString &file)
{
    OutgoingSheet sheet;
    if (!file.isEmpty()) {
        sheet.m_name = file;
        sheet.m_file = std::make_unique<WholeFile>(file);
        if (auto written = filled(file, *sheet.m_file, bytes); !written)
            return written.trouble();
    }
    const auto sha256 = desk.keep(bytes);
    if (!sha256)
        return sha256.trouble();
    Paper paper = desk.maker().fresh<Paper>();
    paper.unit = unit;
    paper.kind = PaperKind::Restoration;
    paper.madeAt = facts.madeAt.toUTC();
    paper.sha256 = *sha256;
    paper.format = format;
    paper.title = facts.name;
    sheet.m_paper = paper.id;
    sheet.m_change = Change(QStringLiteral("Restoration sheet of %1 %2").arg(facts.tag, file.isEmpty() ? QStringLiteral("printed") : QStringLiteral("written"))).add(paper);
    return sheet;
}

Expected<Paper> OutgoingSheet::finish(Desk &desk)
{
    const auto kept = desk.get(m_paper);
    if (!kept)
        return kept.trouble();
    if (m_file && !m_file->commit())
        return cannotWrite(m_name, *m_file, QStringLiteral("the workbook kept its copy as edition %1").arg(kept->edition));
    return *kept;
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
