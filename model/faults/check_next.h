#pragma once

#include "model/faults/fault_board.h"

namespace ts {

enum class MoveKind { Safety, Check, Repair };

template <>
struct Words<MoveKind> {
    static constexpr std::array list{std::pair{MoveKind::Safety, "safety"}, std::pair{MoveKind::Check, "check"},
                                     std::pair{MoveKind::Repair, "repair"}};
};

/// What one outcome of a move would leave.
struct WouldLeave {
    CameOut cameOut = CameOut::Normal; ///< of a check; for a repair Normal is that it helped, Abnormal that it did not
    double chance = 0;                 ///< of this outcome, 0 to 1
    QString likeliest;                 ///< the cause that would lead then; empty where it would be over
    double likelihood = 0;             ///< of that one
};

/// Something to do next.
struct NextMove {
    MoveKind kind = MoveKind::Check;
    Id<Check> check;
    Id<Cause> cause;            ///< of a repair; null for a "something else" that is not recorded
    QString text;               ///< "Swap head leads L and R", "Put right straight away: dry joint, left head lead"
    double minutes = 0;         ///< that it takes; of a repair its money too, at the owner's hourly rate
    std::optional<Money> money; ///< what a repair costs, where it is known
    /// Minutes that beginning with it is expected to save on the way to a working unit, against going straight to repairs,
    /// likeliest per minute first; below 0 it costs more than it saves. None for a safety step: it is not weighed.
    std::optional<double> savesMinutes;
    QList<WouldLeave> leaves;
    QString leavesText; ///< the same as one sentence: "If abnormal: lead 96 %. If normal: head 63 %."
};

/// What to do next on a board.
struct CheckNext {
    QList<NextMove> moves;         ///< safety steps first, then best first; empty where the board is closed or blank
    double expectedMinutes = 0;    ///< to a working unit, going by this advice
    double repairsOnlyMinutes = 0; ///< going straight to repairs
    double atLeastMinutes = 0;     ///< no way is expected to take less
    bool exact = true;             ///< no other order takes less; else within expectedMinutes − atLeastMinutes of the best
    double odds = 1;               ///< chance that the fix that is needed can be had, 0 to 1
    QStringList basis;             ///< what it rests on, one sentence each
};

/// A safety step that has to be done before anything else.
struct SafetyStep {
    QString text;
    double minutes = 0;
};

/// Ranks checks that are not done and repairs alike. Minutes: a check's own, `usualCheckMinutes` where none are given; a repair's
/// own, `usualFixMinutes` where none are given, with its cost at `hourlyRate` (left out where there is no rate or another
/// currency), divided by the chance that it can be had. A repair whose minutes were not given is not tried on suspicion while a
/// check that bears on it is undone: the last suspect is not taken as proven. Safety steps come first as they are.
[[nodiscard]] CheckNext checkNext(const FaultBoard &board, const std::optional<Money> &hourlyRate,
                                  const QList<SafetyStep> &safety = {});

/// Taken where nothing was recorded. Judgement, no source.
inline constexpr double usualCheckMinutes = 10;
inline constexpr double usualFixMinutes = 30;
inline constexpr double usualElseMinutes = 90; ///< finding and mending what is not on the list

} // namespace ts
