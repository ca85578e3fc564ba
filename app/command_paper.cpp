// paper: writes a paper and keeps what was written.
#include "app/commands.h"

#include "model/keeping/outgoing_label.h"
#include "model/keeping/waiting_parts.h"
#include "model/paper/putting_back.h"
#include "model/paper/restoration.h"
#include "model/records/tag_text.h"

#include <QFileInfo>

#include <algorithm>

namespace ts {

namespace {

struct PaperWish {
    PaperKind kind = PaperKind::Restoration;
    QString out;
    QString format;                 ///< pdf, html
    std::optional<PageSize> size;   ///< else the bench's own
    std::optional<QString> edition; ///< one that was handed over before
    LabelWish label;
};

QString dashed(QString words)
{
    return words.replace(QLatin1Char('_'), QLatin1Char('-'));
}

/// What a kind of paper is called; empty for one that is not written yet.
QString nounOf(PaperKind kind)
{
    return kind == PaperKind::Restoration   ? QStringLiteral("restoration sheet")
           : kind == PaperKind::PuttingBack ? QStringLiteral("putting-back sheet")
           : kind == PaperKind::Order       ? QStringLiteral("order list")
           : kind == PaperKind::Label       ? QStringLiteral("label")
                                            : QString();
}

/// What is asked for; what is refused here is wrong usage.
Expected<PaperWish> wishOf(const Options &options, const QString &hint)
{
    const auto kind = parseWord<PaperKind>(options.at(2), QStringLiteral("kind of paper"));
    if (!kind) // the command line writes its kinds with dashes
        return Trouble{kind.trouble().did, {}, dashed(kind.trouble().todo)};
    if (nounOf(*kind).isEmpty())
        return Trouble{QStringLiteral("This version does not write the paper \"%1\" yet").arg(options.at(2)),
                       {},
                       QStringLiteral("it writes restoration, putting-back, order and label")};
    PaperWish wish;
    wish.kind = *kind;
    wish.out = options.value(QStringLiteral("o"));
    wish.format = QFileInfo(wish.out).suffix().toLower();
    if (wish.format != QLatin1String("pdf") && wish.format != QLatin1String("html"))
        return Trouble{QStringLiteral("Say where it goes, as FILE.pdf or FILE.html"), {}, hint};
    const bool label = wish.kind == PaperKind::Label;
    wish.label.bags = options.has(QStringLiteral("bags"));
    if (!label && (wish.label.bags || options.has(QStringLiteral("boxes"))))
        return Trouble{QStringLiteral("Only labels are written for bags and boxes"), {}, QStringLiteral("leave --bags and --boxes out")};
    if (options.has(QStringLiteral("boxes"))) {
        bool ok = false;
        wish.label.boxes = options.value(QStringLiteral("boxes")).toInt(&ok);
        if (!ok || wish.label.boxes < 1)
            return Trouble{QStringLiteral("\"%1\" is no number of boxes").arg(options.value(QStringLiteral("boxes"))), {}, hint};
    }
    if (label && options.has(QStringLiteral("size"))) {
        wish.label.size = options.value(QStringLiteral("size"));
        if (const auto size = labelSize(wish.label.size); !size)
            return size.trouble();
    } else if (options.has(QStringLiteral("size"))) {
        const QString size = options.value(QStringLiteral("size"));
        if (size.compare(QLatin1String("A4"), Qt::CaseInsensitive) != 0 &&
            size.compare(QLatin1String("Letter"), Qt::CaseInsensitive) != 0)
            return Trouble{QStringLiteral("\"%1\" is no paper size").arg(size), {}, QStringLiteral("choose A4 or Letter")};
        wish.size = size.at(0).toUpper() == QLatin1Char('A') ? PageSize::A4 : PageSize::Letter;
    }
    if (options.has(QStringLiteral("edition")))
        wish.edition = options.value(QStringLiteral("edition"));
    if (wish.edition && (wish.size || !wish.label.size.isEmpty()))
        return Trouble{
            QStringLiteral("A sheet that was handed over has its size already"), {}, QStringLiteral("leave --size out")};
    return wish;
}

/// A sheet as it was handed over: the bytes that the workbook kept then.
Exit writeAgain(Invocation &run, Desk &desk, const UnitFile &unit, const PaperWish &wish)
{
    const QString tag = tagText(unit.unit.tag);
    const QList<Paper> &papers = unit.all<Paper>();
    const auto paper = std::find_if(papers.begin(), papers.end(), [&](const Paper &each) {
        return each.kind == wish.kind && QString::number(each.edition) == *wish.edition;
    });
    if (paper == papers.end())
        return run.refuse(Trouble{QStringLiteral("Unit %1 has no %2 of edition %3").arg(tag, nounOf(wish.kind), *wish.edition),
                                  {},
                                  QStringLiteral("turnscrew show lists them")});
    if (paper->format != wish.format)
        return run.refuse(Trouble{QStringLiteral("Edition %1 was written as %2").arg(*wish.edition, paper->format),
                                  {},
                                  QStringLiteral("name the file .") + paper->format});
    const auto bytes = desk.kept(paper->sha256);
    if (!bytes)
        return run.refuse(bytes.trouble());
    if (auto written = writeWhole(wish.out, *bytes); !written)
        return run.refuse(written.trouble());
    run.out() << QStringLiteral("Wrote %1 (%2 %3, edition %4 of unit %5, as it was handed over)\n")
                     .arg(wish.out, nounOf(wish.kind))
                     .arg(paper->number)
                     .arg(paper->edition)
                     .arg(tag);
    return Exit::Done;
}

/// Makes the paper of a kind and hands it over.
Expected<Paper> handedOver(Desk &desk, const UnitFile &unit, const BenchFile &bench, const PaperWish &wish)
{
    const QDateTime now = desk.maker().now().toLocalTime();
    const SheetWish sheet{.format = wish.format, .size = wish.size.value_or(benchPageSize(bench)), .file = wish.out};
    if (wish.kind == PaperKind::Restoration) {
        auto facts = restorationFacts(desk, unit, bench, now);
        return facts ? handOver(desk, unit.unit.id, *facts, sheet) : Expected<Paper>(facts.trouble());
    }
    if (wish.kind == PaperKind::Order)
        return handOverOrder(desk, &unit.unit, bench, now, sheet);
    if (wish.kind == PaperKind::Label) {
        const auto labels = labelsOf(unit, bench, wish.label, now);
        return labels ? handOverLabels(desk, unit.unit, *labels, sheet) : Expected<Paper>(labels.trouble());
    }
    auto facts = gatherPuttingBack(unit, bench, now);
    if (!facts)
        return facts.trouble();
    return handOver(desk, unit.unit,
                    {wish.kind, QStringLiteral("Putting-back sheet"), facts->name, now,
                     [&](const Paper &numbered) {
                         facts->number = numbered.number;
                         facts->edition = numbered.edition;
                         return wish.format == QLatin1String("html") ? Expected<QByteArray>(puttingBackHtml(*facts))
                                                                     : puttingBackPdf(*facts, sheet.size);
                     }},
                    sheet);
}

Exit writeNew(Invocation &run, Desk &desk, const UnitFile &unit, const PaperWish &wish)
{
    const auto bench = desk.benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    const auto kept = handedOver(desk, unit, *bench, wish);
    if (!kept)
        return run.refuse(kept.trouble());
    run.out() << QStringLiteral("Wrote %1 (%2 %3, edition %4 of unit %5, SHA-256 %6)\n")
                     .arg(wish.out, nounOf(wish.kind))
                     .arg(kept->number)
                     .arg(kept->edition)
                     .arg(tagText(unit.unit.tag), kept->sha256.left(16));
    return Exit::Done;
}

/// The order list of all waiting units; "all" stands where a tag would.
Exit writeForAll(Invocation &run, Desk &desk, const PaperWish &wish)
{
    if (wish.kind != PaperKind::Order)
        return run.refuse(Trouble{QStringLiteral("A %1 is of one unit").arg(nounOf(wish.kind)), {}, QStringLiteral("name its tag; all is for the order list")});
    const auto papers = desk.list<Paper>(QStringLiteral("unit"), QVariant());
    const auto bench = papers ? desk.benchFile() : Expected<BenchFile>(papers.trouble());
    if (!bench)
        return run.refuse(bench.trouble());
    if (wish.edition) {
        UnitFile none;
        none.all<Paper>() = *papers;
        return writeAgain(run, desk, none, wish);
    }
    const SheetWish sheet{.format = wish.format, .size = wish.size.value_or(benchPageSize(*bench)), .file = wish.out};
    const auto kept = handOverOrder(desk, nullptr, *bench, desk.maker().now().toLocalTime(), sheet);
    if (!kept)
        return run.refuse(kept.trouble());
    run.out() << QStringLiteral("Wrote %1 (order list %2, edition %3 of all units, SHA-256 %4)\n")
                     .arg(wish.out)
                     .arg(kept->number)
                     .arg(kept->edition)
                     .arg(kept->sha256.left(16));
    return Exit::Done;
}

} // namespace

Exit runPaper(Invocation &run)
{
    Options options(run);
    for (const auto *name : {"o", "size", "edition"})
        options.add(QString::fromLatin1(name), QStringLiteral("value"));
    options.add(QStringLiteral("boxes"), QStringLiteral("value"));
    options.add(QStringLiteral("bags"));
    if (auto read = options.read(run.arguments(), 3, 3); !read)
        return run.misuse(read.trouble().sentence());
    const auto wish = wishOf(options, run.usageHint());
    if (!wish)
        return run.misuse(wish.trouble().sentence());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    if (auto other = notTheBook(wish->out, options.at(0)); !other)
        return run.refuse(other.trouble());
    if (options.at(1) == QLatin1String("all"))
        return writeForAll(run, **desk, *wish);
    const auto id = unitOf(**desk, options.at(1));
    if (!id)
        return run.refuse(id.trouble());
    const auto unit = (*desk)->unitFile(*id);
    if (!unit)
        return run.refuse(unit.trouble());
    return wish->edition ? writeAgain(run, **desk, *unit, *wish) : writeNew(run, **desk, *unit, *wish);
}

} // namespace ts
