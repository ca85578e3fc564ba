#include "views/store/shelf_pane.h"

#include "views/store/batch_rows.h"
#include "views/store/shelf_rows.h"
#include "views/style/style.h"
#include "views/unit/record_edit.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/locale_text.h"

#include <QBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr int pauseMs = 150; // after the last key

} // namespace

ShelfPane::ShelfPane(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_find = new QLineEdit(this);
    m_find->setPlaceholderText(tr("Find: capacitor 1000u >=63V d<=10mm, belt 78 ± 2 mm, drawer C3…"));
    m_find->setAccessibleName(tr("Find parts by what they are rated for"));
    m_find->setClearButtonEnabled(true);
    m_short = button(tr("Below what is kept"), this);
    m_short->setCheckable(true);
    m_understood = styledLabel("quiet", {}, this);
    m_understood->setWordWrap(true);
    m_pause = new QTimer(this);
    m_pause->setSingleShot(true);
    connect(m_pause, &QTimer::timeout, this, &ShelfPane::show);
    connect(m_find, &QLineEdit::textChanged, m_pause, [this] { m_pause->start(pauseMs); });
    connect(m_find, &QLineEdit::returnPressed, this, &ShelfPane::show);
    connect(m_short, &QPushButton::toggled, this, &ShelfPane::show);

    m_list = new GridView(workplace.style(), tr("Parts on the shelf"), shelfColumns(), this);
    m_list->setCommit([this](const GridRow &row, int column, const QString &typed) { return commitPart(row, column, typed); });
    m_list->setAddsInARow(true);
    m_list->addRowAction(tr("Take off the shelf"), QKeySequence::Delete, [this](const QUuid &key) { removePart(key); });
    connect(m_list, &GridView::currentRowChanged, this, &ShelfPane::showPart);
    m_rating = new GridView(workplace.style(), tr("Rating"), ratingColumns(), this);
    m_rating->setCommit([this](const GridRow &row, int, const QString &typed) { return commitRating(row, typed); });
    m_batchTable = new GridView(workplace.style(), tr("Batches"), batchColumns(), this);
    m_batchTable->setCommit([this](const GridRow &row, int column, const QString &typed) { return commitBatch(row, column, typed); });
    m_batchTable->addRowAction(tr("Take the batch off"), QKeySequence::Delete, [this](const QUuid &key) { removeBatch(key); });

    m_card = new Card({}, this);
    auto *both = new QHBoxLayout;
    both->setSpacing(gap::normal);
    both->addWidget(m_rating, 2);
    both->addWidget(m_batchTable, 3);
    m_card->body()->addLayout(both);
    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(m_find, 1);
    top->addWidget(m_short);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addLayout(top);
    column->addWidget(m_understood);
    column->addWidget(m_list, 3);
    column->addWidget(m_card, 2);
}

void ShelfPane::focusFirst()
{
    m_find->setFocus();
}

void ShelfPane::commitEdits()
{
    for (GridView *each : {m_list, m_rating, m_batchTable})
        each->commitEdit();
}

void ShelfPane::refresh()
{
    const auto parts = m_work.desk().list<Part>();
    if (!parts)
        return m_work.refuse(parts.trouble());
    const auto batches = m_work.desk().list<Batch>();
    if (!batches)
        return m_work.refuse(batches.trouble());
    m_parts = *parts;
    m_batches = *batches;
    for (const Batch &batch : m_batches)
        if (!batch.donor.isNull() && !m_donors.contains(batch.donor))
            if (const auto donor = m_work.desk().get(batch.donor))
                m_donors.insert(batch.donor, donor->tag);
    const auto missing = belowMinimum(m_parts, m_batches).size();
    m_short->setText(missing == 0 ? tr("Below what is kept") : tr("Below what is kept: %1").arg(shown::count(missing)));
    m_short->setAccessibleName(m_short->text());
    show();
}

void ShelfPane::show()
{
    m_pause->stop();
    const auto wish = readPartWish(m_find->text());
    restyle(m_understood, "role", wish ? u"quiet"_s : u"warning"_s);
    m_understood->setVisible(!m_find->text().trimmed().isEmpty());
    if (!wish) {
        m_understood->setText(wish.trouble().sentence());
        return; // what was found before stays while the line is being typed
    }
    const auto rows = shelfRows(m_parts, m_batches, *wish, m_short->isChecked());
    m_understood->setText(tr("%1 · found: %2").arg(wish->text(), shown::count(rows.size() - 1)));
    m_list->setRows(rows);
    showPart();
}

const Part *ShelfPane::current() const
{
    const QUuid key = m_list->currentKey();
    const auto found = std::find_if(m_parts.begin(), m_parts.end(), [&](const Part &each) { return each.id.value == key; });
    return found == m_parts.end() ? nullptr : &*found;
}

void ShelfPane::showPart()
{
    const Part *part = current();
    m_card->setVisible(part != nullptr);
    if (!part)
        return;
    m_card->setHeading(part->name);
    m_card->setRemark(part->kind);
    m_rating->setRows(ratingRows(*part));
    QList<Batch> own;
    for (const Batch &batch : m_batches)
        if (batch.part == part->id)
            own << batch;
    m_batchTable->setRows(batchRows(own, m_donors, m_work.today()));
}

std::optional<QUuid> ShelfPane::commitPart(const GridRow &row, int column, const QString &typed)
{
    if (row.kind == GridRowKind::Adding) {
        if (typed.trimmed().isEmpty())
            return QUuid();
        QUuid id;
        if (!m_work.record(storedPart(typed, m_work.currency(), m_work.today(), m_work.maker(), id)))
            return std::nullopt;
        return id;
    }
    const auto before = std::find_if(m_parts.begin(), m_parts.end(), [&](const Part &each) { return each.id.value == row.key; });
    if (before == m_parts.end())
        return std::nullopt;
    const auto after = editedPart(*before, static_cast<ShelfColumn>(column), typed);
    if (!after) {
        m_work.refuse(after.trouble());
        return std::nullopt;
    }
    return recordEdit(m_work, Part(*before), *after, tr("Part %1: %2 %3").arg(after->name, shelfColumns().at(column).title.toLower(), typed));
}

std::optional<QUuid> ShelfPane::commitRating(const GridRow &row, const QString &typed)
{
    const Part *before = current();
    if (!before)
        return std::nullopt;
    const auto after = ratedPart(*before, row.name, typed);
    if (!after) {
        m_work.refuse(after.trouble());
        return std::nullopt;
    }
    const QString sentence = tr("Part %1: %2 %3").arg(after->name, row.name, typed.isEmpty() ? tr("taken out") : typed);
    return recordEdit(m_work, Part(*before), *after, sentence) ? std::optional(row.key) : std::nullopt;
}

std::optional<QUuid> ShelfPane::commitBatch(const GridRow &row, int column, const QString &typed)
{
    const Part *part = current();
    if (!part)
        return std::nullopt;
    const auto before = std::find_if(m_batches.begin(), m_batches.end(), [&](const Batch &each) { return each.id.value == row.key; });
    Expected<Batch> after = Trouble{};
    if (row.kind == GridRowKind::Adding) {
        if (typed.trimmed().isEmpty())
            return QUuid();
        Batch fresh = m_work.maker().fresh<Batch>();
        fresh.part = part->id;
        after = typedBatch(typed, fresh, m_work.desk(), m_work.currency(), m_work.today());
    } else if (before == m_batches.end()) {
        return std::nullopt;
    } else {
        after = editedBatch(*before, static_cast<BatchColumn>(column), typed, m_work.desk(), m_work.currency(), m_work.today());
    }
    if (!after) {
        m_work.refuse(after.trouble());
        return std::nullopt;
    }
    if (row.kind == GridRowKind::Adding)
        return recordNew(m_work, *after, tr("Into the parts store: %1 × %2").arg(shown::count(after->quantity), part->name));
    return recordEdit(m_work, Batch(*before), *after, tr("Batch of %1: %2 %3").arg(part->name, batchColumns().at(column).title.toLower(), typed));
}

void ShelfPane::removePart(const QUuid &key)
{
    const Part *part = current();
    if (!part || part->id.value != key)
        return;
    Change change(tr("Off the shelf: %1").arg(part->name));
    for (const Batch &batch : m_batches)
        if (batch.part == part->id)
            change.remove(batch);
    m_work.record(change.remove(*part));
}

void ShelfPane::removeBatch(const QUuid &key)
{
    const Part *part = current();
    for (const Batch &batch : m_batches)
        if (part && batch.id.value == key)
            return void(m_work.record(Change(tr("Batch of %1 taken off").arg(part->name)).remove(batch)));
}

} // namespace ts
