#pragma once

#include "model/values/quantity.h"

namespace ts {

/// What is wanted of a reading. Low and high are inclusive (../checks README choice 2) and stand in measure().
class Limit {
public:
    Limit() = default; ///< none: nothing is wanted

    /// Reads every form of the jot line: "12 V 5%", "12 V ± 5 %", "12 V 0.5 V", "12 V +-0.5 V", "±50 mV" (around zero), "35..65 gf.cm", "35 to 65 gf.cm", "<= 0.12 %", ">= 2 MΩ",
    /// "< 0.12 %", "> 2 MΩ" (taken as inclusive), "387 mV 2dB" (amplitude decibels: × and ÷ 10^(dB/20); a power, W, VA or var: 10^(dB/10)). A limit without unit takes `expected`.
    /// A bare "12 V" is an aim without tolerance: nominal is set, low and high are not. Refuses low above high, a
    /// negative or zero tolerance that is not meant, a tolerance of another measure, dB around zero, rubbish.
    [[nodiscard]] static Expected<Limit> parse(QStringView text, const Measure &expected = {});

    [[nodiscard]] std::optional<double> low() const { return m_low; }
    [[nodiscard]] std::optional<double> high() const { return m_high; }
    [[nodiscard]] std::optional<double> nominal() const { return m_nominal; } ///< the middle that was named, if any
    [[nodiscard]] const Measure &measure() const { return m_measure; }
    [[nodiscard]] bool isNone() const { return m_text.isEmpty(); }
    [[nodiscard]] bool bounded() const { return m_low || m_high; }
    /// Low and high in another prefix of the same symbol ("387 mV" limits for a reading in V); refused for another symbol.
    [[nodiscard]] Expected<Limit> in(const Measure &other) const;
    /// For people: "12 V ± 5 %", "35 to 65 gf·cm", "up to 0.12 %", "at least 2 MΩ", "387 mV ± 2 dB".
    [[nodiscard]] QString display() const;
    /// Canonical jot form, reads back as an equal Limit: "12 V 5%".
    [[nodiscard]] QString text() const { return m_text; }
    bool operator==(const Limit &) const = default;

private:
    std::optional<double> m_low;
    std::optional<double> m_high;
    std::optional<double> m_nominal;
    Measure m_measure;
    QString m_text;
};

} // namespace ts
