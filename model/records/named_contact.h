#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// The contact of that name, whatever its capitals; one that is new is added to the change. A second one of the same name would part what
/// belongs to one person. Null where the name is empty.
[[nodiscard]] Id<Contact> contactNamed(const BenchFile &bench, const QString &name, Change &change, Maker &maker);

} // namespace ts
