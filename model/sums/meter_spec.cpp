#include "model/sums/meter_spec.h"

#include "model/sums/verdict.h"

#include <QRegularExpression>

#include <cmath>

namespace ts {

namespace {

Trouble notASpec(QStringView text, const QString &wrong)
{
    return {QStringLiteral("\"%1\" is no accuracy of a meter").arg(text), wrong,
            QStringLiteral("write it like 0.5% + 2 x 0.01 V or 0.5% + 0.1% of 40 V")};
}

/// Parts joined by "+"; the sign of an exponent (1e+3) joins nothing.
QStringList termsOf(QString text)
{
    static const QRegularExpression lead(QStringLiteral("^\\s*(±|\\+/-|\\+-)"));
    static const QRegularExpression joint(QStringLiteral("(?<![0-9.,][eE])\\+"));
    return text.remove(lead).split(joint);
}

struct Term {
    double share = 0;
    std::optional<Quantity> fixed;
};

Expected<Term> termOf(const QString &text, QStringView whole)
{
    static const QString number = QStringLiteral("([0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)(?:[eE]([+-]?[0-9]+))?");
    static const QRegularExpression share(QStringLiteral("^%1\\s*(%|ppm)\\s*(?:of\\s+(.+))?$").arg(number),
                                          QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression counts(
        QStringLiteral("^%1\\s*(?:x|×|\\*|(?:counts?|digits?)\\s*(?:of|x|×|\\*))\\s*(.+)$").arg(number),
        QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression bareCounts(QStringLiteral("^%1\\s*(?:counts?|digits?|dgts?|lsd)$").arg(number),
                                               QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression ofReading(QStringLiteral("^(?:the\\s+)?(?:reading|rdg\\.?)$"),
                                              QRegularExpression::CaseInsensitiveOption);

    const auto figure = [](const QRegularExpressionMatch &match) {
        QString digits = match.captured(1);
        if (!match.captured(2).isEmpty())
            digits += QLatin1Char('e') + match.captured(2);
        return parseNumber(digits);
    };
    if (bareCounts.match(text).hasMatch())
        return notASpec(whole, QStringLiteral("\"%1\" does not say how much a count is").arg(text));

    QString amount = text;
    double factor = 1;
    if (const auto match = share.match(text); match.hasMatch()) {
        const auto parts = figure(match);
        if (!parts)
            return parts.trouble();
        factor = *parts * (match.captured(3) == QLatin1String("%") ? 0.01 : 1e-6);
        amount = match.captured(4).trimmed();
        if (amount.isEmpty() || ofReading.match(amount).hasMatch())
            return Term{factor, {}};
    } else if (const auto times = counts.match(text); times.hasMatch()) {
        const auto many = figure(times);
        if (!many)
            return many.trouble();
        factor = *many;
        amount = times.captured(3).trimmed();
    }
    const auto quantity = Quantity::parse(amount);
    if (!quantity || quantity->sense() != Sense::Plain)
        return notASpec(whole, QStringLiteral("\"%1\" is neither a share nor an amount").arg(text));
    if (quantity->value() < 0)
        return notASpec(whole, QStringLiteral("\"%1\" is below zero").arg(text));
    return Term{0, Quantity(factor * quantity->value(), quantity->measure())};
}

QString meterName(const BenchFile &bench, const Id<Meter> &meter)
{
    const Meter *found = bench.find(meter);
    return found ? found->name : QStringLiteral("this meter");
}

} // namespace

Expected<MeterSpec> MeterSpec::parse(QStringView text)
{
    MeterSpec spec;
    bool fixedSeen = false;
    for (const QString &part : termsOf(text.toString())) {
        if (part.trimmed().isEmpty())
            return notASpec(text, QStringLiteral("a part of it is empty"));
        const auto term = termOf(part.trimmed(), text);
        if (!term)
            return term.trouble();
        spec.m_share += term->share;
        if (!term->fixed)
            continue;
        if (!fixedSeen)
            spec.m_measure = term->fixed->measure();
        fixedSeen = true;
        const auto same = term->fixed->in(spec.m_measure);
        if (!same)
            return notASpec(text, QStringLiteral("its fixed parts are of different measures"));
        spec.m_fixed += same->value();
    }
    if (fixedSeen && spec.m_measure.isNone() && spec.m_share > 0) // "0.5% + 2" means two counts on every data sheet
        return notASpec(text, QStringLiteral("its fixed part has no unit; counts are written as 2 x 0.01 V"));
    if (spec.m_share >= 1)
        return notASpec(text, QStringLiteral("100 % of reading or more leaves nothing"));
    return spec;
}

Expected<MeterSpec> MeterSpec::of(const MeterRange &range, double kelvinOutside)
{
    const QString did = QStringLiteral("Cannot use the range of %1 %2").arg(numberText(range.fullScale), range.measure);
    const auto measure = Measure::parse(range.measure);
    if (!measure)
        return Trouble{did, QStringLiteral("\"%1\" is no unit").arg(range.measure), QStringLiteral("correct the meter's range")};
    for (const double figure :
         {range.fullScale, range.resolution, range.percentOfReading, range.percentOfRange, range.counts, range.percentPerKelvin})
        if (!std::isfinite(figure) || figure < 0)
            return Trouble{did, QStringLiteral("%1 is no accuracy").arg(numberText(figure)),
                           QStringLiteral("correct the meter's range")};
    MeterSpec spec;
    spec.m_share = (range.percentOfReading + range.percentPerKelvin * std::max(0.0, kelvinOutside)) / 100;
    spec.m_fixed = range.percentOfRange / 100 * range.fullScale + range.counts * range.resolution;
    spec.m_measure = *measure;
    return spec;
}

Expected<double> MeterSpec::halfWidth(const Quantity &value) const
{
    const QString did = QStringLiteral("Cannot say how sure %1 is").arg(value.text());
    if (value.sense() == Sense::OverRange)
        return Trouble{did, QStringLiteral("the meter showed no figure"), QStringLiteral("choose a higher range")};
    double fixed = m_fixed;
    // A bare number stands in the unit of the meter, and a bare accuracy in the unit of the number.
    if (!value.measure().isNone() && !m_measure.isNone()) {
        const auto same = Quantity(m_fixed, m_measure).in(value.measure());
        if (!same)
            return Trouble{did, QStringLiteral("the accuracy is given in %1").arg(m_measure.text()),
                           QStringLiteral("use a range of the meter for %1").arg(value.measure().text())};
        fixed = same->value();
    }
    return m_share * std::abs(value.value()) + fixed;
}

Expected<double> MeterSpec::standardUncertainty(const Quantity &value) const
{
    const auto half = halfWidth(value);
    if (!half)
        return half;
    return *half / std::sqrt(3.0);
}

Expected<double> MeterSpec::expanded95(const Quantity &value) const
{
    const auto standard = standardUncertainty(value);
    if (!standard)
        return standard;
    return expandedFromStandard(*standard);
}

Expected<MeterRange> rangeFor(const BenchFile &bench, const Id<Meter> &meter, const Quantity &value)
{
    const Trouble none{QStringLiteral("%1 has no range for %2").arg(meterName(bench, meter), value.text()),
                       {},
                       QStringLiteral("add the range to the meter, or give the uncertainty")};
    if (value.sense() == Sense::OverRange || value.measure().isNone())
        return none;
    const double wanted = std::abs(value.base());
    const MeterRange *best = nullptr;
    double bestScale = 0;
    for (const MeterRange &range : bench.all<MeterRange>()) {
        const auto measure = range.meter == meter && !range.removed ? Measure::parse(range.measure) : Expected<Measure>(none);
        if (!measure || !measure->comparableWith(value.measure()))
            continue;
        const double scale = range.fullScale > 0 ? range.fullScale * measure->factor() : HUGE_VAL;
        if (wanted <= scale * (1 + 1e-12) && (!best || scale < bestScale)) {
            best = &range;
            bestScale = scale;
        }
    }
    if (!best)
        return none;
    return *best;
}

Expected<double> uncertaintyOf(const BenchFile &bench, const Id<Meter> &meter, const Quantity &value)
{
    const auto range = rangeFor(bench, meter, value);
    if (!range)
        return range.trouble();
    const auto spec = MeterSpec::of(*range);
    if (!spec)
        return spec.trouble();
    return spec->expanded95(value);
}

const Meter *meterNamed(const BenchFile &bench, const QString &name)
{
    const QString wanted = name.simplified();
    if (wanted.isEmpty())
        return nullptr;
    const Meter *partly = nullptr;
    int matches = 0;
    for (const Meter &meter : bench.all<Meter>()) {
        if (meter.removed)
            continue;
        if (meter.name.simplified().compare(wanted, Qt::CaseInsensitive) == 0)
            return &meter;
        if (meter.name.contains(wanted, Qt::CaseInsensitive)) {
            partly = &meter;
            ++matches;
        }
    }
    return matches == 1 ? partly : nullptr;
}

} // namespace ts
