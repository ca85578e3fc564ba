#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// The test point of a unit that a name (and, where given, conditions) stands for, or nullptr. Case and spaces do not count.
/// Points of one name that differ in conditions are told apart by them: a reading at 10 kHz is not held against what is wanted at
/// 315 Hz.
[[nodiscard]] const TestPoint *testPointOf(const UnitFile &file, const QString &name, const QString &conditions);

/// The newest reading of that name, or nullptr.
[[nodiscard]] const Reading *lastReadingOf(const UnitFile &file, const QString &name);

} // namespace ts
