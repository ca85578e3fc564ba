#include "model/jot/families.h"
#include "model/jot/phrase.h"

namespace ts {

// "soaked 3 h on a dummy load, steady" or "soaked both directions 2h": a soak that is over, ending now.
Jotted jotSoaked(const Jotting &jotting)
{
    auto time = takeMinutesFirst(jotting.text);
    if (!time)
        time = takeMinutes(jotting.text);
    if (!time && takeMinutes(QStringLiteral("x ") + jotting.text)) // nothing but a time
        time = Taken<int>{takeMinutes(QStringLiteral("x ") + jotting.text)->value, {}};
    if (!time || time->value <= 0)
        return asNote(jotting, QStringLiteral("no length such as 3 h is in it"));
    Soak soak = jotting.fresh<Soak>();
    soak.name = time->rest.isEmpty() ? QStringLiteral("running") : time->rest;
    soak.endedAt = soak.at;
    soak.startedAt = soak.at.addSecs(-60LL * time->value);
    const QString sentence = QStringLiteral("Soaked %1: %2").arg(minutesText(time->value), shown(soak.name));
    return {QStringLiteral("soak"), QStringLiteral("soak"), sentence, {}, Change(sentence).add(soak)};
}

} // namespace ts
