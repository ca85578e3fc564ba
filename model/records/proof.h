#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

enum class ProofKind { Function, Cosmetic, ElectricalSafety };

template <>
struct Words<ProofKind> {
    static constexpr std::array list{std::pair{ProofKind::Function, "function"},
                                     std::pair{ProofKind::Cosmetic, "cosmetic"},
                                     std::pair{ProofKind::ElectricalSafety, "electrical_safety"}};
};

enum class ProofOutcome { NotTested, Passed, Failed, NotApplicable };

template <>
struct Words<ProofOutcome> {
    static constexpr std::array list{std::pair{ProofOutcome::NotTested, "not_tested"},
                                     std::pair{ProofOutcome::Passed, "passed"},
                                     std::pair{ProofOutcome::Failed, "failed"},
                                     std::pair{ProofOutcome::NotApplicable, "not_applicable"}};
};

/// An acceptance check before handover.
struct Proof : Record<Proof> {
    Id<Unit> unit;
    QString text;
    ProofKind kind = ProofKind::Function;
    ProofOutcome cameOut = ProofOutcome::NotTested;
    QString result;
    QString ruleSet; ///< for electrical safety
    QString instrument;
    QDate doneOn;
    QString initials;

    bool operator==(const Proof &) const = default;

    static constexpr auto table = "proof";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Proof::unit).required();
        fields("text", &Proof::text).required().searched();
        fields("kind", &Proof::kind);
        fields("came_out", &Proof::cameOut);
        fields("result", &Proof::result).searched();
        fields("rule_set", &Proof::ruleSet);
        fields("instrument", &Proof::instrument);
        fields("done_on", &Proof::doneOn);
        fields("initials", &Proof::initials);
    }
};

} // namespace ts
