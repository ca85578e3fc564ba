#pragma once

#include "model/records/description.h"
#include "model/records/symptom.h"
#include "model/records/unit.h"

namespace ts {

enum class CameOut { NotDone, Normal, Abnormal, Unclear };

template <>
struct Words<CameOut> {
    static constexpr std::array list{std::pair{CameOut::NotDone, "not_done"},
                                     std::pair{CameOut::Normal, "normal"},
                                     std::pair{CameOut::Abnormal, "abnormal"},
                                     std::pair{CameOut::Unclear, "unclear"}};
};

/// Something done to separate causes.
struct Check : Record<Check> {
    Id<Unit> unit;
    Id<Symptom> symptom;
    QString text;
    std::optional<int> minutes;
    QString wanted; ///< what a good unit shows
    CameOut cameOut = CameOut::NotDone;
    QString result;
    QDateTime doneAt;

    bool operator==(const Check &) const = default;

    static constexpr auto table = "check";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Check::unit).required();
        fields("symptom", &Check::symptom);
        fields("text", &Check::text).required().searched();
        fields("minutes", &Check::minutes);
        fields("came_out", &Check::cameOut);
        fields("result", &Check::result).searched();
        fields("done_at", &Check::doneAt);
        fields("wanted", &Check::wanted).searched();
    }
};

} // namespace ts
