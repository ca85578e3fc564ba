#include "views/money/money_page.h"

#include "model/sums/at_completion.h"
#include "model/sums/price_parts.h"
#include "views/money/bid_card.h"
#include "views/money/comparables_card.h"
#include "views/money/cost_delegate.h"
#include "views/money/cost_model.h"
#include "views/money/forecast_card.h"
#include "views/money/money_in_hand.h"
#include "views/money/plan_fields.h"
#include "views/money/shares_bar.h"
#include "views/money/ways_card.h"
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
    buildTable();
    buildPlan();
    m_bid = new BidCard(workplace);
    m_forecast = new ForecastCard(workplace);
    m_ways = new WaysCard(workplace);
    m_comparables = new ComparablesCard(workplace);
    m_sharesCard = new Card(tr("Where the resale price goes"));
    m_shares = new SharesBar(work().style(), m_sharesCard);
    m_sharesCard->body()->addWidget(m_shares);
    auto *inside = new TwoColumns(900, 6, 5);
    layOut(inside);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(inside);
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    connect(&work().money(), &MoneyInHand::answered, this, [this] {
        if (isVisible())
            showAnswer();
    });
}

void MoneyPage::buildTable()
{
    m_costs = new CostModel(work(), this);
    m_table = new QTableView;
    m_table->setModel(m_costs);
    auto *delegate = new CostDelegate(m_table);
    m_table->setItemDelegate(delegate);
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
    connect(delegate, &CostDelegate::typed, this, &MoneyPage::typedInTable);
    connect(delegate, &QAbstractItemDelegate::closeEditor, this, [this] { work().money().want(); });
}

void MoneyPage::buildPlan()
{
    m_planCard = new Card(tr("What is expected"));
    m_plan = new PlanFields(work(), m_planCard);
    m_plan->addHeads({tr("hardly less"), tr("likely"), tr("hardly more")});
    m_plan->addRow(tr("It fetches, working"), {PlanField::ResaleLow, PlanField::Resale, PlanField::ResaleHigh});
    m_plan->addRow(tr("Your hours, all of them"), {PlanField::MinutesLow, PlanField::Minutes, PlanField::MinutesHigh});
    m_plan->addRow(tr("Parts"), {PlanField::PartsLow, PlanField::Parts, PlanField::PartsHigh});
    m_plan->addRow(tr("Chance of repair"), {PlanField::Chance}, tr("by your record and the category"));
    m_plan->addRow(tr("The buyer pays for carriage"), {PlanField::CarriageCharged});
    m_plan->addRow(tr("Days until it is sold"), {PlanField::DaysToSell});
    m_plan->addRow(tr("Its parts fetch or save"), {PlanField::PartsValue});
    m_plan->addRow(tr("Time to break it up"), {PlanField::BreakingMinutes});
    m_plan->addRow(tr("The seller takes it back until"), {PlanField::ReturnUntil}, tr("28 Nov"));
    m_plan->addRow(tr("The seller gives back"), {PlanField::ReturnRefund});
    m_plan->addRow(tr("Sending it back costs"), {PlanField::ReturnCost});
    m_planCard->body()->addWidget(m_plan);
}

void MoneyPage::layOut(TwoColumns *inside)
{
    inside->left()->addWidget(m_bid);
    inside->left()->addWidget(m_table);
    inside->left()->addWidget(m_remarks);
    inside->left()->addWidget(m_forecast);
    inside->left()->addStretch(1);
    inside->right()->addWidget(m_ways);
    inside->right()->addWidget(m_comparables);
    inside->right()->addWidget(m_sharesCard);
    inside->right()->addWidget(m_planCard);
    inside->right()->addStretch(1);
    inside->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
}

void MoneyPage::focusFirst()
{
    if (file().unit.stage == Stage::Scouted)
        return m_bid->focusFirst();
    m_table->setFocus();
    // A table that gets the keyboard marks its first cell by itself; the first that can be planned is of more use.
    if (m_table->currentIndex().column() <= CostModel::What)
        m_table->setCurrentIndex(m_costs->index(2, CostModel::Planned));
}

void MoneyPage::reveal(const QString &kind, const QUuid &record)
{
    Q_UNUSED(record)
    if (kind == QLatin1String(Decision::table))
        m_ways->focusWays();
}

QString MoneyPage::help() const
{
    return tr("What was planned at purchase, what it cost to date, and how it will stand when the unit is finished and sold. Enter or F2 on a planned figure changes the plan; "
              "forecast and ways out follow while you type. Sales of the same or a like unit are written down or pasted at the right; the newest and the likest count most, one that is only asked (asking 95) does not. "
              "“From here” leaves out what is spent already; what you decide is kept in the log with its figures. Money out and in is jotted in the Log: paid carriage 8.40.");
}

void MoneyPage::commitEdits()
{
    if (QWidget *editor = m_table->indexWidget(m_table->currentIndex()))
        editor->clearFocus();
    m_plan->commitEdits();
    m_bid->commitEdits();
}

// The sheet stands at once; what is drawn follows when it is worked out.
void MoneyPage::refresh()
{
    const Resale resale = resaleOf(file(), bench(), work().money().others(), ResaleTerms::of(file(), bench(), work().today()));
    showSheet(file(), resale, costSheet(file(), bench(), work().now(), resale));
    m_planCard->setHidden(file().unit.kind != UnitKind::ToSell || file().unit.stage == Stage::Scouted || file().unit.stage == Stage::Closed);
    m_plan->refresh();
    work().money().want();
    m_forecast->setHidden(file().unit.kind != UnitKind::ToSell || file().unit.stage == Stage::Closed);
    m_forecast->refresh();
    m_ways->refresh();
    m_bid->refresh();
}

void MoneyPage::showAnswer()
{
    const UnitMoney *money = work().money().answer();
    if (!money || !work().hasUnit())
        return;
    showSheet(work().money().question()->file, money->resale, money->sheet);
    m_forecast->refresh();
    m_ways->refresh();
    m_bid->refresh();
}

void MoneyPage::showSheet(const UnitFile &asIf, const Resale &resale, const CostSheet &sheet)
{
    const Completion completion = atCompletion(sheet, asIf, bench());
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

// The figures follow what is being typed before it is recorded; what cannot be read yet is only not finished.
void MoneyPage::typedInTable(int row, const QString &text)
{
    Maker maker = work().maker();
    if (const auto plan = planTyped(file(), bench(), m_costs->keyOf(row), text, maker))
        work().money().wantWith(*plan);
}

// The table is as high as its lines: the page scrolls, not the table in it.
void MoneyPage::fitTable()
{
    const int row = work().style().space(7.4);
    m_table->verticalHeader()->setDefaultSectionSize(row);
    m_table->setFixedHeight(m_table->horizontalHeader()->sizeHint().height() + row * m_costs->rowCount() + 4);
}

} // namespace ts
