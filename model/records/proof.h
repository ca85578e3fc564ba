#pragma once

#include "model/records/description.h"
#include "model/records/meter.h"
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

/// What an electrical safety test looks at or measures.
enum class SafetyTest { Look, Earth, Insulation, EarthCurrent, TouchCurrent, SubstituteLeakage, ColdResistance, HotLeakage, Heat };

template <>
struct Words<SafetyTest> {
    static constexpr std::array list{std::pair{SafetyTest::Look, "look"},
                                     std::pair{SafetyTest::Earth, "earth"},
                                     std::pair{SafetyTest::Insulation, "insulation"},
                                     std::pair{SafetyTest::EarthCurrent, "earth_current"},
                                     std::pair{SafetyTest::TouchCurrent, "touch_current"},
                                     std::pair{SafetyTest::SubstituteLeakage, "substitute_leakage"},
                                     std::pair{SafetyTest::ColdResistance, "cold_resistance"},
                                     std::pair{SafetyTest::HotLeakage, "hot_leakage"},
                                     std::pair{SafetyTest::Heat, "heat"}};
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
    // Of an electrical safety test that measured something; its outcome is worked out from these.
    std::optional<SafetyTest> test;
    std::optional<Quantity> value;
    Limit wanted; ///< as it stood when the value was taken
    QString limitSource;
    std::optional<double> uncertainty; ///< 95 %, in the unit of the value
    Id<Meter> meter;

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
        fields("test", &Proof::test);
        fields("value", &Proof::value);
        fields("wanted", &Proof::wanted);
        fields("limit_source", &Proof::limitSource);
        fields("uncertainty", &Proof::uncertainty);
        fields("meter", &Proof::meter);
    }
};

} // namespace ts
