#include "views/settings/meter_list.h"

#include "model/sums/meter_spec.h"
#include "model/sums/metering/calibration.h"
#include "model/values/number.h"
#include "model/values/plain_text.h"
#include "views/unit/record_edit.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/measured_text.h"
#include "views/widgets/typed.h"

#include <QAction>
#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace ts {

namespace {

enum MeterColumn { Name, Serial, Due, Remark };
enum RangeColumn { Unit_, FullScale, Resolution, OfReading, OfRange, Counts, PerKelvin, Sure };

QList<GridColumn> meterColumns()
{
    return {{.title = MeterList::tr("Meter"), .width = 14, .stretch = 3},
            {.title = MeterList::tr("Serial"), .width = 10, .stretch = 2},
            {.title = MeterList::tr("Calibration due"), .width = 15},
            {.title = MeterList::tr("What to mind"), .width = 14, .stretch = 5}};
}

QList<GridColumn> rangeColumns()
{
    const auto figure = [](const QString &title, const QString &tip) { return GridColumn{.title = title, .width = 9, .stretch = 1, .right = true, .tip = tip}; };
    return {{.title = MeterList::tr("Unit"), .width = 7, .stretch = 1},
            figure(MeterList::tr("Full scale"), MeterList::tr("the largest value of the range, in its unit")),
            figure(MeterList::tr("One count"), MeterList::tr("the step of the last digit")),
            figure(MeterList::tr("% of reading"), MeterList::tr("as the data sheet says it")),
            figure(MeterList::tr("% of range"), MeterList::tr("as the data sheet says it")),
            figure(MeterList::tr("Counts"), MeterList::tr("last digits that may be wrong")),
            figure(MeterList::tr("% per °C"), MeterList::tr("outside 18 to 28 °C")),
            figure(MeterList::tr("± at half"), MeterList::tr("95 %, at half of full scale, worked out from what stands before it"))};
}

QString bare(double value)
{
    return value == 0 ? QString() : shown::number(value);
}

QString scaled(double value, const QString &unit)
{
    return value == 0 ? QString() : shown::prefixed(value, unit);
}

GridRow addingRow(const QString &words)
{
    GridCell cell = typedCell(words, {});
    cell.quiet = true;
    return {.kind = GridRowKind::Adding, .name = QStringLiteral("add"), .cells = {cell}};
}

/// A figure of zero or more, typed with or without the range's unit; nothing typed is 0.
Expected<double> figureOf(const QString &typed, const QString &what, const QString &unit)
{
    if (typed.trimmed().isEmpty())
        return 0.0;
    const auto measure = Measure::parse(unit);
    const auto value = Quantity::parse(QString(typed).remove(QLocale().groupSeparator()).replace(QLocale().decimalPoint(), QLatin1String(".")).replace(QChar(0x00a0), QLatin1Char(' ')), unit.isEmpty() || !measure ? Measure() : *measure);
    if (!value)
        return Trouble{MeterList::tr("\"%1\" is no %2").arg(typed.left(30), what), {}, MeterList::tr("type a figure such as 0.5")};
    const auto same = measure && !value->measure().isNone() ? value->in(*measure) : Expected<Quantity>(*value);
    if (!same)
        return same.trouble();
    if (same->value() < 0)
        return Trouble{MeterList::tr("%1 cannot be below zero").arg(what), {}, {}};
    return same->value();
}

} // namespace

MeterList::MeterList(Workplace &workplace, QWidget *parent) : Card(tr("Meters"), parent), m_work(workplace)
{
    setRemark(tr("how sure a reading is comes from here"));
    m_meters = new GridView(workplace.style(), tr("Meters of the bench"), meterColumns(), this);
    m_meters->setWhole(true);
    m_meters->setCommit([this](const GridRow &row, int column, const QString &typed) { return commitMeter(row, column, typed); });
    m_meters->addRowAction(tr("Take this meter off the list"), QKeySequence::Delete, [this](const QUuid &key) { removeMeter(key); });
    m_of = styledLabel("group", {}, this);
    m_ranges = new GridView(workplace.style(), tr("Ranges of the meter at hand"), rangeColumns(), this);
    m_ranges->setWhole(true);
    m_ranges->setCommit([this](const GridRow &row, int column, const QString &typed) { return commitRange(row, column, typed); });
    m_ranges->addRowAction(tr("Take this range off"), QKeySequence::Delete, [this](const QUuid &key) { removeRange(key); });
    connect(m_meters, &GridView::currentRowChanged, this, &MeterList::showRanges);
    body()->addWidget(m_meters);
    body()->addWidget(m_of);
    body()->addWidget(m_ranges);
}

const Meter *MeterList::current() const
{
    return m_work.bench().find(Id<Meter>{m_meters->currentKey()});
}

void MeterList::refresh()
{
    QList<GridRow> rows;
    for (const Meter &meter : m_work.bench().all<Meter>()) {
        GridCell name = typedCell(meter.name);
        name.strong = true;
        GridCell due = typedCell(meter.calibrationDue.isValid() ? shown::day(meter.calibrationDue, m_work.today()) : QString(), meter.calibrationDue.isValid() ? meter.calibrationDue.toString(Qt::ISODate) : QString());
        if (calibrationOverdue(meter, m_work.today())) {
            due.pill = Tone::Outside;
            due.tip = tr("overdue: it says so beside every reading of this meter and on the sheet");
        }
        rows << GridRow{.key = meter.id.value, .cells = {name, typedCell(meter.serial), due, typedCell(meter.note)}};
    }
    m_meters->setRows(rows << addingRow(tr("Add a meter")));
    showRanges();
}

void MeterList::showRanges()
{
    const Meter *meter = current();
    m_of->setText(meter ? tr("Ranges of %1").arg(meter->name) : QString());
    m_of->setVisible(meter);
    m_ranges->setVisible(meter);
    if (!meter)
        return;
    QList<GridRow> rows;
    for (const MeterRange &range : m_work.bench().all<MeterRange>()) {
        if (range.meter != meter->id)
            continue;
        const auto unit = Measure::parse(range.measure);
        GridCell sure = shownCell({});
        if (unit && range.fullScale > 0)
            if (const auto uncertainty = uncertaintyOf(m_work.bench(), meter->id, Quantity(range.fullScale / 2, *unit)))
                sure.text = tr("± %1").arg(shown::prefixed(shown::rounded(*uncertainty, 2), range.measure));
        rows << GridRow{.key = range.id.value,
                        .cells = {typedCell(range.measure), typedCell(scaled(range.fullScale, range.measure)), typedCell(scaled(range.resolution, range.measure)), typedCell(bare(range.percentOfReading)), typedCell(bare(range.percentOfRange)),
                                  typedCell(bare(range.counts)), typedCell(bare(range.percentPerKelvin)), sure}};
    }
    m_ranges->setRows(rows << addingRow(tr("Add a range: V")));
}

void MeterList::commitEdits()
{
    m_meters->commitEdit();
    m_ranges->commitEdit();
}

std::optional<QUuid> MeterList::commitMeter(const GridRow &row, int column, const QString &typed)
{
    const auto text = plainText(typed, tr("The text"), column == Remark ? longText : shortText);
    if (!text) {
        m_work.refuse(text.trouble());
        return std::nullopt;
    }
    if (row.kind == GridRowKind::Adding) {
        if (text->isEmpty())
            return QUuid();
        Meter meter = m_work.maker().fresh<Meter>();
        meter.name = *text;
        return recordNew(m_work, meter, tr("Meter: %1").arg(*text));
    }
    const Meter *before = m_work.bench().find(Id<Meter>{row.key});
    if (!before)
        return std::nullopt;
    Meter after = *before;
    if (column == Due) {
        const auto day = typed::dayOrNone(typed, m_work.today());
        if (!day) {
            m_work.refuse(day.trouble());
            return std::nullopt;
        }
        after.calibrationDue = *day;
    } else if (column == Name && text->isEmpty()) {
        m_work.refuse(tr("A meter needs a name; Delete takes it off the list."));
        return std::nullopt;
    } else {
        (column == Name ? after.name : column == Serial ? after.serial : after.note) = *text;
    }
    return recordEdit(m_work, *before, after, tr("Meter: %1").arg(after.name));
}

std::optional<QUuid> MeterList::commitRange(const GridRow &row, int column, const QString &typed)
{
    const Meter *meter = current();
    if (!meter)
        return std::nullopt;
    const QString sentence = tr("Range of %1").arg(meter->name);
    const auto refused = [this](const Trouble &trouble) {
        m_work.refuse(trouble);
        return std::nullopt;
    };
    const bool adding = row.kind == GridRowKind::Adding;
    if (adding && typed.trimmed().isEmpty())
        return QUuid();
    const MeterRange *before = adding ? nullptr : m_work.bench().find(Id<MeterRange>{row.key});
    MeterRange after = before ? *before : m_work.maker().fresh<MeterRange>();
    if (column == Unit_ || adding) {
        const auto unit = Measure::parse(typed);
        if (!unit)
            return refused(unit.trouble());
        after.measure = unit->text();
        after.meter = meter->id;
        return before ? recordEdit(m_work, *before, after, sentence) : recordNew(m_work, after, sentence);
    }
    if (!before)
        return std::nullopt;
    const QString what = rangeColumns().at(column).title;
    const auto figure = figureOf(typed, what, column == FullScale || column == Resolution ? after.measure : QString());
    if (!figure)
        return refused(figure.trouble());
    double MeterRange::*const members[]{nullptr, &MeterRange::fullScale, &MeterRange::resolution, &MeterRange::percentOfReading, &MeterRange::percentOfRange, &MeterRange::counts, &MeterRange::percentPerKelvin};
    after.*members[column] = *figure;
    return recordEdit(m_work, *before, after, sentence);
}

void MeterList::removeMeter(const QUuid &key)
{
    const Meter *meter = m_work.bench().find(Id<Meter>{key});
    if (!meter)
        return;
    Change change(tr("Meter taken off: %1").arg(meter->name));
    for (const MeterRange &range : m_work.bench().all<MeterRange>())
        if (range.meter == meter->id)
            change.remove(range);
    m_work.record(change.remove(*meter));
}

void MeterList::removeRange(const QUuid &key)
{
    if (const MeterRange *range = m_work.bench().find(Id<MeterRange>{key}))
        m_work.record(Change(tr("Range of a meter taken off")).remove(*range));
}

} // namespace ts
