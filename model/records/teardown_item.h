#pragma once

#include "model/records/description.h"
#include "model/records/photo.h"
#include "model/records/unit.h"

namespace ts {

/// On: known to come off, from notes or from another unit, and not taken off yet.
enum class TeardownState { Off, Back, LeftOut, On };

template <>
struct Words<TeardownState> {
    static constexpr std::array list{std::pair{TeardownState::Off, "off"},
                                     std::pair{TeardownState::Back, "back"},
                                     std::pair{TeardownState::LeftOut, "left_out"},
                                     std::pair{TeardownState::On, "on"}};
};

/// What came off.
struct TeardownItem : Record<TeardownItem> {
    Id<Unit> unit;
    int position = 0; ///< order in which it came off
    QString what;
    QString fasteners;
    std::optional<int> fastenerCount;
    QString connectors; ///< ways, key side, colours
    QString springs; ///< springs and washers
    QString marks; ///< made before an adjustment was moved
    QString keptIn;
    QString caution;
    TeardownState state = TeardownState::Off;
    QDateTime backAt;
    QString leftOutBecause;
    Id<Photo> photo;

    bool operator==(const TeardownItem &) const = default;

    static constexpr auto table = "teardown_item";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &TeardownItem::unit).required();
        fields("position", &TeardownItem::position);
        fields("what", &TeardownItem::what).required().searched();
        fields("fasteners", &TeardownItem::fasteners).searched();
        fields("fastener_count", &TeardownItem::fastenerCount);
        fields("connectors", &TeardownItem::connectors).searched();
        fields("springs", &TeardownItem::springs).searched();
        fields("marks", &TeardownItem::marks).searched();
        fields("kept_in", &TeardownItem::keptIn).searched();
        fields("caution", &TeardownItem::caution).searched();
        fields("state", &TeardownItem::state);
        fields("back_at", &TeardownItem::backAt);
        fields("left_out_because", &TeardownItem::leftOutBecause).searched();
        fields("photo", &TeardownItem::photo);
    }
};

} // namespace ts
