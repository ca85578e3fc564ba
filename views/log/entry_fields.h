#pragma once

#include "model/sums/timeline.h"

namespace ts {

/// How a field of an entry is typed.
enum class FieldForm { Line, Long, Minutes, Count, Share, Price, Value, Spread, Wanted, Instant, Day, Choice, Symptom };

/// One column of a record as it is edited in the log.
struct EntryField {
    QString column;
    QString label;
    FieldForm form = FieldForm::Line;
};

/// What can be edited of an entry, the most usual first: what an event tells of its record, and when. Nothing for what is not edited
/// here.
[[nodiscard]] QList<EntryField> fieldsOf(const Event &event);

/// What a field begins with; it reads back as the same. A choice gives its stored word, an instant its stored form, a symptom its id.
[[nodiscard]] QString fieldText(const Kind &kind, const Row &row, const EntryField &field);

/// The row with a field as typed. Refused with the field's name where what is typed is not of its form.
[[nodiscard]] Expected<Row> withField(const Kind &kind, const Row &row, const EntryField &field, const QString &typed, const Currency &currency, QDate today);

} // namespace ts
