#include "views/notes/notes_table.h"

#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/grid_view.h"

#include <QAction>
#include <QLabel>
#include <QVBoxLayout>

namespace ts {

NotesTable::NotesTable(Workplace &workplace, const QString &name, std::unique_ptr<NotesList> list, QWidget *parent) : QWidget(parent), m_work(workplace), m_list(std::move(list))
{
    m_table = new GridView(workplace.style(), name, m_list->columns(), this);
    m_table->setAddsInARow(true);
    m_table->setCommit([this](const GridRow &row, int column, const QString &typed) { return commit(row, column, typed); });
    m_table->addRowAction(tr("Earlier"), QKeySequence(Qt::CTRL | Qt::Key_Up), [this](const QUuid &row) { record(m_list->moved(m_file, row, -1)); });
    m_table->addRowAction(tr("Later"), QKeySequence(Qt::CTRL | Qt::Key_Down), [this](const QUuid &row) { record(m_list->moved(m_file, row, 1)); });
    m_table->addRowAction(tr("Take off the list"), QKeySequence::Delete, [this](const QUuid &row) { record(m_list->removal(m_file, row)); });
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addWidget(styledLabel("group", name, this));
    column->addWidget(m_table);
}

NotesTable::~NotesTable() = default;

void NotesTable::show(const NotesFile &file)
{
    m_file = file;
    m_table->setRows(m_list->rows(file));
}

void NotesTable::commitEdits()
{
    m_table->commitEdit();
}

bool NotesTable::record(const Change &change)
{
    if (!m_work.record(change))
        return false;
    Q_EMIT recorded();
    return true;
}

std::optional<QUuid> NotesTable::commit(const GridRow &row, int column, const QString &typed)
{
    Maker maker = m_work.maker();
    const auto edit = m_list->typed(m_file, row, column, typed, maker);
    if (!edit) {
        m_work.refuse(edit.trouble());
        return std::nullopt;
    }
    if (!record(edit->change))
        return std::nullopt;
    return edit->row;
}

} // namespace ts
