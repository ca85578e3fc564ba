#include "views/places/places.h"

#include "views/places/exchange_place.h"
#include "views/places/history_place.h"
#include "views/settings/settings_place.h"
#include "views/widgets/empty_place.h"

#include <QCoreApplication>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

} // namespace

QWidget *makePlace(PlaceKey place, Workplace &workplace)
{
    switch (place) {
    case PlaceKey::ModelNotes:
        return new EmptyPlace(tr("What is known of a model across units stands here."));
    case PlaceKey::PartsStore:
        return new EmptyPlace(tr("Parts on the shelf, their batches and what they cost stand here."));
    case PlaceKey::Ledger:
        return new EmptyPlace(tr("Money out and in over the year stands here."));
    case PlaceKey::History:
        return new HistoryPlace(workplace);
    case PlaceKey::Exchange:
        return new ExchangePlace(workplace);
    case PlaceKey::Settings:
        return new SettingsPlace(workplace);
    case PlaceKey::Overview:
    case PlaceKey::Units:
        break;
    }
    return new EmptyPlace(tr("How the bench does as a whole stands here."));
}

} // namespace ts
