#pragma once

#include "model/values/expected.h"

#include <QHash>
#include <QStringList>

namespace ts {

/// One column that a kind of import knows: its name, and what else people write above it.
struct KnownColumn {
    QString name;
    QStringList also; ///< as plainHeader() has them
};
/// `also` with bars between: knownColumn("maker", "brand|make").
[[nodiscard]] KnownColumn knownColumn(const char *name, const char *also = "");

/// Which of our columns stands where in somebody's file.
class ListColumns {
public:
    /// Matches the header by name, whatever the case, with blanks, underscores, hyphens or dots between the words; `map` says
    /// "their column" -> our name and goes first; "-" for our name leaves the column out. Refuses a column that nobody knows and
    /// one that stands twice, naming what was found and what is known.
    [[nodiscard]] static Expected<ListColumns> match(const QStringList &header, const QList<KnownColumn> &known,
                                                     const QHash<QString, QString> &map, const QString &did);

    [[nodiscard]] bool has(const char *name) const { return m_places.contains(QString::fromLatin1(name)); }
    /// The trimmed cell of that column; empty where the file has no such column.
    [[nodiscard]] QString cell(const QStringList &cells, const char *name) const;
    /// The column's name as the file has it, in quotation marks: for a refusal.
    [[nodiscard]] QString shown(const char *name) const;
    [[nodiscard]] qsizetype width() const { return m_header.size(); }

private:
    QStringList m_header;
    QHash<QString, qsizetype> m_places;
};

/// Header text without case, punctuation and what stands in brackets: "Price paid (GBP)" -> "price paid".
[[nodiscard]] QString plainHeader(const QString &text);
/// The refusal of a row that has not as many cells as the header.
[[nodiscard]] QString wrongWidth(qsizetype cells, qsizetype header);

} // namespace ts
