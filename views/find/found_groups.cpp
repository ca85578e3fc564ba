#include "views/find/found_groups.h"

#include <QCoreApplication>
#include <QHash>

namespace ts {

namespace {

struct Home {
    FoundGroup group = FoundGroup::Log;
    PageKey page = PageKey::Log;
    PlaceKey place = PlaceKey::Units;
};

Home homeOf(const QString &kind)
{
    static const QHash<QString, Home> homes{{QStringLiteral("unit"), {FoundGroup::Units, PageKey::Log}},
                                            {QStringLiteral("symptom"), {FoundGroup::Faults, PageKey::FaultFinding}},
                                            {QStringLiteral("cause"), {FoundGroup::Faults, PageKey::FaultFinding}},
                                            {QStringLiteral("check"), {FoundGroup::Faults, PageKey::FaultFinding}},
                                            {QStringLiteral("test_point"), {FoundGroup::Readings, PageKey::Readings}},
                                            {QStringLiteral("reading"), {FoundGroup::Readings, PageKey::Readings}},
                                            {QStringLiteral("soak"), {FoundGroup::Readings, PageKey::Readings}},
                                            {QStringLiteral("need"), {FoundGroup::Parts, PageKey::Parts}},
                                            {QStringLiteral("part"), {FoundGroup::Parts, PageKey::Parts, PlaceKey::PartsStore}},
                                            {QStringLiteral("batch"), {FoundGroup::Parts, PageKey::Parts, PlaceKey::PartsStore}},
                                            {QStringLiteral("teardown_item"), {FoundGroup::Teardown, PageKey::Teardown}},
                                            {QStringLiteral("photo_pin"), {FoundGroup::Teardown, PageKey::Teardown}},
                                            {QStringLiteral("proof"), {FoundGroup::Proofs, PageKey::Proving}},
                                            {QStringLiteral("spend"), {FoundGroup::Money, PageKey::Money, PlaceKey::Ledger}},
                                            {QStringLiteral("comparable"), {FoundGroup::Money, PageKey::Money, PlaceKey::Ledger}},
                                            {QStringLiteral("plan"), {FoundGroup::Money, PageKey::Money}},
                                            {QStringLiteral("decision"), {FoundGroup::Money, PageKey::Money}},
                                            {QStringLiteral("paper"), {FoundGroup::Papers, PageKey::Handover, PlaceKey::Ledger}},
                                            {QStringLiteral("model_notes"), {FoundGroup::Bench, PageKey::Log, PlaceKey::ModelNotes}},
                                            {QStringLiteral("contact"), {FoundGroup::Bench, PageKey::Log, PlaceKey::Ledger}},
                                            {QStringLiteral("lot"), {FoundGroup::Bench, PageKey::Log, PlaceKey::Ledger}},
                                            {QStringLiteral("channel"), {FoundGroup::Bench, PageKey::Log, PlaceKey::Settings}},
                                            {QStringLiteral("meter"), {FoundGroup::Bench, PageKey::Log, PlaceKey::Settings}}};
    if (kind.startsWith(QLatin1String("known_"))) // what is known of a model
        return {FoundGroup::Bench, PageKey::Log, PlaceKey::ModelNotes};
    return homes.value(kind);
}

} // namespace

QString foundGroupName(FoundGroup group)
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("ts", text); };
    switch (group) {
    case FoundGroup::Units:
        return tr("Units");
    case FoundGroup::Faults:
        return tr("Symptoms, causes and checks");
    case FoundGroup::Readings:
        return tr("Readings");
    case FoundGroup::Parts:
        return tr("Parts");
    case FoundGroup::Log:
        return tr("In the log");
    case FoundGroup::Teardown:
        return tr("Teardown");
    case FoundGroup::Proofs:
        return tr("Proofs");
    case FoundGroup::Money:
        return tr("Money");
    case FoundGroup::Papers:
        return tr("Papers");
    case FoundGroup::Bench:
        return tr("Of the bench");
    }
    return {};
}

FoundGroup foundGroupOf(const QString &kind)
{
    return homeOf(kind).group;
}

PageKey pageOfKind(const QString &kind)
{
    return homeOf(kind).page;
}

PlaceKey placeOfKind(const QString &kind)
{
    return homeOf(kind).place;
}

} // namespace ts
