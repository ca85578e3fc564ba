#pragma once

#include "model/records/unit.h"

#include <QStringList>

namespace ts {

/// The voltages and frequencies that a rating plate or a wall outlet names. Several where it can be set to one or another.
struct MainsPlate {
    struct Range {
        double low = 0;
        double high = 0;
        bool operator==(const Range &) const = default;
    };
    QList<Range> volts; ///< "220-240 V" is one, "110/220 V" are two
    QList<double> hertz;
};

/// What can be read from a text such as "230 V 50 Hz", "110-120/220-240 V~ 50/60 Hz", "AC 117 V, 60 c/s"; empty lists where nothing can.
[[nodiscard]] MainsPlate mainsPlate(const QString &text);

/// What of a plate does not fit a bench's mains, as a sentence each; empty where it fits or either says nothing that can be read.
struct MainsMismatch {
    QString voltage;
    QString frequency;
};
[[nodiscard]] MainsMismatch mainsMismatch(const Unit &unit, const QString &benchMains);

/// Why the unit must not just be plugged in at a bench with this mains ("230 V 50 Hz"), and what to do first; one sentence each,
/// empty where plate and bench agree, where either says nothing that can be read, and for what takes no mains.
[[nodiscard]] QStringList mainsCautions(const Unit &unit, const QString &benchMains);

} // namespace ts
