#pragma once

#include "model/records/unit_file.h"
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

} // namespace ts
