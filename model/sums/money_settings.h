#pragma once

#include "model/sums/dated_rates.h"
#include "model/records/unit_file.h"

namespace ts {

/// The bench's settings that sums of money rest on, read and with what holds where one is not set. The values that are not the
/// owner's are starting values of ours unless a source stands beside them.
struct MoneySettings {
    Currency currency;
    std::optional<Money> hourlyRate;
    std::optional<Money> overheadRate; ///< an hour
    int resaleHalfLife = 120;          ///< days; the trade looks back 90 to 180 (common practice, no source)
    Rate looksStep{70'000};
    Rate returnsRate{50'000}; ///< 3 to 8 % (from memory)
    Rate returnsDrop{250'000};
    Money wantedGain;
    DatedRates marginRates;        ///< on the margin of second-hand goods; empty: units are not sold under such a scheme
    std::optional<Rate> marginTax; ///< the newest of them, for what is still to be sold
    int daysToSell = 30;
    double benchHours = 8;   ///< a week
    int sellingMinutes = 45; ///< packing alone takes 20 to 60 (common practice, no source)
    Rate capitalRate;
    QStringList remarks; ///< settings that could not be read, one sentence each

    [[nodiscard]] static MoneySettings of(const BenchFile &bench);
    /// What is wrong with a value for the setting of that name (settings.h); done where nothing is, or where it is none of these.
    [[nodiscard]] static Expected<void> check(const QString &name, const QString &value, const Currency &currency);
};

} // namespace ts
