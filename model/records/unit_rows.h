#pragma once

#include "model/records/change.h"
#include "model/records/unit_file.h"

namespace ts {

/// Names one record.
struct RecordKey {
    const Kind *kind = nullptr;
    QUuid id;
    bool operator==(const RecordKey &) const = default;
};
[[nodiscard]] inline size_t qHash(const RecordKey &key, size_t seed = 0)
{
    return qHashMulti(seed, key.kind, key.id);
}

/// One record of a unit without its type.
struct KindRow {
    const Kind *kind = nullptr;
    Row row;
    [[nodiscard]] RecordKey key() const { return {kind, Kind::id(row)}; }
};

/// Every record of a unit but the unit itself, kind by kind in the order of all kinds.
[[nodiscard]] QList<KindRow> rowsOf(const UnitFile &file);
/// The row of one record of the unit, or of the unit itself; nothing where it has no such record.
[[nodiscard]] std::optional<Row> rowOf(const UnitFile &file, const RecordKey &key);
/// The first text of a record that must be there, simplified: what people would call it by. Empty where its kind has none.
[[nodiscard]] QString callName(const Kind &kind, const Row &row);

/// What cannot stand without another record (a pin without its photo); or also what belongs to one (the readings of a soak, the
/// causes and checks of a symptom).
enum class Hanging { Needs, Belongs };
/// The records named and what hangs on them, on that again, and so on; in order of `rowsOf`.
[[nodiscard]] QList<KindRow> withWhatHangs(const QList<RecordKey> &named, const UnitFile &file, Hanging how);
/// Edits that let go of the records `gone`: what stays behind and may stand without them refers to nothing instead.
[[nodiscard]] QList<ChangeItem> lettingGo(const QList<RecordKey> &gone, const UnitFile &file);

} // namespace ts
