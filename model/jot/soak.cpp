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
    // "2 h of play in each direction": what the hours were of.
    const QString of = QStringLiteral("of ");
    const QString name = time->rest.startsWith(of, Qt::CaseInsensitive) ? time->rest.mid(of.size()).trimmed() : time->rest;
    soak.name = name.isEmpty() ? QStringLiteral("running") : name;
    soak.endedAt = soak.at;
    soak.startedAt = soak.at.addSecs(-60LL * time->value);
    const QString sentence = QStringLiteral("Soaked %1: %2").arg(minutesText(time->value), shown(soak.name));
    return {QStringLiteral("soak"), QStringLiteral("soak"), sentence, {}, Change(sentence).add(soak)};
}

} // namespace ts
