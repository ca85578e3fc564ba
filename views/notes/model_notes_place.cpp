#include "views/notes/model_notes_place.h"

#include "views/notes/notes_lists.h"
#include "views/notes/notes_table.h"
#include "views/notes/notes_words.h"
#include "views/style/style.h"
#include "views/unit/page_tabs.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/empty_place.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/page_scroll.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ts {

ModelNotesPlace::ModelNotesPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_list = new QListWidget(this);
    m_list->setAccessibleName(tr("Models"));
    m_list->setMinimumWidth(150);
    m_list->setMaximumWidth(200);
    m_list->setSpacing(2);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *none = new EmptyPlace(tr("What is known of a model across units belongs here: how to tell its versions, what to measure where, its usual faults and what cured them, how it comes apart, where the "
                                   "service papers are."),
                                tr("New notes"), this);
    connect(none, &EmptyPlace::actionWanted, this, &ModelNotesPlace::add);
    m_right = new QStackedWidget(this);
    m_right->addWidget(makeRight());
    m_right->addWidget(none);
    auto *both = new QHBoxLayout;
    both->setSpacing(gap::normal);
    both->addWidget(m_list, 1);
    both->addWidget(m_right, 5);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(makeButtons());
    column->addLayout(both, 1);
    connect(m_list, &QListWidget::currentItemChanged, this, [this](QListWidgetItem *item) {
        if (item)
            choose(Id<ModelNotes>::fromText(item->data(Qt::UserRole).toString()));
    });
}

QLayout *ModelNotesPlace::makeButtons()
{
    const auto made = [this](QPushButton *button, const QString &name, void (ModelNotesPlace::*act)()) {
        if (!name.isEmpty()) {
            button->setAccessibleName(name);
            button->setToolTip(name);
        }
        connect(button, &QPushButton::clicked, this, act);
        return button;
    };
    m_learn = made(button(tr("Learn from this unit"), this), tr("Copies what was found on the unit in hand into the notes of its model"), &ModelNotesPlace::learn);
    m_bring = made(button(tr("Bring onto it"), this), tr("Gives the unit in hand the test points, teardown and proofs of its model"), &ModelNotesPlace::bring);
    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(styledLabel("heading", tr("Model notes"), this));
    top->addStretch(1);
    top->addWidget(m_learn);
    top->addWidget(m_bring);
    top->addWidget(made(button(tr("Read from a file…"), this), tr("Notes that somebody shared: adds what is not known yet"), &ModelNotesPlace::readFile));
    top->addWidget(made(button(tr("Write to a file…"), this), tr("These notes as one file to share, without prices and persons"), &ModelNotesPlace::writeFile));
    top->addWidget(made(button(tr("Remove"), this), tr("Remove the notes of this model"), &ModelNotesPlace::remove));
    top->addWidget(made(primaryButton(tr("New notes"), this), {}, &ModelNotesPlace::add));
    return top;
}

QWidget *ModelNotesPlace::addPage(const QString &title, const QString &says)
{
    auto *page = new QWidget;
    auto *rows = new QVBoxLayout(page);
    rows->setContentsMargins(0, 0, gap::tight, 0);
    rows->setSpacing(gap::normal);
    auto *words = styledLabel("quiet", says, page);
    words->setWordWrap(true);
    rows->addWidget(words);
    m_tabs->addTab(title);
    return page;
}

NotesTable *ModelNotesPlace::addTable(QWidget *page, const QString &name, std::unique_ptr<NotesList> list)
{
    auto *table = new NotesTable(work(), name, std::move(list), page);
    page->layout()->addWidget(table);
    connect(table, &NotesTable::recorded, this, &ModelNotesPlace::showChosen);
    m_tables << table;
    return table;
}

QWidget *ModelNotesPlace::makeRight()
{
    auto *whole = new QWidget;
    m_tabs = new PageTabs(work().style(), whole);
    m_tabs->setAccessibleName(tr("What is known"));
    m_pages = new QStackedWidget(whole);
    const auto finish = [this](QWidget *page, const QList<GridView *> &tables) {
        static_cast<QVBoxLayout *>(page->layout())->addStretch(1);
        m_pages->addWidget(new PageScroll(page, tables, m_pages));
    };
    m_tabs->addTab(tr("Words"));
    m_words = new NotesWords(work());
    m_pages->addWidget(new PageScroll(m_words, {}, m_pages));
    QWidget *page = addPage(tr("Test points"), tr("What to measure where, what is wanted there, and who says so. A new unit of the model gets them."));
    finish(page, {addTable(page, tr("Test points"), pointsList())->table()});
    page = addPage(tr("Causes"), tr("What its symptoms usually come from, and the checks that tell the causes apart. The weights of causes that you found yourself grow with your own closed units."));
    auto *causes = addTable(page, tr("Usual causes"), causesList([this] { return m_solved; }, [this] { return work().currency(); }));
    auto *checks = addTable(page, tr("Checks"), checksList());
    finish(page, {causes->table(), checks->table()});
    page = addPage(tr("Teardown"), tr("In the order in which it comes off. Unplug first, and let the capacitors discharge; local codes and licensed practice come first."));
    finish(page, {addTable(page, tr("What comes off"), teardownList())->table()});
    page = addPage(tr("Parts"), tr("Where each part sits and what it has to be."));
    finish(page, {addTable(page, tr("Parts of the model"), partsList())->table()});
    page = addPage(tr("Proofs"), tr("What a unit of this model has to show before it is handed over, beside the list of its category."));
    finish(page, {addTable(page, tr("Proofs of the model"), proofsList())->table()});
    page = addPage(tr("Papers"), tr("Service papers: where each one is, or kept in the workbook itself. Enter opens one."));
    m_papers = addTable(page, tr("Service papers"), papersList());
    connect(m_papers->table(), &GridView::opened, this, [this](const QUuid &row) { openPaper(row); });
    m_papers->table()->addRowAction(tr("Open"), QKeySequence(Qt::CTRL | Qt::Key_O), [this](const QUuid &row) { openPaper(row); });
    auto *keep = button(tr("Keep a file in the workbook…"), page);
    connect(keep, &QPushButton::clicked, this, &ModelNotesPlace::keepPaper);
    static_cast<QVBoxLayout *>(page->layout())->addWidget(keep, 0, Qt::AlignLeft);
    finish(page, {m_papers->table()});
    connect(m_tabs, &QTabBar::currentChanged, this, &ModelNotesPlace::showTab);
    auto *column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addWidget(m_tabs);
    column->addWidget(m_pages, 1);
    return whole;
}

void ModelNotesPlace::showTab(int index)
{
    commitEdits();
    m_pages->setCurrentIndex(index);
}

void ModelNotesPlace::focusFirst()
{
    m_list->setFocus();
}

QString ModelNotesPlace::help() const
{
    return tr("What is found out once is written down here, so that the next unit of the model is quicker. Cautions written here stand on every unit of the model and on its sheet. Notes without a maker "
              "and model are about a whole category. In the lists Enter or typing begins a field, Delete takes a row off, Ctrl+Up and Ctrl+Down move it.");
}

const ModelNotes *ModelNotesPlace::chosen() const
{
    return work().bench().find(m_chosen);
}

void ModelNotesPlace::commitEdits()
{
    m_words->commit();
    for (NotesTable *table : std::as_const(m_tables))
        table->commitEdits();
}

void ModelNotesPlace::choose(const Id<ModelNotes> &notes)
{
    commitEdits();
    m_chosen = notes;
    showChosen();
}

Unit ModelNotesPlace::likeChosen() const
{
    Unit like;
    if (const ModelNotes *notes = chosen()) {
        like.maker = notes->maker;
        like.makerModel = notes->makerModel;
        like.category = notes->category;
    }
    return like;
}

void ModelNotesPlace::showChosen()
{
    const ModelNotes *notes = chosen();
    m_right->setCurrentIndex(notes ? 0 : 1);
    if (!notes)
        return;
    m_words->show(*notes);
    const auto file = notesFile(work().desk(), m_chosen);
    const auto solved = solvedCauses(work().desk(), likeChosen());
    if (!file || !solved)
        return work().refuse(file ? solved.trouble() : file.trouble());
    m_solved = *solved;
    for (NotesTable *table : std::as_const(m_tables))
        table->show(*file);
    const auto badge = [this](int tab, qsizetype count) { m_tabs->setBadge(tab, static_cast<int>(count), Tone::Neutral); };
    badge(1, m_tables.at(0)->count());
    badge(2, m_tables.at(1)->count());
    for (int i = 3; i < m_tables.size(); ++i)
        badge(i, m_tables.at(i)->count());
}

void ModelNotesPlace::refresh()
{
    QList<ModelNotes> all = work().bench().all<ModelNotes>();
    std::sort(all.begin(), all.end(), [](const ModelNotes &a, const ModelNotes &b) {
        return ofCategory(a) != ofCategory(b) ? ofCategory(b) : NotesWords::title(a).localeAwareCompare(NotesWords::title(b)) < 0;
    });
    if (!chosen()) {
        const ModelNotes *own = notesOf(work().bench(), work().file().unit);
        m_chosen = own ? own->id : all.isEmpty() ? Id<ModelNotes>() : all.first().id;
    }
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const ModelNotes &notes : all) {
        auto *item = new QListWidgetItem(NotesWords::title(notes), m_list);
        item->setData(Qt::UserRole, notes.id.text());
        if (notes.id == m_chosen)
            m_list->setCurrentItem(item);
    }
    m_list->setHidden(all.isEmpty());
    const Unit &unit = work().file().unit;
    m_learn->setEnabled(work().hasUnit() && !unit.maker.isEmpty() && !unit.makerModel.isEmpty());
    m_bring->setEnabled(work().hasUnit() && notesOf(work().bench(), unit));
    showChosen();
}

} // namespace ts
