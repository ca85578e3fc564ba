#pragma once

#include <QString>

#include <optional>

namespace ts {

/// What a line about something taken off says: WHAT [N screws M3x8 …] [2 springs …] [plug CN5 …] [tray A1].
struct TeardownLine {
    QString what;
    QString fasteners; ///< with their numbers: "5 screws M3x8, 2 nuts"
    std::optional<int> fastenerCount;
    QString springs;    ///< springs, washers, clips
    QString connectors; ///< plugs, ribbons, connectors
    QString keptIn;
};

[[nodiscard]] TeardownLine splitTeardown(const QString &text);

} // namespace ts
