#pragma once

#include "model/keeping/outgoing_sheet.h"
#include "model/paper/tag_label.h"

namespace ts {

/// What labels are wanted.
struct LabelWish {
    bool bags = false; ///< of the teardown steps, instead of the unit's own
    int boxes = 1;
    QString size = {}; ///< empty: the bench's own
};

/// The labels of a unit. Refused: a size that is none, boxes below 1 or above 99, bag labels where nothing is off.
[[nodiscard]] Expected<Labels> labelsOf(const UnitFile &unit, const BenchFile &bench, const LabelWish &wish, const QDateTime &now);
/// Hands them over (outgoing_sheet.h).
[[nodiscard]] Expected<Paper> handOverLabels(Desk &desk, const Unit &unit, const Labels &labels, const SheetWish &wish);

} // namespace ts
