#include "model/sums/coming_in.h"

#include "model/records/settings.h"
#include "model/sums/acceptance.h"
#include "model/sums/mains_match.h"
#include "model/sums/standing.h"

namespace ts {

ComingIn comingIn(const Unit &unit, const BenchFile &bench, Maker &maker)
{
    UnitFile file;
    file.unit = unit;
    return {proofsFor(unit, maker), mainsCautions(unit, bench.setting(settings::mains)), cautions(file, bench)};
}

} // namespace ts
