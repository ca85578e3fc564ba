#pragma once

#include "model/records/unit_file.h"
#include "model/sums/verdict.h"

namespace ts {

/// What a step of the ladder asks for before it can be passed.
enum class StepAsks {
    Words, ///< what was seen
    Value, ///< a value, from which pass or stop follows
    Plate, ///< what the rating plate says, held against the bench's mains
    Fuse   ///< the fuse that is fitted, held against the plate's
};

/// A step of the ladder as a unit asks for it.
struct LadderStep {
    PowerStep step = PowerStep::Plate;
    QString text;   ///< "protective earth: metal to earth pin"
    QString asks;   ///< what to find out: "resistance, lead taken off"
    QString stops;  ///< when to stop, plain
    StepAsks kind = StepAsks::Words;
    Limit wanted;   ///< of a value; none where the line must name it
    QString source; ///< of the stop value
    double minutes = 0;
};

/// The steps before and at first power in their order, by category and protection class; none for what takes no mains. The order is
/// common practice of the trade, no source; each value names its own. Local codes and licensed practice come first.
[[nodiscard]] QList<LadderStep> ladderSteps(const Unit &unit);

enum class LadderVerdict { Open, Passed, Stopped };

template <>
struct Words<LadderVerdict> {
    static constexpr std::array list{std::pair{LadderVerdict::Open, "open"}, std::pair{LadderVerdict::Passed, "passed"}, std::pair{LadderVerdict::Stopped, "stopped"}};
};

struct LadderRung {
    LadderStep step;
    std::optional<Rung> last; ///< how it came out, newest try
};
struct Ladder {
    QList<LadderRung> rungs;
    LadderVerdict verdict = LadderVerdict::Open; ///< stopped by any step; passed where each one is passed or not applicable
    int open = 0;
    int stopped = 0; ///< how many steps
};
[[nodiscard]] Ladder ladderOf(const UnitFile &file);

/// Whether a value meets what is wanted: its guard band inside, too (judge() in verdict.h). What is too close to call is a stop.
[[nodiscard]] RungOutcome outcomeOf(const Rung &rung);
/// What was found in one line: "0.08 Ω ± 0.01 Ω, wanted up to 0.1 Ω", "T2A, plate T1.6A".
[[nodiscard]] QString foundText(const Rung &rung);

/// Whether a unit with this plate may not be run from this mains, by voltage or by frequency; empty where it may. Each is a sentence.
[[nodiscard]] QStringList mainsStops(const Unit &unit, const QString &plate, const QString &benchMains);
/// The same of a fuse by the markings, "UL" before one that is made to UL 248. Refuses what cannot be read.
[[nodiscard]] Expected<QStringList> fuseStops(const QString &fitted, const QString &plate);

/// The left-off record that says "do not power" for one more reason; the flags that stand already stay.
[[nodiscard]] LeftOff flaggedFor(const LeftOff &before, const QString &reason);

/// Most leakage of an old electrolytic while it is reformed, in amperes: 0.15 to 0.5 µA for each µF and volt, the looser one. Handbooks of
/// valve sets, as ../shared/trade 1.3, P11 quotes them.
[[nodiscard]] double reformingLeakage(double farads, double volts);

} // namespace ts
