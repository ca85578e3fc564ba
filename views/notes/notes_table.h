#pragma once

#include "views/notes/notes_list.h"
#include "views/workplace.h"

#include <QWidget>

#include <memory>

namespace ts {

class GridView;

/// A list of what is known of a model on the screen: typed in place, Delete takes a row off, Ctrl+Up and Ctrl+Down move it.
class NotesTable : public QWidget {
    Q_OBJECT
public:
    NotesTable(Workplace &workplace, const QString &name, std::unique_ptr<NotesList> list, QWidget *parent = nullptr);
    ~NotesTable() override;
    void show(const NotesFile &file);
    void commitEdits();
    [[nodiscard]] GridView *table() const { return m_table; }
    [[nodiscard]] qsizetype count() const { return m_list->count(m_file); }

Q_SIGNALS:
    void recorded(); ///< what is shown is to be read again

private:
    bool record(const Change &change);
    [[nodiscard]] std::optional<QUuid> commit(const GridRow &row, int column, const QString &typed);

    Workplace &m_work;
    std::unique_ptr<NotesList> m_list;
    NotesFile m_file;
    GridView *m_table;
};

} // namespace ts
