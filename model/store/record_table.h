#pragma once

#include "model/store/connection.h"

namespace ts {

/// The rows of one record kind in the database: get, list, insert, update, all from the kind's description.
class RecordTable {
public:
    RecordTable(Connection &connection, const Kind &kind);

    /// The row, removed or not; nothing where there is none of that id.
    [[nodiscard]] Expected<std::optional<Row>> get(const QUuid &id);
    /// Rows that are not removed, in order of time recorded; all, or those where `column` equals `value`.
    [[nodiscard]] Expected<QList<Row>> list(const QString &column = {}, const QVariant &value = {});
    /// Every row, removed ones too, by `each`.
    Expected<void> forEach(const std::function<bool(const Row &)> &each);
    /// Adds a row, or brings back a removed one of the same id; sets the version in `row`. Refused where a row of that id is in use.
    Expected<void> insert(Row &row);
    /// Writes `row` over the stored one where that has `row`'s version; counts the version up in `row`. Answers false where
    /// the stored version is another: changed by someone else.
    Expected<bool> update(Row &row);
    [[nodiscard]] Expected<qint64> count();
    [[nodiscard]] const Kind &kind() const { return m_kind; }

private:
    [[nodiscard]] Row read(const Statement &query) const;

    Connection &m_connection;
    const Kind &m_kind;
    QString m_columns;
    QString m_insert;
    QString m_update;
};

} // namespace ts
