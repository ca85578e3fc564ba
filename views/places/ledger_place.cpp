#include "views/places/ledger_place.h"

#include "model/exchange/export_file.h"
#include "model/exchange/year_records.h"
#include "views/places/ledger_model.h"
#include "views/places/stock_model.h"
#include "views/style/style.h"
#include "views/unit/page_tabs.h"
#include "views/widgets/ask.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QSet>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace ts {

namespace {

/// Rows of which a text holds what is typed.
class WordFilter : public QSortFilterProxyModel {
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;
    void set(const QString &words)
    {
        m_words = words;
        invalidateFilter();
    }

protected:
    bool filterAcceptsRow(int row, const QModelIndex &parent) const override
    {
        if (m_words.isEmpty())
            return true;
        for (int column = 0; column < sourceModel()->columnCount(); ++column)
            if (sourceModel()->index(row, column, parent).data().toString().contains(m_words, Qt::CaseInsensitive))
                return true;
        return false;
    }

private:
    QString m_words;
};

} // namespace

LedgerPlace::LedgerPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_model = new LedgerModel(work().style(), this);
    m_sorted = new WordFilter(this);
    m_sorted->setSourceModel(m_model);
    m_sorted->setSortRole(LedgerModel::SortRole);
    m_view = makeTable(m_sorted, tr("Money out and in"));
    m_view->sortByColumn(LedgerModel::Day, Qt::DescendingOrder);
    m_stock = new StockModel(work().style(), this);
    m_stockSorted = new WordFilter(this);
    m_stockSorted->setSourceModel(m_stock);
    m_stockSorted->setSortRole(StockModel::SortRole);
    m_stockView = makeTable(m_stockSorted, tr("Stock book"));
    m_stockView->sortByColumn(StockModel::BoughtOn, Qt::DescendingOrder);
    m_tabs = new PageTabs(work().style(), this);
    m_tabs->setAccessibleName(tr("Books"));
    m_tabs->addTab(tr("Money out and in"));
    m_tabs->addTab(tr("Stock book"));
    m_tables = new QStackedWidget(this);
    m_tables->addWidget(m_view);
    m_tables->addWidget(m_stockView);
    connect(m_tabs, &QTabBar::currentChanged, this, [this](int tab) {
        m_tables->setCurrentIndex(tab);
        total();
    });
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::small);
    column->addLayout(makeTop());
    column->addWidget(m_tabs);
    column->addWidget(m_tables, 1);
    m_totals = styledLabel("strong", {}, this);
    m_totals->setWordWrap(true);
    column->addWidget(m_totals);
    column->addWidget(styledLabel("faint", tr("Enter on a line opens its unit. No tax advice; rates and rules are yours to set."), this));
}

QLayout *LedgerPlace::makeTop()
{
    m_year = new QComboBox(this);
    m_year->setAccessibleName(tr("Year"));
    m_filter = new QLineEdit(this);
    m_filter->setPlaceholderText(tr("Narrow: a tag, a word…"));
    m_filter->setAccessibleName(tr("Narrow the ledger"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setMaximumWidth(280);
    auto *sheet = button(tr("Write a spreadsheet…"), this);
    sheet->setToolTip(tr("The year's money, the stock book and all cost sheets, with live formulas (xlsx)"));
    auto *csv = button(tr("Write as CSV…"), this);
    csv->setToolTip(tr("The year's money, a line a movement"));
    connect(sheet, &QPushButton::clicked, this, [this] { write(QStringLiteral("xlsx")); });
    connect(csv, &QPushButton::clicked, this, [this] { write(QStringLiteral("ledger-csv")); });
    connect(m_year, &QComboBox::currentIndexChanged, this, &LedgerPlace::showYear);
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString &text) {
        static_cast<WordFilter *>(m_sorted)->set(text.trimmed());
        static_cast<WordFilter *>(m_stockSorted)->set(text.trimmed());
        total();
    });
    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(styledLabel("heading", tr("Ledger"), this));
    top->addSpacing(gap::normal);
    top->addWidget(m_year);
    top->addWidget(m_filter, 1);
    top->addStretch(1);
    top->addWidget(csv);
    top->addWidget(sheet);
    return top;
}

QTableView *LedgerPlace::makeTable(QSortFilterProxyModel *sorted, const QString &name)
{
    auto *view = new QTableView(this);
    view->setModel(sorted);
    view->setAccessibleName(name);
    view->setSortingEnabled(true);
    view->setShowGrid(false);
    view->setTabKeyNavigation(false);
    view->setWordWrap(false);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->verticalHeader()->hide();
    view->verticalHeader()->setDefaultSectionSize(work().style().space(7.4));
    view->horizontalHeader()->setHighlightSections(false);
    connect(view, &QTableView::activated, this, &LedgerPlace::open);
    return view;
}

void LedgerPlace::focusFirst()
{
    m_tables->currentWidget()->setFocus();
}

QString LedgerPlace::help() const
{
    return tr("Every sum that went out or came in, on units and on the bench as a whole, and the stock book: each unit with what it was bought and sold for. Sums are jotted in the Log of their unit: paid "
              "carriage 8.40, got sale 120. The totals are in the bench's currency; a sum in another one counts where its worth was entered. Margin and the tax in it appear where Settings name a rate.");
}

void LedgerPlace::refresh()
{
    // A workbook of many years holds many lines: they are read beside the window.
    const int generation = ++m_generation;
    work().startWork(tr("Reading the ledger"), [this, generation](Desk &desk, const Progress &) -> Expected<QString> {
        auto input = readBooks(desk);
        if (!input)
            return input.trouble();
        QMetaObject::invokeMethod(
            this,
            [this, generation, read = *std::move(input)] {
                if (generation == m_generation)
                    show(read);
            },
            Qt::QueuedConnection);
        return QString();
    });
}

int LedgerPlace::year() const
{
    return m_year->currentData().toInt();
}

void LedgerPlace::show(const BooksInput &input)
{
    m_input = input;
    QSet<int> years{work().today().year()};
    for (const BookLine &line : yearBooks(0, input).lines)
        years << line.day.year();
    QList<int> sorted = years.values();
    std::sort(sorted.begin(), sorted.end(), std::greater<>());
    const int chosen = m_year->count() == 0 ? work().today().year() : year();
    {
        const QSignalBlocker quiet(m_year);
        m_year->clear();
        m_year->addItem(tr("All years"), 0);
        for (const int each : sorted)
            m_year->addItem(QString::number(each), each);
        m_year->setCurrentIndex(qMax(0, m_year->findData(chosen)));
    }
    showYear();
}

void LedgerPlace::showYear()
{
    m_books = yearBooks(year(), m_input);
    m_model->setLines(m_books.lines);
    m_stock->setLines(m_books.stock);
    for (const int column : {StockModel::Margin, StockModel::Tax})
        m_stockView->setColumnHidden(column, m_input.rates.isEmpty());
    m_view->resizeColumnsToContents();
    m_view->horizontalHeader()->setSectionResizeMode(LedgerModel::What, QHeaderView::Stretch);
    m_view->setColumnWidth(LedgerModel::Tag, qMin(m_view->columnWidth(LedgerModel::Tag), work().style().space(56)));
    m_stockView->resizeColumnsToContents();
    m_stockView->horizontalHeader()->setSectionResizeMode(StockModel::Tag, QHeaderView::Stretch);
    total();
}

void LedgerPlace::total()
{
    QString text;
    if (m_tables->currentIndex() == 0) {
        Money out(0, m_books.currency);
        Money in(0, m_books.currency);
        int without = 0;
        for (int row = 0; row < m_sorted->rowCount(); ++row) {
            const BookLine &line = m_model->line(m_sorted->mapToSource(m_sorted->index(row, 0)).row());
            if (!line.worth)
                ++without;
            else
                (line.flow == Flow::Out ? out : in) += *line.worth;
        }
        text = tr("out %1 · in %2 · left %3").arg(shown::money(out), shown::money(in), shown::money(in - out));
        if (without > 0)
            text += QStringLiteral(" · ") + tr("%n sum(s) without a rate left out", nullptr, without);
    } else {
        text = year() > 0 ? tr("in stock at the end of the year, at cost: %1").arg(shown::money(m_books.stockAtCost)) : tr("in stock, at cost: %1").arg(shown::money(m_books.stockAtCost));
        if (!m_input.rates.isEmpty())
            text += QStringLiteral(" · ") + tr("margin %1, tax in it %2").arg(shown::money(m_books.margin), shown::money(m_books.tax));
    }
    m_totals->setText(text);
}

void LedgerPlace::open(const QModelIndex &index)
{
    if (m_tables->currentIndex() == 0) {
        const BookLine &line = m_model->line(m_sorted->mapToSource(index).row());
        if (line.tag > 0)
            work().goTo(line.unitId, PageKey::Log, QStringLiteral("spend"), line.spend.value);
    } else {
        work().goTo(m_stock->line(m_stockSorted->mapToSource(index).row()).unit, PageKey::Money);
    }
}

void LedgerPlace::write(const QString &kind)
{
    const bool sheet = kind == QLatin1String("xlsx");
    const QString name = (year() > 0 ? tr("books %1").arg(year()) : tr("books")) + (sheet ? QStringLiteral(".xlsx") : QStringLiteral(".csv"));
    const QString file = ask::newFile(this, sheet ? tr("Write the year's books") : tr("Write the year's money"), QDir::home().filePath(name), sheet ? tr("Spreadsheet (*.xlsx)") : tr("Table (*.csv)"));
    if (file.isEmpty())
        return;
    work().startWork(tr("Writing %1").arg(QFileInfo(file).fileName()), [kind, file, wish = ExportWish{{}, year()}](Desk &desk, const Progress &) -> Expected<QString> {
        const auto report = exportFile(desk, kind, file, wish);
        return report ? Expected<QString>(report->sentence) : Expected<QString>(report.trouble());
    });
}

} // namespace ts
