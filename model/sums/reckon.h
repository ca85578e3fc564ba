#pragma once

#include "model/values/expected.h"

#include <QJsonValue>
#include <QList>
#include <QMap>
#include <QStringList>

#include <functional>

namespace ts {

/// What was given, by key.
using SumInput = QMap<QString, QString>;
/// What came out, in the order to show it.
using SumOutput = QList<std::pair<QString, QJsonValue>>;

/// A key of a sum: going in or coming out.
struct SumKey {
    QString name;
    QString meaning; ///< with its unit: "money, all costs of the sale"
    bool required = true;
};

/// A sum that can be asked for by itself.
struct Sum {
    QString name;
    QString says; ///< what it works out, one line
    QList<SumKey> keys;
    QList<SumKey> gives;
    QString source; ///< where the formula comes from
    std::function<Expected<SumOutput>(const SumInput &)> work;
};

/// All sums, in the order to list them. A new one is a line in reckon.cpp.
[[nodiscard]] QList<Sum> allSums();

/// Works out the sum of that name. Refuses by name: an unknown sum, a key it does not have, a key that is missing or empty, a
/// value that makes no sense.
[[nodiscard]] Expected<SumOutput> reckon(const QString &sum, const SumInput &given);

} // namespace ts
