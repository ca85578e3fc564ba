#include "model/records/notes_file.h"

namespace ts {

namespace {

bool sameName(const QString &a, const QString &b)
{
    return a.simplified().compare(b.simplified(), Qt::CaseInsensitive) == 0;
}

} // namespace

bool areOf(const ModelNotes &notes, const Unit &unit)
{
    if (notes.removed)
        return false;
    if (ofCategory(notes))
        return notes.category == unit.category;
    return !notes.maker.trimmed().isEmpty() && sameName(notes.maker, unit.maker) && sameName(notes.makerModel, unit.makerModel);
}

bool ofCategory(const ModelNotes &notes)
{
    return notes.maker.trimmed().isEmpty() && notes.makerModel.trimmed().isEmpty();
}

const ModelNotes *notesOf(const BenchFile &bench, const Unit &unit)
{
    for (const ModelNotes &notes : bench.all<ModelNotes>())
        if (!ofCategory(notes) && areOf(notes, unit))
            return &notes;
    return nullptr;
}

} // namespace ts
