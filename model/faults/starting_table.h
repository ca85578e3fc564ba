#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// A cause of a symptom as a table has it, with the check that tells it.
struct TableCause {
    QString cause;
    double weight = 0; ///< those of a symptom and its something else add up to 1
    int fixMinutes = 0;
    QString check;
    int minutes = 0;
    QString normal;      ///< what a good unit shows at the check
    QStringList also;    ///< other causes of the symptom that the check would show too
    QStringList sources; ///< keys of StartingTable::sources
};

struct TableSymptom {
    QString symptom;
    double somethingElse = 0;
    QList<TableCause> causes;
};

/// How repairs of a category ended in open repair records.
struct RepairOutcomes {
    int fixed = 0;
    int repairable = 0; ///< later, elsewhere
    int endOfLife = 0;
    int of = 0;
    QString source;
};

/// What usually is wrong with units of a category, before one knows anything of one's own. Starting values, marked as such.
struct StartingTable {
    Category category = Category::Other;
    QString status;                 ///< what the figures are, for people
    QMap<QString, QString> sources; ///< key -> the source's name, with its licence where it has one
    std::optional<RepairOutcomes> outcomes;
    QList<TableSymptom> symptoms;
    bool own = false; ///< read in by the owner, not the one that ships
};

/// Reads one table (the form of resources/faults/*.json). Refused, by symptom and cause: a table that does not say its category
/// or whose word is unknown, weights below 0 or that do not add up to 1 (within 0.005), minutes below 0, a cause or check without
/// text or there twice, a check that shows a cause that is not there, a source that is not named.
[[nodiscard]] Expected<StartingTable> readTable(const QByteArray &json);
/// The same of a file with one table, or with a list of them.
[[nodiscard]] Expected<QList<StartingTable>> readTables(const QByteArray &json);
/// The table in the same form, for a file that can be edited and read in again.
[[nodiscard]] QByteArray writeTables(const QList<StartingTable> &tables);

/// The table of a category: the owner's (setting "fault_tables") where one was read in, else the one that ships; empty where
/// there is none.
[[nodiscard]] StartingTable tableOf(const BenchFile &bench, Category category);
/// Those of all categories that have one.
[[nodiscard]] QList<StartingTable> allTables(const BenchFile &bench);

} // namespace ts
