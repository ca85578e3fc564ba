#pragma once

#include "model/records/unit_file.h"
#include "model/sums/verdict.h"

namespace ts {

enum class EventKind {
    Bought,
    TakenIn,
    Symptom,
    SymptomCleared,
    Cause,
    CauseRuledOut,
    CauseConfirmed,
    Check,
    Reading,
    Soak,
    Step,
    Need,
    Fitted,
    Spend,
    Photo,
    Teardown,
    PutBack,
    Stage,
    Proof,
    FirstPower,
    Paper,
    Note,
    LeftOff,
    Clock,
    Decision
};

template <>
struct Words<EventKind> {
    static constexpr std::array list{std::pair{EventKind::Bought, "bought"},
                                     std::pair{EventKind::TakenIn, "taken_in"},
                                     std::pair{EventKind::Symptom, "symptom"},
                                     std::pair{EventKind::SymptomCleared, "symptom_cleared"},
                                     std::pair{EventKind::Cause, "cause"},
                                     std::pair{EventKind::CauseRuledOut, "cause_ruled_out"},
                                     std::pair{EventKind::CauseConfirmed, "cause_confirmed"},
                                     std::pair{EventKind::Check, "check"},
                                     std::pair{EventKind::Reading, "reading"},
                                     std::pair{EventKind::Soak, "soak"},
                                     std::pair{EventKind::Step, "step"},
                                     std::pair{EventKind::Need, "need"},
                                     std::pair{EventKind::Fitted, "fitted"},
                                     std::pair{EventKind::Spend, "spend"},
                                     std::pair{EventKind::Photo, "photo"},
                                     std::pair{EventKind::Teardown, "teardown"},
                                     std::pair{EventKind::PutBack, "put_back"},
                                     std::pair{EventKind::Stage, "stage"},
                                     std::pair{EventKind::Proof, "proof"},
                                     std::pair{EventKind::FirstPower, "first_power"},
                                     std::pair{EventKind::Paper, "paper"},
                                     std::pair{EventKind::Note, "note"},
                                     std::pair{EventKind::LeftOff, "left_off"},
                                     std::pair{EventKind::Clock, "clock"},
                                     std::pair{EventKind::Decision, "decision"}};
};

/// One thing that happened to a unit.
struct Event {
    QDateTime at; ///< UTC
    EventKind what = EventKind::Note;
    QString text;   ///< plain, not escaped: "Take-up torque, play", "Symptom cleared: take-up reel stops"
    QString detail; ///< a second line, may be empty: "14 gf·cm ± 3, wanted 35 to 65 gf·cm"
    std::optional<Verdict> verdict;
    std::optional<int> minutes;
    std::optional<Money> money; ///< out positive, in negative; in the currency paid
    QUuid record;               ///< what it comes from
    bool later = false;         ///< what became of the record after it was first written down: cleared, put back, came out
    bool operator==(const Event &) const = default;
};

/// The kind of record that such an event comes from.
[[nodiscard]] const Kind &kindOf(EventKind what);

/// Everything that happened to a unit, oldest first (by instant, then the record's id). One record gives several events where it
/// has several instants: a symptom its clearing, a cause its settling, a need its fitting, a teardown item its putting back. A proof that
/// was not tested yet, and a teardown item that is still on, have none.
[[nodiscard]] QList<Event> timeline(const UnitFile &file, const BenchFile &bench);

} // namespace ts
