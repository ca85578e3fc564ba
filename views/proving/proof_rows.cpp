#include "views/proving/proof_rows.h"

#include "model/sums/electrical_safety.h"
#include "model/values/plain_text.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>

#include <algorithm>

namespace ts {

namespace {

QString tr(const char *text, int n = -1)
{
    return QCoreApplication::translate("ts", text, nullptr, n);
}

Tone toneOf(ProofOutcome outcome)
{
    return outcome == ProofOutcome::Passed ? Tone::Within : outcome == ProofOutcome::Failed ? Tone::Outside : Tone::Neutral;
}

QString addingText(ProofKind kind)
{
    switch (kind) {
    case ProofKind::Cosmetic:
        return tr("Add a proof of its looks");
    case ProofKind::ElectricalSafety:
        return tr("Add a proof of electrical safety");
    case ProofKind::Function:
        break;
    }
    return tr("Add a proof of function");
}

GridRow recordRow(const Proof &proof, QDate today)
{
    GridCell text = typedCell(proof.text);
    text.strong = true;
    GridCell cameOut = typedCell(verdictOf(proof) == Verdict::TooCloseToCall && proof.cameOut == ProofOutcome::NotTested ? tr("too close to call") : proofOutcomeText(proof.cameOut), toWord(proof.cameOut));
    cameOut.pill = toneOf(proof.cameOut);
    const GridCell rules = proof.kind == ProofKind::ElectricalSafety ? typedCell(proof.ruleSet) : shownCell({});
    const GridCell done = proof.doneOn.isValid() ? typedCell(shown::day(proof.doneOn, today), proof.doneOn.toString(Qt::ISODate)) : typedCell({});
    return {.key = proof.id.value, .cells = {text, cameOut, typedCell(proofResult(proof), proof.result), typedCell(proof.instrument), rules, done, typedCell(proof.initials)}};
}

} // namespace

QList<GridColumn> proofColumns()
{
    const QList<GridChoice> outcomes{{toWord(ProofOutcome::Passed), proofOutcomeText(ProofOutcome::Passed), u'p'},
                                     {toWord(ProofOutcome::Failed), proofOutcomeText(ProofOutcome::Failed), u'f'},
                                     {toWord(ProofOutcome::NotApplicable), proofOutcomeText(ProofOutcome::NotApplicable), u'n'},
                                     {toWord(ProofOutcome::NotTested), proofOutcomeText(ProofOutcome::NotTested), u't'}};
    return {{.title = tr("To be proved"), .width = 22, .stretch = 5},
            {.title = tr("Came out"), .width = 13, .choices = outcomes},
            {.title = tr("Result"), .width = 12, .stretch = 3},
            {.title = tr("Instrument"), .width = 10, .stretch = 1},
            {.title = tr("Rule set"), .width = 9, .stretch = 1},
            {.title = tr("Done"), .width = 7},
            {.title = tr("Initials"), .width = 6}};
}

QList<GridRow> proofRows(const UnitFile &file, QDate today)
{
    QList<GridRow> rows;
    for (const auto &[kind, word] : Words<ProofKind>::list) {
        const ProofKind of = kind;
        const QList<Proof> &all = file.all<Proof>();
        GridRow head{.kind = GridRowKind::Group, .name = QString::fromLatin1(word), .cells = {shownCell(proofKindText(of))}};
        const auto count = [&all, of](ProofOutcome outcome) {
            return std::count_if(all.begin(), all.end(), [of, outcome](const Proof &proof) { return proof.kind == of && proof.cameOut == outcome; });
        };
        const auto total = std::count_if(all.begin(), all.end(), [of](const Proof &proof) { return proof.kind == of; });
        if (total > 0)
            head.cells.first().after = tr("%1 of %2 passed").arg(shown::count(count(ProofOutcome::Passed)), shown::count(total - count(ProofOutcome::NotApplicable)));
        rows << head;
        for (const Proof &proof : all)
            if (proof.kind == of)
                rows << recordRow(proof, today);
        GridCell adding = typedCell(addingText(of), {});
        adding.quiet = true;
        rows << GridRow{.kind = GridRowKind::Adding, .name = QString::fromLatin1(word), .cells = {adding}};
    }
    return rows;
}

QString proofOutcomeText(ProofOutcome outcome)
{
    switch (outcome) {
    case ProofOutcome::Passed:
        return tr("passed");
    case ProofOutcome::Failed:
        return tr("failed");
    case ProofOutcome::NotApplicable:
        return tr("not applicable");
    case ProofOutcome::NotTested:
        break;
    }
    return tr("not tested");
}

QString proofKindText(ProofKind kind)
{
    switch (kind) {
    case ProofKind::Cosmetic:
        return tr("Looks");
    case ProofKind::ElectricalSafety:
        return tr("Electrical safety");
    case ProofKind::Function:
        break;
    }
    return tr("Function");
}

QString proofTotalText(const UnitFile &file)
{
    const QList<Proof> &all = file.all<Proof>();
    const auto count = [&all](ProofOutcome outcome) { return std::count_if(all.begin(), all.end(), [outcome](const Proof &proof) { return proof.cameOut == outcome; }); };
    const auto asked = all.size() - count(ProofOutcome::NotApplicable);
    QStringList words{tr("%1 of %2 passed").arg(shown::count(count(ProofOutcome::Passed)), shown::count(asked))};
    if (const auto failed = count(ProofOutcome::Failed); failed > 0)
        words << tr("%1 failed").arg(shown::count(failed));
    if (const auto open = count(ProofOutcome::NotTested); open > 0)
        words << tr("%1 not tested").arg(shown::count(open));
    return words.join(QStringLiteral(" · "));
}

Expected<Proof> editedProof(const Proof &before, ProofColumn column, const QString &typed, QDate today)
{
    Proof after = before;
    const auto text = plainText(typed, tr("The text"), column == ProofColumn::Result ? longText : shortText);
    if (!text)
        return text.trouble();
    switch (column) {
    case ProofColumn::Text:
        if (text->isEmpty())
            return Trouble{tr("A proof needs a text"), {}, tr("Delete takes it off the list")};
        after.text = *text;
        break;
    case ProofColumn::Result:
        after.result = *text;
        break;
    case ProofColumn::Instrument:
        after.instrument = *text;
        break;
    case ProofColumn::RuleSet:
        after.ruleSet = *text;
        break;
    case ProofColumn::Initials:
        after.initials = *text;
        break;
    case ProofColumn::Done: {
        const auto day = typed::dayOrNone(typed, today);
        if (!day)
            return day.trouble();
        after.doneOn = *day;
        break;
    }
    case ProofColumn::CameOut:
        break;
    }
    return after;
}

} // namespace ts
