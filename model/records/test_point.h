#pragma once

#include "model/records/description.h"
#include "model/records/model_notes.h"
#include "model/records/unit.h"

namespace ts {

/// Where and what to measure, what is wanted, under which conditions, and who says so. Of a unit, or of model notes.
struct TestPoint : Record<TestPoint> {
    Id<Unit> unit;
    Id<ModelNotes> modelNotes;
    QString name;
    Limit wanted;
    QString conditions;
    QString source;
    int position = 0; ///< order on the page

    bool operator==(const TestPoint &) const = default;

    static constexpr auto table = "test_point";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &TestPoint::unit);
        fields("model_notes", &TestPoint::modelNotes);
        fields("name", &TestPoint::name).required().searched();
        fields("wanted", &TestPoint::wanted);
        fields("conditions", &TestPoint::conditions).searched();
        fields("source", &TestPoint::source).searched();
        fields("position", &TestPoint::position);
    }
};

} // namespace ts
