#pragma once

#include "views/notes/notes_list.h"

#include <QCoreApplication>

#include <algorithm>

namespace ts {

/// A list of one kind of record with the columns it is given.
template <class R>
class KnownList : public NotesList {
public:
    /// `adding` stands in the row that adds; `first` is the column that is typed there. `called` names a record in sentences.
    KnownList(const QString &adding, int first, QList<KnownColumn<R>> columns, QString R::*called) : m_adding(adding), m_first(first), m_columns(std::move(columns)), m_called(called) {}

    [[nodiscard]] QList<GridColumn> columns() const override
    {
        QList<GridColumn> all;
        for (const KnownColumn<R> &each : m_columns)
            all << each.column;
        return all;
    }

    [[nodiscard]] QList<GridRow> rows(const NotesFile &file) const override
    {
        QList<GridRow> rows;
        for (const R &record : inOrder(file)) {
            GridRow row{.key = record.id.value};
            for (const KnownColumn<R> &column : m_columns)
                row.cells << column.show(record, file);
            rows << row;
        }
        GridRow adding{.kind = GridRowKind::Adding, .name = QStringLiteral("add")};
        for (int i = 0; i <= m_first; ++i)
            adding.cells << shownCell({});
        GridCell cell = typedCell(m_adding, {});
        cell.quiet = true;
        adding.cells[m_first] = cell;
        return rows << adding;
    }

    [[nodiscard]] Expected<NotesEdit> typed(const NotesFile &file, const GridRow &row, int column, const QString &text, Maker &maker) const override
    {
        if (row.kind == GridRowKind::Adding) {
            if (text.trimmed().isEmpty())
                return NotesEdit{};
            R record = maker.template fresh<R>();
            record.modelNotes = file.notes.id;
            if constexpr (ordered)
                for (const R &each : file.all<R>())
                    record.position = std::max(record.position, each.position + 1);
            auto made = m_columns.at(m_first).set(record, text, file);
            if (!made)
                return made.trouble();
            return NotesEdit{Change(QCoreApplication::translate("ts", "Model notes, new: %1").arg((*made).*m_called)).add(*made), record.id.value};
        }
        const R *before = find(file, row.key);
        if (!before)
            return Trouble{QCoreApplication::translate("ts", "This row is gone"), QCoreApplication::translate("ts", "somebody took it off"), {}};
        const auto after = m_columns.at(column).set(*before, text, file);
        if (!after)
            return after.trouble();
        return NotesEdit{Change(QCoreApplication::translate("ts", "Model notes: %1").arg((*after).*m_called)).edit(*before, *after), row.key};
    }

    [[nodiscard]] Change removal(const NotesFile &file, const QUuid &row) const override
    {
        const R *record = find(file, row);
        if (!record)
            return Change(QString());
        Change change(QCoreApplication::translate("ts", "Model notes, taken off: %1").arg(record->*m_called));
        alsoRemoved(file, *record, change);
        return change.remove(*record);
    }

    [[nodiscard]] Change moved(const NotesFile &file, const QUuid &row, int by) const override
    {
        if constexpr (ordered) {
            QList<R> all = inOrder(file);
            const auto found = std::find_if(all.begin(), all.end(), [&row](const R &each) { return each.id.value == row; });
            const qsizetype from = found - all.begin();
            if (found == all.end() || from + by < 0 || from + by >= all.size())
                return Change(QString());
            Change change(QCoreApplication::translate("ts", "Model notes, order: %1").arg((*found).*m_called));
            all.move(from, from + by);
            for (qsizetype i = 0; i < all.size(); ++i) {
                R after = all.at(i);
                after.position = static_cast<int>(i) + 1;
                change.edit(all.at(i), after);
            }
            return change;
        } else {
            return Change(QString());
        }
    }

    [[nodiscard]] qsizetype count(const NotesFile &file) const override { return inOrder(file).size(); }

protected:
    /// What goes with a record that is taken off.
    virtual void alsoRemoved(const NotesFile &, const R &, Change &) const {}

    [[nodiscard]] static const R *find(const NotesFile &file, const QUuid &key)
    {
        const auto &all = file.all<R>();
        const auto found = std::find_if(all.begin(), all.end(), [&key](const R &each) { return each.id.value == key; });
        return found == all.end() ? nullptr : &*found;
    }

private:
    static constexpr bool ordered = requires(R record) { record.position += 1; };

    [[nodiscard]] static QList<R> inOrder(const NotesFile &file)
    {
        QList<R> all;
        for (const R &each : file.all<R>())
            if (!each.removed)
                all << each;
        if constexpr (ordered)
            std::stable_sort(all.begin(), all.end(), [](const R &a, const R &b) { return a.position < b.position; });
        else if constexpr (requires(R record) { record.symptom; })
            std::stable_sort(all.begin(), all.end(), [](const R &a, const R &b) { return a.symptom.localeAwareCompare(b.symptom) < 0; });
        else if constexpr (requires(R record) { record.position; })
            std::stable_sort(all.begin(), all.end(), [](const R &a, const R &b) { return a.position.localeAwareCompare(b.position) < 0; });
        return all;
    }

    QString m_adding;
    int m_first;
    QList<KnownColumn<R>> m_columns;
    QString R::*m_called;
};

} // namespace ts
