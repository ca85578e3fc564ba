#pragma once

#include "model/records/unit_file.h"

#include <QJsonObject>

namespace ts {

/// A reading as `show --json` has it: value, limits and uncertainty in the unit shown, how the uncertainty came about.
[[nodiscard]] QJsonObject readingObject(const Reading &reading, const BenchFile &bench);
/// A soak as `show --json` has it: the drift of the series that its verdict is of, each series by itself, the gaps.
[[nodiscard]] QJsonObject soakObject(const UnitFile &file, const Soak &soak, const QDateTime &now);

} // namespace ts
