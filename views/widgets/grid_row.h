#pragma once

#include "views/widgets/pill.h"

#include <QKeySequence>
#include <QStringList>
#include <QUuid>

#include <functional>
#include <optional>

namespace ts {

/// One of the words that a cell can say, and the key that says it.
struct GridChoice {
    QString value; ///< what is committed
    QString word;  ///< what is shown
    QChar key;     ///< small letter; null: none
    bool operator==(const GridChoice &) const = default;
};

struct GridColumn {
    QString title = {};
    double width = 6; ///< at least, in widths of "0"
    int stretch = 0;  ///< its share of what is left; 0 keeps its width
    bool right = false;
    bool middle = false;
    QString tip = {}; ///< of its head, where the title says less
    QList<GridChoice> choices = {};               ///< its cells that can be edited are set to one of these
    bool down = false;                       ///< Enter in its field goes on in the row below: a column that is filled in one go
    std::function<QStringList()> completions = {}; ///< offered while typing; may be empty
};

/// Two shares of a whole on one bar: as it was, and as it is now.
struct GridBar {
    double before = 0;
    double now = 0;
    bool operator==(const GridBar &) const = default;
};

/// What one cell shows, worked out when its row is made, and what can be done with it.
struct GridCell {
    QString text;
    QString second; ///< a quieter line below
    QString edit;   ///< what its field begins with
    QString hint;   ///< stands in the field while it is empty
    bool editable = false;
    std::optional<Tone> pill; ///< the text is a word on a ground of this tone
    QString after;            ///< beside the pill; at the right end of a group's row
    bool strong = false;
    bool quiet = false;
    bool struck = false;
    bool figures = false;     ///< in the fixed-width face
    std::optional<bool> tick; ///< a box to tick before the text
    bool toggle = false;      ///< Space, Enter and a click turn it over: commits "toggle"
    std::optional<GridBar> bar;
    QString tip;
    QString spoken; ///< what a screen reader says where the text alone does not tell
    bool operator==(const GridCell &) const = default;
};

enum class GridRowKind {
    Record, ///< shows a record
    Group,  ///< heads the rows below it
    Adding  ///< an empty one: what is typed in it becomes a record
};

struct GridRow {
    GridRowKind kind = GridRowKind::Record;
    QUuid key = {};    ///< of the record; null for a row without one
    QString name = {}; ///< tells rows without a key apart
    QList<GridCell> cells = {};
    bool operator==(const GridRow &) const = default;

    [[nodiscard]] bool same(const GridRow &other) const { return kind == other.kind && key == other.key && name == other.name; }
};

/// A plain cell, and one with a field.
[[nodiscard]] inline GridCell shownCell(const QString &text)
{
    GridCell cell;
    cell.text = text;
    return cell;
}
[[nodiscard]] inline GridCell typedCell(const QString &text, const QString &edit)
{
    GridCell cell = shownCell(text);
    cell.edit = edit;
    cell.editable = true;
    return cell;
}
[[nodiscard]] inline GridCell typedCell(const QString &text)
{
    return typedCell(text, text);
}

} // namespace ts
