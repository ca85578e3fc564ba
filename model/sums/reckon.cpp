#include "model/sums/reckon.h"

#include "model/sums/curves/level.h"
#include "model/sums/curves/replay_curve.h"
#include "model/sums/curves/weighting_sum.h"
#include "model/sums/drive/belt.h"
#include "model/sums/drive/speed.h"
#include "model/sums/markings/colour_code.h"
#include "model/sums/markings/digit_code.h"
#include "model/sums/markings/preferred_value.h"
#include "model/sums/reckon_faults.h"
#include "model/sums/metering/budget.h"
#include "model/sums/metering/derived.h"
#include "model/sums/reckon_money.h"
#include "model/sums/reckon_values.h"
#include "model/sums/statistics/conformance.h"
#include "model/sums/statistics/line_fit.h"
#include "model/sums/statistics/quantile.h"
#include "model/sums/statistics/uncertainty.h"
#include "model/sums/supply/discharge.h"
#include "model/sums/supply/fuse.h"
#include "model/sums/supply/fuse_marking.h"
#include "model/sums/supply/leakage.h"
#include "model/sums/supply/ohms_law.h"
#include "model/sums/supply/ripple.h"
#include "model/sums/supply/series_lamp.h"

namespace ts {

QList<Sum> allSums()
{
    // One a line: a new one is a line of its own.
    // clang-format off
    return {
        preferredValueSum(),
        preferredPairSum(),
        colourCodeSum(),
        letterCodeSum(),
        digitCodeSum(),
        fuseSum(),
        fuseMarkingSum(),
        dischargeSum(),
        seriesLampSum(),
        leakageSum(),
        idleCurrentSum(),
        loadPowerSum(),
        dropperSum(),
        dampingSum(),
        rippleSum(),
        esrSum(),
        levelSum(),
        replayCurveSum(),
        weightingSum(),
        strobeSum(),
        speedErrorSum(),
        mainsSpeedSum(),
        beltSum(),
        tapeLengthSum(),
        spreadSum(),
        lineFitSum(),
        quantileSum(),
        uncertaintySum(),
        budgetSum(),
        derivedSum(),
        acceptanceRiskSum(),
        threePointSum(),
        marginTaxSum(),
        breakEvenSum(),
        bidSum(),
        apportionSum(),
        bayesSum(),
        checkOrderSum(),
    };
    // clang-format on
}

Expected<SumOutput> reckon(const QString &sum, const SumInput &given)
{
    QStringList names;
    for (const Sum &each : allSums()) {
        names << each.name;
        if (each.name != sum)
            continue;
        QStringList keys;
        for (const SumKey &key : each.keys)
            keys << key.name;
        for (auto it = given.cbegin(); it != given.cend(); ++it)
            if (!keys.contains(it.key()))
                return Trouble{QStringLiteral("Cannot reckon %1").arg(sum), QStringLiteral("it has no key \"%1\"").arg(it.key()),
                               QStringLiteral("its keys are ") + keys.join(QStringLiteral(", "))};
        for (const SumKey &key : each.keys)
            if (key.required && given.value(key.name).trimmed().isEmpty())
                return Trouble{QStringLiteral("Cannot reckon %1").arg(sum), QStringLiteral("%1 is missing").arg(key.name),
                               QStringLiteral("give %1=… (%2)").arg(key.name, key.meaning)};
        SumInput whole = given;
        for (const SumKey &key : each.keys)
            if (!key.usual.isEmpty() && whole.value(key.name).trimmed().isEmpty())
                whole.insert(key.name, key.usual);
        return each.work(whole);
    }
    return Trouble{QStringLiteral("There is no sum \"%1\"").arg(sum),
                   {},
                   QStringLiteral("choose one of ") + names.join(QStringLiteral(", "))};
}

} // namespace ts
