#include "views/places/history_place.h"

#include "model/records/tag_text.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QStandardItemModel>
#include <QTreeView>
#include <QVBoxLayout>

namespace ts {

namespace {
constexpr int firstLines = 200;
constexpr int ofUnit = 0;
constexpr int ofWorkbook = 1;
} // namespace

HistoryPlace::HistoryPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent), m_limit(firstLines)
{
    m_whose = new QButtonGroup(this);
    auto *unit = button(tr("This unit"), this);
    auto *book = button(tr("The whole workbook"), this);
    for (QPushButton *choice : {unit, book})
        choice->setCheckable(true);
    m_whose->addButton(unit, ofUnit);
    m_whose->addButton(book, ofWorkbook);
    book->setChecked(true);
    connect(m_whose, &QButtonGroup::idClicked, this, &HistoryPlace::refresh);
    m_undo = button(tr("Undo the last"), this);
    m_redo = button(tr("Do it again"), this);
    connect(m_undo, &QPushButton::clicked, &work(), &Workplace::undo);
    connect(m_redo, &QPushButton::clicked, &work(), &Workplace::redo);

    m_lines = new QStandardItemModel(this);
    m_view = new QTreeView(this);
    m_view->setModel(m_lines);
    m_view->setAccessibleName(tr("What was done, newest first"));
    m_view->setRootIsDecorated(false);
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_view->setUniformRowHeights(true);
    m_view->setTabKeyNavigation(false);
    m_more = button(tr("Show more"), this);
    connect(m_more, &QPushButton::clicked, this, [this] {
        m_limit *= 4;
        refresh();
    });

    auto *top = new QHBoxLayout;
    top->addWidget(styledLabel("heading", tr("History"), this));
    top->addSpacing(gap::wide);
    top->addWidget(unit);
    top->addWidget(book);
    top->addStretch(1);
    top->addWidget(m_undo);
    top->addWidget(m_redo);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_view, 1);
    column->addWidget(m_more, 0, Qt::AlignHCenter);
}

void HistoryPlace::focusFirst()
{
    m_view->setFocus();
}

QString HistoryPlace::help() const
{
    return tr("Everything that was recorded, newest first, with who did it and when. Undo takes back the last change of the workbook; it also works after a restart. "
              "A line struck through was taken back.");
}

Id<Unit> HistoryPlace::wantedUnit() const
{
    return m_whose->checkedId() == ofUnit ? work().file().unit.id : Id<Unit>();
}

void HistoryPlace::refresh()
{
    QAbstractButton *unit = m_whose->button(ofUnit);
    unit->setEnabled(work().hasUnit());
    unit->setText(work().hasUnit() ? tr("Unit %1").arg(tagText(work().file().unit.tag)) : tr("This unit"));
    if (!work().hasUnit())
        m_whose->button(ofWorkbook)->setChecked(true);
    const auto lines = work().desk().journal(wantedUnit(), m_limit);
    if (!lines)
        return work().refuse(lines.trouble());
    m_lines->clear();
    m_lines->setHorizontalHeaderLabels({tr("When"), tr("Who"), tr("What was done")});
    for (const JournalLine &line : *lines) {
        QList<QStandardItem *> row{new QStandardItem(shown::dayAndTime(line.at)), new QStandardItem(line.who), new QStandardItem(line.sentence)};
        if (line.undone) {
            QFont struck = font();
            struck.setStrikeOut(true);
            row.at(2)->setFont(struck);
            row.at(2)->setAccessibleText(tr("%1, taken back").arg(line.sentence));
            for (QStandardItem *item : row)
                item->setForeground(work().style().ink().faint);
        }
        m_lines->appendRow(row);
    }
    m_view->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    m_view->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    m_view->header()->setStretchLastSection(true);
    m_more->setVisible(lines->size() >= m_limit);
    const auto there = [](const Expected<std::optional<QString>> &sentence) { return sentence && sentence->has_value(); };
    m_undo->setEnabled(there(work().desk().undoSentence()));
    m_redo->setEnabled(there(work().desk().redoSentence()));
}

} // namespace ts
