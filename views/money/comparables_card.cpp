#include "views/money/comparables_card.h"

#include "views/money/comparable_pasted.h"
#include "views/money/resale_picture.h"
#include "views/style/style.h"
#include "views/widgets/ask.h"
#include "views/widgets/buttons.h"
#include "views/widgets/locale_text.h"

#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHeaderView>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ts {

namespace {

/// Its condition in words, with whether it worked where that is known and not said in them.
QString conditionText(const Comparable &sale)
{
    const QString working = !sale.working ? QString() : *sale.working ? ComparablesCard::tr("working") : ComparablesCard::tr("not working");
    if (working.isEmpty() || sale.condition.contains(working, Qt::CaseInsensitive))
        return sale.condition;
    return sale.condition.isEmpty() ? working : ComparablesCard::tr("%1, %2").arg(working, sale.condition);
}

} // namespace

ComparablesCard::ComparablesCard(Workplace &workplace, QWidget *parent) : Card(tr("What it should fetch"), parent), m_work(workplace)
{
    m_picture = new ResalePicture(m_work.style(), this);
    m_range = styledLabel("strong", {}, this);
    m_range->setWordWrap(true);
    m_says = styledLabel("quiet", {}, this);
    m_says->setWordWrap(true);
    m_list = new QTreeWidget(this);
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setTabKeyNavigation(false);
    m_list->setAccessibleName(tr("Sales of the same or a like unit"));
    m_list->setHeaderLabels({tr("Price"), tr("Sold"), tr("Condition"), tr("Counts")});
    m_list->headerItem()->setTextAlignment(0, Qt::AlignRight | Qt::AlignVCenter);
    m_list->headerItem()->setTextAlignment(3, Qt::AlignRight | Qt::AlignVCenter);
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->header()->setSectionResizeMode(2, QHeaderView::Stretch);
    m_list->setMaximumHeight(m_work.style().space(38));
    auto *away = new QShortcut(QKeySequence::Delete, m_list, nullptr, nullptr, Qt::WidgetShortcut);
    connect(away, &QShortcut::activated, this, &ComparablesCard::removeCurrent);
    m_line = new QLineEdit(this);
    m_line->setAccessibleName(tr("Write a sale down"));
    m_line->setPlaceholderText(tr("Write one down: 118.00 27 Sep working, measured · asking 95"));
    connect(m_line, &QLineEdit::returnPressed, this, &ComparablesCard::addTyped);
    m_line->installEventFilter(this);
    m_list->installEventFilter(this);
    body()->addWidget(m_picture);
    body()->addWidget(m_range);
    body()->addWidget(m_says);
    body()->addWidget(m_list);
    body()->addWidget(m_line);
    body()->addLayout(buttons());
}

QLayout *ComparablesCard::buttons()
{
    auto *row = new QHBoxLayout;
    const auto add = [&](const QString &text, const QString &name, auto does) {
        auto *made = button(text, this);
        made->setAccessibleName(name);
        connect(made, &QPushButton::clicked, this, does);
        row->addWidget(made);
    };
    add(tr("Paste sales"), tr("Paste several sales, one a line"), &ComparablesCard::paste);
    add(tr("From a file…"), tr("Take sales in from a list as CSV"), &ComparablesCard::fromFile);
    row->addStretch(1);
    add(tr("Remove"), tr("Remove the marked sale"), &ComparablesCard::removeCurrent);
    return row;
}

bool ComparablesCard::eventFilter(QObject *watched, QEvent *event)
{
    // A line edit would run several lines together.
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->matches(QKeySequence::Paste) &&
        (watched == m_list || QGuiApplication::clipboard()->text().trimmed().contains(QLatin1Char('\n')))) {
        paste();
        return true;
    }
    return Card::eventFilter(watched, event);
}

void ComparablesCard::paste()
{
    addText(QGuiApplication::clipboard()->text());
}

void ComparablesCard::fromFile()
{
    const QString name = ask::existingFile(this, tr("Sales from a list"), QDir::homePath(), tr("Lists (*.csv *.txt);;All files (*)"));
    if (name.isEmpty())
        return;
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return m_work.refuse(tr("%1 cannot be read: %2.").arg(QFileInfo(name).fileName(), file.errorString()));
    if (file.size() > 8'000'000)
        return m_work.refuse(tr("%1 is larger than 8 MB; take it in by Workbook, Lists in and out.").arg(QFileInfo(name).fileName()));
    addText(QString::fromUtf8(file.readAll()));
}

void ComparablesCard::addText(const QString &text)
{
    if (text.trimmed().isEmpty())
        return m_work.refuse(tr("Nothing to paste: copy the sales first, one a line, like 118.00 27 Sep working."));
    Maker maker = m_work.maker();
    const auto sales = salesPasted(text, m_work.file(), m_work.bench(), m_work.today(), maker);
    if (!sales)
        return m_work.refuse(sales.trouble());
    if (sales->added == 0)
        return m_work.say(tr("All of these sales are written down already."));
    m_work.record(sales->change);
}

void ComparablesCard::refresh(const Resale &resale, const std::optional<Money> &breakEven)
{
    setRemark(resale.heading);
    m_picture->setHidden(resale.bars.isEmpty());
    m_picture->show(resale, breakEven);
    m_range->setVisible(resale.middle && resale.low && resale.high);
    if (resale.middle && resale.low && resale.high)
        m_range->setText(tr("1 in 10 fetches under %1, half fetch over %2, 1 in 10 over %3.").arg(shown::moneyRound(*resale.low), shown::moneyRound(*resale.middle), shown::moneyRound(*resale.high)));
    QString says = resale.why;
    if (!resale.asking.isEmpty())
        says += QLatin1Char(' ') + tr("%n asking price(s) drawn as rings, never counted.", nullptr, static_cast<int>(resale.asking.size())) + QLatin1Char(' ') + tr("That is what sellers hope for, not what was paid.");
    if (resale.count == 0)
        says = tr("No sale of the same or a like unit is written down yet. With five or more this says what the unit should fetch; asking prices are kept apart.");
    m_says->setText(says);
    const QString marked = m_list->currentItem() ? m_list->currentItem()->data(0, Qt::UserRole).toString() : QString();
    m_list->clear();
    const auto row = [&](const CountedSale &sale, bool asking) {
        const Comparable *record = m_work.file().find(sale.id);
        auto *item = new QTreeWidgetItem({shown::money(sale.entered), sale.soldOn.isValid() ? shown::day(sale.soldOn, m_work.today()) : tr("no day"),
                                          record ? conditionText(*record) : tr("of another unit"), asking ? tr("asking") : shown::percent(sale.share)});
        item->setTextAlignment(0, Qt::AlignRight | Qt::AlignVCenter);
        item->setTextAlignment(3, Qt::AlignRight | Qt::AlignVCenter);
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
