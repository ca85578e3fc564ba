#include "views/places/ledger_place.h"

#include "model/sums/spent.h"
#include "views/places/ledger_model.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QSet>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace ts {

namespace {

/// Lines of one year whose unit or text holds what is typed.
class YearFilter : public QSortFilterProxyModel {
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;
    void set(int year, const QString &words)
    {
        m_year = year;
        m_words = words;
        invalidateFilter();
    }

protected:
    bool filterAcceptsRow(int row, const QModelIndex &parent) const override
    {
        if (m_year > 0 && sourceModel()->index(row, 0, parent).data(LedgerModel::YearRole).toInt() != m_year)
            return false;
        if (m_words.isEmpty())
            return true;
        for (const int column : {LedgerModel::Tag, LedgerModel::What, LedgerModel::Kind})
            if (sourceModel()->index(row, column, parent).data().toString().contains(m_words, Qt::CaseInsensitive))
                return true;
        return false;
    }

private:
    int m_year = 0;
    QString m_words;
};

Expected<QList<LedgerLine>> linesOf(Desk &desk, const Currency &currency)
{
    const auto spends = desk.list<Spend>();
    if (!spends)
        return spends.trouble();
    const auto units = desk.list<Unit>();
    if (!units)
        return units.trouble();
    QHash<Id<Unit>, const Unit *> known;
    for (const Unit &unit : *units)
        known.insert(unit.id, &unit);
    QList<LedgerLine> lines;
    lines.reserve(spends->size());
    for (const Spend &spend : *spends) {
        LedgerLine line{.day = spend.paidOn.isValid() ? spend.paidOn : spend.at.toLocalTime().date(), .unit = spend.unit, .unitName = {}, .text = spend.text, .kind = spend.kind,
                        .flow = spend.flow, .amount = spend.amount.value_or(Money(0, currency)), .worth = inCurrency(spend, currency), .record = spend.id.value};
        if (const Unit *unit = known.value(spend.unit)) {
            line.tag = unit->tag;
            line.unitName = unit->name;
        }
        lines << line;
    }
    return lines;
}

} // namespace

LedgerPlace::LedgerPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_year = new QComboBox(this);
    m_year->setAccessibleName(tr("Year"));
    m_filter = new QLineEdit(this);
    m_filter->setPlaceholderText(tr("Narrow: a tag, a word…"));
    m_filter->setAccessibleName(tr("Narrow the ledger"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setMaximumWidth(280);
    m_totals = styledLabel("strong", {}, this);
    m_model = new LedgerModel(work().style(), this);
    m_sorted = new YearFilter(this);
    m_sorted->setSourceModel(m_model);
    m_sorted->setSortRole(LedgerModel::SortRole);
    m_view = new QTableView(this);
    m_view->setModel(m_sorted);
    m_view->setAccessibleName(tr("Money out and in"));
    m_view->setSortingEnabled(true);
    m_view->sortByColumn(LedgerModel::Day, Qt::DescendingOrder);
    m_view->setShowGrid(false);
    m_view->setTabKeyNavigation(false);
    m_view->setWordWrap(false);
    m_view->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_view->verticalHeader()->hide();
    m_view->verticalHeader()->setDefaultSectionSize(work().style().space(7.4));
    m_view->horizontalHeader()->setHighlightSections(false);
    auto *top = new QHBoxLayout;
    top->addWidget(styledLabel("heading", tr("Ledger"), this));
    top->addSpacing(gap::wide);
    top->addWidget(m_year);
    top->addWidget(m_filter, 1);
    top->addStretch(1);
    top->addWidget(m_totals);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_view, 1);
    auto *advice = styledLabel("faint", tr("Enter on a line opens its unit. No tax advice; rates and rules are yours to set."), this);
    column->addWidget(advice);
    const auto narrow = [this] {
        static_cast<YearFilter *>(m_sorted)->set(m_year->currentData().toInt(), m_filter->text().trimmed());
        total();
    };
    connect(m_year, &QComboBox::currentIndexChanged, this, narrow);
    connect(m_filter, &QLineEdit::textChanged, this, narrow);
    connect(m_view, &QTableView::activated, this, &LedgerPlace::open);
}

void LedgerPlace::focusFirst()
{
    m_view->setFocus();
}

QString LedgerPlace::help() const
{
    return tr("Every sum that went out or came in, on units and on the bench as a whole. Sums are jotted in the Log of their unit: paid carriage 8.40, got sale 120. "
              "The totals are in the bench's currency; a sum in another one counts where its worth was entered.");
}

void LedgerPlace::refresh()
{
    // A workbook of many years holds many lines: they are read beside the window.
    const int generation = ++m_generation;
    work().startWork(tr("Reading the ledger"), [this, generation, currency = work().currency()](Desk &desk, const Progress &) -> Expected<QString> {
        auto lines = linesOf(desk, currency);
        if (!lines)
            return lines.trouble();
        QMetaObject::invokeMethod(
            this,
            [this, generation, read = *std::move(lines)] {
                if (generation == m_generation)
                    show(read);
            },
            Qt::QueuedConnection);
        return QString();
    });
}

void LedgerPlace::show(const QList<LedgerLine> &lines)
{
    QSet<int> years;
    for (const LedgerLine &line : lines)
        years << line.day.year();
    QList<int> sorted = years.values();
    std::sort(sorted.begin(), sorted.end(), std::greater<>());
    const bool first = m_year->count() == 0;
    const int chosen = first ? work().today().year() : m_year->currentData().toInt();
    const QSignalBlocker quiet(m_year);
    m_year->clear();
    m_year->addItem(tr("All years"), 0);
    for (const int year : sorted)
        m_year->addItem(QString::number(year), year);
    m_year->setCurrentIndex(qMax(0, m_year->findData(chosen)));
    m_model->setLines(lines);
    static_cast<YearFilter *>(m_sorted)->set(m_year->currentData().toInt(), m_filter->text().trimmed());
    m_view->resizeColumnsToContents();
    m_view->horizontalHeader()->setSectionResizeMode(LedgerModel::What, QHeaderView::Stretch);
    m_view->setColumnWidth(LedgerModel::Tag, qMin(m_view->columnWidth(LedgerModel::Tag), work().style().space(56)));
    total();
}

void LedgerPlace::total()
{
    Money out(0, work().currency());
    Money in(0, work().currency());
    int without = 0;
    for (int row = 0; row < m_sorted->rowCount(); ++row) {
        const LedgerLine &line = m_model->line(m_sorted->mapToSource(m_sorted->index(row, 0)).row());
        if (!line.worth)
            ++without;
        else
            (line.flow == Flow::Out ? out : in) += *line.worth;
    }
    QString text = tr("out %1 · in %2 · left %3").arg(shown::money(out), shown::money(in), shown::money(in - out));
    if (without > 0)
        text += QStringLiteral(" · ") + tr("%n sum(s) without a rate left out", nullptr, without);
    m_totals->setText(text);
}

void LedgerPlace::open(const QModelIndex &index)
{
    const LedgerLine &line = m_model->line(m_sorted->mapToSource(index).row());
    if (line.tag > 0)
        work().goTo(line.unit, PageKey::Log, QStringLiteral("spend"), line.record);
}

} // namespace ts
