#pragma once

#include "model/faults/solved_cause.h"
#include "model/faults/starting_table.h"
#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/notes_file.h"

namespace ts {

struct OfferedCause {
    QString text;
    double weight = 0; ///< of 1, with the others and something else
    int count = 0;     ///< own closed units where it was this
    QString from;      ///< where the weight comes from, for people
    std::optional<int> fixMinutes;
    std::optional<Money> fixCost;
    std::optional<double> fixOdds;
};

struct OfferedMark {
    qsizetype cause = 0; ///< its place in the offer
    double abnormalIf = 0.95;
    double abnormalIfNot = 0.05;
};

struct OfferedCheck {
    QString text;
    std::optional<int> minutes;
    QString wanted; ///< what a good unit shows
    QList<OfferedMark> marks;
};

/// Causes and checks for a symptom, ready to be brought onto a unit.
struct FaultOffer {
    QString from;    ///< "starting values of the category", "notes on this model"
    QString symptom; ///< as the table or the notes call it
    QList<OfferedCause> causes;
    QList<OfferedCheck> checks;
    double somethingElse = 0;
    QString elseFrom;
    QStringList basis; ///< sources and counts, one sentence each
};

/// One offer for each symptom of the category's table.
[[nodiscard]] QList<FaultOffer> offersOf(const StartingTable &table);
/// One offer for each symptom that the notes know causes of. Weights as in the notes; what they leave is shared as on a board.
[[nodiscard]] QList<FaultOffer> offersOf(const NotesFile &notes);
/// The place of the offer whose symptom reads most like that text, or -1 where none is alike.
[[nodiscard]] qsizetype offerFor(const QList<FaultOffer> &offers, const QString &symptom);

/// The offer's weights with the owner's own closed units in them: those of this model where there are any with this symptom, else
/// those of the category. The offer counts as `pseudoUnits` units: weight = (pseudoUnits × weight + count) / (pseudoUnits + all).
/// A cause found on them that the offer does not have is added.
[[nodiscard]] FaultOffer blended(FaultOffer offer, const Unit &unit, const QList<SolvedCause> &solved);

/// Brings the offer onto the unit as one change: the causes, checks and marks that the symptom does not have yet, by their text.
/// What is there is left as it is. Refused where nothing would be new.
[[nodiscard]] Expected<Change> bringIn(const UnitFile &file, const Id<Symptom> &symptom, const FaultOffer &offer, Maker &maker);

/// So many units the starting values and the notes count as. Judgement, no source.
inline constexpr int pseudoUnits = 8;

} // namespace ts
