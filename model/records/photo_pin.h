#pragma once

#include "model/records/description.h"
#include "model/records/photo.h"
#include "model/records/teardown_item.h"
#include "model/records/unit.h"

namespace ts {

/// A numbered pin on a photo.
struct PhotoPin : Record<PhotoPin> {
    Id<Unit> unit;
    Id<Photo> photo;
    Id<TeardownItem> item;
    double x = 0; ///< 0 to 1 from the left
    double y = 0; ///< 0 to 1 from the top
    QString label;

    bool operator==(const PhotoPin &) const = default;

    static constexpr auto table = "photo_pin";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &PhotoPin::unit).required();
        fields("photo", &PhotoPin::photo).required();
        fields("item", &PhotoPin::item);
        fields("x", &PhotoPin::x);
        fields("y", &PhotoPin::y);
        fields("label", &PhotoPin::label).searched();
    }
};

} // namespace ts
