#pragma once

#include "model/values/expected.h"

#include <QDate>

namespace ts {

/// A day in the locale's short form, or as the jot line takes one ("28 Nov", "Friday"). An invalid one where nothing is typed.
[[nodiscard]] Expected<QDate> typedDay(const QString &typed, QDate today);

} // namespace ts
