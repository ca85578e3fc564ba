#pragma once

#include "model/records/source_record.h"
#include "model/records/unit.h"

#include <QStringList>

namespace ts {

/// What the standard asks of a unit beside the unit itself.
struct RepairFacts {
    Unit unit;
    std::optional<SourceRecord> source; ///< as it was imported
    QStringList openSymptoms;
    QString lastBecause; ///< of the last stage move
};

/// What stands in every record of our own.
struct RepairProvider {
    QString name;
    QString country; ///< ISO 3166-1 alpha-3, or empty
};

/// The fourteen cells of one record of the Open Repair Data Standard. What came from such a file goes out as it came, except
/// where the workbook knows better by now: another stage, claim, category, year or maker.
[[nodiscard]] QStringList openRepairRow(const RepairFacts &facts, const RepairProvider &provider);

} // namespace ts
