#include "model/jot/families.h"
#include "model/jot/phrase.h"
#include "model/jot/reading_at.h"
#include "model/jot/reading_line.h"
#include "model/jot/reading_taken.h"
#include "model/jot/reading_words.h"
#include "model/jot/test_point_of.h"
#include "model/sums/meter_spec.h"
#include "model/sums/metering/budget.h"
#include "model/sums/metering/calibration.h"
#include "model/sums/metering/repeats.h"
#include "model/sums/verdict.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

/// As found until something was done to the unit, then during work, from proving on as it leaves.
Phase usualPhase(const UnitFile &file)
{
    if (file.unit.stage >= Stage::Proving)
        return Phase::AsItLeaves;
    const QList<Need> &needs = file.all<Need>();
    const bool begun = !file.all<Step>().isEmpty() ||
                       std::any_of(needs.begin(), needs.end(), [](const Need &need) { return need.state == NeedState::Fitted; });
    return begun ? Phase::DuringWork : Phase::AsFound;
}

struct Place {
    QString name;
    QString conditions;
    const TestPoint *point = nullptr;
};

/// What the left side names: a test point by its whole name, else with the conditions behind an @ taken off.
Place placeOf(const UnitFile &file, const ReadingLine &line)
{
    Place place{line.name, line.conditions, testPointOf(file, line.name, line.conditions)};
    if (place.point)
        return place;
    const NamedUnder parts = splitName(line.name);
    if (parts.conditions.isEmpty())
        return place;
    place.name = parts.name;
    place.conditions = line.conditions.isEmpty() ? parts.conditions : parts.conditions + QStringLiteral(", ") + line.conditions;
    place.point = testPointOf(file, place.name, place.conditions);
    return place;
}

/// Half width in the unit of the value.
Expected<double> spreadOf(const QString &text, const Quantity &value)
{
    const auto spread = Quantity::parse(text, value.measure());
    if (!spread || spread->sense() != Sense::Plain || !(spread->value() >= 0))
        return Trouble{QStringLiteral("%1 is no uncertainty").arg(inQuotes(text)), {}, {}};
    if (spread->measure().isNone())
        return spread->value();
    if (spread->measure().symbol() == QLatin1String("%") && value.measure().symbol() != QLatin1String("%"))
        return std::abs(value.value()) * spread->value() / 100;
    const auto same = spread->in(value.measure());
    if (!same)
        return Trouble{
            QStringLiteral("%1 is no uncertainty of a value in %2").arg(inQuotes(text), value.measure().text()), {}, {}};
    return same->value();
}

struct Understood {
    Quantity value;
    Limit wanted;
    QList<Quantity> repeats; ///< the readings whose mean the value is; empty where there is one
};

/// One value, or the mean of several parted by semicolons.
Expected<Quantity> valueIn(const QString &text, const Measure &unit)
{
    if (!text.contains(QLatin1Char(';')))
        return Quantity::parse(text, unit);
    const auto repeats = repeatedReadings(text, unit);
    const auto mean = repeats ? budgetOf({*repeats, {}, {}, {}}) : Expected<Budget>(repeats.trouble());
    if (!mean)
        return mean.trouble();
    return mean->value;
}

/// Value and limit, each read with the other's unit where it has none itself. The trouble's `did` says what is no value or limit.
Expected<Understood> understand(const ReadingLine &line, const Measure &usual, const Limit &pointWants)
{
    auto value = valueIn(line.value, usual);
    Limit wanted = pointWants;
    if (!line.want.isEmpty()) {
        const auto limit = Limit::parse(line.want, value ? value->measure() : usual);
        if (!limit)
            return Trouble{QStringLiteral("%1 is no limit").arg(inQuotes(line.want)), {}, {}};
        wanted = *limit;
    }
    const Measure unit = wanted.measure().isNone() ? usual : wanted.measure();
    if (!unit.isNone())
        if (auto again = valueIn(line.value, unit))
            value = again;
    if (const auto bare = Quantity::parse(line.value); bare && bare->sense() == Sense::OverRange)
        value = bare; // over range has no unit but the one that was typed
    if (!value)
        return Trouble{QStringLiteral("%1 is no value").arg(inQuotes(line.value)), {}, {}};
    if (value->measure().isNone() && !unit.isNone() && value->sense() != Sense::OverRange)
        value = Quantity(value->value(), unit, value->sense());
    const auto repeats = line.value.contains(QLatin1Char(';')) ? repeatedReadings(line.value, value->measure())
                                                               : Expected<QList<Quantity>>(QList<Quantity>());
    return Understood{*value, wanted, repeats ? *repeats : QList<Quantity>()};
}

/// Sets the reading's meter, and its uncertainty; answers the words for the preview.
QString useMeter(Reading &reading, const QList<Quantity> &repeats, const QString &name, const BenchFile &bench)
{
    const auto take = [&reading](const Expected<Budget> &budget) {
        if (!budget || reading.uncertainty || budget->sum.standard <= 0)
            return;
        reading.uncertainty = budget->sum.expanded;
    };
    const Meter *meter = name.isEmpty() ? nullptr : meterNamed(bench, name);
    if (meter) {
        reading.meter = meter->id;
        reading.meterName = meter->name;
    } else {
        reading.meterName = name;
        if (!repeats.isEmpty())
            take(budgetOf({repeats, {}, {}, {}}));
        return name.isEmpty() ? QString() : QStringLiteral("meter: %1, not among the bench's").arg(shown(name));
    }
    QString words = QStringLiteral("meter: ") + shown(meter->name);
    const bool worked = !reading.uncertainty && reading.value->sense() != Sense::OverRange;
    if (worked) {
        const auto range = rangeFor(bench, meter->id, *reading.value);
        take(budgetWith(bench, meter->id, repeats.isEmpty() ? QList<Quantity>{*reading.value} : repeats));
        if (!range || !reading.uncertainty)
            words += QStringLiteral(", no range for it");
        else if (const QString scale = rangeText(*range); !scale.isEmpty())
            words += QStringLiteral(", ") + scale;
    }
    if (const QString overdue = overdueWords(*meter, reading.at.toLocalTime().date()); !overdue.isEmpty())
        words += QStringLiteral(", its ") + overdue;
    return words;
}

} // namespace

Expected<TakenReading> takeReading(const Jotting &jotting, const ReadingLine &line, const Measure &usual, const Limit &wants)
{
    const auto understood = understand(line, usual, wants);
    if (!understood)
        return understood.trouble();
    TakenReading taken{jotting.fresh<Reading>(), static_cast<int>(understood->repeats.size()), {}};
    taken.reading.value = understood->value;
    taken.reading.wanted = understood->wanted;
    if (!line.spread.isEmpty()) {
        const auto spread = spreadOf(line.spread, *taken.reading.value);
        if (!spread)
            return spread.trouble();
        taken.reading.uncertainty = *spread;
    }
    taken.meterWords = useMeter(taken.reading, understood->repeats, line.meter, jotting.bench);
    return taken;
}

namespace {

/// The reading of a line at its place, as what it records. The trouble's `did` says what is no value, limit or uncertainty.
Expected<Jotted> recorded(const Jotting &jotting, const ReadingLine &line, const Place &place)
{
    const Reading *last = lastReadingOf(jotting.file, place.name);
    const Limit pointWants = place.point ? place.point->wanted : Limit();
    Measure usual = pointWants.measure();
    if (usual.isNone() && last && last->value)
        usual = last->value->measure();
    auto taken = takeReading(jotting, line, usual, pointWants);
    if (!taken)
        return taken.trouble();
    Reading &reading = taken->reading;
    reading.name = place.point ? place.point->name : place.name;
    reading.phase = line.phase ? *line.phase : usualPhase(jotting.file);
    reading.conditions = place.conditions;
    QStringList more{phaseText(reading.phase)};
    if (taken->repeats > 0)
        more << QStringLiteral("mean of %1 readings").arg(taken->repeats);
    if (!taken->meterWords.isEmpty())
        more << taken->meterWords;

    Jotted jotted{QStringLiteral("reading"), QStringLiteral("reading"), {}, doubtAbout(reading), Change()};
    if (place.point) {
        reading.point = place.point->id;
        if (place.point->wanted.isNone() && !reading.wanted.isNone()) {
            TestPoint wanting = *place.point;
            wanting.wanted = reading.wanted;
            jotted.change.edit(*place.point, wanting);
        }
    } else if (!reading.wanted.isNone()) {
        TestPoint point = jotting.fresh<TestPoint>();
        point.name = reading.name;
        point.wanted = reading.wanted;
        point.conditions = reading.conditions;
        for (const TestPoint &each : jotting.file.all<TestPoint>())
            point.position = std::max(point.position, each.position);
        ++point.position;
        reading.point = point.id;
        jotted.change.add(point);
    }
    jotted.change.add(reading);
    jotted.change.setSentence(QStringLiteral("Reading %1: %2").arg(shown(reading.name), reading.value->text()));
    jotted.preview = readingSentence(reading) + QStringLiteral(" · ") + more.join(QStringLiteral(" · "));
    if (const Verdict verdict = verdictOf(reading); verdict != Verdict::NoLimit)
        jotted.badge += QStringLiteral(", ") + verdictText(verdict);
    return jotted;
}

} // namespace

bool namesKnownPoint(const Jotting &jotting)
{
    const auto line = splitReading(jotting.line);
    if (!line)
        return false;
    const Place place = placeOf(jotting.file, *line);
    return place.point || lastReadingOf(jotting.file, place.name);
}

std::optional<Jotted> jotReading(const Jotting &jotting)
{
    const auto line = splitReading(jotting.line);
    if (!line)
        return std::nullopt;
    const Place place = placeOf(jotting.file, *line);
    auto jotted = recorded(jotting, *line, place);
    if (jotted)
        return *std::move(jotted);
    const bool meant = line->wants || !line->spread.isEmpty() || place.point || lastReadingOf(jotting.file, place.name);
    return asNote(jotting, meant ? (line->value.isEmpty() ? QStringLiteral("no value follows the equals sign") : jotted.trouble().did) : QString());
}

Expected<Jotted> jotReadingAt(const ReadAt &at, const QString &typed, const UnitFile &file, const BenchFile &bench, Maker &maker)
{
    const QString did = QStringLiteral("No reading was recorded");
    const QString text = typed.simplified();
    auto line = splitReading(QStringLiteral("x = ") + text);
    if (text.isEmpty() || !line || line->value.isEmpty())
        return Trouble{did, QStringLiteral("no value was typed"), QStringLiteral("type it like 11.92 V, < 0.1 % or OL")};
    line->name = at.name;
    if (!line->phase)
        line->phase = at.phase;
    if (line->meter.isEmpty())
        line->meter = at.meter;
    const QString under = at.conditions.isEmpty() || line->conditions.isEmpty() ? at.conditions + line->conditions : at.conditions + QStringLiteral(", ") + line->conditions;
    auto jotted = recorded(Jotting{text, text, file, bench, maker}, *line, Place{at.name, under, file.find(at.point)});
    if (!jotted)
        return Trouble{did, jotted.trouble().did, QStringLiteral("type it like 11.92 V, < 0.1 % or OL")};
    return jotted;
}

} // namespace ts
