// What is typed into the table of readings, and what is done with its rows.
#include "model/jot/corrected.h"
#include "model/jot/reading_at.h"
#include "model/values/plain_text.h"
#include "views/readings/reading_rows.h"
#include "views/readings/readings_page.h"
#include "views/unit/record_edit.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/measured_text.h"
#include "views/widgets/question_line.h"

#include <QComboBox>
#include <QLineEdit>

namespace ts {

std::optional<QUuid> ReadingsPage::commit(const GridRow &row, int column, const QString &typed)
{
    if (row.kind == GridRowKind::Adding)
        return addPoint(typed);
    const PointRow *found = pointOf(row.key);
    if (!found)
        return std::nullopt;
    const PointRow point = *found; // what is recorded makes the list anew
    const auto at = static_cast<ReadingColumn>(column);
    if (at == ReadingColumn::Point || at == ReadingColumn::Wanted)
        return editPoint(point, at, typed);
    return m_settingRight.isNull() ? takeReading(point, at, typed) : setRight(point, typed);
}

std::optional<QUuid> ReadingsPage::addPoint(const QString &name)
{
    if (name.isEmpty())
        return QUuid();
    TestPoint point = freshOfUnit<TestPoint>(work());
    point.name = name;
    for (const TestPoint &each : file().all<TestPoint>())
        point.position = std::max(point.position, each.position);
    ++point.position;
    return recordNew(work(), point, tr("Test point %1").arg(name));
}

// What is wanted holds for the point and for the readings that were held against what it wanted before, or against nothing.
std::optional<QUuid> ReadingsPage::editPoint(const PointRow &row, ReadingColumn column, const QString &typed)
{
    const auto refused = [this](const Trouble &trouble) {
        work().refuse(trouble);
        return std::nullopt;
    };
    const bool naming = column == ReadingColumn::Point;
    const auto name = naming ? plainText(typed, tr("The name"), shortText) : Expected<QString>(row.name);
    if (!name)
        return refused(name.trouble());
    if (name->isEmpty())
        return refused({tr("A test point needs a name"), {}, tr("Delete takes it out")});
    const Measure unit = row.latest() && row.latest()->value ? row.latest()->value->measure() : row.wanted.measure();
    const auto wanted = naming ? Expected<Limit>(row.wanted) : typed.isEmpty() ? Expected<Limit>(Limit()) : Limit::parse(typed, unit);
    if (!wanted)
        return refused(wanted.trouble());
    if (row.latest() && row.latest()->value && !wanted->isNone() && !unit.isNone() && !wanted->measure().comparableWith(unit))
        return refused({tr("%1 was not changed").arg(row.name), tr("it was read in %1, and %2 cannot be held against that").arg(unit.text(), shown::limit(*wanted)), {}});

    Change change(naming            ? tr("Test point %1 is now %2").arg(row.name, *name)
                  : typed.isEmpty() ? tr("Test point %1: nothing is wanted").arg(row.name)
                                    : tr("Test point %1: wanted %2").arg(row.name, shown::limit(*wanted)));
    Id<TestPoint> id = row.point;
    if (const TestPoint *before = file().find(row.point)) {
        TestPoint after = *before;
        after.name = *name;
        after.wanted = *wanted;
        change.edit(*before, after);
    } else {
        TestPoint fresh = freshOfUnit<TestPoint>(work());
        fresh.name = *name;
        fresh.conditions = row.conditions;
        fresh.wanted = *wanted;
        for (const TestPoint &each : file().all<TestPoint>())
            fresh.position = std::max(fresh.position, each.position);
        ++fresh.position;
        id = fresh.id;
        change.add(fresh);
    }
    for (const QList<Reading> &readings : {row.found, row.after})
        for (const Reading &before : readings) {
            Reading after = before;
            after.point = id;
            after.name = *name;
            if (before.wanted.isNone() || before.wanted == row.wanted)
                after.wanted = *wanted;
            if (const auto judged = judge(after); !judged)
                return refused(judged.trouble());
            change.edit(before, after);
        }
    return work().record(change) ? std::optional(id.value) : std::nullopt;
}

std::optional<QUuid> ReadingsPage::takeReading(const PointRow &row, ReadingColumn column, const QString &typed)
{
    if (typed.isEmpty())
        return row.key();
    // The newest one after work is how it leaves, as the sheet says it; the word "during" behind the value makes it one of the work.
    const Phase phase = column == ReadingColumn::Found ? Phase::AsFound : Phase::AsItLeaves;
    Maker maker = work().maker();
    const auto jotted = jotReadingAt({row.point, row.name, row.conditions, phase, m_meter->currentData().toString()}, typed, file(), bench(), maker);
    if (!jotted) {
        work().refuse(jotted.trouble());
        return std::nullopt;
    }
    const QString asking = row.key().toString() + typed;
    if (!jotted->question.isEmpty() && (m_asked != asking || m_table->rows().leaving())) {
        m_asked = asking;
        m_question->ask(jotted->question, tr("Record it"), [this, change = jotted->change] { work().record(change); });
        return std::nullopt;
    }
    m_asked.clear();
    m_question->done();
    if (!work().record(jotted->change))
        return std::nullopt;
    // A line that says what is wanted gives a place its test point, and the row is known by that then.
    for (const PointRow &now : m_points)
        if (now.key() == row.key() || (now.name == row.name && now.conditions == row.conditions))
            return now.key();
    return row.key();
}

const Reading *ReadingsPage::readingAtHand() const
{
    const PointRow *row = pointOf(m_table->currentKey());
    const auto column = static_cast<ReadingColumn>(m_table->currentIndex().column());
    if (!row || (column != ReadingColumn::Found && column != ReadingColumn::After))
        return nullptr;
    const QList<Reading> &readings = column == ReadingColumn::Found ? row->found : row->after;
    return readings.isEmpty() ? nullptr : &readings.last();
}

// The field of the value at hand, beginning with what it reads: what is entered there is no new reading.
void ReadingsPage::startSettingRight()
{
    const Reading *reading = readingAtHand();
    if (!reading)
        return work().refuse(tr("No reading stands there to be set right: go to one under “As found” or “After work”."));
    const QString begin = reading->value ? shown::toType(*reading->value) : QString();
    m_settingRight = reading->id;
    m_table->edit(m_table->currentIndex());
    if (auto *field = m_table->field()) {
        field->setText(begin);
        field->selectAll();
    }
}

std::optional<QUuid> ReadingsPage::setRight(const PointRow &row, const QString &typed)
{
    const Reading *before = file().find(m_settingRight);
    if (!before)
        return std::nullopt;
    const Measure unit = before->value ? before->value->measure() : row.wanted.measure();
    auto value = Quantity::parse(typed, unit);
    if (!value) {
        work().refuse(value.trouble());
        return std::nullopt;
    }
    if (value->measure().isNone() && value->sense() != Sense::OverRange)
        value = Quantity(value->value(), unit, value->sense());
    Reading after = *before;
    after.value = *value;
    Maker maker = work().maker();
    return work().record(corrected(*before, after, file(), bench(), maker)) ? std::optional(row.key()) : std::nullopt;
}

void ReadingsPage::removeReading()
{
    if (const Reading *reading = readingAtHand())
        work().record(Change(tr("Reading taken out: %1 %2").arg(reading->name, reading->value ? shown::quantity(*reading->value) : QString())).remove(*reading));
}

void ReadingsPage::removePoint(const QUuid &key)
{
    const PointRow *row = pointOf(key);
    if (!row)
        return;
    const auto readings = row->found.size() + row->after.size();
    Change change(readings == 0 ? tr("Test point taken out: %1").arg(row->name) : tr("Test point taken out with its readings: %1").arg(row->name));
    for (const QList<Reading> &list : {row->found, row->after})
        for (const Reading &reading : list)
            change.remove(reading);
    if (const TestPoint *point = file().find(row->point))
        change.remove(*point);
    work().record(change);
}

void ReadingsPage::movePoint(const QUuid &key, int by)
{
    QList<Id<TestPoint>> order;
    for (const PointRow &row : m_points)
        if (!row.point.isNull())
            order << row.point;
    const qsizetype from = order.indexOf(Id<TestPoint>{key});
    if (from < 0 || from + by < 0 || from + by >= order.size())
        return;
    order.move(from, from + by);
    Change change(tr("Test point moved: %1").arg(file().find(Id<TestPoint>{key})->name));
    for (qsizetype i = 0; i < order.size(); ++i) {
        const TestPoint *before = file().find(order.at(i));
        TestPoint after = *before;
        after.position = static_cast<int>(i) + 1;
        change.edit(*before, after);
    }
    work().record(change);
}

} // namespace ts
