#include "model/sums/timeline.h"

namespace ts {

const Kind &kindOf(EventKind what)
{
    switch (what) {
    case EventKind::Bought:
    case EventKind::Spend:
        return description<Spend>();
    case EventKind::TakenIn:
        return description<Unit>();
    case EventKind::Symptom:
    case EventKind::SymptomCleared:
        return description<Symptom>();
    case EventKind::Cause:
    case EventKind::CauseRuledOut:
    case EventKind::CauseConfirmed:
        return description<Cause>();
    case EventKind::Check:
        return description<Check>();
    case EventKind::Reading:
        return description<Reading>();
    case EventKind::Soak:
        return description<Soak>();
    case EventKind::Step:
        return description<Step>();
    case EventKind::Need:
    case EventKind::Fitted:
        return description<Need>();
    case EventKind::Photo:
        return description<Photo>();
    case EventKind::Teardown:
    case EventKind::PutBack:
        return description<TeardownItem>();
    case EventKind::Stage:
        return description<StageMove>();
    case EventKind::Proof:
        return description<Proof>();
    case EventKind::FirstPower:
        return description<Rung>();
    case EventKind::Paper:
        return description<Paper>();
    case EventKind::Note:
        return description<Note>();
    case EventKind::LeftOff:
        return description<LeftOff>();
    case EventKind::Decision:
        return description<Decision>();
    case EventKind::Clock:
        break;
    }
    return description<ClockSpan>();
}

} // namespace ts
