#include "model/sums/money_settings.h"

#include "model/records/settings.h"
#include "model/values/number.h"

namespace ts {

namespace {

enum class Form { Sum, Percent, Whole, Number };

/// How each setting is written, and the largest that makes sense.
struct Written {
    QString name;
    Form form;
    double least;
    double most;
};

const QList<Written> &allWritten()
{
    static const QList<Written> all{
        {settings::hourlyRate, Form::Sum, 0, 1e9},      {settings::overheadRate, Form::Sum, 0, 1e9},
        {settings::wantedGain, Form::Sum, 0, 1e9},      {settings::resaleHalfLife, Form::Whole, 1, 10'000},
        {settings::daysToSell, Form::Whole, 0, 10'000}, {settings::sellingMinutes, Form::Whole, 0, 10'000},
        {settings::benchHours, Form::Number, 0.1, 168}, {settings::looksStep, Form::Percent, 0, 50},
        {settings::returnsRate, Form::Percent, 0, 100}, {settings::returnsDrop, Form::Percent, 0, 100},
        {settings::capitalRate, Form::Percent, 0, 1000},
    };
    return all;
}

/// The value in its form; sums in minor units, percentages in millionths.
Expected<double> readAs(const Written &written, const QString &value, const Currency &currency)
{
    const QString did = QStringLiteral("Cannot set %1").arg(written.name);
    double read = 0;
    double shown = 0;
    if (written.form == Form::Sum) {
        const auto money = Money::parse(value, currency);
        if (!money)
            return money.trouble();
        if (!(money->currency() == currency))
            return Trouble{QStringLiteral("\"%1\" is not in %2").arg(value, currency.code()),
                           QStringLiteral("that is the currency of this workbook"),
                           {}};
        read = static_cast<double>(money->minor());
        shown = read;
    } else if (written.form == Form::Percent) {
        const auto rate = Rate::parse(value);
        if (!rate)
            return rate.trouble();
        read = static_cast<double>(rate->millionths());
        shown = read / 10'000;
    } else {
        QString figures = value.trimmed();
        bool ok = false;
        read =
            written.form == Form::Whole ? figures.toInt(&ok) : figures.replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&ok);
        if (!ok)
            return Trouble{did, QStringLiteral("\"%1\" is no number").arg(value), {}};
        shown = read;
    }
    if (shown < written.least)
        return Trouble{QStringLiteral("\"%1\" is below %2")
                           .arg(value, written.least > 0 ? numberText(written.least) : QStringLiteral("zero")),
                       {},
                       {}};
    if (shown > written.most)
        return Trouble{did, QStringLiteral("\"%1\" is above %2").arg(value, numberText(written.most)), {}};
    return read;
}

} // namespace

Expected<void> MoneySettings::check(const QString &name, const QString &value, const Currency &currency)
{
    if (name == settings::marginTax)
        if (const auto rates = DatedRates::parse(value); !rates)
            return rates.trouble();
    for (const Written &each : allWritten())
        if (each.name == name)
            if (const auto read = readAs(each, value, currency); !read)
                return read.trouble();
    return {};
}

MoneySettings MoneySettings::of(const BenchFile &bench)
{
    MoneySettings made;
    made.currency = bench.currency();
    made.wantedGain = Money(0, made.currency);
    for (const Written &each : allWritten()) {
        const QString value = bench.setting(each.name);
        if (value.trimmed().isEmpty())
            continue;
        const auto read = readAs(each, value, made.currency);
        if (!read) {
            made.remarks
                << QStringLiteral("The setting %1 cannot be read and is left out: %2").arg(each.name, read.trouble().sentence());
            continue;
        }
        const auto whole = static_cast<qint64>(*read);
        if (each.name == settings::hourlyRate)
            made.hourlyRate = Money(whole, made.currency);
        else if (each.name == settings::overheadRate)
            made.overheadRate = Money(whole, made.currency);
        else if (each.name == settings::wantedGain)
            made.wantedGain = Money(whole, made.currency);
        else if (each.name == settings::resaleHalfLife)
            made.resaleHalfLife = static_cast<int>(whole);
        else if (each.name == settings::daysToSell)
            made.daysToSell = static_cast<int>(whole);
        else if (each.name == settings::sellingMinutes)
            made.sellingMinutes = static_cast<int>(whole);
        else if (each.name == settings::benchHours)
            made.benchHours = *read;
        else if (each.name == settings::looksStep)
            made.looksStep = Rate(whole);
        else if (each.name == settings::returnsRate)
            made.returnsRate = Rate(whole);
        else if (each.name == settings::returnsDrop)
            made.returnsDrop = Rate(whole);
        else if (each.name == settings::capitalRate)
            made.capitalRate = Rate(whole);
    }
    if (const auto rates = DatedRates::parse(bench.setting(settings::marginTax)))
        made.marginRates = *rates;
    else
        made.remarks << QStringLiteral("The setting %1 cannot be read and is left out: %2").arg(settings::marginTax, rates.trouble().sentence());
    made.marginTax = made.marginRates.newest();
    return made;
}

} // namespace ts
