#pragma once

#include "model/desk/desk.h"
#include "model/money/best_use.h"

namespace ts {

/// What to work on today, across all units of the workbook (best_use.h has the order). Each unit's money is drawn 20,000 times: so
/// many tell units apart; its own page takes all. Refused where the workbook cannot be read; stopped by `progress`, it answers
/// with an empty list.
[[nodiscard]] Expected<QList<BenchUse>> benchToday(Desk &desk, const BenchFile &bench, const QDateTime &now,
                                                   const Progress &progress = {});

} // namespace ts
