#pragma once

#include "model/store/connection.h"

namespace ts {

/// A search hit as the index knows it.
struct SearchHit {
    QString kind;
    QString record;
    QString unit;
    qint64 tag = 0;
    QString unitName;
    QString shown;
};

/// The words of every record. Both engines are given the same folded words, so both find the same.
class SearchIndex {
public:
    explicit SearchIndex(Connection &connection) : m_connection(connection) {}

    /// Puts a record's words in, in the place of what was there; takes them out where the row is removed or says nothing.
    Expected<void> put(const Kind &kind, const Row &row, bool isNew);
    /// Records in which every word of `text` begins a word: units first, then the newest.
    [[nodiscard]] Expected<QList<SearchHit>> find(const QString &text, int limit);

    /// A condition on the table "unit" with its values: every word of `text` begins a word of the unit's own or of an open symptom of
    /// it. Nothing where there is no word.
    struct Among {
        QString condition; ///< " AND …", or empty
        QVariantList values;
    };
    [[nodiscard]] Among unitsWith(const QString &text) const;

    /// Lower case, accents taken off, everything but letters and digits a blank: "CN2.4 Größe" is "cn2 4 grosse".
    [[nodiscard]] static QString folded(const QString &text);

private:
    Expected<void> take(const QVariant &record);
    [[nodiscard]] QString term(const QString &word) const;

    Connection &m_connection;
};

} // namespace ts
