#include "model/sums/metering/calibration.h"

#include <algorithm>

namespace ts {

bool calibrationOverdue(const Meter &meter, const QDate &day)
{
    return meter.calibrationDue.isValid() && day > meter.calibrationDue;
}

QString overdueWords(const Meter &meter, const QDate &day)
{
    if (!calibrationOverdue(meter, day))
        return {};
    return QStringLiteral("calibration was due on ") + meter.calibrationDue.toString(Qt::ISODate);
}

double kelvinOutside(std::optional<double> celsius)
{
    if (!celsius)
        return 0;
    constexpr double usualLow = 18; // 23 °C ± 5 K, common practice of data sheets
    constexpr double usualHigh = 28;
    return std::max(
        {0.0, usualLow - *celsius, *celsius - usualHigh});
}

} // namespace ts
