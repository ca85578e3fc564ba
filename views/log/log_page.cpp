#include "views/log/log_page.h"

#include "model/records/rehome.h"
#include "model/sums/take_out.h"
#include "views/log/entry_form.h"
#include "views/log/jot_bar.h"
#include "views/log/jot_line.h"
#include "views/log/lane_chips.h"
#include "views/log/log_chart.h"
#include "views/log/log_model.h"
#include "views/log/log_rows.h"
#include "views/log/log_view.h"
#include "views/log/move_bar.h"
#include "views/style/style.h"

#include <QKeyEvent>
#include <QMenu>
#include <QVBoxLayout>

namespace ts {

LogPage::LogPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent)
{
    m_chart = new LogChart(workplace, this);
    m_chips = new LaneChips(this);
    m_model = new LogModel(this);
    m_view = new LogView(*m_model, work().style(), work().thumbnails(), this);
    m_move = new MoveBar(workplace, this);
    m_jot = new JotBar(workplace, this);
    auto *chips = new QHBoxLayout;
    chips->setContentsMargins(gap::wide, gap::tight, gap::wide, gap::tight);
    chips->addWidget(m_chips);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_chart);
    column->addLayout(chips);
    column->addWidget(m_view, 1);
    column->addWidget(m_move);
    column->addWidget(m_jot);

    connect(m_chips, &LaneChips::changed, this, [this] {
        closeForm(false);
        showRows();
    });
    connect(m_view, &LogView::editWanted, this, &LogPage::edit);
    connect(m_view, &LogView::takeOutWanted, this, qOverload<>(&LogPage::takeOut));
    connect(m_view, &LogView::photoWanted, this, &LogPage::lookAt);
    connect(m_view, &LogView::menuWanted, this, [this](const QPoint &at, int photo) {
        QMenu menu(this);
        fillMenu(menu, photo);
        menu.exec(at);
    });
    connect(m_move, &MoveBar::chosen, this, &LogPage::moveTo);
    connect(m_move, &MoveBar::closed, this, [this] {
        m_move->hide();
        m_view->setFocus();
    });
    connect(m_jot, &JotBar::recorded, this, [this] {
        // What was just written down is seen, whatever was filtered.
        if (!m_chips->only().isEmpty()) {
            m_chips->clear();
            showRows();
        }
        m_view->scrollToNewest();
    });
}

void LogPage::focusFirst()
{
    m_jot->line()->setFocus();
}

void LogPage::refresh()
{
    const bool another = file().unit.id.value != m_unit;
    m_unit = file().unit.id.value;
    if (another) {
        closeForm(false);
        m_move->hide();
        m_chips->clear();
    }
    m_chips->offer(work().hasUnit() ? lanesOf(file(), bench()) : QList<Lane>());
    m_chart->refresh();
    showRows();
    if (another) {
        m_view->clearSelection();
        m_view->setCurrentIndex({});
        m_view->scrollToNewest();
    }
}

void LogPage::showRows()
{
    m_view->show(work().hasUnit() ? logRows(file(), bench(), work().today(), m_chips->only()) : QList<LogEntry>());
}

void LogPage::reveal(const QString &kind, const QUuid &record)
{
    Q_UNUSED(kind) // ids are of one record in the whole workbook
    if (m_model->rowOfRecord(record) < 0 && !m_chips->only().isEmpty()) {
        m_chips->clear();
        showRows();
    }
    if (const int row = m_model->rowOfRecord(record); row >= 0) {
        m_view->choose(row);
        m_view->setFocus();
    }
}

void LogPage::edit(int row)
{
    if (m_form && !m_form->commit())
        return;
    closeForm(false);
    const LogEntry &entry = m_model->entry(row);
    if (entry.events.size() > 1) { // each photo has its own words: they stand beside it where it is looked at
        lookAt(entry, 0);
        return;
    }
    const Event event = entry.events.first();
    const auto before = rowOf(file(), {&kindOf(event.what), event.record});
    if (!before || fieldsOf(event).isEmpty())
        return;
    m_form = new EntryForm(work(), event, *before, m_view);
    connect(m_form, &EntryForm::done, this, &LogPage::closeForm);
    m_view->setEditor(row, m_form);
    m_form->focusFirst();
}

void LogPage::closeForm(bool backToList)
{
    if (!m_form)
        return;
    m_form = nullptr;
    m_view->setEditor(-1, nullptr); // deletes it
    if (backToList)
        m_view->setFocus();
}

void LogPage::commitEdits()
{
    // Nobody can be asked now: what is refused is said, and the entry stays as it was.
    if (m_form && !m_form->commit())
        work().refuse(m_form->trouble());
    closeForm(false);
}

QList<Event> LogPage::eventsOf(const QList<LogEntry> &entries, int photo) const
{
    if (photo >= 0 && entries.size() == 1)
        return entries.first().events.mid(photo, 1);
    QList<Event> events;
    for (const LogEntry &entry : entries)
        events += entry.events;
    return events;
}

void LogPage::takeOut()
{
    takeOut(eventsOf(m_view->chosen(), -1));
}

void LogPage::takeOut(const QList<Event> &events)
{
    if (events.isEmpty())
        return;
    closeForm(true);
    work().record(takenOut(events, file()));
}

void LogPage::askWhereTo()
{
    m_moving = eventsOf(m_view->chosen(), -1);
    if (m_moving.isEmpty()) {
        work().refuse(tr("Choose entries of the log first; they can then be moved to another unit."));
        return;
    }
    m_move->ask(static_cast<int>(m_moving.size()));
}

void LogPage::moveTo(const Id<Unit> &unit)
{
    const auto there = work().desk().unitFile(unit);
    if (!there) {
        work().refuse(there.trouble());
        return;
    }
    QList<RecordKey> keys;
    for (const Event &event : m_moving)
        if (const RecordKey key{&kindOf(event.what), event.record}; !keys.contains(key))
            keys << key;
    Maker maker = work().maker();
    if (!work().record(rehomed(keys, file(), *there, maker)))
        return;
    m_move->hide();
    m_view->setFocus();
}

void LogPage::lookAt(const LogEntry &entry, int photo)
{
    if (photo >= 0 && photo < entry.events.size())
        Q_EMIT photoWanted(file().unit.id, Id<Photo>{entry.events.at(photo).record});
}

void LogPage::fillMenu(QMenu &menu, int photo)
{
    const QList<LogEntry> chosen = m_view->chosen();
    if (chosen.isEmpty())
        return;
    const QList<Event> events = eventsOf(chosen, photo);
    if (!chosen.first().photos.isEmpty() && chosen.size() == 1)
        menu.addAction(tr("&Look at the photo"), this, [this, entry = chosen.first(), photo] { lookAt(entry, qMax(0, photo)); });
    if (events.size() == 1 && chosen.first().events.size() == 1)
        menu.addAction(tr("&Edit\tEnter"), this, [this] { edit(m_view->currentIndex().row()); });
    menu.addAction(tr("&Move to another unit…"), this, [this, events] {
        m_moving = events;
        m_move->ask(static_cast<int>(events.size()));
    });
    menu.addAction(tr("&Take out\tDel"), this, [this, events] { takeOut(events); });
}

void LogPage::keyPressEvent(QKeyEvent *event)
{
    // Whatever is typed on this page and is no shortcut is meant for the line.
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    const QString text = event->text();
    if (plain && !text.trimmed().isEmpty() && text.at(0).isPrint() && !m_form && m_move->isHidden()) {
        m_jot->typeOn(text);
        return;
    }
    Page::keyPressEvent(event);
}

void LogPage::showEvent(QShowEvent *event)
{
    Page::showEvent(event);
    if (!window()->focusWidget()) // the window has just been opened
        focusFirst();
}

void LogPage::resizeEvent(QResizeEvent *event)
{
    Page::resizeEvent(event);
    m_chart->fitInto(height());
}

QByteArray LogPage::keptState() const
{
    return m_chart->state();
}

void LogPage::restoreState(const QByteArray &state)
{
    m_chart->restore(state);
}

QString LogPage::help() const
{
    return tr("Everything that happened to this unit, day by day. What you type goes into the line at the foot; under it stands what will be "
              "recorded, and Enter records it. Tab completes test points, parts and causes of this unit, Up brings back what you recorded before.\n"
              "Readings: CN2.4 = 11.92 V want 12 V 5% · insulation = 200 MΩ want >= 2 MΩ with insulation tester · add found, during or after for the phase.\n"
              "Faults: saw …, cleared …, think … 40%, ruled out …, was …, check … 5m normal.\n"
              "Work: did … 20m. Parts: need … 2.50, ordered …, here …, fitted …. Money: paid … 8.40, got … 5.00.\n"
              "Taking apart: off lid 5 screws M3x8 tray A1, back lid. Proofs: proved …, failed …; what is still to be proved stands under Proving. "
              "Where you are: next …, do not power …, safe to power, waiting … until 28 Nov. Anything else is a note.\n"
              "In the list: Enter edits an entry in its place, Delete takes it out, Ctrl+M moves the chosen ones to another unit; Shift and the arrow keys choose several. "
              "Ctrl+Z takes anything back.");
}

} // namespace ts
