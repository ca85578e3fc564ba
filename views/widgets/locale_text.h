#pragma once

#include "model/values/money.h"

#include <QDateTime>
#include <QLocale>

/// How values read on the screen, in the user's own locale. Files and JSON have their own, fixed forms.
namespace ts::shown {

[[nodiscard]] QString money(const Money &money);      ///< "£1,234.50", "-£3.00"
[[nodiscard]] QString moneyRound(const Money &money); ///< whole units, for bars and pictures: "£79"
[[nodiscard]] QString amount(const Money &money);     ///< "1,234.50", for a column that names its currency
[[nodiscard]] QString day(const QDate &day);          ///< "19 Nov"; with the year where it is not `today`'s, which may be left out
[[nodiscard]] QString day(const QDate &day, const QDate &today);
[[nodiscard]] QString dayLong(const QDate &day);          ///< "Thursday 19 November 2026"
[[nodiscard]] QString dayLong(const QDate &day, const QDate &today); ///< without the year where it is `today`'s
[[nodiscard]] QString time(const QDateTime &instant);     ///< "18:20", local time
[[nodiscard]] QString dayAndTime(const QDateTime &instant); ///< "19 Nov 18:20", local time
[[nodiscard]] QString duration(qint64 minutes);           ///< "2 h 55 m", "-0 h 10 m"
[[nodiscard]] QString percent(double share);              ///< 0.583 gives "58 %"
[[nodiscard]] QString number(double value);               ///< the shortest that reads back the same, with the locale's decimal sign
[[nodiscard]] QString count(qint64 count);

/// Money as typed in the user's locale, its decimal sign and groups taken as such; else as Money::parse reads it.
[[nodiscard]] Expected<Money> parseMoney(const QString &typed, const Currency &currency);

} // namespace ts::shown
