#pragma once

#include "model/faults/fault_board.h"
#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/reading.h"

namespace ts {

// What is done on a board, each as a Change for the desk. All of them can be undone.

/// A new cause of the symptom; refused without a text, or where one reads so already.
[[nodiscard]] Expected<Change> addCause(const UnitFile &file, const Id<Symptom> &symptom, const QString &text, Maker &maker);
/// A new check of the symptom; refused without a text.
[[nodiscard]] Expected<Change> addCheck(const UnitFile &file, const Id<Symptom> &symptom, const QString &text,
                                        std::optional<int> minutes, Maker &maker);
/// "Something else" of the symptom as a record, for a board that shows it unrecorded; empty where it is recorded.
[[nodiscard]] Change recordSomethingElse(const UnitFile &file, const Id<Symptom> &symptom, Maker &maker);

/// Sets a mark of the check for the cause, or takes it away where there is one.
[[nodiscard]] Change turnMark(const UnitFile &file, const Id<Check> &check, const Id<Cause> &cause, Maker &maker);
/// Sets how a marked check comes out, chances from 0 to 1; a mark is made where there is none. Refuses other chances.
[[nodiscard]] Expected<Change> setMark(const UnitFile &file, const Id<Check> &check, const Id<Cause> &cause, double abnormalIf,
                                       double abnormalIfNot, Maker &maker);

/// How a check came out, with what was seen; NotDone takes the outcome back. Empty where it says nothing new.
[[nodiscard]] Change recordOutcome(const Check &check, CameOut cameOut, const QString &result, Maker &maker);
/// What a reading's verdict makes of a check: within is normal, outside abnormal, too close to call unclear; nothing without a
/// limit.
[[nodiscard]] std::optional<CameOut> cameOutOf(const Reading &reading);
/// The reading's verdict as the outcome, its value as the result ("CN2.4 11.92 V, within"). Refused where it has no limit to
/// meet.
[[nodiscard]] Expected<Change> recordOutcome(const Check &check, const Reading &reading, Maker &maker);

/// Rules a cause out, confirms it or opens it again, with the reason; the reason of an opened one goes.
[[nodiscard]] Change settleCause(const Cause &cause, CauseState state, const QString &because, Maker &maker);

} // namespace ts
