// paper: writes a paper and keeps what was written.
#include "app/commands.h"

#include "model/paper/restoration.h"
#include "model/records/settings.h"
#include "model/records/tag_text.h"

#include <QFileInfo>
#include <QSaveFile>

namespace ts {

namespace {

Expected<RestorationFacts> factsOf(Desk &desk, const Id<Unit> &id, const QDateTime &now)
{
    const auto file = desk.unitFile(id);
    if (!file)
        return file.trouble();
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    QList<PaperPhoto> photos;
    for (const Photo &photo : file->all<Photo>()) {
        const auto bytes = desk.kept(photo.sha256);
        if (!bytes)
            return bytes.trouble();
        photos << PaperPhoto{photo, *bytes};
    }
    return gatherRestoration(*file, *bench, photos, now);
}

Expected<QByteArray> drawn(const RestorationFacts &facts, const QString &format, PageSize size)
{
    if (format == QLatin1String("html"))
        return restorationHtml(facts);
    return restorationPdf(facts, size);
}

} // namespace

Exit runPaper(Invocation &run)
{
    Options options(QStringLiteral("paper"), QStringLiteral("BOOK TAG KIND -o FILE.pdf|FILE.html [--size A4|Letter]"));
    options.add(QStringLiteral("o"), QStringLiteral("FILE"));
    options.add(QStringLiteral("size"), QStringLiteral("size"));
    if (auto read = options.read(run.arguments(), 3, 3); !read)
        return run.misuse(read.trouble().sentence());
    const auto kind = parseWord<PaperKind>(options.at(2), QStringLiteral("kind of paper"));
    if (!kind)
        return run.misuse(kind.trouble().sentence());
    if (*kind != PaperKind::Restoration)
        return run.misuse(QStringLiteral("This version does not write the paper \"%1\" yet; it writes restoration.").arg(options.at(2)));
    const QString out = options.value(QStringLiteral("o"));
    const QString format = QFileInfo(out).suffix().toLower();
    if (format != QLatin1String("pdf") && format != QLatin1String("html"))
        return run.misuse(QStringLiteral("Say where it goes, as FILE.pdf or FILE.html: turnscrew paper BOOK TAG KIND -o FILE.pdf."));

    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto id = unitOf(**desk, options.at(1));
    if (!id)
        return run.refuse(id.trouble());
    const auto bench = (*desk)->benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    const QString size = options.has(QStringLiteral("size")) ? options.value(QStringLiteral("size")) : bench->setting(settings::paperSize, QStringLiteral("A4"));
    if (size.compare(QLatin1String("A4"), Qt::CaseInsensitive) != 0 && size.compare(QLatin1String("Letter"), Qt::CaseInsensitive) != 0)
        return run.misuse(QStringLiteral("\"%1\" is no paper size; choose A4 or Letter.").arg(size));

    Maker maker = (*desk)->maker();
    Paper paper = maker.fresh<Paper>();
    const auto facts = factsOf(**desk, *id, paper.at.toLocalTime());
    if (!facts)
        return run.refuse(facts.trouble());
    const auto bytes = drawn(*facts, format, size.compare(QLatin1String("A4"), Qt::CaseInsensitive) == 0 ? PageSize::A4 : PageSize::Letter);
    if (!bytes)
        return run.refuse(bytes.trouble());

    // The file appears only when the workbook has kept its copy, and the copy is kept only when the file can be written.
    QSaveFile file(out);
    if (!file.open(QIODevice::WriteOnly) || file.write(*bytes) != bytes->size())
        return run.refuse(Trouble{QStringLiteral("Cannot write %1").arg(out), file.errorString(), {}});
    const auto sha256 = (*desk)->keep(*bytes);
    if (!sha256)
        return run.refuse(sha256.trouble());
    paper.unit = *id;
    paper.kind = *kind;
    paper.madeAt = paper.at;
    paper.sha256 = *sha256;
    paper.format = format;
    paper.title = facts->name;
    if (auto applied = (*desk)->apply(Change(QStringLiteral("Restoration sheet of %1 written").arg(facts->tag)).add(paper)); !applied)
        return run.refuse(applied.trouble());
    if (!file.commit())
        return run.refuse(Trouble{QStringLiteral("Cannot write %1").arg(out), file.errorString(), QStringLiteral("the workbook kept its copy")});
    const auto kept = (*desk)->get(paper.id);
    run.out() << "Wrote " << out;
    if (kept)
        run.out() << QStringLiteral(" (restoration sheet %1, edition %2 of unit %3, SHA-256 %4)").arg(kept->number).arg(kept->edition).arg(facts->tag, kept->sha256.left(16));
    run.out() << '\n';
    return Exit::Done;
}

} // namespace ts
