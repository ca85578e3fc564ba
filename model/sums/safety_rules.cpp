#include "model/sums/safety_rules.h"

#include "model/sums/supply/leakage.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

SafetyLimit atMost(double value, const QString &unit, const QString &source, const QString &remark = {})
{
    const auto limit = Limit::parse(u"<= %1 %2"_s.arg(numberText(value), unit));
    return {limit ? *limit : Limit(), source, remark};
}

SafetyLimit atLeast(double value, const QString &unit, const QString &source, const QString &remark = {})
{
    const auto limit = Limit::parse(u">= %1 %2"_s.arg(numberText(value), unit));
    return {limit ? *limit : Limit(), source, remark};
}

/// 0.3 Ω up to 5 m of lead, 0.1 Ω more for each further 7.5 m begun, never above 1 Ω: DIN VDE 0701-0702 as published guides quote it
/// (../shared/checks 06, S01, S02, L01; choice 3 of its README).
double earthOhms(double metres)
{
    const double further = std::max(0.0, std::ceil((metres - 5) / 7.5 - 1e-9));
    return std::min(1.0, (3 + further) / 10);
}

const auto vde = u"DIN VDE 0701-0702, EN 50678"_s;
const auto iet4 = u"IET code of practice, 4th edition"_s;
const auto iet5 = u"IET code of practice, 5th edition"_s;
const auto guides = u"portable appliance test guides in the manner of the IET code"_s;
const auto makers = u"makers' service manuals"_s;

SafetyLimit byVde(const SafetyCase &about, ProtectionClass of, SafetyTest test)
{
    const bool one = of == ProtectionClass::I;
    switch (test) {
    case SafetyTest::Earth:
        return atMost(earthOhms(about.leadMetres.value_or(5)), u"Ω"_s, vde, u"0.3 Ω up to 5 m of lead, 0.1 Ω more for each further 7.5 m begun, at most 1 Ω"_s);
    case SafetyTest::Insulation:
        if (one && about.heatingKilowatts)
            return atLeast(0.3, u"MΩ"_s, vde, u"with heating elements; below it and above 3.5 kW the leakage decides"_s);
        return atLeast(one ? 1.0 : of == ProtectionClass::II ? 2.0 : 0.25, u"MΩ"_s, vde, u"at 500 V direct voltage; 2 MΩ where safe separation is to be shown"_s);
    case SafetyTest::EarthCurrent:
        return atMost(about.heatingKilowatts ? std::clamp(*about.heatingKilowatts, 3.5, 10.0) : 3.5, u"mA"_s, vde);
    case SafetyTest::TouchCurrent:
        return atMost(0.5, u"mA"_s, vde, one ? u"of metal that is not joined to the protective earth"_s : QString());
    default:
        return atMost(one ? 3.5 : 0.5, u"mA"_s, vde, u"in place of the two live tests"_s);
    }
}

SafetyLimit byIet(const SafetyCase &about, ProtectionClass of, SafetyTest test)
{
    const bool fifth = about.rules == SafetyRules::Iet5;
    if (test == SafetyTest::Earth)
        return atMost(0.1 + about.leadOhms, u"Ω"_s, guides,
                      fifth ? u"0.1 Ω and the lead's own; the 5th edition is said to tolerate 0.5 Ω on older equipment (from a preview of its draft), which is not taken here"_s
                            : u"0.1 Ω and the lead's own"_s);
    if (test == SafetyTest::Insulation)
        return atLeast(of == ProtectionClass::I ? 1.0 : of == ProtectionClass::II ? 2.0 : 0.25, u"MΩ"_s, guides, u"at 500 V direct voltage"_s);
    if (fifth)
        return atMost(5, u"mA"_s, iet5);
    if (of == ProtectionClass::II)
        return atMost(0.25, u"mA"_s, iet4);
    if (about.heatingKilowatts)
        return atMost(std::clamp(0.75 * *about.heatingKilowatts, 0.75, 5.0), u"mA"_s, iet4, u"with heating elements"_s);
    return atMost(about.portable ? 0.75 : 3.5, u"mA"_s, iet4, about.portable ? u"hand-held and portable"_s : u"movable, stationary and fixed"_s);
}

/// A limit on the hot check in the other measure, through its network.
Limit throughNetwork(const Limit &limit, double hertz, bool toVolts)
{
    const auto other = [&](double value) {
        const double base = value * limit.measure().factor();
        return toVolts ? base * leakageNetworkOhms(hertz) : 1000 * leakageAmperes(base, hertz);
    };
    if (!limit.high() || limit.low())
        return limit;
    const auto parsed = Limit::parse(u"<= %1 %2"_s.arg(QString::number(other(*limit.high()), 'g', 6), toVolts ? u"V"_s : u"mA"_s));
    return parsed ? *parsed : limit;
}

} // namespace

QString rulesName(SafetyRules rules)
{
    switch (rules) {
    case SafetyRules::Iet4:
        return iet4;
    case SafetyRules::Iet5:
        return iet5;
    case SafetyRules::Makers:
        return u"makers' leakage check, 1.5 kΩ ∥ 0.15 µF"_s;
    case SafetyRules::En50678:
        break;
    }
    return u"EN 50678 / VDE 0701-0702"_s;
}

QList<SafetyTest> safetyTests(SafetyRules rules, std::optional<ProtectionClass> protectionClass)
{
    using enum SafetyTest;
    if (rules == SafetyRules::Makers)
        return {Look, ColdResistance, HotLeakage, Heat};
    const bool vdeRules = rules == SafetyRules::En50678;
    QList<SafetyTest> tests{Look};
    if (protectionClass != ProtectionClass::II && protectionClass != ProtectionClass::III)
        tests << Earth;
    tests << Insulation;
    if (protectionClass == ProtectionClass::III)
        return tests << Heat;
    if (protectionClass != ProtectionClass::II)
        tests << EarthCurrent;
    if (vdeRules || protectionClass != ProtectionClass::I)
        tests << TouchCurrent;
    if (vdeRules)
        tests << SubstituteLeakage;
    return tests << Heat;
}

QString safetyTestText(SafetyTest test)
{
    // The lines of resources/acceptance/electrical_safety.json where it has one.
    switch (test) {
    case SafetyTest::Look:
        return u"Plug, lead, grip and fuse looked at; the cover is whole and nothing live can be reached"_s;
    case SafetyTest::Earth:
        return u"Protective earth: touchable metal to the earth pin"_s;
    case SafetyTest::Insulation:
        return u"Insulation at 500 V DC: live and neutral together to touchable metal"_s;
    case SafetyTest::EarthCurrent:
        return u"Protective conductor current"_s;
    case SafetyTest::TouchCurrent:
        return u"Touch current at every metal part that can be touched"_s;
    case SafetyTest::SubstituteLeakage:
        return u"Substitute leakage current: live and neutral together to touchable metal"_s;
    case SafetyTest::ColdResistance:
        return u"Cold leakage check: bridged plug pins to each metal part, plug out, switch on"_s;
    case SafetyTest::HotLeakage:
        return u"Hot leakage check: each metal part to earth over 1.5 kΩ ∥ 0.15 µF, both plug ways, switch on and off"_s;
    case SafetyTest::Heat:
        break;
    }
    return u"Lead cool and nothing too hot after hours of running"_s;
}

bool isLookedAt(SafetyTest test)
{
    return test == SafetyTest::Look || test == SafetyTest::Heat;
}

Expected<SafetyLimit> safetyLimit(const SafetyCase &about, SafetyTest test, bool inVolts)
{
    const QString did = u"There is no limit for this test"_s;
    if (isLookedAt(test))
        return SafetyLimit{{}, u"common practice, no source"_s, {}};
    if (!safetyTests(about.rules, about.protectionClass).contains(test))
        return Trouble{did, u"%1 does not ask for it%2"_s.arg(rulesName(about.rules), about.protectionClass ? u" on protection class "_s + toWord(*about.protectionClass) : QString()),
                       u"choose the rule set that does"_s};
    if (test == SafetyTest::HotLeakage)
        return inVolts ? atMost(0.75, u"V"_s, makers, u"0.5 mA; stricter sets ask for 0.35 V or 0.15 V"_s) : atMost(0.5, u"mA"_s, makers, u"0.75 V over the network"_s);
    if (test == SafetyTest::ColdResistance)
        return atLeast(1, u"MΩ"_s, makers, u"1 to 5.2 MΩ where a return path is designed, else very high"_s);
    if (!about.protectionClass)
        return Trouble{did, u"the unit's protection class is not known"_s, u"say it first: safety class I, II or III"_s};
    return about.rules == SafetyRules::En50678 ? byVde(about, *about.protectionClass, test) : byIet(about, *about.protectionClass, test);
}

Expected<Limit> stricterLimit(const Limit &rules, const Limit &own, double hertz)
{
    const auto symbol = [](const Limit &limit) { return limit.measure().symbol(); };
    Limit converted = own;
    if (symbol(rules) == u"V" && symbol(own) == u"A")
        converted = throughNetwork(own, hertz, true);
    else if (symbol(rules) == u"A" && symbol(own) == u"V")
        converted = throughNetwork(own, hertz, false);
    const auto same = converted.in(rules.measure());
    if (!same)
        return same.trouble();
    const bool laxHigh = rules.high() && (!same->high() || *same->high() > *rules.high());
    const bool laxLow = rules.low() && (!same->low() || *same->low() < *rules.low());
    if (laxHigh || laxLow)
        return Trouble{u"The set's own limit does not count"_s, u"%1 is laxer than the rule set's %2"_s.arg(own.display(), rules.display()), u"leave it out, or choose the rule set that asks for it"_s};
    return converted;
}

} // namespace ts
