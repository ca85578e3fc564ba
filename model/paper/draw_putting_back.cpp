#include "model/paper/putting_back.h"

#include "model/paper/ink.h"
#include "model/paper/paper_files.h"
#include "model/paper/plain_words.h"
#include "model/paper/write_pdf.h"

namespace ts {

namespace {

QList<Filling> textList(const QStringList &texts)
{
    QList<Filling> list;
    for (const QString &text : texts)
        list << Filling().put("text", isolated(text));
    return list;
}

Filling fillingOf(const PuttingBackFacts &facts)
{
    Filling filling;
    for (const auto &[role, colour] : ink::roles)
        filling.texts.insert(QLatin1Char('@') + QLatin1String(role), QString::fromLatin1(colour));
    QStringList identity;
    for (const QString &part : facts.identity)
        identity << isolated(part);
    filling.put("sheet", sheetName(facts)).put("stage", facts.stage).put("name", isolated(facts.name)).put("tag", facts.tag);
    filling.put("identity", identity.join(QStringLiteral(" · ")));
    filling.put("bench", facts.benchName).put("worker", facts.worker).put("date", facts.date);
    filling.put("do_not_power", facts.doNotPower).put("where", facts.whereAt).put("next", facts.next);
    QList<Filling> steps;
    for (const PuttingBackFacts::Step &step : facts.steps)
        steps << Filling()
                     .put("number", QString::number(step.number))
                     .put("what", step.what)
                     .put("fasteners", step.fasteners)
                     .put("more", textList(step.more))
                     .put("kept_in", step.keptIn)
                     .put("caution", step.caution);
    filling.put("steps", steps);
    filling.put("back", facts.back.join(QStringLiteral(", "))).put("left_out", textList(facts.leftOut));
    filling.put("loose", facts.loose).put("other_loose", facts.otherLoose);
    filling.put("cautions", textList(facts.cautions));
    return filling;
}

} // namespace

QString sheetName(const PuttingBackFacts &facts)
{
    return facts.number > 0 ? QStringLiteral("Putting-back sheet %1, edition %2").arg(facts.number).arg(facts.edition)
                            : QStringLiteral("Putting-back sheet, draft");
}

QByteArray puttingBackHtml(const PuttingBackFacts &facts)
{
    return filled(paperFile(QStringLiteral("putting-back.html")), fillingOf(facts)).toUtf8();
}

Expected<QByteArray> puttingBackPdf(const PuttingBackFacts &facts, PageSize size)
{
    const auto did = QStringLiteral("Cannot make the putting-back sheet");
    if (auto can = canDraw(did); !can)
        return can.trouble();
    const QString again = isolated(facts.name) + QStringLiteral(" · tag ") + facts.tag +
                          (facts.number > 0 ? QStringLiteral(" · putting back, sheet %1, edition %2").arg(facts.number).arg(facts.edition)
                                            : QStringLiteral(" · putting back"));
    const QString footer = QStringLiteral("Tick each step; what is left over at the end belongs somewhere.");
    const DocumentPages pages(filled(paperFile(QStringLiteral("putting-back-print.html")), fillingOf(facts)),
                              {again, facts.date, footer, footer}, size);
    return writePdf({did, QStringLiteral("%1: %2, tag %3").arg(sheetName(facts), facts.name, facts.tag), facts.madeAt, size,
                     pages.count(), [&pages](QPainter &painter, int number) { pages.paint(painter, number); }});
}

} // namespace ts
