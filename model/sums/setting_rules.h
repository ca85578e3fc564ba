#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// A setting that the program knows.
struct KnownSetting {
    QString name; ///< as in settings.h
    QString says; ///< what it is for, for the command line's list
    QString unset = {}; ///< what holds where it is not set
};
[[nodiscard]] const QList<KnownSetting> &knownSettings();
[[nodiscard]] bool isKnownSetting(const QString &name);

/// The change that gives a setting a value, empty to unset it; empty where it has that value already. Refused by what is wrong with
/// it. `moneyRecorded`: money is in the workbook already, so its currency stays (money keeps the currency it was recorded in,
/// and another one would leave it out of every total).
[[nodiscard]] Expected<Change> settingChange(const BenchFile &bench, const QString &name, const QString &value, bool moneyRecorded, Maker &maker);

} // namespace ts
