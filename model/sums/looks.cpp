#include "model/sums/looks.h"

#include <QRegularExpression>

#include <array>

namespace ts {

std::optional<int> looksGrade(const QString &text)
{
    static const std::array grades{
        QStringLiteral("poor|rough|cracked|broken|damaged"),
        QStringLiteral("fair|used|worn|scuffed|scratched|marked"),
        QStringLiteral("good|clean|tidy"),
        QStringLiteral("very good|very clean|excellent"),
        QStringLiteral("mint|as new|like new|unmarked"),
    };
    // One pattern with a group for each grade, so that the first word in the text decides, and "very good" before "good".
    static const QRegularExpression pattern(
        QStringLiteral("\\b(?:(%1)|(%2)|(%3)|(%4)|(%5))\\b").arg(grades[3], grades[0], grades[1], grades[2], grades[4]),
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
    constexpr std::array order{3, 0, 1, 2, 4};
    const auto match = pattern.match(text);
    for (std::size_t i = 0; i < order.size(); ++i)
        if (match.hasMatch() && !match.captured(static_cast<int>(i) + 1).isEmpty())
            return order[i];
    return std::nullopt;
}

} // namespace ts
