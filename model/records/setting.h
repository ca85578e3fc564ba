#pragma once

#include "model/records/description.h"

namespace ts {

/// One setting of the workbook.
struct Setting : Record<Setting> {
    QString name;
    QString value;

    bool operator==(const Setting &) const = default;

    static constexpr auto table = "setting";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("name", &Setting::name).required();
        fields("value", &Setting::value);
    }
};

} // namespace ts
