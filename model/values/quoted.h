#pragma once

#include <QString>

namespace ts {

/// What a person typed, in quotation marks for a refusal: line breaks folded, cut at 40 characters.
[[nodiscard]] QString quoted(QStringView text);

} // namespace ts
