#pragma once

#include "model/jot/jotted.h"
#include "model/records/maker.h"
#include "model/records/rung.h"
#include "model/records/unit_file.h"
#include "model/values/expected.h"

namespace ts {

/// How a line says that something came out: "stop: …", "failed: …", "not applicable: …", or nothing of the kind.
enum class Said { Nothing, Wrong, NotApplicable };

/// A step of the first-power ladder with what was typed of it: a value ("0.08 Ω ± 0.01 Ω lead 0.05 Ω with hand meter"), a marking
/// ("T2A want T1.6A") or what was seen. Pass or stop follows from a value, and cannot be said of it; a stop flags the unit "do not
/// power". Refused in one sentence where the step is ticked blind: without its value, or without a word of what was seen.
[[nodiscard]] Expected<Jotted> jotRung(PowerStep step, Said said, const QString &typed, const UnitFile &file, const BenchFile &bench, Maker &maker);

/// A test of electrical safety with what was typed of it, by the bench's rule set or another that the line names ("by iet 4"), held
/// against the stricter of the rule set's limit and the set's own ("want <= 0.15 V"). Refused likewise.
[[nodiscard]] Expected<Jotted> jotSafetyTest(SafetyTest test, Said said, const QString &typed, const UnitFile &file, const BenchFile &bench, Maker &maker);

} // namespace ts
