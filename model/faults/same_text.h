#pragma once

#include <QString>

namespace ts {

/// Whether two texts read the same, case and spaces aside.
[[nodiscard]] inline bool sameText(const QString &a, const QString &b)
{
    return a.simplified().compare(b.simplified(), Qt::CaseInsensitive) == 0;
}

} // namespace ts
