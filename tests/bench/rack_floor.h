#pragma once

#include "tests/bench/floor.h"

namespace ts::bench {

struct RackFloorRow {
    std::string id, name, category, kind, stage, since, because, until, outcome, source, symptom;
    qint64 tag = 0;
    qint64 spent = 0;
    qint64 minutes = 0;
    int place = 0;
    bool doNotPower = false;
};

/// The whole rack as one would write it by hand for this purpose alone: each table is read once from end to end, the sums are
/// made in plain code, and nothing but SQLite is asked.
[[nodiscard]] std::vector<RackFloorRow> rackFloor(Floor &book, const std::string &currency, const std::string &now);

} // namespace ts::bench
