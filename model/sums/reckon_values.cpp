#include "model/sums/reckon_values.h"

#include "model/sums/given.h"
#include "model/sums/number_column.h"
#include "model/sums/spread.h"
#include "model/values/lettercode.h"

namespace ts {

namespace {

Expected<SumOutput> letterCode(const SumInput &given)
{
    const auto marking = decodeMarking(given.value(QStringLiteral("text")).trimmed());
    if (!marking)
        return marking.trouble();
    SumOutput out{{QStringLiteral("value"), marking->value.base()},
                  {QStringLiteral("unit"), marking->value.measure().symbol()},
                  {QStringLiteral("tolerance_percent"), orNull(marking->tolerancePercent)}};
    if (marking->toleranceLowPercent || marking->toleranceHighPercent) {
        out.append({QStringLiteral("tolerance_low_percent"), orNull(marking->toleranceLowPercent)});
        out.append({QStringLiteral("tolerance_high_percent"), orNull(marking->toleranceHighPercent)});
    }
    return out;
}

Expected<SumOutput> spread(const SumInput &given)
{
    const QString typed = given.value(QStringLiteral("values"));
    const QString file = given.value(QStringLiteral("file"));
    if (typed.trimmed().isEmpty() == file.isEmpty())
        return Trouble{QStringLiteral("Cannot reckon spread"), QStringLiteral("it needs either values or a file"),
                       QStringLiteral("give one of values=… and file=…")};
    const auto values = file.isEmpty() ? numbersOf(typed) : numbersInFile(file, given.value(QStringLiteral("column")));
    if (!values)
        return values.trouble();
    const auto result = spreadOf(*values);
    if (!result)
        return result.trouble();
    return SumOutput{{QStringLiteral("n"), static_cast<qint64>(result->n)},
                     {QStringLiteral("mean"), result->mean},
                     {QStringLiteral("sd"), orNull(result->sd)},
                     {QStringLiteral("lag1"), orNull(result->lag1)}};
}

} // namespace

Sum letterCodeSum()
{
    return {QStringLiteral("letter-code"),
            QStringLiteral("what a marking in letter and digit code stands for"),
            {{QStringLiteral("text"), QStringLiteral("the marking, such as 4k7, 2R2J, p33, 473J")}},
            {{QStringLiteral("value"), QStringLiteral("in ohms or farads")},
             {QStringLiteral("unit"), QStringLiteral("Ω, F, or empty where the code does not say")},
             {QStringLiteral("tolerance_percent"), QStringLiteral("percent, the larger side; null where none is marked")},
             {QStringLiteral("tolerance_low_percent"), QStringLiteral("percent, where the sides differ"), false},
             {QStringLiteral("tolerance_high_percent"), QStringLiteral("percent, where the sides differ"), false}},
            QStringLiteral("IEC 60062:2016"),
            letterCode,
            QStringLiteral("the letter stands at the decimal point: R K M G ohms, p n µ m F farads")};
}

Sum spreadSum()
{
    return {QStringLiteral("spread"),
            QStringLiteral("mean, standard deviation and lag-1 autocorrelation of a row of numbers"),
            {{QStringLiteral("values"), QStringLiteral("numbers, comma-separated"), false},
             {QStringLiteral("file"), QStringLiteral("a CSV file with one column of numbers"), false},
             {QStringLiteral("column"), QStringLiteral("name of the column, where the file has several; y or value by itself"),
              false}},
            {{QStringLiteral("n"), QStringLiteral("how many numbers")},
             {QStringLiteral("mean"), QStringLiteral("in the unit of the numbers")},
             {QStringLiteral("sd"), QStringLiteral("standard deviation with n − 1; null for one number")},
             {QStringLiteral("lag1"), QStringLiteral("−1 to 1; null where all numbers are the same")}},
            QStringLiteral("NIST Statistical Reference Datasets, univariate summary statistics"),
            spread,
            QStringLiteral("mean = Σ x / n; sd = √(Σ d² / (n − 1)); lag1 = Σ d(i) d(i + 1) / Σ d²")};
}

} // namespace ts
