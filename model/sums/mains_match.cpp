#include "model/sums/mains_match.h"

#include "model/sums/category_facts.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>

namespace ts {

namespace {

// A plate holds for 10 % about what it names, unless its maker says otherwise (IEC 60038 gives 230 V ± 10 % at the outlet).
constexpr double plateTolerance = 0.10;

/// The highest voltage that a supply of a nominal voltage and frequency is allowed: IEC 60038 for 230 V and 220 V; ANSI C84.1 range A
/// for 120 V and 240 V at 60 Hz; 107 V for 100 V (from memory); UK and Australian rules before 230 V for 240 V at 50 Hz.
double highestOf(double volts, double hertz)
{
    struct Supply {
        double volts;
        double hertz;
        double highest;
    };
    constexpr std::array known{Supply{240, 50, 254.4}, Supply{240, 60, 252}, Supply{120, 60, 126}, Supply{100, 50, 107}, Supply{100, 60, 107}};
    for (const Supply &supply : known)
        if (qFuzzyCompare(supply.volts, volts) && (hertz == 0 || qFuzzyCompare(supply.hertz, hertz)))
            return supply.highest;
    return volts * 1.1;
}

QString plain(double value)
{
    return QString::number(value, 'g', 4);
}

QString shownRange(const MainsPlate::Range &range)
{
    return range.low == range.high ? plain(range.low) + QStringLiteral(" V") : QStringLiteral("%1 to %2 V").arg(plain(range.low), plain(range.high));
}

QString shownRanges(const QList<MainsPlate::Range> &ranges)
{
    QStringList words;
    for (const MainsPlate::Range &range : ranges)
        words << shownRange(range);
    return words.join(QStringLiteral(" or "));
}

/// The numbers before a unit of measure: "110-120/220-240" of "110-120/220-240 V~".
QList<MainsPlate::Range> rangesBefore(const QString &text, const QString &unit)
{
    static const auto number = QStringLiteral("\\d+(?:[.,]\\d+)?");
    // Numbers joined by marks, each perhaps with the unit of its own; the last one has it.
    const QRegularExpression run(QStringLiteral("((?:%1\\s*(?:%2)?\\s*(?:-|–|—|\\.\\.+|to|/|,|or|and)\\s*)*%1)\\s*(?:%2)").arg(number, unit), QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression one(QStringLiteral("(%1)(?:\\s*[A-Za-z~]*\\s*(?:-|–|—|\\.\\.+|to)\\s*(%1))?").arg(number), QRegularExpression::CaseInsensitiveOption);
    const auto value = [](QString digits) { return digits.replace(QLatin1Char(','), QLatin1Char('.')).toDouble(); };
    QList<MainsPlate::Range> ranges;
    for (auto all = run.globalMatch(text); all.hasNext();)
        for (auto each = one.globalMatch(all.next().captured(1)); each.hasNext();) {
            const auto match = each.next();
            const double low = value(match.captured(1));
            const double high = match.hasCaptured(2) ? value(match.captured(2)) : low;
            if (low > 0 && high >= low)
                ranges << MainsPlate::Range{low, high};
        }
    return ranges;
}

bool takes(const MainsPlate::Range &range, double volts)
{
    return volts >= range.low * (1 - plateTolerance) && volts <= range.high * (1 + plateTolerance);
}

QString wrongVoltage(const MainsPlate &plate, double bench)
{
    // Against the setting that comes nearest.
    const auto distance = [bench](const MainsPlate::Range &range) { return bench < range.low ? range.low / bench : bench / range.high; };
    const auto near = *std::min_element(plate.volts.begin(), plate.volts.end(), [&](const auto &a, const auto &b) { return distance(a) < distance(b); });
    const bool tooHigh = bench > near.high;
    const double percent = 100 * (tooHigh ? bench / near.high - 1 : 1 - bench / near.low);
    return QStringLiteral("Do not plug it in here: it is made for %1 and the bench has %2 V, %3 % too %4. Use a transformer that gives its own "
                          "voltage and is rated for its power; local codes and licensed practice come first.")
        .arg(shownRanges(plate.volts), plain(bench), QString::number(percent, 'f', 1), tooHigh ? QStringLiteral("high") : QStringLiteral("low"));
}

QString maySwell(const MainsPlate::Range &range, double bench, double highest)
{
    return QStringLiteral("It is made for %1, which allows up to %2 V; mains of %3 V may reach %4 V. Measure at the outlet and watch its heat, or run "
                          "it from a transformer.")
        .arg(shownRange(range), plain(range.high * (1 + plateTolerance)), plain(bench), plain(highest));
}

QString wrongFrequency(const QList<double> &plate, double bench)
{
    const double near = *std::min_element(plate.begin(), plate.end(), [bench](double a, double b) { return qAbs(a - bench) < qAbs(b - bench); });
    const QString percent = QString::number(100 * qAbs(bench / near - 1), 'f', 1);
    return (bench < near ? QStringLiteral("It is made for %1 Hz and the bench has %2 Hz: a motor that runs in step with the mains runs %3 % slow, and a "
                                          "transformer made for %1 Hz alone runs hotter.")
                         : QStringLiteral("It is made for %1 Hz and the bench has %2 Hz: a motor that runs in step with the mains runs %3 % fast."))
        .arg(plain(near), plain(bench), percent);
}

} // namespace

MainsPlate mainsPlate(const QString &text)
{
    MainsPlate plate;
    plate.volts = rangesBefore(text, QStringLiteral("V(?![a-z]*A\\b)|volts?"));
    for (const MainsPlate::Range &range : rangesBefore(text, QStringLiteral("Hz|c/s|cycles|~(?=\\s*$)")))
        plate.hertz << range.low << (range.high == range.low ? QList<double>() : QList<double>{range.high});
    return plate;
}

MainsMismatch mainsMismatch(const Unit &unit, const QString &benchMains)
{
    const MainsPlate bench = mainsPlate(benchMains);
    const MainsPlate plate = mainsPlate(unit.mains);
    MainsMismatch off;
    if (!mainsPowered(unit))
        return off;
    if (!bench.volts.isEmpty() && !plate.volts.isEmpty()) {
        const double volts = bench.volts.first().low;
        if (std::none_of(plate.volts.begin(), plate.volts.end(), [volts](const auto &range) { return takes(range, volts); }))
            off.voltage = wrongVoltage(plate, volts);
    }
    if (!bench.hertz.isEmpty() && !plate.hertz.isEmpty()) {
        const double hertz = bench.hertz.first();
        if (std::none_of(plate.hertz.begin(), plate.hertz.end(), [hertz](double each) { return qAbs(each / hertz - 1) < 0.02; }))
            off.frequency = wrongFrequency(plate.hertz, hertz);
    }
    return off;
}

QStringList mainsCautions(const Unit &unit, const QString &benchMains)
{
    const MainsPlate bench = mainsPlate(benchMains);
    const MainsPlate plate = mainsPlate(unit.mains);
    if (!mainsPowered(unit))
        return {};
    const MainsMismatch off = mainsMismatch(unit, benchMains);
    QStringList all;
    if (!off.voltage.isEmpty())
        all << off.voltage;
    else if (!bench.volts.isEmpty() && !plate.volts.isEmpty()) {
        const double volts = bench.volts.first().low;
        const double highest = highestOf(volts, bench.hertz.value(0));
        const auto fits = std::find_if(plate.volts.begin(), plate.volts.end(), [volts](const auto &range) { return takes(range, volts); });
        if (plate.volts.size() > 1)
            all << QStringLiteral("It can be set to %1: see that its selector stands at %2 before you plug it in.").arg(shownRanges(plate.volts), shownRange(*fits));
        // A tenth of a volt is not looked at: 253 V is 230 V + 10 % whichever way it is worked out.
        if (highest > fits->high * (1 + plateTolerance) + 0.1)
            all << maySwell(*fits, volts, highest);
    }
    if (!off.frequency.isEmpty())
        all << off.frequency;
    return all;
}

} // namespace ts
