#pragma once

#include "model/records/description.h"
#include "model/records/batch.h"
#include "model/records/part.h"
#include "model/records/symptom.h"
#include "model/records/unit.h"

namespace ts {

enum class NeedState { Needed, Ordered, Here, Fitted };

template <>
struct Words<NeedState> {
    static constexpr std::array list{std::pair{NeedState::Needed, "needed"},
                                     std::pair{NeedState::Ordered, "ordered"},
                                     std::pair{NeedState::Here, "here"},
                                     std::pair{NeedState::Fitted, "fitted"}};
};

/// A part that a unit needs, or got.
struct Need : Record<Need> {
    Id<Unit> unit;
    Id<Symptom> symptom;
    Id<Part> part;
    Id<Batch> batch;
    QString text;
    int quantity = 1;
    std::optional<Money> price; ///< each
    NeedState state = NeedState::Needed;
    QDateTime stateSince;
    QString position; ///< "C214"
    QString oldValue;
    QString supplier;
    QDate due;

    bool operator==(const Need &) const = default;

    static constexpr auto table = "need";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Need::unit).required();
        fields("symptom", &Need::symptom);
        fields("part", &Need::part);
        fields("batch", &Need::batch);
        fields("text", &Need::text).required().searched();
        fields("quantity", &Need::quantity);
        fields("price", &Need::price);
        fields("state", &Need::state);
        fields("state_since", &Need::stateSince);
        fields("position", &Need::position).searched();
        fields("old_value", &Need::oldValue);
        fields("supplier", &Need::supplier).searched();
        fields("due", &Need::due);
    }
};

} // namespace ts
