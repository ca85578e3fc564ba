#pragma once

#include "model/jot/tried.h"
#include "views/widgets/grid_view.h"

#include <QHash>

namespace ts {

/// A table of things that are tried one after the other: what was found is typed, and how it came out follows from it or is said by
/// its letter, after which the words are asked for. Nothing is ticked without them.
class TriedGrid : public GridView {
    Q_OBJECT
public:
    /// Records what was typed of a row; answers whether it was taken. Whoever refuses says why.
    using Record = std::function<bool(const QUuid &row, Said said, const QString &typed)>;

    /// `found` and `cameOut` are the columns of what was found and of how it came out; the words of the latter are "pass", "wrong" and
    /// "not_applicable".
    TriedGrid(const Style &style, const QString &name, QList<GridColumn> columns, int found, int cameOut, Record record, QWidget *parent = nullptr);

private:
    std::optional<QUuid> commit(const GridRow &row, int column, const QString &typed);

    int m_found;
    int m_cameOut;
    Record m_record;
    QHash<QUuid, Said> m_said; ///< said by letter, its words still to come
};

/// The key of a row that stands for a word rather than for a record: the same each time.
[[nodiscard]] QUuid rowKeyOf(const QString &word);

} // namespace ts
