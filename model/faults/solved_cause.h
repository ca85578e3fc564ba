#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// A cause that was found on a closed unit.
struct SolvedCause {
    Id<Unit> unit;
    QString maker;
    QString makerModel;
    Category category = Category::Other;
    QString symptom;
    QString cause;
    std::optional<int> fixMinutes;
};

/// Causes confirmed on the owner's other closed units of the category of `like`, from a desk (anything with its `list` and
/// `get`).
template <class Reader>
[[nodiscard]] Expected<QList<SolvedCause>> solvedCauses(Reader &desk, const Unit &like)
{
    const auto causes = desk.template list<Cause>(QStringLiteral("state"), toWord(CauseState::Confirmed));
    if (!causes)
        return causes.trouble();
    QHash<Id<Unit>, Unit> units;
    QList<SolvedCause> solved;
    for (const Cause &cause : *causes) {
        if (cause.unit == like.id)
            continue;
        if (!units.contains(cause.unit)) {
            const auto unit = desk.get(cause.unit);
            if (!unit)
                return unit.trouble();
            units.insert(cause.unit, *unit);
        }
        const Unit &unit = *units.constFind(cause.unit);
        if (unit.stage != Stage::Closed || unit.category != like.category)
            continue;
        QString symptom;
        if (!cause.symptom.isNull()) {
            const auto seen = desk.get(cause.symptom);
            if (!seen)
                return seen.trouble();
            symptom = seen->text;
        }
        solved << SolvedCause{unit.id, unit.maker, unit.makerModel, unit.category, symptom, cause.text, cause.fixMinutes};
    }
    return solved;
}

} // namespace ts
