#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/notes_file.h"
#include "views/widgets/grid_row.h"

namespace ts {

/// What typing in a list makes: the change, and the row that shows it.
struct NotesEdit {
    Change change;
    QUuid row;
};

/// One list of what is known of a model, as a table that is edited in place.
class NotesList {
public:
    virtual ~NotesList() = default;
    [[nodiscard]] virtual QList<GridColumn> columns() const = 0;
    /// In their order, and one to add by.
    [[nodiscard]] virtual QList<GridRow> rows(const NotesFile &file) const = 0;
    /// What was typed in a cell, as a change; refused in one sentence where it cannot be read.
    [[nodiscard]] virtual Expected<NotesEdit> typed(const NotesFile &file, const GridRow &row, int column, const QString &text, Maker &maker) const = 0;
    [[nodiscard]] virtual Change removal(const NotesFile &file, const QUuid &row) const = 0;
    /// One earlier (-1) or later (1) in the order; an empty change where the list keeps its own order.
    [[nodiscard]] virtual Change moved(const NotesFile &file, const QUuid &row, int by) const = 0;
    [[nodiscard]] virtual qsizetype count(const NotesFile &file) const = 0;
};

/// A column of such a list: how a record shows there, and what typing makes of it.
template <class R>
struct KnownColumn {
    GridColumn column;
    std::function<GridCell(const R &, const NotesFile &)> show;
    std::function<Expected<R>(R record, const QString &typed, const NotesFile &file)> set;
};

} // namespace ts
