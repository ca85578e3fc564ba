#include "views/places/places.h"

#include "views/places/bench_today_place.h"
#include "views/places/exchange_place.h"
#include "views/photos/photos_place.h"
#include "views/places/history_place.h"
#include "views/places/ledger_place.h"
#include "views/notes/model_notes_place.h"
#include "views/overview/overview_place.h"
#include "views/places/parts_store_place.h"
#include "views/settings/settings_place.h"
#include "views/sums/sums_place.h"

namespace ts {

QWidget *makePlace(PlaceKey place, Workplace &workplace)
{
    switch (place) {
    case PlaceKey::ModelNotes:
        return new ModelNotesPlace(workplace);
    case PlaceKey::PartsStore:
        return new PartsStorePlace(workplace);
    case PlaceKey::Ledger:
        return new LedgerPlace(workplace);
    case PlaceKey::History:
        return new HistoryPlace(workplace);
    case PlaceKey::Exchange:
        return new ExchangePlace(workplace);
    case PlaceKey::Photos:
        return new PhotosPlace(workplace);
    case PlaceKey::Settings:
        return new SettingsPlace(workplace);
    case PlaceKey::Sums:
        return new SumsPlace(workplace);
    case PlaceKey::BenchToday:
        return new BenchTodayPlace(workplace);
    case PlaceKey::Overview:
    case PlaceKey::Units:
        break;
    }
    return new OverviewPlace(workplace);
}

} // namespace ts
