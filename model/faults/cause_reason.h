#pragma once

#include "model/faults/fault_board.h"

namespace ts {

/// Why the cause at that place of the board stands as it does, in words: what it was ruled out or confirmed by, else which checks
/// point to it or speak against it, else that nothing does yet.
[[nodiscard]] QString reasonOf(const FaultBoard &board, qsizetype cause, const QString &settledBecause);

} // namespace ts
