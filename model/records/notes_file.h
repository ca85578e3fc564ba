#pragma once

#include "model/records/unit_file.h"

namespace ts {

#define TS_LIST_TYPE(R) , R
/// Everything that is known of one model, as plain copies: the notes, its test points, and the lists of what is known.
struct NotesFile {
    ModelNotes notes;
    UnitFile::From<detail::OfNotes, void TS_RECORDS(TS_LIST_TYPE)> lists;

    template <class R>
    [[nodiscard]] const QList<R> &all() const
    {
        return std::get<QList<R>>(lists);
    }
    template <class R>
    [[nodiscard]] QList<R> &all()
    {
        return std::get<QList<R>>(lists);
    }
};
#undef TS_LIST_TYPE

/// Reads the notes' lists from a desk (anything with its `list` and `get`).
template <class Reader>
[[nodiscard]] Expected<NotesFile> notesFile(Reader &desk, const Id<ModelNotes> &id)
{
    NotesFile file;
    auto notes = desk.get(id);
    if (!notes)
        return notes.trouble();
    file.notes = *std::move(notes);
    std::optional<Trouble> trouble;
    const auto fill = [&]<class R>(QList<R> &list) {
        if (trouble)
            return;
        auto read = desk.template list<R>(QStringLiteral("model_notes"), id.text());
        if (read)
            list = *std::move(read);
        else
            trouble = read.trouble();
    };
    std::apply([&](auto &...lists) { (fill(lists), ...); }, file.lists);
    if (trouble)
        return *std::move(trouble);
    return file;
}

/// Whether notes without a maker and a model: those of a whole category.
[[nodiscard]] bool ofCategory(const ModelNotes &notes);
/// Whether the notes are about this unit: its maker and model, case and spaces aside, or its category.
[[nodiscard]] bool areOf(const ModelNotes &notes, const Unit &unit);
/// The notes of a unit's model; nullptr where there are none.
[[nodiscard]] const ModelNotes *notesOf(const BenchFile &bench, const Unit &unit);

} // namespace ts
