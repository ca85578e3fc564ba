#include "views/readings/readings_page.h"

#include "views/readings/limit_card.h"
#include "views/readings/point_run.h"
#include "views/readings/reading_rows.h"
#include "views/readings/soak_card.h"
#include "views/style/style.h"
#include "views/unit/bring_notes.h"
#include "views/widgets/buttons.h"
#include "views/widgets/flow_layout.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/question_line.h"

#include <QAction>
#include <QBoxLayout>
#include <QButtonGroup>
#include <QComboBox>
#include <QPushButton>
#include <QStackedWidget>

namespace ts {

ReadingsPage::ReadingsPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent)
{
    m_table = new GridView(workplace.style(), tr("Test points"), readingColumns(), this);
    m_table->setCommit([this](const GridRow &row, int column, const QString &typed) { return commit(row, column, typed); });
    m_question = new QuestionLine(this);
    m_run = new PointRun(workplace, [this](const PointRow &point, const QString &typed) {
        return takeReading(point, m_run->phase() == Phase::AsFound ? ReadingColumn::Found : ReadingColumn::After, typed).has_value();
    }, this);
    m_limit = new LimitCard(workplace.style(), this);
    m_soak = new SoakCard(workplace.style(), this);
    makeActions();

    m_meter = new QComboBox(this);
    m_meter->setAccessibleName(tr("Meter of what is typed next"));
    m_meter->setToolTip(tr("What is typed into the table is taken with this meter, unless the value is followed by “with” and another"));
    m_meter->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_meter->setMinimumContentsLength(20);
    auto *addButton = button(tr("Add a test point"), this);
    connect(addButton, &QPushButton::clicked, m_table, [this] { m_table->editAdding(); });

    auto *top = new FlowLayout(gap::small);
    makeFilters(top);
    auto *runButton = button(tr("Run through the points  ·  F7"), this);
    runButton->setAccessibleName(tr("Run through the test points"));
    runButton->setToolTip(tr("One point after the other, large, for hands that hold probes"));
    runButton->setShortcut(QKeySequence(Qt::Key_F7));
    connect(runButton, &QPushButton::clicked, this, &ReadingsPage::startRun);
    top->addWidget(m_meter);
    top->addWidget(runButton);
    top->addWidget(addButton);
    top->addWidget(notesButton(tr("Points from model notes"), workplace, {.testPoints = true, .teardown = false, .proofs = false, .parts = false}, this));
    auto *cards = new QHBoxLayout;
    cards->setSpacing(gap::normal);
    cards->addWidget(m_soak, 11);
    cards->addWidget(m_limit, 8);
    auto *listed = new QWidget(this);
    auto *list = new QVBoxLayout(listed);
    list->setContentsMargins(0, 0, 0, 0);
    list->setSpacing(gap::normal);
    list->addLayout(top);
    list->addWidget(m_table);
    list->addLayout(cards, 1);
    m_stack = new QStackedWidget(this);
    m_stack->addWidget(listed);
    m_stack->addWidget(m_run);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addWidget(m_question);
    column->addWidget(m_stack, 1);
    connect(m_run, &PointRun::finished, this, [this] {
        m_stack->setCurrentIndex(0);
        refresh();
        m_table->setFocus();
    });
    connect(m_table, &GridView::currentRowChanged, this, &ReadingsPage::showCurrent);
    connect(m_table, &GridView::fieldClosed, this, [this] { m_settingRight = {}; });
}

void ReadingsPage::makeFilters(QLayout *row)
{
    m_filters = new QButtonGroup(this);
    for (int i = 0; i <= static_cast<int>(PointFilter::UnreadAfter); ++i) {
        auto *each = button({}, this);
        each->setCheckable(true);
        m_filters->addButton(each, i);
        row->addWidget(each);
    }
    m_filters->button(0)->setChecked(true);
    connect(m_filters, &QButtonGroup::idClicked, this, [this](int id) { setFilter(static_cast<PointFilter>(id)); });
}

void ReadingsPage::makeActions()
{
    // One key for the one thing at hand: a reading where the place is on one, else the test point.
    m_table->addRowAction(tr("Take out the reading or the test point"), QKeySequence::Delete, [this](const QUuid &key) { readingAtHand() ? removeReading() : removePoint(key); });
    m_table->addRowAction(tr("Set the last reading right"), QKeySequence(Qt::CTRL | Qt::Key_E), [this](const QUuid &) { startSettingRight(); });
    m_table->addRowAction(tr("Take out the test point with its readings"), QKeySequence(Qt::CTRL | Qt::Key_Delete), [this](const QUuid &key) { removePoint(key); });
    m_table->addRowAction(tr("Move up"), QKeySequence(Qt::CTRL | Qt::Key_Up), [this](const QUuid &key) { movePoint(key, -1); });
    m_table->addRowAction(tr("Move down"), QKeySequence(Qt::CTRL | Qt::Key_Down), [this](const QUuid &key) { movePoint(key, 1); });
}

void ReadingsPage::focusFirst()
{
    if (m_run->isRunning())
        m_run->field()->setFocus();
    else
        m_table->setFocus();
}

void ReadingsPage::startRun()
{
    m_table->commitEdit();
    if (m_points.isEmpty())
        return work().refuse(tr("There is no test point yet: add one, or bring them from the model notes."));
    const bool unread = std::any_of(m_points.begin(), m_points.end(), [](const PointRow &row) { return row.found.isEmpty(); });
    const bool begun = file().unit.stage >= Stage::Proving || std::any_of(m_points.begin(), m_points.end(), [](const PointRow &row) { return !row.after.isEmpty(); });
    m_stack->setCurrentWidget(m_run);
    m_run->begin(m_points, unread && !begun ? Phase::AsFound : Phase::AsItLeaves, m_table->currentIndex().column() >= static_cast<int>(ReadingColumn::Found) ? m_table->currentKey() : QUuid());
}

void ReadingsPage::reveal(const QString &kind, const QUuid &record)
{
    if (kind == QLatin1String(Soak::table))
        return m_soak->choose(record);
    for (const PointRow &row : m_points) {
        const auto holds = [&record](const QList<Reading> &readings) {
            return std::any_of(readings.begin(), readings.end(), [&record](const Reading &reading) { return reading.id.value == record; });
        };
        if (row.point.value != record && !holds(row.found) && !holds(row.after))
            continue;
        if (!passes(row, m_filter))
            setFilter(PointFilter::All);
        return m_table->setCurrent(row.key());
    }
}

QString ReadingsPage::help() const
{
    return tr("What is measured on this unit. Stand on “As found” or “After work” and type a value: Enter records it and goes on in the row below. What is typed under “After "
              "work” is how the unit leaves, as the sheet shows it; “during” behind the value makes it one of the work. A bare number has the unit of what is wanted; OL, <, > and "
              "about are kept; ± and an uncertainty, “with” and a meter may follow. A value typed where there is one is a reading of its own, and the earlier ones are kept. Ctrl+E sets the last one right, Delete takes it out. Below, the row at hand is held against what is "
              "wanted, with the chance that it is really within.");
}

void ReadingsPage::commitEdits()
{
    m_table->commitEdit();
    m_question->done();
}

void ReadingsPage::setFilter(PointFilter filter)
{
    m_table->commitEdit();
    m_filter = filter;
    m_filters->button(static_cast<int>(filter))->setChecked(true);
    m_table->setRows(readingRows(m_points, m_filter, bench()));
    showCurrent();
}

void ReadingsPage::refresh()
{
    if (m_of != file().unit.id) {
        m_of = file().unit.id;
        m_question->done();
        m_run->finish();
        m_filter = PointFilter::All;
        m_filters->button(0)->setChecked(true);
    }
    m_points = pointRows(file());
    refreshFilters();
    refreshMeters();
    m_table->setRows(readingRows(m_points, m_filter, bench()));
    m_soak->show(file(), work().now());
    if (m_run->isRunning())
        m_run->refresh(m_points);
    else
        showCurrent();
}

void ReadingsPage::refreshFilters()
{
    const QString words[] = {tr("All points"), tr("Out of spec (%1)"), tr("Not yet read (%1)"), tr("Not read after work (%1)")};
    for (int i = 0; i <= static_cast<int>(PointFilter::UnreadAfter); ++i) {
        const auto count = std::count_if(m_points.begin(), m_points.end(), [i](const PointRow &row) { return passes(row, static_cast<PointFilter>(i)); });
        const QString text = i == 0 ? words[i] : words[i].arg(QLocale().toString(static_cast<qlonglong>(count)));
        m_filters->button(i)->setText(text);
        m_filters->button(i)->setAccessibleName(text);
    }
    // Before anything was done there is nothing to read again.
    m_filters->button(static_cast<int>(PointFilter::UnreadAfter))
        ->setVisible(m_filter == PointFilter::UnreadAfter || std::any_of(m_points.begin(), m_points.end(), [](const PointRow &row) { return !row.after.isEmpty(); }));
}

void ReadingsPage::refreshMeters()
{
    const QString before = m_meter->currentData().toString();
    m_meter->clear();
    m_meter->addItem(tr("Taken with no meter named"), QString());
    for (const Meter &meter : bench().all<Meter>())
        m_meter->addItem(tr("Taken with %1").arg(meter.name), meter.name);
    m_meter->setCurrentIndex(std::max(0, m_meter->findData(before)));
}

const PointRow *ReadingsPage::pointOf(const QUuid &key) const
{
    const auto found = std::find_if(m_points.begin(), m_points.end(), [&key](const PointRow &row) { return !key.isNull() && row.key() == key; });
    return found == m_points.end() ? nullptr : &*found;
}

void ReadingsPage::showCurrent()
{
    m_limit->show(pointOf(m_table->currentKey()), bench());
}

} // namespace ts
