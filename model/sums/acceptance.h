#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// A line of what is tried before a unit is handed over.
struct AcceptanceLine {
    QString text;
    ProofKind kind = ProofKind::Function;
    QList<ProtectionClass> classes; ///< only for units of these; empty: for all
    bool operator==(const AcceptanceLine &) const = default;
};

struct AcceptanceList {
    std::optional<Category> category; ///< none: for every unit from the mains
    QString source;                   ///< where the list comes from, for people
    QList<AcceptanceLine> lines;
};

/// Reads one list (the form of resources/acceptance/*.json). Refused, by line: an unknown category, kind or class, a line without text
/// or there twice, a list without lines or source.
[[nodiscard]] Expected<AcceptanceList> readAcceptance(const QByteArray &json);
/// The list that ships for a category.
[[nodiscard]] AcceptanceList acceptanceOf(Category category);
/// The electrical safety lines that ship, for whatever runs from the mains.
[[nodiscard]] AcceptanceList electricalSafety();

/// What a unit is to be proved by: its category's list, and electrical safety where it runs from the mains, with what its protection
/// class asks for (all of it where the class is not known).
[[nodiscard]] QList<AcceptanceLine> acceptanceFor(const Unit &unit);
/// The same as proofs of the unit that are not tested yet.
[[nodiscard]] QList<Proof> proofsFor(const Unit &unit, Maker &maker);

/// Brings onto the unit what it does not have yet of that list, by its text, as one change. Refused where nothing would be new.
[[nodiscard]] Expected<Change> bringAcceptance(const UnitFile &file, Maker &maker);

/// How a proof came out: passed and failed are dated and signed; one that is not tested, or not applicable, has neither.
[[nodiscard]] Proof provedAs(const Proof &before, ProofOutcome outcome, QDate today, const QString &initials);
/// When it was tried: the time of recording, or where another day is named the beginning of that day (UTC), as with paidAt().
[[nodiscard]] QDateTime triedAt(const Proof &proof);

} // namespace ts
