#include "views/places/overview_place.h"

#include "model/records/stage_change.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QHorizontalBarSeries>
#include <QLabel>
#include <QTreeWidget>
#include <QValueAxis>
#include <QVBoxLayout>

#include <cmath>

namespace ts {

OverviewPlace::OverviewPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_sum = styledLabel("strong", {}, this);
    m_chartCard = new Card(tr("Money tied up, by stage"), this);
    m_chart = new QChartView(m_chartCard);
    m_chart->setRenderHint(QPainter::Antialiasing);
    m_chart->setMinimumHeight(300);
    m_chart->setFocusPolicy(Qt::NoFocus);
    m_chartCard->body()->addWidget(m_chart);
    auto *tableCard = new Card(tr("The same as a table"), this);
    m_table = new QTreeWidget(tableCard);
    m_table->setRootIsDecorated(false);
    m_table->setTabKeyNavigation(false);
    m_table->setAccessibleName(tr("Units, money and hours by stage"));
    m_table->setHeaderLabels({tr("Stage"), tr("Units"), tr("Spent"), tr("Hours"), tr("Longest there")});
    m_table->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_table->header()->setStretchLastSection(false);
    tableCard->body()->addWidget(m_table);
    auto *top = new QHBoxLayout;
    top->addWidget(styledLabel("heading", tr("Overview"), this));
    top->addStretch(1);
    top->addWidget(m_sum);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_chartCard, 3);
    column->addWidget(tableCard, 2);
}

QString OverviewPlace::help() const
{
    return tr("Where units and money stand today. Closed units are left out: their money is no longer tied up.");
}

void OverviewPlace::refresh()
{
    const auto rack = work().desk().rack();
    if (!rack)
        return work().refuse(rack.trouble());
    const QDate today = work().today();
    QMap<Stage, Row> rows;
    for (const auto &[stage, word] : Words<Stage>::list)
        if (stage != Stage::Closed)
            rows.insert(stage, Row{0, Money(0, work().currency()), 0, 0});
    Money all(0, work().currency());
    int units = 0;
    for (const RackRow &unit : *rack) {
        if (unit.stage == Stage::Closed)
            continue;
        Row &row = rows[unit.stage];
        ++row.units;
        row.spent += unit.spent;
        row.minutes += unit.minutes;
        if (unit.stageSince.isValid())
            row.oldestDays = qMax(row.oldestDays, unit.stageSince.toLocalTime().date().daysTo(today));
        all += unit.spent;
        ++units;
    }
    m_sum->setText(tr("%n unit(s) not closed", nullptr, units) + QStringLiteral(" · ") + tr("%1 tied up").arg(shown::money(all)));
    m_table->clear();
    for (auto it = rows.cbegin(); it != rows.cend(); ++it) {
        auto *item = new QTreeWidgetItem(
            {stageText(it.key()), shown::count(it->units), shown::money(it->spent), shown::duration(it->minutes), it->units > 0 ? tr("%n day(s)", nullptr, static_cast<int>(it->oldestDays)) : QString()});
        for (int column = 1; column < 5; ++column)
            item->setTextAlignment(column, Qt::AlignRight);
        m_table->addTopLevelItem(item);
    }
    for (int column = 1; column < 5; ++column)
        m_table->headerItem()->setTextAlignment(column, Qt::AlignRight);
    draw(rows);
}

void OverviewPlace::draw(const QMap<Stage, Row> &rows)
{
    const Ink &ink = work().style().ink();
    m_chartCard->setRemark(work().currency().code());
    auto *set = new QBarSet(tr("Spent"));
    set->setColor(ink.copper);
    set->setBorderColor(ink.copper);
    set->setLabelColor(ink.ink);
    QStringList stages;
    double most = 0;
    qint64 unit = 1;
    for (int i = 0; i < work().currency().decimals(); ++i)
        unit *= 10;
    for (auto it = rows.cend(); it != rows.cbegin();) { // a bar chart begins at its foot
        --it;
        const double spent = static_cast<double>(it->spent.minor()) / static_cast<double>(unit);
        *set << spent;
        most = std::max(most, spent);
        stages << stageText(it.key());
    }
    auto *series = new QHorizontalBarSeries;
    series->append(set);
    series->setBarWidth(0.6);
    auto *chart = new QChart;
    chart->addSeries(series);
    chart->legend()->hide();
    chart->setBackgroundVisible(false);
    chart->setMargins(QMargins(0, 0, 0, 0));
    auto *names = new QBarCategoryAxis;
    names->append(stages);
    auto *money = new QValueAxis;
    money->setRange(0, most > 0 ? most : 1);
    money->applyNiceNumbers();
    money->setLabelFormat(QStringLiteral("%.0f"));
    chart->addAxis(names, Qt::AlignLeft);
    chart->addAxis(money, Qt::AlignBottom);
    series->attachAxis(names);
    series->attachAxis(money);
    for (QAbstractAxis *axis : chart->axes()) {
        axis->setLabelsColor(ink.quiet);
        axis->setLabelsFont(work().style().text(0.92));
        axis->setGridLineColor(ink.line);
        axis->setLinePenColor(ink.line);
    }
    names->setGridLineVisible(false);
    QChart *before = m_chart->chart();
    m_chart->setChart(chart);
    delete before;
}

} // namespace ts
