#include "views/widgets/names.h"

#include <QCoreApplication>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

} // namespace

QString categoryName(Category category)
{
    switch (category) {
    case Category::DiscPlayer:
        return tr("Disc player");
    case Category::CassetteDeck:
        return tr("Cassette deck");
    case Category::Turntable:
        return tr("Turntable");
    case Category::AmplifierReceiver:
        return tr("Amplifier or receiver");
    case Category::Tuner:
        return tr("Tuner");
    case Category::ReelRecorder:
        return tr("Reel recorder");
    case Category::Loudspeaker:
        return tr("Loudspeaker");
    case Category::Radio:
        return tr("Radio");
    case Category::GameConsole:
        return tr("Game console");
    case Category::OldComputer:
        return tr("Old computer");
    case Category::TestGear:
        return tr("Test gear");
    case Category::Other:
        break;
    }
    return tr("Something else");
}

QString kindName(UnitKind kind)
{
    switch (kind) {
    case UnitKind::ToSell:
        return tr("To sell");
    case UnitKind::Owners:
        return tr("An owner’s");
    case UnitKind::ToKeep:
        break;
    }
    return tr("To keep");
}

QString phaseName(Phase phase)
{
    switch (phase) {
    case Phase::AsFound:
        return tr("As found");
    case Phase::DuringWork:
        return tr("During work");
    case Phase::AsItLeaves:
        break;
    }
    return tr("As it leaves");
}

} // namespace ts
