#include "app/fault_document.h"

#include "app/json_values.h"

#include "model/faults/check_next.h"
#include "model/faults/first_power.h"

#include <algorithm>

namespace ts {

namespace {

/// A board's symptom; null for what stands by itself.
QJsonValue symptomOf(const FaultBoard &board)
{
    return board.symptom.isNull() ? QJsonValue() : QJsonValue(board.text);
}

void addCauses(QJsonArray &list, const FaultBoard &board)
{
    const bool anyRecorded =
        std::any_of(board.causes.begin(), board.causes.end(), [](const BoardCause &cause) { return !cause.id.isNull(); });
    if (!anyRecorded)
        return;
    for (const BoardCause &cause : board.causes)
        list << QJsonObject{{QStringLiteral("symptom"), symptomOf(board)},
                            {QStringLiteral("text"), cause.text},
                            {QStringLiteral("state"), toWord(cause.state)},
                            {QStringLiteral("likelihood_before"), cause.before},
                            {QStringLiteral("likelihood"), cause.now},
                            {QStringLiteral("reason"), textOrNull(cause.reason)},
                            {QStringLiteral("fix_minutes"), numberOrNull(cause.fixMinutes)},
                            {QStringLiteral("fix_cost"), moneyOrNull(cause.fixCost)},
                            {QStringLiteral("fix_odds"), numberOrNull(cause.fixOdds)}};
}

void addChecks(QJsonArray &list, const FaultBoard &board)
{
    for (const BoardCheck &check : board.checks) {
        QJsonArray bearsOn;
        for (qsizetype i = 0; i < check.marks.size(); ++i)
            if (check.marks[i].marked())
                bearsOn << board.causes[i].text;
        list << QJsonObject{{QStringLiteral("symptom"), symptomOf(board)},
                            {QStringLiteral("text"), check.text},
                            {QStringLiteral("minutes"), numberOrNull(check.minutes)},
                            {QStringLiteral("came_out"), toWord(check.cameOut)},
                            {QStringLiteral("result"), textOrNull(check.result)},
                            {QStringLiteral("bears_on"), bearsOn}};
    }
}

/// The moves of all boards with something left to find, with the symptom each is for: safety steps, then best first.
QJsonArray checkNextOf(const QList<FaultBoard> &boards, const UnitFile &file, const BenchFile &bench)
{
    QList<std::pair<NextMove, QJsonValue>> moves;
    for (const FaultBoard &board : boards)
        for (const NextMove &move : checkNext(board, bench.hourlyRate()).moves)
            moves << std::pair{move, symptomOf(board)};
    std::stable_sort(moves.begin(), moves.end(), [](const auto &a, const auto &b) {
        return a.first.savesMinutes.value_or(0) > b.first.savesMinutes.value_or(0);
    });
    QJsonArray list;
    if (!moves.isEmpty())
        for (const SafetyStep &step : firstPowerDue(file))
            list << QJsonObject{{QStringLiteral("symptom"), QJsonValue()},
                                {QStringLiteral("kind"), toWord(MoveKind::Safety)},
                                {QStringLiteral("text"), step.text},
                                {QStringLiteral("minutes"), step.minutes},
                                {QStringLiteral("saves_minutes"), QJsonValue()},
                                {QStringLiteral("leaves"), QJsonValue()}};
    for (const auto &[move, symptom] : moves)
        list << QJsonObject{{QStringLiteral("symptom"), symptom},
                            {QStringLiteral("kind"), toWord(move.kind)},
                            {QStringLiteral("text"), move.text},
                            {QStringLiteral("minutes"), move.minutes},
                            {QStringLiteral("saves_minutes"), numberOrNull(move.savesMinutes)},
                            {QStringLiteral("leaves"), textOrNull(move.leavesText)}};
    return list;
}

} // namespace

void insertFaultFinding(QJsonObject &document, const UnitFile &file, const BenchFile &bench)
{
    document.insert(QStringLiteral("symptoms"), each<Symptom>(file, [](const Symptom &symptom) {
                        return QJsonObject{{QStringLiteral("text"), symptom.text},
                                           {QStringLiteral("conditions"), textOrNull(symptom.conditions)},
                                           {QStringLiteral("state"), toWord(symptom.state)}};
                    }));
    const QList<FaultBoard> boards = boardsOf(file, bench);
    QJsonArray causes, checks;
    for (const FaultBoard &board : boards) {
        addCauses(causes, board);
        addChecks(checks, board);
    }
    document.insert(QStringLiteral("causes"), causes);
    document.insert(QStringLiteral("checks"), checks);
    document.insert(QStringLiteral("check_next"), checkNextOf(boards, file, bench));
}

} // namespace ts
