#pragma once

#include "model/paper/restoration_facts.h"
#include "model/paper/template_filler.h"

namespace ts {

/// "Restoration sheet 17, edition 2"; without a number it says that it is a draft.
[[nodiscard]] QString sheetName(const RestorationFacts &facts);

/// The sentences and lists of a restoration sheet under the names that both its templates use; with the colours of paper.
[[nodiscard]] Filling restorationFilling(const RestorationFacts &facts);

/// The sheet as one web page that needs no other file: photos inside it, styles for narrow screens and for printing. UTF-8.
[[nodiscard]] QByteArray restorationHtml(const RestorationFacts &facts);

} // namespace ts
