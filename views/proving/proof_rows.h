#pragma once

#include "model/records/unit_file.h"
#include "views/widgets/grid_row.h"

namespace ts {

enum class ProofColumn { Text, CameOut, Result, Instrument, RuleSet, Done, Initials };

[[nodiscard]] QList<GridColumn> proofColumns();
/// The proofs of a unit under their kinds, and under each the row that adds one.
[[nodiscard]] QList<GridRow> proofRows(const UnitFile &file, QDate today);

[[nodiscard]] QString proofOutcomeText(ProofOutcome outcome);
[[nodiscard]] QString proofKindText(ProofKind kind);
/// "12 of 20 passed · 1 failed · 7 not tested"
[[nodiscard]] QString proofTotalText(const UnitFile &file);

/// The proof with what was typed in one of its columns; refused in one sentence where it makes no sense.
[[nodiscard]] Expected<Proof> editedProof(const Proof &before, ProofColumn column, const QString &typed, QDate today);

} // namespace ts
