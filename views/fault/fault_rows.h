#pragma once

#include "model/faults/fault_board.h"
#include "views/widgets/grid_row.h"

namespace ts {

enum class CauseColumn { Cause, Bar, Now, Weight, State, PutRight };
/// The first columns of the checks; then one for each cause; then how it came out.
enum class CheckColumn { Check, Minutes, FirstMark };

[[nodiscard]] QList<GridColumn> causeColumns();
[[nodiscard]] QList<GridRow> causeRows(const FaultBoard &board);
/// "put right": "55 m · £28.00 · 80 %"; empty where nothing is known.
[[nodiscard]] QString putRightText(const BoardCause &cause);

/// What it takes to put a cause right, as typed in any order: "55m 28 80%".
struct PutRight {
    std::optional<int> minutes;
    std::optional<Money> cost;
    std::optional<double> odds;
    bool operator==(const PutRight &) const = default;
};
[[nodiscard]] Expected<PutRight> parsePutRight(const QString &typed, const Currency &currency);

/// The places of the board's causes in the order in which their columns stand: as recorded, so that none moves when likelihoods do; what
/// is not recorded is last.
[[nodiscard]] QList<qsizetype> markOrder(const FaultBoard &board);
[[nodiscard]] QList<GridColumn> checkColumns(const FaultBoard &board);
[[nodiscard]] QList<GridRow> checkRows(const FaultBoard &board);
[[nodiscard]] QString cameOutText(CameOut cameOut);
[[nodiscard]] QString causeStateText(CauseState state);
/// The heads of the causes' columns: each in a word or two, and no two alike.
[[nodiscard]] QStringList markHeads(const QStringList &causes);
/// A cause in a word.
[[nodiscard]] QString shortName(const QString &cause);

} // namespace ts
