#include "views/places/bench_today_place.h"

#include "model/records/tag_text.h"
#include "model/worth/bench_today.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/empty_place.h"
#include "views/widgets/locale_text.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ts {

BenchTodayPlace::BenchTodayPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_says = styledLabel("quiet", {}, this);
    m_list = new QTreeWidget(this);
    m_list->setRootIsDecorated(false);
    m_list->setTabKeyNavigation(false);
    m_list->setWordWrap(true);
    m_list->setAccessibleName(tr("Units in the order to work on them"));
    m_list->setHeaderLabels({tr("Tag"), tr("Unit"), tr("Per hour"), tr("Hours"), tr("Tied up"), tr("Why")});
    for (int column = 2; column < 5; ++column)
        m_list->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->header()->setStretchLastSection(true);
    m_empty = new EmptyPlace(tr("Nothing is shelved, on the bench, held, proving or ready: there is nothing to choose between."), {}, this);
    m_empty->hide();
    auto *again = button(tr("Work it out again"), this);
    connect(again, &QPushButton::clicked, this, &BenchTodayPlace::workOut);
    connect(m_list, &QTreeWidget::itemActivated, this, &BenchTodayPlace::openCurrent);
    auto *top = new QHBoxLayout;
    top->addWidget(styledLabel("heading", tr("Bench today"), this));
    top->addSpacing(gap::wide);
    top->addWidget(m_says, 1);
    top->addWidget(again);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_list, 1);
    column->addWidget(m_empty, 1);
}

void BenchTodayPlace::focusFirst()
{
    m_list->setFocus();
}

QString BenchTodayPlace::help() const
{
    return tr("What to work on next, across all units: what has a date near, then what an hour brings most; what waits for parts and what is better not finished comes last. "
              "Enter or a double click opens the unit.");
}

// Opened, it is worked out; a change while it is seen only says so, or it would be worked out at every line that anybody jots.
void BenchTodayPlace::refresh()
{
    if (m_asked) {
        m_says->setText(tr("Something was recorded since; work it out again to have it counted."));
        return;
    }
    workOut();
}

void BenchTodayPlace::showEvent(QShowEvent *event)
{
    m_asked = false;
    Place::showEvent(event);
}

void BenchTodayPlace::workOut()
{
    m_asked = true;
    m_says->setText(tr("Being worked out…"));
    const int generation = ++m_generation;
    // The answer comes from the other thread by way of a copy; the desk there is its own.
    work().startWork(tr("Looking through the bench"), [this, generation, now = work().now()](Desk &desk, const Progress &progress) -> Expected<QString> {
        const auto bench = desk.benchFile();
        if (!bench)
            return bench.trouble();
        bool stopped = false;
        const auto uses = benchToday(desk, *bench, now, [&](qint64 done, qint64 total) {
            stopped = !progress(done, total);
            return !stopped;
        });
        if (!uses)
            return uses.trouble();
        if (!stopped)
            QMetaObject::invokeMethod(
                this,
                [this, generation, found = *uses] {
                    if (generation == m_generation)
                        take(found);
                },
                Qt::QueuedConnection);
        return QString();
    });
}

void BenchTodayPlace::take(const QList<BenchUse> &uses)
{
    const QString kept = m_list->currentItem() ? m_list->currentItem()->data(0, Qt::UserRole).toString() : QString();
    m_list->clear();
    const Ink &ink = work().style().ink();
    for (const BenchUse &use : uses) {
        auto *item = new QTreeWidgetItem({tagText(use.tag), use.name, use.perHour ? shown::moneyRound(*use.perHour) : QString(), use.minutes > 0 ? shown::duration(use.minutes) : QString(),
                                          use.tiedUp.minor() > 0 ? shown::money(use.tiedUp) : QString(), use.why});
        for (int column = 2; column < 5; ++column)
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        item->setData(0, Qt::UserRole, use.unit.text());
        item->setToolTip(5, use.why.toHtmlEscaped());
        item->setFont(0, work().style().figures());
        if (!use.workable || use.pull == Pull::NotWorth)
            for (int column = 0; column < 6; ++column)
                item->setForeground(column, ink.quiet);
        m_list->addTopLevelItem(item);
        if (item->data(0, Qt::UserRole).toString() == kept)
            m_list->setCurrentItem(item);
    }
    if (!m_list->currentItem() && m_list->topLevelItemCount() > 0)
        m_list->setCurrentItem(m_list->topLevelItem(0));
    m_list->setHidden(uses.isEmpty());
    m_empty->setHidden(!uses.isEmpty());
    m_says->setText(uses.isEmpty() ? QString() : tr("Next: %1").arg(uses.first().name));
}

void BenchTodayPlace::openCurrent()
{
    if (m_list->currentItem())
        work().goTo(Id<Unit>::fromText(m_list->currentItem()->data(0, Qt::UserRole).toString()), PageKey::Money);
}

} // namespace ts
