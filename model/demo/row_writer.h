#pragma once

#include "model/desk/desk.h"

#include <QJsonArray>
#include <QJsonObject>

namespace ts {

/// {"text": row[0], …} of the names given; a shorter row, or a null in it, leaves fields out.
[[nodiscard]] QJsonObject namedCells(const QJsonArray &row, std::initializer_list<const char *> names);

/// Turns the story's words into rows: names records by what they say ("left channel") instead of by ids, and fills in what goes
/// without saying (the bench's currency, instants as they are stored).
class RowWriter {
public:
    explicit RowWriter(Desk &desk) : m_desk(desk) {}

    /// A new row of the kind, of `unit` where the kind has one. Refuses unknown fields and names that nothing carries.
    [[nodiscard]] Expected<Row> fresh(const Kind &kind, QJsonObject fields, const Id<Unit> &unit);
    /// The row with some fields set anew; its id and version stay.
    [[nodiscard]] Expected<Row> with(const Kind &kind, const Row &row, const QJsonObject &fields);
    /// The newest record of the kind whose naming text holds `text` (any case): of the unit where the kind has one. A four-digit
    /// tag names a unit.
    [[nodiscard]] Expected<Row> named(const Kind &kind, const QString &text, const Id<Unit> &unit);

    /// What people call a record by; its kind's noun where it has no such text.
    [[nodiscard]] static QString naming(const Kind &kind, const Row &row);

private:
    Expected<QJsonObject> spelledOut(const Kind &kind, QJsonObject fields, const Id<Unit> &unit);
    Desk &m_desk;
};

} // namespace ts
