#pragma once

#include "model/jot/jotting.h"

#include <optional>

// One function for each word that begins a line; jot.cpp has the table. `jotting.text` is what follows the word and is never
// empty where the table says that something must follow.
namespace ts {

/// The reading of a line with an equals sign; nothing where the line has none of its own.
[[nodiscard]] std::optional<Jotted> jotReading(const Jotting &jotting);
/// Whether the left side of such a line names a test point of the unit or one read before.
[[nodiscard]] bool namesKnownPoint(const Jotting &jotting);

// Fault-finding: symptoms, causes, checks, steps.
[[nodiscard]] Jotted jotSaw(const Jotting &jotting);
[[nodiscard]] Jotted jotCleared(const Jotting &jotting);
[[nodiscard]] Jotted jotThink(const Jotting &jotting);
[[nodiscard]] Jotted jotRuledOut(const Jotting &jotting);
[[nodiscard]] Jotted jotWas(const Jotting &jotting);
[[nodiscard]] Jotted jotCheck(const Jotting &jotting);
[[nodiscard]] Jotted jotDid(const Jotting &jotting);

// Parts.
[[nodiscard]] Jotted jotNeed(const Jotting &jotting);
[[nodiscard]] Jotted jotOrdered(const Jotting &jotting);
[[nodiscard]] Jotted jotHere(const Jotting &jotting);
[[nodiscard]] Jotted jotFitted(const Jotting &jotting);

// Money.
[[nodiscard]] Jotted jotPaid(const Jotting &jotting);
[[nodiscard]] Jotted jotGot(const Jotting &jotting);

// Teardown.
[[nodiscard]] Jotted jotOff(const Jotting &jotting);
[[nodiscard]] Jotted jotBack(const Jotting &jotting);

// Where the unit stands.
[[nodiscard]] Jotted jotNext(const Jotting &jotting);
[[nodiscard]] Jotted jotDoNotPower(const Jotting &jotting);
[[nodiscard]] Jotted jotSafeToPower(const Jotting &jotting);
[[nodiscard]] Jotted jotWaiting(const Jotting &jotting);

// First power and electrical safety.
[[nodiscard]] Jotted jotFirstPower(const Jotting &jotting);
[[nodiscard]] Jotted jotSafety(const Jotting &jotting);

// Proving.
[[nodiscard]] Jotted jotSoaked(const Jotting &jotting);
[[nodiscard]] Jotted jotFlaw(const Jotting &jotting);
[[nodiscard]] Jotted jotProved(const Jotting &jotting);
[[nodiscard]] Jotted jotFailed(const Jotting &jotting);
[[nodiscard]] Jotted jotNotTested(const Jotting &jotting);
[[nodiscard]] Jotted jotNotApplicable(const Jotting &jotting);

} // namespace ts
