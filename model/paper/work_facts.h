#pragma once

#include "model/paper/restoration_facts.h"
#include "model/records/unit_file.h"

namespace ts {

struct WorkFacts {
    QList<RestorationFacts::Work> rows;
    QList<RestorationFacts::Fitted> fitted;
    int vague = 0; ///< entries left out because they say no more than "serviced"
};

/// Each symptom with the causes confirmed and the work done for it, in order of recording; what belongs to no symptom stands
/// in a last row. Parts fitted are listed for themselves.
[[nodiscard]] WorkFacts workFacts(const UnitFile &file);

} // namespace ts
