#include "views/widgets/stage_names.h"

#include <QCoreApplication>

namespace ts::shown {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts::shown", text);
}

} // namespace

QString stage(Stage stage)
{
    switch (stage) {
    case Stage::Scouted:
        return tr("Scouted");
    case Stage::Inbound:
        return tr("Inbound");
    case Stage::Shelved:
        return tr("Shelved");
    case Stage::Bench:
        return tr("Bench");
    case Stage::Held:
        return tr("Held");
    case Stage::Proving:
        return tr("Proving");
    case Stage::Ready:
        return tr("Ready");
    case Stage::Offered:
        return tr("Offered");
    case Stage::Closed:
        return tr("Closed");
    }
    return {};
}

QString onStage(Stage stage)
{
    return stage == Stage::Bench ? tr("On the bench") : shown::stage(stage);
}

QString outcome(Outcome outcome)
{
    switch (outcome) {
    case Outcome::Sold:
        return tr("sold");
    case Outcome::ReturnedToOwner:
        return tr("returned to owner");
    case Outcome::Kept:
        return tr("kept");
    case Outcome::BrokenForParts:
        return tr("broken for parts");
    case Outcome::Scrapped:
        return tr("scrapped");
    }
    return {};
}

} // namespace ts::shown
