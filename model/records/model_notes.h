#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// What is known of a model across units; of a whole category where neither maker nor model is named.
struct ModelNotes : Record<ModelNotes> {
    QString maker;
    QString makerModel;
    Category category = Category::Other;
    QString variants;
    QString mainsVersions;
    QString adjustments;
    QString usualCauses;
    QString parts;
    QString teardown;
    QString sources;
    QString ideas;
    QString cautions;

    bool operator==(const ModelNotes &) const = default;

    static constexpr auto table = "model_notes";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("maker", &ModelNotes::maker).searched();
        fields("maker_model", &ModelNotes::makerModel).searched();
        fields("category", &ModelNotes::category);
        fields("variants", &ModelNotes::variants).searched();
        fields("mains_versions", &ModelNotes::mainsVersions).searched();
        fields("adjustments", &ModelNotes::adjustments).searched();
        fields("usual_causes", &ModelNotes::usualCauses).searched();
        fields("parts", &ModelNotes::parts).searched();
        fields("teardown", &ModelNotes::teardown).searched();
        fields("sources", &ModelNotes::sources).searched();
        fields("ideas", &ModelNotes::ideas).searched();
        fields("cautions", &ModelNotes::cautions).searched();
    }
};

} // namespace ts
