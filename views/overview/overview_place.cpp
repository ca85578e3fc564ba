#include "views/overview/overview_place.h"

#include "model/worth/read_overviews.h"
#include "views/style/style.h"
#include "views/unit/page_tabs.h"
#include "views/widgets/card.h"
#include "views/widgets/chart_dress.h"
#include "views/widgets/locale_text.h"

#include <QBarCategoryAxis>
#include <QBarSeries>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QHorizontalBarSeries>
#include <QLabel>
#include <QLegend>
#include <QStackedWidget>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <QValueAxis>

#include <algorithm>

namespace ts {

namespace {

/// So many bars are drawn that their names can be read; the table has them all.
qsizetype mostBars(const OverviewPicture &picture)
{
    return picture.upright ? picture.names.size() : 10;
}

} // namespace

OverviewPlace::OverviewPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_sum = styledLabel("strong", {}, this);
    m_tabs = new PageTabs(work().style(), this);
    m_tabs->setAccessibleName(tr("Overviews"));
    connect(m_tabs, &QTabBar::currentChanged, this, &OverviewPlace::showPicture);
    m_chartCard = new Card({}, this);
    m_chart = new QChartView(m_chartCard);
    m_chart->setRenderHint(QPainter::Antialiasing);
    m_chart->setFrameShape(QFrame::NoFrame);
    m_chart->setMinimumHeight(220);
    m_chart->setFocusPolicy(Qt::NoFocus);
    m_empty = styledLabel("quiet", {}, m_chartCard);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignCenter);
    m_drawn = new QStackedWidget(m_chartCard);
    m_drawn->addWidget(m_chart);
    m_drawn->addWidget(m_empty);
    m_says = styledLabel("quiet", {}, m_chartCard);
    m_says->setWordWrap(true);
    m_chartCard->body()->addWidget(m_says);
    m_chartCard->body()->addWidget(m_drawn, 1);
    auto *tableCard = new Card(tr("The same as a table"), this);
    m_table = new QTreeWidget(tableCard);
    m_table->setRootIsDecorated(false);
    m_table->setTabKeyNavigation(false);
    m_table->setAccessibleName(tr("The overview as a table"));
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
    column->addWidget(m_tabs);
    column->addWidget(m_chartCard, 3);
    column->addWidget(tableCard, 2);
}

void OverviewPlace::focusFirst()
{
    m_tabs->setFocus();
}

QString OverviewPlace::help() const
{
    return tr("How the bench does: the money tied up by stage and by age, what an hour brought in each category, hours planned and taken, which causes come up most, how long a unit takes from purchase to sale, "
              "and what each month left. The arrow keys go from one to the next; each has its table below.");
}

void OverviewPlace::refresh()
{
    const int generation = ++m_generation;
    work().startWork(tr("Looking over the workbook"), [this, generation, today = work().today()](Desk &desk, const Progress &) -> Expected<QString> {
        auto read = readOverviews(desk, today);
        if (!read)
            return read.trouble();
        QMetaObject::invokeMethod(
            this,
            [this, generation, made = *std::move(read)] {
                if (generation == m_generation)
                    show(made);
            },
            Qt::QueuedConnection);
        return QString();
    });
}

void OverviewPlace::show(const Overviews &overviews)
{
    Money all(0, work().currency());
    int units = 0;
    for (const OverviewRow &row : overviews.stages) {
        all += row.money;
        units += row.units;
    }
    m_sum->setText(tr("%n unit(s) not closed", nullptr, units) + QStringLiteral(" · ") + tr("%1 tied up").arg(shown::money(all)));
    m_pictures = overviewPictures(overviews, work().currency());
    const QSignalBlocker quiet(m_tabs);
    for (int i = 0; i < m_pictures.size(); ++i)
        if (i >= m_tabs->count())
            m_tabs->addTab(m_pictures.at(i).title);
    showPicture();
}

void OverviewPlace::showPicture()
{
    if (m_tabs->currentIndex() < 0 || m_tabs->currentIndex() >= m_pictures.size())
        return;
    const OverviewPicture &picture = m_pictures.at(m_tabs->currentIndex());
    m_chartCard->setHeading(picture.title);
    m_chartCard->setRemark(picture.measure);
    m_says->setText(picture.says);
    m_empty->setText(picture.empty);
    m_drawn->setCurrentIndex(picture.names.isEmpty() ? 1 : 0);
    m_chart->setAccessibleName(picture.title);
    if (!picture.names.isEmpty())
        draw(picture);
    list(picture);
}

void OverviewPlace::draw(const OverviewPicture &picture)
{
    const Ink &ink = work().style().ink();
    QChart *chart = m_chart->chart();
    clearChart(*chart);
    QAbstractBarSeries *series = picture.upright ? static_cast<QAbstractBarSeries *>(new QBarSeries) : new QHorizontalBarSeries;
    double most = 0;
    double least = 0;
    const QList<QColor> colours{ink.copper, ink.passed};
    for (qsizetype i = 0; i < picture.sets.size(); ++i) {
        auto *set = new QBarSet(picture.sets.at(i).first);
        QList<double> values = picture.sets.at(i).second.mid(0, mostBars(picture));
        if (!picture.upright)
            std::reverse(values.begin(), values.end()); // a bar chart begins at its foot
        for (const double value : values) {
            *set << value;
            most = std::max(most, value);
            least = std::min(least, value);
        }
        const QColor colour = picture.sets.size() > 1 && i == 0 ? colours.at(1) : colours.at(0);
        set->setColor(colour);
        set->setBorderColor(colour);
        series->append(set);
    }
    series->setBarWidth(0.6);
    chart->addSeries(series);
    chart->legend()->setVisible(picture.sets.size() > 1);
    chart->legend()->setAlignment(Qt::AlignTop);
    chart->legend()->setLabelColor(ink.quiet);
    chart->legend()->setFont(work().style().text(0.88));
    auto *names = new QBarCategoryAxis;
    QStringList shownNames;
    for (const QString &name : picture.names.mid(0, mostBars(picture)))
        shownNames << (name.size() > 30 ? name.left(29).trimmed() + QChar(0x2026) : name);
    if (!picture.upright)
        std::reverse(shownNames.begin(), shownNames.end());
    names->append(shownNames);
    auto *values = new QValueAxis;
    values->setRange(least, most > least ? most : least + 1);
    if (picture.counts && most <= 5)
        values->setTickCount(static_cast<int>(most) + 1); // no half units
    else
        values->applyNiceNumbers();
    values->setLabelFormat(QStringLiteral("%g"));
    dressAxis(*names, work().style());
    dressAxis(*values, work().style());
    names->setTruncateLabels(false); // they are short enough, and Qt cuts them to nothing where the bars are many
    names->setGridLineVisible(false);
    chart->addAxis(names, picture.upright ? Qt::AlignBottom : Qt::AlignLeft);
    chart->addAxis(values, picture.upright ? Qt::AlignLeft : Qt::AlignBottom);
    series->attachAxis(names);
    series->attachAxis(values);
}

void OverviewPlace::list(const OverviewPicture &picture)
{
    m_table->clear();
    m_table->setColumnCount(static_cast<int>(picture.heads.size()));
    m_table->setHeaderLabels(picture.heads);
    for (const QStringList &row : picture.rows) {
        auto *item = new QTreeWidgetItem(m_table, row);
        for (int column = 1; column < row.size(); ++column)
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    for (int column = 0; column < picture.heads.size(); ++column) {
        m_table->header()->setSectionResizeMode(column, column == 0 ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
        m_table->headerItem()->setTextAlignment(column, (column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    }
}

} // namespace ts
