#pragma once

#include "model/exchange/imported.h"
#include "model/records/maker.h"
#include "model/records/notes_file.h"

namespace ts {

/// What is known of models as one JSON document to share with a friend: no prices, no persons, no units, no photos; papers by
/// title and link alone.
[[nodiscard]] QByteArray notesJson(const QList<NotesFile> &notes);

/// Reads such a document; ids are new. Refused, by model and entry: what is no such document or of a later edition, a model
/// without a name or category, a limit or chance that makes no sense, marks on causes that are not there, more than 10,000
/// entries.
[[nodiscard]] Expected<QList<NotesFile>> readNotesJson(const QByteArray &json, Maker &maker);

} // namespace ts
