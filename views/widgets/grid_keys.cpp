// What keys and clicks do in a grid while no field is open.
#include "views/widgets/grid_view.h"

#include <QHash>
#include <QKeyEvent>
#include <QMenu>

#include <algorithm>

namespace ts {

namespace {

/// The words to choose from; a word's own letter chooses it while they are open, too.
class ChoiceMenu : public QMenu {
public:
    using QMenu::QMenu;
    void add(QAction *action, QChar letter) { m_letters.insert(letter.toLower(), action); }

protected:
    void keyPressEvent(QKeyEvent *event) override
    {
        QAction *action = event->text().size() == 1 ? m_letters.value(event->text().at(0).toLower()) : nullptr;
        if (!action)
            return QMenu::keyPressEvent(event);
        close();
        action->trigger();
    }

private:
    QHash<QChar, QAction *> m_letters;
};

} // namespace

QMenu *GridView::openChoices(const QModelIndex &index)
{
    const QList<GridChoice> &choices = m_rows->columns().at(index.column()).choices;
    if (choices.isEmpty() || !m_rows->cell(index).editable)
        return nullptr;
    auto *menu = new ChoiceMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->setAccessibleName(m_rows->columns().at(index.column()).title);
    for (const GridChoice &choice : choices) {
        auto *action = menu->addAction(choice.key.isNull() ? choice.word : choice.word + QLatin1Char('\t') + choice.key.toUpper());
        action->setCheckable(true);
        action->setChecked(choice.value == m_rows->cell(index).edit);
        connect(action, &QAction::triggered, this, [this, cell = QPersistentModelIndex(index), value = choice.value] { m_rows->setData(cell, value); });
        if (!choice.key.isNull())
            menu->add(action, choice.key);
        if (action->isChecked())
            menu->setActiveAction(action);
    }
    menu->popup(viewport()->mapToGlobal(visualRect(index).bottomLeft()));
    return menu;
}

bool GridView::typeLetter(const QString &text)
{
    const int column = m_letterColumn >= 0 ? m_letterColumn : currentIndex().column();
    if (text.size() != 1 || !currentIndex().isValid())
        return false;
    const QModelIndex cell = currentIndex().siblingAtColumn(column);
    if (m_rows->cell(cell).editable)
        for (const GridChoice &choice : m_rows->columns().at(column).choices)
            if (!choice.key.isNull() && choice.key == text.at(0).toLower()) {
                const QUuid row = currentKey();
                if (m_rows->setData(cell, choice.value) && m_afterLetter && column == m_letterColumn)
                    m_afterLetter(row, choice.value);
                return true;
            }
    return m_letterColumn >= 0 || !m_rows->columns().at(column).choices.isEmpty();
}

bool GridView::setNextWord(const QModelIndex &index)
{
    const QList<GridChoice> &choices = m_rows->columns().at(index.column()).choices;
    if (choices.isEmpty() || !m_rows->cell(index).editable)
        return false;
    const auto at = std::find_if(choices.begin(), choices.end(), [&](const GridChoice &choice) { return choice.value == m_rows->cell(index).edit; });
    m_rows->setData(index, at == choices.end() || at + 1 == choices.end() ? choices.first().value : (at + 1)->value);
    return true;
}

bool GridView::activate(const QModelIndex &index)
{
    if (!index.isValid())
        return false;
    const GridCell &cell = m_rows->cell(index);
    if (cell.toggle)
        return m_rows->setData(index, QStringLiteral("toggle"));
    if (openChoices(index))
        return true;
    if (cell.editable)
        return edit(index, EditKeyPressed, nullptr);
    if (cell.tick)
        return m_rows->setData(index, *cell.tick ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
    Q_EMIT opened(m_rows->row(index.row()).key, index.column());
    return true;
}

void GridView::keyPressEvent(QKeyEvent *event)
{
    if (isEditing())
        return QTableView::keyPressEvent(event);
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    if (plain && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_F2)) {
        activate(currentIndex());
        return;
    }
    if (!plain || event->text().isEmpty() || !event->text().at(0).isPrint() || !currentIndex().isValid())
        return QTableView::keyPressEvent(event);
    if (event->key() == Qt::Key_Space && m_rows->cell(currentIndex()).toggle) {
        activate(currentIndex());
        return;
    }
    if (event->key() == Qt::Key_Space) {
        // A box anywhere in the row is what Space is for; else the word at hand, and the row's word where it has one of its own.
        for (int column = 0; column < m_rows->columnCount(); ++column) {
            const QModelIndex cell = currentIndex().siblingAtColumn(column);
            if (const auto tick = m_rows->cell(cell).tick) {
                m_rows->setData(cell, *tick ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
                return;
            }
        }
        if (setNextWord(currentIndex()) || (m_letterColumn >= 0 && setNextWord(currentIndex().siblingAtColumn(m_letterColumn))))
            return;
    } else if (typeLetter(event->text())) {
        return;
    }
    if (!m_rows->cell(currentIndex()).editable && m_homeColumn >= 0 && m_rows->cell(currentIndex().siblingAtColumn(m_homeColumn)).editable)
        setCurrentIndex(currentIndex().siblingAtColumn(m_homeColumn));
    QTableView::keyPressEvent(event);
}

void GridView::mouseReleaseEvent(QMouseEvent *event)
{
    const QModelIndex before = currentIndex();
    QTableView::mouseReleaseEvent(event);
    const QModelIndex at = indexAt(event->position().toPoint());
    if (event->button() != Qt::LeftButton || !at.isValid() || at != before)
        return;
    if (m_rows->cell(at).toggle)
        activate(at);
    else if (m_rows->cell(at).pill)
        openChoices(at);
}

} // namespace ts
