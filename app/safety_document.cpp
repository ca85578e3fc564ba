#include "app/safety_document.h"

#include "app/json_values.h"

#include "model/sums/category_facts.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/power_ladder.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// A value held against a limit, as far as there is one.
void insertValue(QJsonObject &object, const std::optional<Quantity> &value, const Limit &wanted, const std::optional<double> &uncertainty)
{
    const bool figure = value && value->sense() != Sense::OverRange;
    const auto judged = value ? judge(*value, wanted, uncertainty) : Expected<Judgement>(Judgement());
    object.insert(u"value"_s, figure ? QJsonValue(value->value()) : QJsonValue());
    object.insert(u"unit"_s, value ? textOrNull(value->measure().text()) : textOrNull(wanted.measure().text()));
    object.insert(u"sense"_s, value ? QJsonValue(toWord(value->sense())) : QJsonValue());
    object.insert(u"wanted_low"_s, numberOrNull(value && judged ? judged->low : wanted.low()));
    object.insert(u"wanted_high"_s, numberOrNull(value && judged ? judged->high : wanted.high()));
    object.insert(u"uncertainty"_s, numberOrNull(uncertainty));
}

QJsonObject rungObject(const LadderRung &rung)
{
    const LadderStep &step = rung.step;
    const std::optional<Rung> &last = rung.last;
    QJsonObject object{{u"step"_s, toWord(step.step)}, {u"text"_s, step.text}, {u"asks"_s, step.asks}, {u"stops_at"_s, step.stops}, {u"source"_s, step.source}};
    insertValue(object, last ? last->value : std::nullopt, last ? last->wanted : step.wanted, last ? last->uncertainty : std::nullopt);
    object.insert(u"came_out"_s, last ? QJsonValue(toWord(last->cameOut)) : QJsonValue());
    object.insert(u"saw"_s, last ? textOrNull(last->saw) : QJsonValue());
    object.insert(u"held_against"_s, last ? textOrNull(last->asked) : QJsonValue());
    object.insert(u"meter"_s, last ? textOrNull(last->meterName) : QJsonValue());
    object.insert(u"at"_s, last ? timeOrNull(last->at) : QJsonValue());
    object.insert(u"initials"_s, last ? textOrNull(last->initials) : QJsonValue());
    return object;
}

QJsonObject testObject(const SafetyLine &line)
{
    const std::optional<Proof> &proof = line.proof;
    const bool kept = proof && proof->value;
    QJsonObject object{{u"test"_s, toWord(line.test)}, {u"text"_s, safetyTestText(line.test)}};
    insertValue(object, kept ? proof->value : std::nullopt, kept ? proof->wanted : line.limit ? line.limit->limit : Limit(), kept ? proof->uncertainty : std::nullopt);
    object.insert(u"limit_source"_s, kept ? textOrNull(proof->limitSource) : line.limit ? textOrNull(line.limit->source) : QJsonValue());
    object.insert(u"came_out"_s, toWord(proof ? proof->cameOut : ProofOutcome::NotTested));
    object.insert(u"verdict"_s, toWord(proof ? verdictOf(*proof) : Verdict::NoLimit));
    object.insert(u"substituted"_s, line.substituted);
    object.insert(u"result"_s, proof ? textOrNull(proof->result) : QJsonValue());
    object.insert(u"rule_set"_s, proof ? textOrNull(proof->ruleSet) : QJsonValue());
    object.insert(u"instrument"_s, proof ? textOrNull(proof->instrument) : QJsonValue());
    object.insert(u"done_on"_s, proof ? textOrNull(proof->doneOn.toString(Qt::ISODate)) : QJsonValue());
    object.insert(u"initials"_s, proof ? textOrNull(proof->initials) : QJsonValue());
    return object;
}

} // namespace

void insertSafety(QJsonObject &document, const UnitFile &file, const BenchFile &bench)
{
    if (!mainsPowered(file.unit)) {
        document.insert(u"first_power"_s, QJsonValue());
        document.insert(u"electrical_safety"_s, QJsonValue());
        return;
    }
    const Ladder ladder = ladderOf(file);
    QJsonArray steps;
    for (const LadderRung &rung : ladder.rungs)
        steps << rungObject(rung);
    document.insert(u"first_power"_s, QJsonObject{{u"verdict"_s, toWord(ladder.verdict)}, {u"steps"_s, steps}});
    const SafetyCase about = safetyCaseOf(file, bench);
    const SafetySheet sheet = safetySheet(file, about);
    QJsonArray tests;
    for (const SafetyLine &line : sheet.lines)
        tests << testObject(line);
    document.insert(u"electrical_safety"_s, QJsonObject{{u"rule_set"_s, toWord(about.rules)},
                                                        {u"protection_class"_s, wordOrNull(about.protectionClass)},
                                                        {u"verdict"_s, toWord(sheet.verdict)},
                                                        {u"tests"_s, tests}});
}

void printSafety(QTextStream &out, const UnitFile &file, const BenchFile &bench)
{
    const Ladder ladder = ladderOf(file);
    if (std::any_of(ladder.rungs.begin(), ladder.rungs.end(), [](const LadderRung &rung) { return rung.last.has_value(); })) {
        out << "\nFirst power: " << toWord(ladder.verdict) << '\n';
        for (const LadderRung &rung : ladder.rungs) {
            const QString state = rung.last ? toWord(rung.last->cameOut).replace(u'_', u' ') : u"open"_s;
            out << "  " << toWord(rung.step.step).leftJustified(10) << "  " << state.leftJustified(15) << (rung.last ? foundText(*rung.last) : u"stop: "_s + rung.step.stops) << '\n';
        }
    }
    const SafetyCase about = safetyCaseOf(file, bench);
    const SafetySheet sheet = safetySheet(file, about);
    if (std::none_of(sheet.lines.begin(), sheet.lines.end(), [](const SafetyLine &line) { return line.proof && line.proof->test; }))
        return;
    out << "\nElectrical safety, " << rulesName(about.rules) << ": " << toWord(sheet.verdict) << '\n';
    for (const SafetyLine &line : sheet.lines) {
        const QString state = line.proof ? cameOutText(*line.proof) : line.substituted ? u"stood in for"_s : u"not tested"_s;
        out << "  " << toWord(line.test).replace(u'_', u' ').leftJustified(18) << "  " << state.leftJustified(18) << (line.proof ? proofResult(*line.proof) : QString()) << '\n';
    }
    out << "  A bench's own check, no certificate: local codes and licensed practice come first.\n";
}

} // namespace ts
