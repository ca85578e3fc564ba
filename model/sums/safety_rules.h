#pragma once

#include "model/records/proof.h"

namespace ts {

/// By whose limits a unit is tested after repair. They differ by country; local codes and licensed practice come first.
enum class SafetyRules { En50678, Iet4, Iet5, Makers };

template <>
struct Words<SafetyRules> {
    static constexpr std::array list{std::pair{SafetyRules::En50678, "en_50678"}, std::pair{SafetyRules::Iet4, "iet_4"}, std::pair{SafetyRules::Iet5, "iet_5"},
                                     std::pair{SafetyRules::Makers, "makers"}};
};

/// As it stands on the record and the sheet: "EN 50678 / VDE 0701-0702".
[[nodiscard]] QString rulesName(SafetyRules rules);

/// What a limit depends on beside the rules and the test.
struct SafetyCase {
    SafetyRules rules = SafetyRules::En50678;
    std::optional<ProtectionClass> protectionClass;
    std::optional<double> leadMetres;       ///< of the mains lead; none: up to 5 m
    double leadOhms = 0;                    ///< of its protective conductor, where it is known
    std::optional<double> heatingKilowatts; ///< of heating elements; none: it has none
    bool portable = false;                  ///< hand-held or portable by the IET's 4th edition
    double hertz = 50;                      ///< of the mains, for a leakage taken as a voltage
};

/// What the tests of a unit are, in their order. A substitute leakage current may stand in for the two live ones.
[[nodiscard]] QList<SafetyTest> safetyTests(SafetyRules rules, std::optional<ProtectionClass> protectionClass);
/// The test as a line of the acceptance list: "Protective earth: touchable metal to the earth pin".
[[nodiscard]] QString safetyTestText(SafetyTest test);
/// Whether it is looked at, not measured.
[[nodiscard]] bool isLookedAt(SafetyTest test);

struct SafetyLimit {
    Limit limit;
    QString source; ///< where the limit stands
    QString remark; ///< what the rule set says beside it; may be empty
};
/// The limit of a test by a rule set; `inVolts`: the hot check was read as a voltage over its network. Refused: a test that the rules
/// do not have for this class, a protection class that is not known where the limit depends on it.
[[nodiscard]] Expected<SafetyLimit> safetyLimit(const SafetyCase &about, SafetyTest test, bool inVolts = true);

/// The set's own limit in place of the rule set's. Refused where it is laxer in any way: only a stricter one counts. A current for a
/// voltage, or the other way round, goes through the network of the hot check at the mains frequency.
[[nodiscard]] Expected<Limit> stricterLimit(const Limit &rules, const Limit &own, double hertz);

} // namespace ts
