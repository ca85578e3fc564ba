#pragma once

#include <QString>

namespace ts {

/// The text of a template among the program's own files; a missing one is a mistake in the build and comes back empty.
[[nodiscard]] QString paperFile(const QString &name);

} // namespace ts
