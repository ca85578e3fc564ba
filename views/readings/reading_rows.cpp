#include "views/readings/reading_rows.h"

#include "model/sums/meter_spec.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/measured_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace ts {

namespace {

QString tr(const char *text, int n = -1)
{
    return QCoreApplication::translate("ts", text, nullptr, n);
}

QString history(const QList<Reading> &readings)
{
    QStringList lines;
    for (const Reading &reading : readings)
        lines << tr("%1: %2, %3").arg(shown::dayAndTime(reading.at), reading.value ? shown::quantity(*reading.value) : tr("no value"), shown::phase(reading.phase));
    return lines.join(QLatin1Char('\n'));
}

// The newest reading, how many there are where there are more, and all of them for whoever asks. Its field begins empty: what is typed
// is a reading of its own.
GridCell valueCell(const QList<Reading> &readings)
{
    GridCell cell = typedCell({}, {});
    cell.figures = true;
    if (readings.isEmpty())
        return cell;
    const Reading &newest = readings.last();
    cell.text = newest.value ? shown::quantity(*newest.value) : QString();
    cell.hint = cell.text;
    cell.tip = history(readings);
    QStringList below;
    if (newest.phase == Phase::DuringWork) // so that nobody takes it for how the unit leaves
        below << shown::phase(newest.phase);
    if (readings.size() > 1)
        below << tr("%n readings", static_cast<int>(readings.size()));
    cell.second = below.join(QStringLiteral(" · "));
    return cell;
}

GridRow rowOf(const PointRow &point, const BenchFile &bench)
{
    GridRow row;
    row.key = point.key();
    GridCell name = typedCell(point.name);
    name.strong = true;
    name.second = point.conditions;
    name.tip = point.source.isEmpty() ? QString() : tr("Source: %1").arg(point.source);
    const GridCell wanted = typedCell(shown::limit(point.wanted), shown::toType(point.wanted));
    GridCell verdict;
    const Reading *latest = point.latest();
    if (latest) {
        verdict.text = shown::verdict(point.verdict());
        verdict.pill = toneOf(point.verdict());
    }
    GridCell meter = shownCell(latest ? meterText(*latest, bench) : QString());
    meter.quiet = true;
    row.cells = {name, wanted, valueCell(point.found), valueCell(point.after), verdict, meter};
    return row;
}

} // namespace

QList<GridColumn> readingColumns()
{
    return {{.title = tr("Test point"), .width = 22, .stretch = 4},
            {.title = tr("Wanted"), .width = 17, .stretch = 2},
            {.title = tr("As found"), .width = 11, .stretch = 1, .right = true, .down = true},
            {.title = tr("After work"),
             .width = 11,
             .stretch = 1,
             .right = true,
             .tip = tr("How it leaves: this is what the restoration sheet shows. Put “during” behind a value that was only read on the way."),
             .down = true},
            {.title = tr("Verdict"), .width = 15},
            {.title = tr("Meter, range, 95 % uncertainty"), .width = 20, .stretch = 4}};
}

bool passes(const PointRow &point, PointFilter filter)
{
    switch (filter) {
    case PointFilter::OutOfSpec:
        return point.verdict() == Verdict::Outside;
    case PointFilter::Unread:
        return point.unread();
    case PointFilter::UnreadAfter:
        return std::none_of(point.after.begin(), point.after.end(), [](const Reading &reading) { return reading.phase == Phase::AsItLeaves; });
    case PointFilter::All:
        break;
    }
    return true;
}

QList<GridRow> readingRows(const QList<PointRow> &points, PointFilter filter, const BenchFile &bench)
{
    QList<GridRow> rows;
    for (const PointRow &point : points)
        if (passes(point, filter))
            rows << rowOf(point, bench);
    GridCell adding = typedCell(tr("Add a test point"), {});
    adding.quiet = true;
    rows << GridRow{.kind = GridRowKind::Adding, .key = {}, .name = QStringLiteral("point"), .cells = {adding}};
    return rows;
}

QString meterText(const Reading &reading, const BenchFile &bench)
{
    QStringList words;
    const Meter *meter = bench.find(reading.meter);
    const QString name = meter ? meter->name : reading.meterName;
    if (!name.isEmpty())
        words << name;
    if (meter && reading.value && reading.value->sense() != Sense::OverRange)
        if (const auto range = rangeFor(bench, meter->id, *reading.value); range && range->fullScale > 0) {
            const auto unit = Measure::parse(range->measure);
            const Quantity scale(range->fullScale, unit ? *unit : Measure());
            const auto same = scale.in(reading.value->measure());
            words << shown::quantity(same && same->value() >= 1 ? *same : scale);
        }
    if (reading.uncertainty && reading.value)
        words << shown::spread(*reading.uncertainty, reading.value->measure());
    if (meter && meter->calibrationDue.isValid() && meter->calibrationDue < reading.at.toLocalTime().date())
        words << tr("was due for calibration on %1").arg(shown::day(meter->calibrationDue, reading.at.toLocalTime().date()));
    return words.join(QStringLiteral(", "));
}

} // namespace ts
