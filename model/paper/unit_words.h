#pragma once

#include "model/records/unit.h"

#include <QDate>
#include <QStringList>

namespace ts {

/// "28 November 2026".
[[nodiscard]] QString dayText(const QDate &day);
/// Where the unit is: "ready", "closed, sold".
[[nodiscard]] QString stageOf(const Unit &unit);
/// What the unit is called on paper: its name without praise, else its maker and model, its category, its tag.
[[nodiscard]] QString nameOf(const Unit &unit);
/// What else tells it: category and make where the name leaves them out, serial number, year, mains, tag.
[[nodiscard]] QStringList identityOf(const Unit &unit, const QString &name);

} // namespace ts
