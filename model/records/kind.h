#pragma once

#include "model/values/expected.h"

#include <QJsonObject>
#include <QList>
#include <QStringList>
#include <QUuid>
#include <QVariant>

#include <cstddef>
#include <vector>

namespace ts {

/// What a column holds. The store, the journal, JSON and the item models go by this and by nothing else.
enum class FieldType {
    Text,    ///< QString, never null
    Integer, ///< qlonglong
    Real,    ///< double
    Minor,   ///< qlonglong minor units; the currency is in the next column
    Bool,    ///< qlonglong 0 or 1
    Time,    ///< QString, UTC ISO 8601
    Date,    ///< QString, ISO 8601
    Word,    ///< QString, one of words
    Ref      ///< QString, the id of a record of kind refersTo
};

/// One column of one record kind.
struct FieldInfo {
    QString name;
    FieldType type = FieldType::Text;
    bool nullable = false;
    bool required = false; ///< must not be null or empty
    bool searched = false; ///< its text is found by search
    QStringList words;
    QString refersTo;
};

/// The columns of one stored record, in the order of its kind's fields.
using Row = QList<QVariant>;

/// A record kind without its C++ type: enough for the store, the journal, JSON, import and export.
class Kind {
public:
    // The first columns of every kind.
    static constexpr int idColumn = 0;
    static constexpr int versionColumn = 1;
    static constexpr int atColumn = 2;
    static constexpr int removedColumn = 3;

    [[nodiscard]] const QString &table() const { return m_table; } ///< also the kind's name in files and in the journal
    [[nodiscard]] const QString &noun() const { return m_noun; }   ///< as people say it: "teardown item"
    [[nodiscard]] const QList<FieldInfo> &fields() const { return m_fields; }
    [[nodiscard]] int column(QStringView name) const; ///< -1 where there is none
    [[nodiscard]] int unitColumn() const { return m_unitColumn; } ///< the column that says whose record it is, or -1

    [[nodiscard]] static QUuid id(const Row &row) { return QUuid::fromString(row.at(idColumn).toString()); }
    [[nodiscard]] static bool removed(const Row &row) { return row.at(removedColumn).toLongLong() != 0; }
    [[nodiscard]] QUuid unit(const Row &row) const; ///< whose it is; a unit's own id for a unit
    /// The same in everything but the version.
    [[nodiscard]] static bool sameContent(const Row &a, const Row &b);

    /// Refuses a row with a required field empty, a strange word, a wrong type or a NUL in a text; names record and field.
    [[nodiscard]] Expected<void> check(const Row &row) const;
    /// The searched texts joined by line breaks; a number (the tag) stands as it is and with four digits.
    [[nodiscard]] QString searchText(const Row &row) const;

    /// Fields by name, empty ones left out; money as decimal strings beside its currency; version left out.
    [[nodiscard]] QJsonObject toJson(const Row &row) const;
    /// The row of such an object; refuses unknown names, strange words and wrong types by name. Absent fields take their default.
    [[nodiscard]] Expected<Row> fromJson(const QJsonObject &object) const;
    /// A row of defaults.
    [[nodiscard]] Row blank() const;

    /// Whether the struct can be made from the row: check, and what only the type knows (a limit, a currency).
    [[nodiscard]] virtual Expected<void> reads(const Row &row) const = 0;

    /// How a field goes in and out of its place in a struct. One pair of functions serves all fields of a type, in every record.
    struct Access {
        std::ptrdiff_t offset = 0;
        QVariant (*put)(const void *place) = nullptr;
        bool (*get)(const QVariant &stored, void *place) = nullptr;
    };

    Kind(const Kind &) = delete;
    Kind &operator=(const Kind &) = delete;
    virtual ~Kind() = default;

protected:
    Kind(QString table, QString noun);
    void addField(FieldInfo info, Access access);
    [[nodiscard]] Row rowOf(const void *record) const;
    /// Refuses a column that makes no sense, by kind, id and column.
    [[nodiscard]] Expected<void> fill(const Row &row, void *record) const;

    QString m_table;
    QString m_noun;
    QList<FieldInfo> m_fields;
    std::vector<Access> m_access;
    Row m_blank;
    int m_unitColumn = -1;
};

} // namespace ts
