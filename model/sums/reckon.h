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
    QString unit = {};        ///< the unit a bare number is in, and the one it comes out in: "V", "Ω", "rpm"; empty where it has none
    QString usual = {};       ///< what is taken where the key is left out; empty where nothing is
    QStringList choices = {}; ///< the words it may be, where it is one of a few
};

/// A sum that can be asked for by itself, with all that a page needs to offer it.
struct Sum {
    QString name;
    QString says; ///< what it works out, one line
    QList<SumKey> keys;
    QList<SumKey> gives;
    QString source; ///< where the formula comes from
    std::function<Expected<SumOutput>(const SumInput &)> work;
    QString formula = {}; ///< for people: "t = R C ln(V0 / V)"; empty where the sum is no formula
};

/// All sums, in the order to list them. A new one is a line in reckon.cpp.
[[nodiscard]] QList<Sum> allSums();

/// Works out the sum of that name; keys that were left out take what is usual. Refuses by name: an unknown sum, a key it does not have, a key that is missing or empty, a
/// value that makes no sense.
[[nodiscard]] Expected<SumOutput> reckon(const QString &sum, const SumInput &given);

} // namespace ts
