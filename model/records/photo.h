#pragma once

#include "model/records/description.h"
#include "model/records/reading.h"
#include "model/records/unit.h"

namespace ts {

/// A photo kept in the workbook by the SHA-256 of its bytes.
struct Photo : Record<Photo> {
    Id<Unit> unit;
    QString sha256;
    Phase phase = Phase::DuringWork;
    QString caption;
    int width = 0;
    int height = 0;
    QDateTime takenAt;
    QString originalName;
    bool onSheet = false; ///< chosen for the sheet
    int position = 0;

    bool operator==(const Photo &) const = default;

    static constexpr auto table = "photo";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Photo::unit).required();
        fields("sha256", &Photo::sha256).required();
        fields("phase", &Photo::phase);
        fields("caption", &Photo::caption).searched();
        fields("width", &Photo::width);
        fields("height", &Photo::height);
        fields("taken_at", &Photo::takenAt);
        fields("original_name", &Photo::originalName).searched();
        fields("on_sheet", &Photo::onSheet);
        fields("position", &Photo::position);
    }
};

} // namespace ts
