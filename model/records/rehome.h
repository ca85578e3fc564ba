#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_rows.h"

namespace ts {

/// The change that moves records, written down on the wrong unit, to another one, with what hangs on them:
/// - A reading takes the test point of the same name and conditions there; where there is none its own comes along if it was made
///   with the reading, else the other unit gets a copy. A soak takes its readings along, a symptom its causes and checks, a photo
///   its pins; how a check bears on a cause moves where both do, else it goes.
/// - References between what moves and what stays are let go.
/// - "Left off" is one of a unit: what it says is written over what the other unit's says.
/// - What came off and photos are put behind those of the other unit.
/// Both units are named in the change, so that the line stands in the history of both. Refused: the unit itself, a move of its
/// stage, a paper (it names its tag for ever); the same unit; a record that is not of `from`.
[[nodiscard]] Expected<Change> rehomed(const QList<RecordKey> &records, const UnitFile &from, const UnitFile &to, Maker &maker);

} // namespace ts
