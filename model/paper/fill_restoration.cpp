#include "model/paper/fill_restoration.h"

#include "model/paper/ink.h"
#include "model/paper/paper_files.h"
#include "model/paper/plain_words.h"
#include "model/paper/web_picture.h"

#include <algorithm>

namespace ts {

namespace {

const auto dot = QStringLiteral(" · ");

QString oneLine(QString text)
{
    return text.replace(QLatin1Char('\n'), QLatin1Char(' '));
}

/// Texts that are printed in one line with others, each kept in its own reading direction.
QString joined(const QStringList &texts, const QString &parting)
{
    QStringList safe;
    for (const QString &text : texts)
        if (!text.isEmpty())
            safe << isolated(oneLine(text));
    return safe.join(parting);
}

/// Lines of which each has its own reading direction, to stand inside a sentence.
QString isolatedLines(const QString &text)
{
    QStringList lines = text.split(QLatin1Char('\n'));
    for (QString &line : lines)
        line = isolated(line);
    return lines.join(QLatin1Char('\n'));
}

QList<Filling> textList(const QStringList &texts)
{
    QList<Filling> list;
    for (const QString &text : texts)
        list << Filling().put("text", text);
    return list;
}

const auto byFigureAlone = QStringLiteral("by the figure alone");

const auto byFigureNote = QStringLiteral(
    "“By the figure alone”: the uncertainty of the meter was not taken into account, because it is not on record; how sure the word is cannot be said.");
const auto plainVerdict = QStringLiteral("by_figure");

/// A verdict that no uncertainty stands behind is a plain word: it does not look like one that was weighed.
void putVerdict(Filling &filling, const QString &verdict, const QString &text, bool figureAlone)
{
    filling.put("verdict", figureAlone && verdict == u"within" ? plainVerdict : verdict).put("verdict_text", text);
}

QList<Filling> workList(const RestorationFacts &facts)
{
    QList<Filling> list;
    for (const RestorationFacts::Work &row : facts.work) {
        Filling filling;
        filling.put("seen", row.seen).put("conditions", row.conditions).put("state", row.state);
        filling.put("no_cause", row.seen.isEmpty() ? QString() : QStringLiteral("no cause established"));
        filling.put("causes", textList(row.causes)).put("done", textList(row.done));
        list << filling;
    }
    return list;
}

QList<Filling> measuredList(const RestorationFacts &facts)
{
    QList<Filling> list;
    for (const RestorationFacts::Measured &row : facts.measured) {
        QStringList below{row.conditions};
        if (facts.oneMeter.isEmpty() && !row.meter.isEmpty())
            below << QStringLiteral("with ") + row.meter;
        Filling filling;
        filling.put("what", row.what).put("below", joined(below, dot)).put("wanted", row.wanted).put("source", row.source);
        filling.put("found", row.found.text).put("found_spread", row.found.spread);
        filling.put("during", row.during.text).put("during_spread", row.during.spread);
        filling.put("leaves", row.leaves.text).put("leaves_spread", row.leaves.spread);
        putVerdict(filling, row.verdict, row.verdictText, row.byFigureAlone);
        filling.put("chance", row.byFigureAlone ? byFigureAlone : row.chance);
        list << filling;
    }
    return list;
}

/// Date and initials where all checks that were made share them, else nothing.
QString commonBy(const QList<RestorationFacts::Proved> &checks)
{
    QStringList all;
    for (const RestorationFacts::Proved &check : checks)
        if (check.made)
            all << check.by;
    all.removeDuplicates();
    return all.size() == 1 ? all.first() : QString();
}

QString commonByText(const QString &by)
{
    return by.isEmpty() ? QString()
                        : QStringLiteral("Checks made: ") + isolated(by) +
                              (by.endsWith(QLatin1Char('.')) ? QString() : QStringLiteral("."));
}

QList<Filling> provedList(const QList<RestorationFacts::Proved> &checks)
{
    const QString common = commonBy(checks);
    QList<Filling> list;
    for (const RestorationFacts::Proved &check : checks) {
        const QString with = check.instrument.isEmpty() ? QString() : QStringLiteral("with ") + check.instrument;
        const QString by = check.by == common ? QString() : check.by;
        list << Filling()
                    .put("text", check.text)
                    .put("below", joined({check.result, with, by}, dot))
                    .put("came_out", check.byFigureAlone && check.cameOut == u"within" ? plainVerdict : check.cameOut)
                    .put("came_out_text", check.cameOutText);
    }
    return list;
}

QList<Filling> soakedList(const RestorationFacts &facts)
{
    QList<Filling> list;
    for (const RestorationFacts::Soaked &soak : facts.soaked) {
        const QString stops = soak.interruptions.isEmpty() ? QStringLiteral("no interruption on record")
                                                           : QStringLiteral("interrupted: ") + soak.interruptions;
        list << Filling()
                    .put("text", soak.name.isEmpty() ? QStringLiteral("Soak, ") + soak.length
                                                     : QStringLiteral("Soak, %1: %2").arg(soak.length, isolated(oneLine(soak.name))))
                    .put("below", joined({stops, soak.conditions, soak.readings, soak.byFigureAlone ? byFigureAlone : QString()}, dot));
        putVerdict(list.last(), soak.verdict, soak.verdictText, soak.byFigureAlone);
    }
    return list;
}

void putFitted(const RestorationFacts &facts, Filling &filling)
{
    QList<Filling> rows;
    QStringList line;
    bool detailed = false;
    for (const RestorationFacts::Fitted &part : facts.fitted) {
        const QString what = part.quantity > 1 ? QStringLiteral("%1 × %2").arg(part.quantity).arg(part.what) : part.what;
        detailed = detailed || !part.position.isEmpty() || !part.oldValue.isEmpty();
        line << what;
        rows << Filling().put("what", what).put("position", part.position).put("old", part.oldValue);
    }
    filling.put("fitted", detailed ? rows : QList<Filling>());
    filling.put("fitted_line", line.isEmpty()
                                   ? QStringLiteral("No part is on record as fitted; what is inside was there when it came.")
                               : detailed ? QString()
                                          : joined(line, dot));
}

QString measuredNote(const RestorationFacts &facts)
{
    QStringList note;
    if (!facts.oneMeter.isEmpty())
        note << QStringLiteral("All readings with %1.").arg(isolated(facts.oneMeter));
    bool spread = false;
    bool alone = std::any_of(facts.soaked.begin(), facts.soaked.end(), [](const auto &soak) { return soak.byFigureAlone; });
    bool repeated = false;
    for (const RestorationFacts::Measured &row : facts.measured) {
        repeated = repeated || row.repeated;
        alone = alone || row.byFigureAlone;
        spread = spread || !row.found.spread.isEmpty() || !row.leaves.spread.isEmpty() || !row.during.spread.isEmpty();
    }
    if (spread)
        note << QStringLiteral(
            "± is the uncertainty of the reading at 95 %: “within” and “outside” are said only where all of it agrees.");
    if (alone)
        note << byFigureNote;
    if (repeated)
        note << QStringLiteral("Of several readings at one place, the first as found and the last as it leaves are shown.");
    return note.join(QLatin1Char(' '));
}

void putSafety(const RestorationFacts &facts, Filling &filling)
{
    const RestorationFacts::Safety &safety = facts.safety;
    filling.put("safety_class", safety.protectionClass.isEmpty()
                                    ? QStringLiteral("The protection class is not on record.")
                                    : QStringLiteral("Protection class %1 (IEC 61140).").arg(safety.protectionClass));
    QStringList note;
    if (!safety.recorded)
        note << (safety.measured ? QStringLiteral("It was measured, but nothing that holds as a test is on record.")
                                 : QStringLiteral("No electrical safety test of this unit is on record."));
    else if (safety.ruleSets.isEmpty() && safety.measured)
        note << QStringLiteral("Limits used: those shown; which rules they come from is not on record.");
    else if (safety.ruleSets.isEmpty())
        note << QStringLiteral("Which limits were used is not on record.");
    else
        note << QStringLiteral("Limits used: %1.").arg(isolated(safety.ruleSets));
    if (safety.untested)
        note << QStringLiteral("What was not tested is named under “Not done, not tested”.");
    if (std::any_of(safety.checks.begin(), safety.checks.end(), [](const auto &check) { return check.byFigureAlone; }))
        note << byFigureNote;
    filling.put("safety_note", note.join(QLatin1Char(' ')))
        .put("safety", provedList(safety.checks))
        .put("safety_by", commonByText(commonBy(safety.checks)));
    filling.put(
        "safety_limits",
        safety.recorded
            ? QStringLiteral("Made by the bench with the instruments named; no certificate: local codes and licensed practice "
                             "come first.")
            : QStringLiteral("Before use, have it looked at as your local codes ask; they and licensed practice come first."));
}

} // namespace

QString sheetName(const RestorationFacts &facts)
{
    return facts.number > 0 ? QStringLiteral("Restoration sheet %1, edition %2").arg(facts.number).arg(facts.edition)
                            : QStringLiteral("Restoration sheet, a draft that was not handed over");
}

Filling restorationFilling(const RestorationFacts &facts)
{
    Filling filling;
    for (const auto &[role, colour] : ink::roles)
        filling.texts.insert(QLatin1Char('@') + QString::fromLatin1(role), QString::fromLatin1(colour));
    filling.put("sheet", sheetName(facts)).put("stage", facts.stage);
    filling.put("number", facts.number > 0 ? QString::number(facts.number) : QString());
    filling.put("name", facts.name).put("tag", facts.tag).put("identity", joined(facts.identity, dot));
    filling.put("bench", facts.benchName).put("date", facts.date).put("worker", facts.worker);
    filling.put("address", textList(facts.benchAddress));
    filling.put("said_by", facts.saidBy).put("claim", isolatedLines(facts.claim)).put("work", workList(facts));
    filling.put("no_work", QStringLiteral("No fault was noted at this bench, and no work is on record."));

    bool during = false;
    for (const RestorationFacts::Measured &row : facts.measured)
        during = during || !row.during.text.isEmpty();
    filling.put("measured", measuredList(facts))
        .put("measured_note", measuredNote(facts))
        .put("has_during", during ? QStringLiteral("yes") : QString());

    filling.put("proved", provedList(facts.proved))
        .put("proved_by", commonByText(commonBy(facts.proved)))
        .put("soaked", soakedList(facts));
    filling.put("any_proof", facts.proved.isEmpty() && facts.soaked.isEmpty() ? QString() : QStringLiteral("yes"));
    putFitted(facts, filling);
    filling.put("not_done", textList(facts.notDone));

    QList<Filling> buyer;
    for (const RestorationFacts::Labelled &line : facts.buyer)
        buyer << Filling().put("label", line.label).put("text", line.text);
    filling.put("buyer", buyer).put("flaws", textList(facts.flaws));
    filling.put("no_flaws",
                facts.pictures.isEmpty()
                    ? QStringLiteral("No flaw was noted, which is not the same as none: ask.")
                    : QStringLiteral("No flaw was noted, which is not the same as none: look at the photos, and ask."));
    filling.put("notices", textList(facts.notices));
    putSafety(facts, filling);
    filling.put("use", textList(facts.use)).put("cautions", textList(facts.cautions));
    const bool tests = !facts.measured.isEmpty() || facts.safety.recorded;
    filling.put("limits_of_tests", !tests
                                       ? QString()
                                       : QStringLiteral("Measured with the instruments named, by common workshop practice; this "
                                                        "does not replace an inspection that local rules may ask for."));
    filling.put("terms", facts.terms).put("no_terms", QStringLiteral("No terms of this bench are on record."));
    filling.put("rights", QStringLiteral("Whatever stands here, your rights by law remain."));
    return filling;
}

QByteArray restorationHtml(const RestorationFacts &facts)
{
    Filling filling = restorationFilling(facts);
    QList<Filling> photos;
    QList<Filling> longCaptions;
    for (const RestorationFacts::Picture &picture : facts.pictures) {
        constexpr qsizetype shownWhole = 60; // letters that are sure to stay on a photo of the least width
        if (picture.caption.size() > shownWhole)
            longCaptions << Filling().put("text",
                                          QStringLiteral("Photo %1: %2").arg(photos.size() + 1).arg(isolated(picture.caption)));
        photos << Filling()
                      .put("caption", picture.caption)
                      .put("data", webPicture(picture.jpeg))
                      .put("width", QString::number(picture.width))
                      .put("height", QString::number(picture.height))
                      .put("share", QString::number(picture.width / double(picture.height), 'f', 3));
    }
    filling.put("photos", photos).put("long_captions", longCaptions);
    return filled(paperFile(QStringLiteral("restoration.html")), filling).toUtf8();
}

} // namespace ts
