#pragma once

#include "model/records/unit_file.h"
#include "model/sums/verdict.h"

#include <QStringList>

namespace ts {

/// What of electrical safety a text names, of "earth", "insulation", "leakage", "bonding" and "touch current"; empty where nothing.
/// The leakage or insulation of a single component ("leakage of C12") is none: it says nothing about the unit.
[[nodiscard]] QStringList electricalSafetyNamed(const QString &text);

/// A reading that holds as an electrical safety check: the latest of its place as the unit leaves, whose name says so.
struct SafetyReading {
    Reading reading;
    Limit wanted; ///< the reading's own, else its test point's
    Verdict verdict = Verdict::NoLimit;

    /// Held against a limit and clearly on one side of it: only then it counts as passed or failed.
    [[nodiscard]] bool decided() const { return verdict == Verdict::Within || verdict == Verdict::Outside; }
    /// "200 MΩ, wanted at least 2 MΩ", with its uncertainty, or "by the figure alone" where none is on record.
    [[nodiscard]] QString result() const;
};
[[nodiscard]] QList<SafetyReading> safetyReadings(const UnitFile &file);

/// The decided ones that no acceptance check which was passed or failed speaks of already.
[[nodiscard]] QList<SafetyReading> safetyReadingsBesideProofs(const UnitFile &file);

/// The electrical safety checks that failed and were not passed later, by their words, readings included.
[[nodiscard]] QStringList failedSafety(const UnitFile &file);

} // namespace ts
