#include "app/unit_document.h"

#include "app/fault_document.h"
#include "app/json_values.h"
#include "app/money_facts.h"
#include "app/reading_document.h"
#include "app/safety_document.h"

#include "model/records/tag_text.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/standing.h"
#include "model/sums/timeline.h"

#include <QJsonArray>

#include <algorithm>
#include <array>

namespace ts {

namespace {

void insertIdentity(QJsonObject &document, const Unit &unit, const BenchFile &bench)
{
    const Contact *owner = bench.find(unit.owner);
    document.insert(QStringLiteral("owner"), owner ? textOrNull(owner->name) : QJsonValue());
    document.insert(QStringLiteral("accessories"), textOrNull(unit.accessories));
    document.insert(QStringLiteral("looks"), textOrNull(unit.looks));
    document.insert(QStringLiteral("function"), textOrNull(unit.function));
    document.insert(QStringLiteral("earlier_work"), textOrNull(unit.earlierWork));
    document.insert(QStringLiteral("tag"), tagText(unit.tag));
    document.insert(QStringLiteral("name"), unit.name);
    document.insert(QStringLiteral("maker"), textOrNull(unit.maker));
    document.insert(QStringLiteral("maker_model"), textOrNull(unit.makerModel));
    document.insert(QStringLiteral("category"), toWord(unit.category));
    document.insert(QStringLiteral("kind"), toWord(unit.kind));
    document.insert(QStringLiteral("stage"), toWord(unit.stage));
    document.insert(QStringLiteral("stage_since"), timeOrNull(unit.stageSince));
    document.insert(QStringLiteral("held_because"), textOrNull(unit.heldBecause));
    document.insert(QStringLiteral("held_until"), textOrNull(unit.heldUntil.toString(Qt::ISODate)));
    document.insert(QStringLiteral("outcome"), wordOrNull(unit.outcome));
    document.insert(QStringLiteral("serial"), textOrNull(unit.serial));
    document.insert(QStringLiteral("year"), numberOrNull(unit.year));
    document.insert(QStringLiteral("mains"), textOrNull(unit.mains));
    document.insert(QStringLiteral("protection_class"), wordOrNull(unit.protectionClass));
    document.insert(QStringLiteral("claim"), textOrNull(unit.claim));
    document.insert(QStringLiteral("place"), textOrNull(unit.place));
    document.insert(QStringLiteral("source_id"), textOrNull(unit.sourceId));
}

QJsonObject leftOffObject(const Standing &stand)
{
    QStringList loose;
    for (const TeardownItem &item : stand.loose)
        loose << item.what;
    if (!stand.otherLoose.isEmpty())
        loose << stand.otherLoose;
    return {{QStringLiteral("where"), textOrNull(stand.whereAt)},
            {QStringLiteral("next"), textOrNull(stand.next)},
            {QStringLiteral("loose"), textOrNull(loose.join(QStringLiteral(", ")))},
            {QStringLiteral("do_not_power"), textOrNull(stand.doNotPower)}};
}

/// The acceptance checks, and beside them the readings that count as electrical safety checks.
QJsonArray proofList(const UnitFile &file)
{
    QJsonArray list = each<Proof>(file, [](const Proof &proof) {
        return QJsonObject{{QStringLiteral("text"), proof.text},
                           {QStringLiteral("came_out"), toWord(proof.cameOut)},
                           {QStringLiteral("kind"), toWord(proof.kind)}};
    });
    for (const SafetyReading &check : safetyReadingsBesideProofs(file))
        list << QJsonObject{
            {QStringLiteral("text"), check.reading.name + QStringLiteral(": ") + check.result()},
            {QStringLiteral("came_out"), toWord(check.verdict == Verdict::Within ? ProofOutcome::Passed : ProofOutcome::Failed)},
            {QStringLiteral("kind"), toWord(ProofKind::ElectricalSafety)}};
    return list;
}

void insertWork(QJsonObject &document, const UnitFile &file, const BenchFile &bench, const QDateTime &now)
{
    document.insert(QStringLiteral("readings"), each<Reading>(file, [&](const Reading &reading) { return readingObject(reading, bench); }));
    document.insert(QStringLiteral("soaks"), each<Soak>(file, [&](const Soak &soak) { return soakObject(file, soak, now); }));
    document.insert(
        QStringLiteral("steps"), each<Step>(file, [](const Step &step) {
            return QJsonObject{{QStringLiteral("text"), step.text}, {QStringLiteral("minutes"), numberOrNull(step.minutes)}};
        }));
    document.insert(QStringLiteral("teardown"), each<TeardownItem>(file, [](const TeardownItem &item) {
                        return QJsonObject{{QStringLiteral("what"), item.what},
                                           {QStringLiteral("fasteners"), textOrNull(item.fasteners)},
                                           {QStringLiteral("kept_in"), textOrNull(item.keptIn)},
                                           {QStringLiteral("state"), toWord(item.state)}};
                    }));
    document.insert(QStringLiteral("needs"), each<Need>(file, [](const Need &need) {
                        return QJsonObject{{QStringLiteral("text"), need.text},
                                           {QStringLiteral("state"), toWord(need.state)},
                                           {QStringLiteral("price"), moneyOrNull(need.price)},
                                           {QStringLiteral("quantity"), need.quantity}};
                    }));
    document.insert(QStringLiteral("spends"), each<Spend>(file, [](const Spend &spend) {
                        return QJsonObject{{QStringLiteral("text"), spend.text},
                                           {QStringLiteral("kind"), toWord(spend.kind)},
                                           {QStringLiteral("flow"), toWord(spend.flow)},
                                           {QStringLiteral("amount"), moneyOrNull(spend.amount)},
                                           {QStringLiteral("currency"),
                                            spend.amount ? textOrNull(spend.amount->currency().code()) : QJsonValue()}};
                    }));
    document.insert(QStringLiteral("proofs"), proofList(file));
    document.insert(QStringLiteral("photos"), each<Photo>(file, [](const Photo &photo) {
                        return QJsonObject{{QStringLiteral("caption"), textOrNull(photo.caption)},
                                           {QStringLiteral("phase"), toWord(photo.phase)},
                                           {QStringLiteral("taken_at"), timeOrNull(photo.takenAt)},
                                           {QStringLiteral("sha256"), photo.sha256}};
                    }));
    document.insert(QStringLiteral("decisions"), each<Decision>(file, [](const Decision &decision) {
                        return QJsonObject{{QStringLiteral("at"), timeOrNull(decision.at)},
                                           {QStringLiteral("way"), toWord(decision.way)},
                                           {QStringLiteral("asked"), toWord(decision.asked)},
                                           {QStringLiteral("reason"), textOrNull(decision.reason)},
                                           {QStringLiteral("figures"), QJsonArray::fromStringList(decision.figures.split(QLatin1Char('\n'), Qt::SkipEmptyParts))},
                                           {QStringLiteral("minutes_to_date"), decision.minutes}};
                    }));
    document.insert(QStringLiteral("papers"), each<Paper>(file, [](const Paper &paper) {
                        return QJsonObject{{QStringLiteral("kind"), toWord(paper.kind)},
                                           {QStringLiteral("version"), paper.edition},
                                           {QStringLiteral("made_at"), timeOrNull(paper.madeAt)},
                                           {QStringLiteral("sha256"), paper.sha256}};
                    }));
}

void insertMoney(QJsonObject &document, const UnitMoney &money)
{
    document.insert(QStringLiteral("hours"),
                    QJsonObject{{QStringLiteral("minutes_to_date"), money.sheet.hours.minutes()},
                                {QStringLiteral("minutes_planned"), numberOrNull(money.sheet.minutesPlanned)}});
    document.insert(QStringLiteral("money"), moneyObject(money));
}

} // namespace

QJsonObject unitDocument(const UnitFile &file, const BenchFile &bench, const UnitMoney &money, const QDateTime &now)
{
    QJsonObject document;
    const Standing stand = standing(file, bench);
    insertIdentity(document, file.unit, bench);
    document.insert(QStringLiteral("left_off"), leftOffObject(stand));
    QJsonArray log;
    for (const Event &event : timeline(file, bench))
        log << QJsonObject{
            {QStringLiteral("at"), toStored(event.at)},
            {QStringLiteral("what"), toWord(event.what)},
            {QStringLiteral("text"), event.detail.isEmpty() ? event.text : event.text + QStringLiteral(": ") + event.detail}};
    document.insert(QStringLiteral("log"), log);
    insertFaultFinding(document, file, bench);
    insertWork(document, file, bench, now);
    insertSafety(document, file, bench);
    QJsonArray cautions;
    for (const QString &caution : stand.cautions)
        cautions << caution;
    document.insert(QStringLiteral("cautions"), cautions);
    insertMoney(document, money);
    return document;
}

QJsonObject rackDocument(const QList<RackRow> &rack, const Currency &currency)
{
    QJsonArray units;
    for (const RackRow &row : rack)
        units << QJsonObject{{QStringLiteral("tag"), tagText(row.tag)},
                             {QStringLiteral("name"), row.name},
                             {QStringLiteral("category"), toWord(row.category)},
                             {QStringLiteral("kind"), toWord(row.kind)},
                             {QStringLiteral("stage"), toWord(row.stage)},
                             {QStringLiteral("stage_since"), timeOrNull(row.stageSince)},
                             {QStringLiteral("spent"), row.spent.decimal()},
                             {QStringLiteral("minutes"), row.minutes},
                             {QStringLiteral("source_id"), textOrNull(row.sourceId)}};
    return {{QStringLiteral("currency"), currency.code()}, {QStringLiteral("units"), units}};
}

} // namespace ts
