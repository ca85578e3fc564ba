#pragma once

#include <QFont>

class QTextDocument;

namespace ts {

/// The font of papers: Inter where it is installed, else the system's own sans; not hinted, so that it does not depend on a
/// screen. Shaping is off. Inter swaps hyphens, brackets and ± beside figures for shapes that a PDF has no letter for, and what
/// it swaps can be neither searched nor copied.
[[nodiscard]] QFont paperFont(int pixels, int weight = 400);

/// The font with shaping on where a text has letters of a script that may join or reorder them.
[[nodiscard]] QFont fontFor(const QString &text, QFont font);

/// The same for every paragraph of a document.
void shapeWhereNeeded(QTextDocument &document);

} // namespace ts
