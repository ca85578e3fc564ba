#pragma once

#include "model/paper/restoration_facts.h"
#include "model/paper/template_filler.h"

namespace ts {

/// The sentences and lists of a restoration sheet under the names that both its templates use; with the colours of paper.
[[nodiscard]] Filling restorationFilling(const RestorationFacts &facts);

/// The sheet as one web page that needs no other file: photos inside it, styles for narrow screens and for printing. UTF-8.
[[nodiscard]] QByteArray restorationHtml(const RestorationFacts &facts);

} // namespace ts
