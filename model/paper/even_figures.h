#pragma once

class QTextDocument;

namespace ts {

/// Gives every digit of right-aligned table cells the width of a nought, so that columns of figures line up. Inter's own digits
/// differ in width, and Qt before 6.7 has no way to ask a font for its tabular ones.
void evenOutFigures(QTextDocument &document);

} // namespace ts
