#pragma once

#include "model/paper/paper_pages.h"
#include "model/values/expected.h"

namespace ts {

/// The sheet as a PDF with its fonts inside. The same facts give the same bytes: the date in the file is the sheet's own.
/// Refuses where there is no QGuiApplication to draw with.
[[nodiscard]] Expected<QByteArray> restorationPdf(const RestorationFacts &facts, PageSize size);

} // namespace ts
