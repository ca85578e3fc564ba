#include "model/jot/jotting.h"

#include "model/jot/phrase.h"

namespace ts {

Jotted asNote(const Jotting &jotting, const QString &why)
{
    Note note = jotting.fresh<Note>();
    note.text = jotting.line;
    Jotted jotted{QStringLiteral("note"), QStringLiteral("note"), QStringLiteral("Note: ") + shown(note.text), {}, {}};
    if (!why.isEmpty())
        jotted.preview = QStringLiteral("Taken as a note, because %1").arg(why);
    jotted.change = Change(QStringLiteral("Note: ") + shown(note.text)).add(note);
    return jotted;
}

} // namespace ts
