#include "model/sums/reckon.h"

#include "model/sums/reckon_money.h"
#include "model/sums/reckon_values.h"

namespace ts {

QList<Sum> allSums()
{
    return {letterCodeSum(), spreadSum(), breakEvenSum()};
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
