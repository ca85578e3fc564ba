#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

enum class NoteKind { Note, Flaw, Use };

template <>
struct Words<NoteKind> {
    static constexpr std::array list{std::pair{NoteKind::Note, "note"},
                                     std::pair{NoteKind::Flaw, "flaw"},
                                     std::pair{NoteKind::Use, "use"}};
};

/// A note on a unit.
struct Note : Record<Note> {
    Id<Unit> unit;
    QString text;
    NoteKind kind = NoteKind::Note;

    bool operator==(const Note &) const = default;

    static constexpr auto table = "note";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Note::unit).required();
        fields("text", &Note::text).required().searched();
        fields("kind", &Note::kind);
    }
};

} // namespace ts
