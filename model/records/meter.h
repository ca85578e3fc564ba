#pragma once

#include "model/records/description.h"

namespace ts {

/// An instrument.
struct Meter : Record<Meter> {
    QString name;
    QString serial;
    QDate calibrationDue;
    QString note;

    bool operator==(const Meter &) const = default;

    static constexpr auto table = "meter";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("name", &Meter::name).required().searched();
        fields("serial", &Meter::serial).searched();
        fields("calibration_due", &Meter::calibrationDue);
        fields("note", &Meter::note).searched();
    }
};

} // namespace ts
