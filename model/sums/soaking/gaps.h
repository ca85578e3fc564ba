#pragma once

#include "model/records/soak.h"

namespace ts {

/// A time during a soak from which there is no reading: the program was shut, the machine slept, the power went.
struct SoakGap {
    QDateTime from;
    QDateTime to;
    bool open = false;           ///< it lasts until now
    std::optional<bool> powered; ///< as it was answered; nothing: still to be asked about
    bool operator==(const SoakGap &) const = default;
};

/// Gaps between the readings of a soak, oldest first: wherever two follow each other more than twice the soak's interval apart
/// (or, where it names none, three times the usual distance, and at least five minutes), also after its start and before its end.
/// A running soak's last gap reaches to `now`. `times` must rise.
[[nodiscard]] QList<SoakGap> soakGaps(const Soak &soak, const QList<QDateTime> &times, const QDateTime &now);

/// The soak with the answer to "was it powered all that time?" kept for that gap, in place of an earlier answer.
[[nodiscard]] Soak answered(Soak soak, const SoakGap &gap, bool powered);

/// Minutes that the unit ran: from start to end (or now) without the gaps that were answered as not powered.
[[nodiscard]] int soakMinutes(const Soak &soak, const QList<SoakGap> &gaps, const QDateTime &now);

/// For people, a line each: "no reading from 25 Nov 21:10 to 26 Nov 06:55 (9 h 45 min): powered all the time", or "… was it
/// powered?"; what was typed about interruptions by hand stands first.
[[nodiscard]] QStringList gapWords(const Soak &soak, const QList<SoakGap> &gaps);

/// When the next reading of a running soak is due: its interval after the last, or after its start; not valid where it names no
/// interval or is over.
[[nodiscard]] QDateTime nextDue(const Soak &soak, const QDateTime &lastReading);

} // namespace ts
