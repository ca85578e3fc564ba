#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// Where an imported unit comes from, as its source put it: the Open Repair Data Standard's own words.
struct SourceRecord : Record<SourceRecord> {
    Id<Unit> unit;
    QString dataProvider;
    QString country; ///< ISO 3166-1 alpha-3
    QString partnerProductCategory;
    QString productCategory;
    QString productCategoryId;
    QString brand;
    QString yearOfManufacture;
    QString productAge; ///< years, as written
    QString repairStatus;
    QString repairBarrier;
    QString groupIdentifier;
    QString eventDate;

    bool operator==(const SourceRecord &) const = default;

    static constexpr auto table = "source_record";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &SourceRecord::unit).required();
        fields("data_provider", &SourceRecord::dataProvider);
        fields("country", &SourceRecord::country);
        fields("partner_product_category", &SourceRecord::partnerProductCategory).searched();
        fields("product_category", &SourceRecord::productCategory);
        fields("product_category_id", &SourceRecord::productCategoryId);
        fields("brand", &SourceRecord::brand);
        fields("year_of_manufacture", &SourceRecord::yearOfManufacture);
        fields("product_age", &SourceRecord::productAge);
        fields("repair_status", &SourceRecord::repairStatus);
        fields("repair_barrier", &SourceRecord::repairBarrier);
        fields("group_identifier", &SourceRecord::groupIdentifier);
        fields("event_date", &SourceRecord::eventDate);
    }
};

} // namespace ts
