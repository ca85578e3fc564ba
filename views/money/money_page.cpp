#include "views/money/money_page.h"

#include "model/sums/at_completion.h"
#include "model/sums/price_parts.h"
#include "views/money/comparables_card.h"
#include "views/money/cost_delegate.h"
#include "views/money/cost_model.h"
#include "views/money/shares_bar.h"
#include "views/style/style.h"
#include "views/widgets/two_columns.h"

#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

namespace ts {

MoneyPage::MoneyPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent)
{
    m_costs = new CostModel(workplace, this);
    m_table = new QTableView;
    m_table->setModel(m_costs);
    m_table->setItemDelegate(new CostDelegate(m_table));
    m_table->setAccessibleName(tr("Cost against resale"));
    m_table->setShowGrid(false);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(false);
    m_table->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked | QAbstractItemView::AnyKeyPressed);
    m_table->verticalHeader()->hide();
    m_table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(CostModel::What, QHeaderView::Stretch);
    m_remarks = styledLabel("quiet");
    m_remarks->setWordWrap(true);
    m_comparables = new ComparablesCard(workplace);
    m_sharesCard = new Card(tr("Where the resale price goes"));
    m_shares = new SharesBar(work().style(), m_sharesCard);
    m_sharesCard->body()->addWidget(m_shares);

    auto *inside = new TwoColumns(900, 6, 5);
    inside->left()->addWidget(m_table);
    inside->left()->addWidget(m_remarks);
    inside->left()->addStretch(1);
    inside->right()->addWidget(m_comparables);
    inside->right()->addWidget(m_sharesCard);
    inside->right()->addStretch(1);
    inside->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(inside);
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
}

void MoneyPage::focusFirst()
{
    m_table->setFocus();
    // A table that gets the keyboard marks its first cell by itself; the first that can be planned is of more use.
    if (m_table->currentIndex().column() <= CostModel::What)
        m_table->setCurrentIndex(m_costs->index(2, CostModel::Planned));
}

QString MoneyPage::help() const
{
    return tr("What was planned at purchase, what it cost to date, and how it will stand when the unit is finished and sold. Enter or F2 on a planned figure changes the plan. "
              "Sales of the same or a like unit are written down at the right; the newest and the likest count most. Money out and in is jotted in the Log: paid carriage 8.40.");
}

void MoneyPage::commitEdits()
{
    if (QWidget *editor = m_table->indexWidget(m_table->currentIndex()))
        editor->clearFocus();
}

void MoneyPage::refresh()
{
    const Resale resale = resaleOf(file(), bench(), {}, ResaleTerms::of(file(), bench(), work().today()));
    const CostSheet sheet = costSheet(file(), bench(), work().now(), resale);
    const Completion completion = atCompletion(sheet, file(), bench());
    m_costs->refresh(sheet, completion);
    QStringList remarks{completion.why};
    if (!sheet.resaleFrom.isEmpty())
        remarks << tr("Resale: %1.").arg(sheet.resaleFrom);
    m_remarks->setText((remarks + sheet.remarks).join(QLatin1Char(' ')));
    m_comparables->refresh(resale, completion.lines.contains(CostKey::BreakEven) ? std::optional(completion.lines.value(CostKey::BreakEven)) : std::nullopt);
    const QList<PricePart> parts = priceParts(sheet);
    m_shares->show(parts);
    m_sharesCard->setHidden(parts.isEmpty());
    fitTable();
}

// The table is as high as its lines: the page scrolls, not the table in it.
void MoneyPage::fitTable()
{
    const int row = work().style().space(7.4);
    m_table->verticalHeader()->setDefaultSectionSize(row);
    m_table->setFixedHeight(m_table->horizontalHeader()->sizeHint().height() + row * m_costs->rowCount() + 4);
}

} // namespace ts
