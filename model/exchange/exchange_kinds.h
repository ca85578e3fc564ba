#pragma once

#include "model/values/expected.h"

#include <QStringList>

namespace ts {

/// What can be taken in and written out, by the names of the command line.
[[nodiscard]] const QStringList &importKinds();
[[nodiscard]] const QStringList &exportKinds();
/// Refuses a kind that there is not, or not yet, and lists those that there are. The command line counts it as wrong usage.
[[nodiscard]] Expected<void> canImport(const QString &kind);
[[nodiscard]] Expected<void> canExport(const QString &kind);

} // namespace ts
