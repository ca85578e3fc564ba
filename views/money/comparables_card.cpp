#include "views/money/comparables_card.h"

#include "views/money/resale_picture.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/locale_text.h"

#include <QHeaderView>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ts {

ComparablesCard::ComparablesCard(Workplace &workplace, QWidget *parent) : Card(tr("What it should fetch"), parent), m_work(workplace)
{
    m_picture = new ResalePicture(m_work.style(), this);
    m_says = styledLabel("quiet", {}, this);
    m_says->setWordWrap(true);
    m_list = new QTreeWidget(this);
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setTabKeyNavigation(false);
    m_list->setAccessibleName(tr("Sales of the same or a like unit"));
    m_list->setHeaderLabels({tr("Price"), tr("Sold"), tr("Condition"), tr("Counts")});
    m_list->headerItem()->setTextAlignment(0, Qt::AlignRight);
    m_list->headerItem()->setTextAlignment(3, Qt::AlignRight);
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->header()->setSectionResizeMode(2, QHeaderView::Stretch);
    m_list->setMaximumHeight(m_work.style().space(38));
    auto *away = new QShortcut(QKeySequence::Delete, m_list, nullptr, nullptr, Qt::WidgetShortcut);
    connect(away, &QShortcut::activated, this, &ComparablesCard::removeCurrent);
    m_line = new QLineEdit(this);
    m_line->setAccessibleName(tr("Write a sale down"));
    m_line->setPlaceholderText(tr("Write a sale down: 118.00 27 Sep working, measured"));
    connect(m_line, &QLineEdit::returnPressed, this, &ComparablesCard::addTyped);
    auto *remove = button(tr("Remove"), this);
    remove->setAccessibleName(tr("Remove the marked sale"));
    connect(remove, &QPushButton::clicked, this, &ComparablesCard::removeCurrent);
    auto *row = new QHBoxLayout;
    row->addWidget(m_line, 1);
    row->addWidget(remove);
    body()->addWidget(m_picture);
    body()->addWidget(m_says);
    body()->addWidget(m_list);
    body()->addLayout(row);
}

void ComparablesCard::refresh(const Resale &resale, const std::optional<Money> &breakEven)
{
    setRemark(resale.heading);
    m_picture->setHidden(resale.bars.isEmpty());
    m_picture->show(resale, breakEven);
    QString says = resale.why;
    if (resale.count == 0)
        says = tr("No sale of the same or a like unit is written down yet. With five or more this says what the unit should fetch; asking prices are kept apart.");
    m_says->setText(says);
    const QString marked = m_list->currentItem() ? m_list->currentItem()->data(0, Qt::UserRole).toString() : QString();
    m_list->clear();
    const auto row = [&](const CountedSale &sale, bool asking) {
        const Comparable *record = m_work.file().find(sale.id);
        auto *item = new QTreeWidgetItem({shown::money(sale.entered), sale.soldOn.isValid() ? shown::day(sale.soldOn, m_work.today()) : tr("no day"),
                                          record ? record->condition : tr("of another unit"), asking ? tr("asking") : shown::percent(sale.share)});
        item->setTextAlignment(0, Qt::AlignRight);
        item->setTextAlignment(3, Qt::AlignRight);
        item->setToolTip(2, sale.why.toHtmlEscaped());
        item->setData(0, Qt::UserRole, sale.id.text());
        m_list->addTopLevelItem(item);
        if (sale.id.text() == marked)
            m_list->setCurrentItem(item);
    };
    for (const CountedSale &sale : resale.sold)
        row(sale, false);
    for (const CountedSale &sale : resale.asking)
        row(sale, true);
    m_list->setHidden(m_list->topLevelItemCount() == 0);
}

void ComparablesCard::addTyped()
{
    if (m_line->text().trimmed().isEmpty())
        return;
    Maker maker = m_work.maker();
    const auto sale = comparableTyped(m_line->text(), m_work.file().unit, m_work.currency(), m_work.today(), maker);
    if (!sale)
        return m_work.refuse(sale.trouble());
    if (m_work.record(Change(tr("Comparable sale: %1").arg(shown::money(*sale->price))).add(*sale)))
        m_line->clear();
}

void ComparablesCard::removeCurrent()
{
    if (!m_list->currentItem())
        return;
    const auto id = Id<Comparable>::fromText(m_list->currentItem()->data(0, Qt::UserRole).toString());
    if (const Comparable *sale = m_work.file().find(id))
        m_work.record(Change(tr("Comparable sale removed: %1").arg(shown::money(*sale->price))).remove(*sale));
    else
        m_work.refuse(tr("That sale belongs to another unit; remove it there."));
}

} // namespace ts
