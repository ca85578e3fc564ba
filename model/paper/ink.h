#pragma once

#include <QString>

#include <array>
#include <utility>

namespace ts::ink {

/// The colours of printed paper, by role; the templates name the roles and the painter asks here, so no colour stands
/// anywhere else. On white each text colour has a contrast of at least 4.5:1 (WCAG 2.1, 1.4.3).
inline constexpr std::array roles{
    std::pair{"ink", "#23272b"},     std::pair{"quiet", "#626a70"},   std::pair{"faint", "#766f63"},
    std::pair{"heading", "#7b3a1d"}, std::pair{"line", "#e5e0d6"},    std::pair{"rule", "#dcd7cc"},
    std::pair{"sheet", "#ffffff"},   std::pair{"desk", "#efebe2"},    std::pair{"within", "#21633a"},
    std::pair{"outside", "#9b2a22"}, std::pair{"close", "#86600d"},   std::pair{"no_limit", "#625b4e"},
    std::pair{"shade", "#1b1e20"},   std::pair{"on_shade", "#ffffff"}};

/// The colour of a role as "#rrggbb"; empty where there is no such role.
[[nodiscard]] inline QString colour(QLatin1String role)
{
    for (const auto &[name, value] : roles)
        if (role == QLatin1String(name))
            return QString::fromLatin1(value);
    return {};
}

} // namespace ts::ink
