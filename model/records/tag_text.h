#pragma once

#include <QString>

namespace ts {

/// The tag number as people see it: at least four digits.
[[nodiscard]] inline QString tagText(int tag)
{
    return QStringLiteral("%1").arg(tag, 4, 10, QLatin1Char('0'));
}

} // namespace ts
