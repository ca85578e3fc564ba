#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// The unit's log as rich text; everything from the user is escaped.
[[nodiscard]] QString logHtml(const UnitFile &file, const BenchFile &bench);
/// How it stands: left off, open symptoms, readings out of spec, parts, money, cautions.
[[nodiscard]] QString standingHtml(const UnitFile &file, const BenchFile &bench, const QDateTime &now);

} // namespace ts
