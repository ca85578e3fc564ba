#pragma once

#include "model/records/model_notes.h"

#include <QList>

#include <utility>

// The form of a file of model notes, for what reads it and what writes it.
namespace ts::notesform {

inline constexpr int edition = 1;

[[nodiscard]] inline QString name()
{
    return QStringLiteral("turnscrew-model-notes");
}

/// The texts of the notes themselves, by their names in the file.
[[nodiscard]] inline const QList<std::pair<QString, QString ModelNotes::*>> &texts()
{
    static const QList<std::pair<QString, QString ModelNotes::*>> list{
        {QStringLiteral("variants"), &ModelNotes::variants},
        {QStringLiteral("mains_versions"), &ModelNotes::mainsVersions},
        {QStringLiteral("adjustments"), &ModelNotes::adjustments},
        {QStringLiteral("usual_causes"), &ModelNotes::usualCauses},
        {QStringLiteral("parts"), &ModelNotes::parts},
        {QStringLiteral("teardown"), &ModelNotes::teardown},
        {QStringLiteral("sources"), &ModelNotes::sources},
        {QStringLiteral("ideas"), &ModelNotes::ideas},
        {QStringLiteral("cautions"), &ModelNotes::cautions}};
    return list;
}

} // namespace ts::notesform
