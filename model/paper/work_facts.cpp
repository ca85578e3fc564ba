#include "model/paper/work_facts.h"

#include "model/paper/plain_words.h"

#include <QSet>

namespace ts {

namespace {

QString workDone(StepKind kind)
{
    switch (kind) {
    case StepKind::Clean:
        return QStringLiteral("Cleaned");
    case StepKind::Lubricate:
        return QStringLiteral("Lubricated");
    case StepKind::Adjust:
        return QStringLiteral("Adjusted");
    case StepKind::Solder:
        return QStringLiteral("Soldered");
    case StepKind::Renew:
        return QStringLiteral("Renewed");
    case StepKind::Align:
        return QStringLiteral("Aligned");
    case StepKind::Investigate:
        return QStringLiteral("Investigated");
    case StepKind::Other:
        break;
    }
    return {};
}

QString sentenceStart(const QString &text)
{
    return text.isEmpty() ? text : text.at(0).toUpper() + text.mid(1);
}

/// What a step did, from its text, or where that says nothing, from its kind and position; empty where neither tells.
QString stepText(const Step &step)
{
    const QString position = plainText(step.position);
    const QString before = plainText(step.before);
    const QString after = plainText(step.after);
    QString text = withoutBareClaims(step.text);
    if (text.isEmpty()) {
        if (workDone(step.kind).isEmpty() || position.isEmpty())
            return {};
        text = workDone(step.kind) + QLatin1Char(' ') + position;
    } else if (!position.isEmpty() && !text.contains(position, Qt::CaseInsensitive)) {
        text += QStringLiteral(" (%1)").arg(position);
    }
    if (!before.isEmpty() && !after.isEmpty())
        text += QStringLiteral(": %1 → %2").arg(before, after);
    else if (!before.isEmpty())
        text += QStringLiteral(": was ") + before;
    else if (!after.isEmpty())
        text += QStringLiteral(": now ") + after;
    return sentenceStart(text);
}

QString causeText(const Cause &cause)
{
    const QString reason = withoutBareClaims(cause.reason);
    return sentenceStart(withoutBareClaims(cause.text)) + (reason.isEmpty() ? QString() : QStringLiteral(": ") + reason);
}

} // namespace

WorkFacts workFacts(const UnitFile &file)
{
    WorkFacts facts;
    QHash<Id<Symptom>, qsizetype> places;
    for (const Symptom &symptom : file.all<Symptom>()) {
        RestorationFacts::Work row;
        row.seen = sentenceStart(withoutBareClaims(symptom.text));
        row.conditions = plainText(symptom.conditions);
        row.state = symptom.state == SymptomState::Open ? QStringLiteral("still open") : QString();
        if (row.seen.isEmpty())
            row.seen = QStringLiteral("A fault without description");
        places.insert(symptom.id, facts.rows.size());
        facts.rows << row;
    }
    RestorationFacts::Work besides;
    // A symptom that was taken out of sight leaves its work to the last row.
    const auto rowOf = [&](const Id<Symptom> &id) -> RestorationFacts::Work & {
        const auto place = places.constFind(id);
        return place == places.constEnd() ? besides : facts.rows[*place];
    };

    for (const Cause &cause : file.all<Cause>())
        if (cause.state == CauseState::Confirmed)
            if (const QString text = causeText(cause); !text.isEmpty())
                rowOf(cause.symptom).causes << text;
    QSet<Id<Symptom>> renewed;
    for (const Step &step : file.all<Step>()) {
        if (step.kind == StepKind::Renew)
            renewed << step.symptom;
        const QString text = stepText(step);
        if (text.isEmpty())
            ++facts.vague;
        else
            rowOf(step.symptom).done << text;
    }
    for (const Need &need : file.all<Need>()) {
        if (need.state != NeedState::Fitted)
            continue;
        const RestorationFacts::Fitted part{withoutBareClaims(need.text), plainText(need.position), plainText(need.oldValue),
                                            need.quantity};
        if (part.what.isEmpty()) {
            ++facts.vague;
            continue;
        }
        facts.fitted << part;
        // A step that tells of the renewal says it better; all parts stand in their own table anyway.
        if (places.contains(need.symptom) && !renewed.contains(need.symptom))
            rowOf(need.symptom).done << QStringLiteral("Fitted ") + part.what;
    }
    if (!besides.causes.isEmpty() || !besides.done.isEmpty())
        facts.rows << besides;
    return facts;
}

} // namespace ts
