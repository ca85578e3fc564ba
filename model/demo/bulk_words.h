#pragma once

#include "model/demo/dice.h"
#include "model/records/unit.h"

#include <QStringList>

namespace ts {

/// What a made-up unit is called and what may be wrong with it, put together from lists.
class BulkWords {
public:
    explicit BulkWords(Dice &dice) : m_dice(dice) {}

    [[nodiscard]] Category category();
    [[nodiscard]] QString maker();
    [[nodiscard]] QString makerModel(Category category);
    [[nodiscard]] QString noun(Category category) const; ///< "cassette deck"
    [[nodiscard]] QString piece(Category category);      ///< a part of such a unit: "take-up clutch"
    [[nodiscard]] QString symptom(Category category);
    [[nodiscard]] QString cause(Category category);
    [[nodiscard]] QString step(Category category);
    [[nodiscard]] QString note();
    [[nodiscard]] QString place();
    [[nodiscard]] QString person();

private:
    QString one(const QStringList &list) { return list.at(m_dice.whole(0, static_cast<int>(list.size()) - 1)); }
    Dice &m_dice;
};

} // namespace ts
