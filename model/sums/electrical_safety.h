#pragma once

#include "model/records/unit_file.h"
#include "model/sums/safety_rules.h"
#include "model/sums/verdict.h"

#include <QStringList>

namespace ts {

/// What of electrical safety a text names, of "earth", "insulation", "leakage", "bonding", "touch current" and "protective conductor";
/// empty where nothing.
/// The leakage or insulation of a single component ("leakage of C12") is none: it says nothing about the unit.
[[nodiscard]] QStringList electricalSafetyNamed(const QString &text);

/// A reading whose name says that it is of electrical safety: the latest of its place as the unit leaves, else the latest at all.
struct SafetyReading {
    Reading reading;
    Limit wanted; ///< the reading's own, else its test point's
    Verdict verdict = Verdict::NoLimit;
    QString ruleSet; ///< where the limit comes from: the test point's source, else the rules of the proof that it answers

    /// Taken as the unit leaves, held against a limit and clearly on one side of it: only then it counts as passed or failed.
    [[nodiscard]] bool decided() const
    {
        return reading.phase == Phase::AsItLeaves && (verdict == Verdict::Within || verdict == Verdict::Outside);
    }
    /// "200 MΩ, wanted at least 2 MΩ", with its uncertainty, or "by the figure alone" where none is on record.
    [[nodiscard]] QString result() const;
};
[[nodiscard]] QList<SafetyReading> safetyReadings(const UnitFile &file);

/// What is on record of electrical safety, each thing once.
struct SafetyRecord {
    QList<Proof> proofs; ///< passed, failed or not applicable
    /// Those that no passed or failed proof speaks of, decided or not, and every one that is outside.
    QList<SafetyReading> readings;
    QStringList untested; ///< by their words: proofs not tested that no decided reading answers; the shipped list's lines where there is no proof
    bool tested = false;  ///< a proof was passed or failed, or a reading decides something
};
[[nodiscard]] SafetyRecord safetyRecord(const UnitFile &file);

/// The decided ones that no acceptance check which was passed or failed speaks of already.
[[nodiscard]] QList<SafetyReading> safetyReadingsBesideProofs(const UnitFile &file);

/// The electrical safety checks that failed and were not passed later, by their words, readings included: also one that was outside
/// before the unit left and was not taken again.
[[nodiscard]] QStringList failedSafety(const UnitFile &file);

/// The verdict on a proof that measured something: within only where all of its guard band is (judge() in verdict.h).
[[nodiscard]] Verdict verdictOf(const Proof &proof);
/// How it came out by that: passed where it is within, failed where it is outside, else not tested.
[[nodiscard]] ProofOutcome outcomeOf(const Proof &proof);
/// How it came out for people: "passed", "too close to call".
[[nodiscard]] QString cameOutText(const Proof &proof);
/// What was found in one line: "0.12 Ω ± 0.02 Ω, wanted up to 0.3 Ω (DIN VDE 0701-0702, EN 50678)", then what was typed.
[[nodiscard]] QString proofResult(const Proof &proof);

enum class SafetyVerdict { Open, Passed, Failed };

template <>
struct Words<SafetyVerdict> {
    static constexpr std::array list{std::pair{SafetyVerdict::Open, "open"}, std::pair{SafetyVerdict::Passed, "passed"}, std::pair{SafetyVerdict::Failed, "failed"}};
};

struct SafetyLine {
    SafetyTest test = SafetyTest::Look;
    Expected<SafetyLimit> limit;     ///< by the rules and class at hand
    std::optional<Proof> proof;      ///< how it came out
    bool substituted = false;        ///< another test stands in for it
};
/// The electrical safety test of a unit by a rule set. Open while a test is; a substitute leakage current stands in for the two live ones.
struct SafetySheet {
    QList<SafetyLine> lines;
    SafetyVerdict verdict = SafetyVerdict::Open;
};
[[nodiscard]] SafetySheet safetySheet(const UnitFile &file, const SafetyCase &about);

/// What is on record of a unit and its bench about a test: rule set (a setting), protection class, mains frequency.
[[nodiscard]] SafetyCase safetyCaseOf(const UnitFile &file, const BenchFile &bench);
/// The proof that a test is recorded in: the one of that test, else the line of the acceptance list with its text; or nullptr.
[[nodiscard]] const Proof *proofOf(const UnitFile &file, SafetyTest test);

} // namespace ts
