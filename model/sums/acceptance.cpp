#include "model/sums/acceptance.h"

#include "model/sums/category_facts.h"
#include "model/values/name_key.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace ts {

namespace {

constexpr qsizetype most = 200; // lines; more is no list of this kind

Trouble wrong(const QString &what)
{
    return {QStringLiteral("Cannot read the acceptance list"), what, {}};
}

Expected<AcceptanceLine> readLine(const QJsonObject &object)
{
    AcceptanceLine line;
    line.text = object.value(QLatin1String("text")).toString().simplified();
    if (line.text.isEmpty() || line.text.size() > 300)
        return wrong(QStringLiteral("a line has no text, or one of more than 300 characters"));
    const QString word = object.value(QLatin1String("kind")).toString();
    const auto kind = fromWord<ProofKind>(word);
    if (!kind)
        return wrong(QStringLiteral("\"%1\": \"%2\" is no kind of proof").arg(line.text, word));
    line.kind = *kind;
    for (const QJsonValue &each : object.value(QLatin1String("classes")).toArray()) {
        const auto known = fromWord<ProtectionClass>(each.toString());
        if (!known)
            return wrong(QStringLiteral("\"%1\": \"%2\" is no protection class").arg(line.text, each.toString()));
        line.classes << *known;
    }
    return line;
}

AcceptanceList shipped(const QString &name)
{
    QFile file(QStringLiteral(":/acceptance/%1.json").arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const auto list = readAcceptance(file.readAll());
    return list ? *list : AcceptanceList();
}

} // namespace

Expected<AcceptanceList> readAcceptance(const QByteArray &json)
{
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    if (!document.isObject())
        return wrong(error.error == QJsonParseError::NoError ? QStringLiteral("it is no JSON object") : error.errorString());
    const QJsonObject object = document.object();
    AcceptanceList list;
    if (const QJsonValue category = object.value(QLatin1String("category")); !category.isNull()) {
        list.category = fromWord<Category>(category.toString());
        if (!list.category)
            return wrong(QStringLiteral("\"%1\" is no category").arg(category.toString()));
    }
    list.source = object.value(QLatin1String("source")).toString().simplified();
    if (list.source.isEmpty())
        return wrong(QStringLiteral("it does not name its source"));
    const QJsonArray lines = object.value(QLatin1String("lines")).toArray();
    if (lines.isEmpty() || lines.size() > most)
        return wrong(QStringLiteral("it has no lines, or more than %1").arg(most));
    for (const QJsonValue &each : lines) {
        auto line = readLine(each.toObject());
        if (!line)
            return line.trouble();
        if (std::any_of(list.lines.begin(), list.lines.end(), [&](const AcceptanceLine &there) { return nameKey(there.text) == nameKey(line->text); }))
            return wrong(QStringLiteral("\"%1\" is there twice").arg(line->text));
        list.lines << *std::move(line);
    }
    return list;
}

AcceptanceList acceptanceOf(Category category)
{
    return shipped(toWord(category));
}

AcceptanceList electricalSafety()
{
    return shipped(QStringLiteral("electrical_safety"));
}

QList<AcceptanceLine> acceptanceFor(const Unit &unit)
{
    QList<AcceptanceLine> lines = acceptanceOf(unit.category).lines;
    if (!mainsPowered(unit))
        return lines;
    for (const AcceptanceLine &line : electricalSafety().lines)
        if (line.classes.isEmpty() || !unit.protectionClass || line.classes.contains(*unit.protectionClass))
            lines << line;
    return lines;
}

QList<Proof> proofsFor(const Unit &unit, Maker &maker)
{
    QList<Proof> proofs;
    for (const AcceptanceLine &line : acceptanceFor(unit)) {
        Proof proof = maker.fresh<Proof>();
        proof.unit = unit.id;
        proof.text = line.text;
        proof.kind = line.kind;
        proofs << proof;
    }
    return proofs;
}

Expected<Change> bringAcceptance(const UnitFile &file, Maker &maker)
{
    Change change;
    int count = 0;
    for (const Proof &proof : proofsFor(file.unit, maker)) {
        const QList<Proof> &there = file.all<Proof>();
        if (std::any_of(there.begin(), there.end(), [&](const Proof &each) { return !each.removed && nameKey(each.text) == nameKey(proof.text); }))
            continue;
        change.add(proof);
        ++count;
    }
    if (count == 0)
        return Trouble{QStringLiteral("Nothing was brought in"), QStringLiteral("the unit has every line of the list already"), {}};
    change.setSentence(count == 1 ? QStringLiteral("Brought in 1 proof of the acceptance list") : QStringLiteral("Brought in %1 proofs of the acceptance list").arg(count));
    return change;
}

Proof provedAs(const Proof &before, ProofOutcome outcome, QDate today, const QString &initials)
{
    Proof after = before;
    after.cameOut = outcome;
    const bool done = outcome == ProofOutcome::Passed || outcome == ProofOutcome::Failed;
    after.doneOn = done ? today : QDate();
    after.initials = done ? initials : QString();
    return after;
}

QDateTime triedAt(const Proof &proof)
{
    const bool otherDay = proof.doneOn.isValid() && proof.doneOn != proof.at.toUTC().date();
    return otherDay ? QDateTime(proof.doneOn, QTime(0, 0), Qt::UTC) : proof.at;
}

} // namespace ts
