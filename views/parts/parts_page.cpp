#include "views/parts/parts_page.h"

#include "model/jot/jot.h"
#include "views/parts/part_rows.h"
#include "views/parts/shelf_offer.h"
#include "views/style/style.h"
#include "views/unit/bring_notes.h"
#include "views/unit/record_edit.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/grid_view.h"

#include <QAction>
#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ts {

PartsPage::PartsPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent)
{
    m_table = new GridView(workplace.style(), tr("Parts"), partColumns(), this);
    m_table->setCommit([this](const GridRow &row, int column, const QString &typed) { return commit(row, column, typed); });
    m_table->setAddsInARow(true);
    m_on = m_table->addRowAction(tr("On to the next state"), QKeySequence(Qt::CTRL | Qt::Key_Right), [this](const QUuid &key) { step(key, 1); });
    m_back = m_table->addRowAction(tr("Back one state"), QKeySequence(Qt::CTRL | Qt::Key_Left), [this](const QUuid &key) { step(key, -1); });
    m_table->addRowAction(tr("Take off the list"), QKeySequence::Delete, [this](const QUuid &key) { remove(key); });

    auto *addButton = button(tr("Add a part"), this);
    addButton->setToolTip(tr("Type it as in the log: 2 x C214 47 µF 63 V 0.35"));
    connect(addButton, &QPushButton::clicked, m_table, [this] { m_table->editAdding(); });
    m_onButton = button({}, this);
    m_onButton->setToolTip(m_on->shortcut().toString(QKeySequence::NativeText));
    connect(m_onButton, &QPushButton::clicked, m_on, &QAction::trigger);
    m_total = styledLabel("quiet", {}, this);
    connect(m_table, &GridView::currentRowChanged, this, &PartsPage::refreshSteps);

    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(addButton);
    top->addWidget(m_onButton);
    top->addWidget(notesButton(tr("Parts from model notes"), workplace, {.testPoints = false, .teardown = false, .proofs = false, .parts = true}, this));
    top->addStretch(1);
    top->addWidget(m_total);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_table);
    m_shelf = new ShelfOffer(workplace, this);
    column->addWidget(m_shelf);
    column->addStretch(1);
}

void PartsPage::focusFirst()
{
    m_table->setFocus();
}

void PartsPage::reveal(const QString &kind, const QUuid &record)
{
    if (kind == QLatin1String(Need::table))
        m_table->setCurrent(record);
}

QString PartsPage::help() const
{
    return tr("What this unit needs, what is ordered, what is here and what is fitted. Type in the last row to add a part, in the words of the log: "
              "2 x C214 47 µF 63 V 0.35. Ctrl+Right moves a part to its next state, Ctrl+Left back; on the state itself n, o, h and f set it. "
              "Delete takes a line off the list, and Ctrl+Z brings it back. Below it stands what of the shelf would fit.");
}

void PartsPage::commitEdits()
{
    m_table->commitEdit();
}

void PartsPage::refresh()
{
    m_table->setRows(partRows(file(), work().currency(), work().today()));
    const QString total = needTotalText(needTotal(file(), work().currency()));
    m_total->setText(total.isEmpty() ? tr("No part is needed so far.") : tr("All: %1").arg(total));
    refreshSteps();
}

void PartsPage::refreshSteps()
{
    const Need *need = file().find(Id<Need>{m_table->currentKey()});
    m_on->setEnabled(need && need->state != NeedState::Fitted);
    m_back->setEnabled(need && need->state != NeedState::Needed);
    m_onButton->setEnabled(m_on->isEnabled());
    const int next = need ? std::min(static_cast<int>(need->state) + 1, static_cast<int>(NeedState::Fitted)) : 1;
    const QString words[] = {tr("Needed"), tr("Mark as ordered"), tr("Mark as here"), tr("Mark as fitted")};
    m_onButton->setText(words[next]);
    m_onButton->setAccessibleName(words[next]);
    m_shelf->showFor(need);
}

std::optional<QUuid> PartsPage::commit(const GridRow &row, int column, const QString &typed)
{
    if (row.kind == GridRowKind::Adding)
        return add(typed);
    const Need *before = file().find(Id<Need>{row.key});
    if (!before)
        return std::nullopt;
    const auto after = editedNeed(*before, static_cast<PartColumn>(column), typed, work().currency(), work().now());
    if (!after) {
        work().refuse(after.trouble());
        return std::nullopt;
    }
    const QString name = after->text;
    const QString title = partColumns().at(column).title; // as it is: another language writes it with a capital anywhere
    const QString sentence = after->state != before->state ? tr("Part %1: %2").arg(needStateText(after->state), name)
                             : typed.isEmpty()             ? tr("Part %1, %2: nothing").arg(name, title)
                                                           : tr("Part %1, %2: %3").arg(name, title, typed);
    return recordEdit(work(), *before, *after, sentence);
}

// In the words of the log, so that quantity, place and price need no columns of their own while one types.
std::optional<QUuid> PartsPage::add(const QString &typed)
{
    if (typed.isEmpty())
        return QUuid();
    Maker maker = work().maker();
    const auto jotted = jot(QStringLiteral("need ") + typed, file(), bench(), maker);
    if (!jotted) {
        work().refuse(jotted.trouble());
        return std::nullopt;
    }
    for (const ChangeItem &item : jotted->change.items())
        if (item.kind == &description<Need>() && item.after)
            return work().record(jotted->change) ? std::optional(Kind::id(*item.after)) : std::nullopt;
    Need need = freshOfUnit<Need>(work()); // words that the log takes as a note are a part all the same when typed here
    need.text = typed;
    need.stateSince = need.at;
    return recordNew(work(), need, tr("Part needed: %1").arg(typed));
}

void PartsPage::step(const QUuid &key, int by)
{
    const Need *before = file().find(Id<Need>{key});
    const int state = before ? static_cast<int>(before->state) + by : -1;
    if (state < 0 || state > static_cast<int>(NeedState::Fitted))
        return;
    const Need after = movedNeed(*before, static_cast<NeedState>(state), work().now());
    if (recordEdit(work(), *before, after, tr("Part %1: %2").arg(needStateText(after.state), after.text)))
        m_table->setCurrent(key);
}

void PartsPage::remove(const QUuid &key)
{
    if (const Need *need = file().find(Id<Need>{key}))
        work().record(Change(tr("Part taken off the list: %1").arg(need->text)).remove(*need));
}

} // namespace ts
