#pragma once

#include "model/records/unit_file.h"
#include "model/sums/loose.h"
#include "model/sums/verdict.h"

namespace ts {

/// The latest reading of a test point, where it is not within.
struct OutOfSpec {
    Reading reading;
    Judgement judgement; ///< Outside or TooCloseToCall
};

/// How many fasteners of one kind lie loose.
struct FastenerCount {
    QString kind; ///< "M3x8", "screws"; as written, without its count
    int count = 0;
    bool operator==(const FastenerCount &) const = default;
};

/// Where a unit stands, for whoever picks it up again.
struct Standing {
    QString whereAt;
    QString next;
    QDateTime leftOffAt;
    QString doNotPower;             ///< why; empty: nothing recorded against it
    QList<Symptom> openSymptoms;    ///< oldest first
    int symptoms = 0;               ///< open and cleared
    QList<OutOfSpec> outside;       ///< latest reading of its point and outside
    QList<OutOfSpec> tooClose;      ///< latest reading of its point and too close to call
    QList<Need> awaited;            ///< needed or ordered, soonest due first, then in order of recording
    QList<TeardownItem> loose;      ///< still off, last off first: the order to put back
    QList<FastenerCount> fasteners; ///< of the loose items, as far as their texts can be read; most first
    Loose counted;                  ///< the small things of the loose items by kind, and how far putting back has come
    QString otherLoose;             ///< loose things beside the teardown items, as typed
    QStringList keptIn;             ///< where the loose things lie, each once
    QStringList cautions;
};

/// The latest reading of each test point (by point where it has one, else by name, case aside), in order of first appearance.
/// Readings of a soak count as their point's.
[[nodiscard]] QList<Reading> latestReadings(const UnitFile &file);
[[nodiscard]] QList<Reading> latestReadings(const UnitFile &file, Phase phase);
/// Fasteners of one teardown item: its own count and text ("5 screws M3x8"); several parts by comma or "+". Unreadable text with
/// no count gives nothing.
[[nodiscard]] QList<FastenerCount> fastenersOf(const TeardownItem &item);
[[nodiscard]] Standing standing(const UnitFile &file, const BenchFile &bench);

/// The hazards of this unit and what to do about them: why it must not be powered, what its teardown items and model notes warn
/// of, then those of its category and mains. Texts of the program defer to local codes and licensed practice.
[[nodiscard]] QStringList cautions(const UnitFile &file, const BenchFile &bench);

/// The same for whoever receives the unit and will not open it: what its model notes warn of, what is inside in one sentence, and
/// what matters with the cover on. Defers to local codes and licensed practice. (Why it must not be powered is not in it.)
[[nodiscard]] QStringList handoverCautions(const UnitFile &file, const BenchFile &bench);

/// What was not done, not tested or could not be measured, one sentence each, worked out from the record alone.
[[nodiscard]] QStringList notDone(const UnitFile &file);

} // namespace ts
