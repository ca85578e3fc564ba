#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// What the needs of one state come to.
struct NeedTotal {
    NeedState state = NeedState::Needed;
    int lines = 0;
    int pieces = 0;
    QList<Money> sums; ///< price × quantity, one sum a currency, the bench's own first; none where nothing has a price
    int unpriced = 0;  ///< lines without a price: in no sum
    bool operator==(const NeedTotal &) const = default;
};

/// The needs of a unit by state, each state in order of the way (needed, ordered, here, fitted) whether it has any or not.
[[nodiscard]] QList<NeedTotal> needTotals(const UnitFile &file, const Currency &bench);
/// All of them together; its state means nothing.
[[nodiscard]] NeedTotal needTotal(const UnitFile &file, const Currency &bench);

} // namespace ts
