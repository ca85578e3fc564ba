#include "views/log/log_entry.h"

#include <QCoreApplication>

namespace ts {

namespace {
struct LaneWords {
    Q_DECLARE_TR_FUNCTIONS(LaneWords)
};
} // namespace

Lane laneOf(EventKind what)
{
    switch (what) {
    case EventKind::TakenIn:
    case EventKind::Stage:
        return Lane::Stages;
    case EventKind::Symptom:
    case EventKind::SymptomCleared:
    case EventKind::Cause:
    case EventKind::CauseRuledOut:
    case EventKind::CauseConfirmed:
    case EventKind::Check:
        return Lane::Faults;
    case EventKind::Reading:
    case EventKind::Soak:
        return Lane::Readings;
    case EventKind::Step:
    case EventKind::Clock:
        return Lane::Work;
    case EventKind::Teardown:
    case EventKind::PutBack:
        return Lane::Teardown;
    case EventKind::Need:
    case EventKind::Fitted:
        return Lane::Parts;
    case EventKind::Bought:
    case EventKind::Spend:
    case EventKind::Decision:
        return Lane::Money;
    case EventKind::Photo:
        return Lane::Photos;
    case EventKind::Proof:
    case EventKind::FirstPower:
    case EventKind::Paper:
        return Lane::Proofs;
    case EventKind::Note:
    case EventKind::LeftOff:
        break;
    }
    return Lane::Notes;
}

QString laneName(Lane lane)
{
    switch (lane) {
    case Lane::Stages:
        return LaneWords::tr("Stages");
    case Lane::Faults:
        return LaneWords::tr("Faults");
    case Lane::Readings:
        return LaneWords::tr("Readings");
    case Lane::Work:
        return LaneWords::tr("Work");
    case Lane::Teardown:
        return LaneWords::tr("Teardown");
    case Lane::Parts:
        return LaneWords::tr("Parts");
    case Lane::Money:
        return LaneWords::tr("Money");
    case Lane::Photos:
        return LaneWords::tr("Photos");
    case Lane::Proofs:
        return LaneWords::tr("Proofs and papers");
    case Lane::Notes:
        break;
    }
    return LaneWords::tr("Notes");
}

} // namespace ts
