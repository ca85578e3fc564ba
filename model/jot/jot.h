#pragma once

#include "model/jot/jotted.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"
#include "model/values/expected.h"

#include <QStringList>

namespace ts {

/// What a line typed in the Log of `unit` records. Used for the preview at every key and for the recording itself: quick, and
/// without any effect but the ids that it takes. What fits no pattern is a note; refused are only an empty line, one with
/// control characters, and one of more than 4,000 characters. The change is empty where all is recorded already (`safe to
/// power` on a unit that may be powered); the preview then says so.
[[nodiscard]] Expected<Jotted> jot(const QString &line, const UnitFile &unit, const BenchFile &bench, Maker &maker);

/// Whole lines that what is typed may become, best first, at most 12: from the test points, parts, causes, symptoms and
/// teardown items of this unit, the meters of the bench and the words that begin a line. Each begins with what is typed up to the
/// word that is being completed.
[[nodiscard]] QStringList completions(const QString &line, const UnitFile &unit, const BenchFile &bench);

} // namespace ts
