#pragma once

#include "model/values/expected.h"

namespace ts {

/// What a reading says of itself beside its figure.
enum class Sense { Plain, About, Below, Above, OverRange }; // "11.9 V", "about 12 V", "< 0.1 %", "> 200 MΩ", "OL"

/// A unit of measure as people write it: an SI prefix and a symbol ("m" + "V"), or a plain word ("gf·cm", "%").
/// Two units of one symbol are comparable, whatever their prefix; any others are not.
class Measure {
public:
    Measure() = default; ///< no unit: a bare number
    /// Reads "mV", "MΩ", "Mohm", "kR", "uF", "µA", "Hz", "gf.cm", "%", "dB", "rpm", "°C", "x" …: known symbols get their prefix
    /// split off (V A W Ω F H Hz s m g N Pa VA K bar var lx), anything else of letters and signs (at most 16 characters, no
    /// spaces) is kept whole as a unit of its own. Refuses empty text, digits at the start, control characters.
    [[nodiscard]] static Expected<Measure> parse(QStringView text);

    [[nodiscard]] QString symbol() const { return m_symbol; } ///< "V", "Ω", "gf·cm"; without prefix
    [[nodiscard]] int exponent() const { return m_exponent; } ///< power of ten of the prefix: m is -3
    [[nodiscard]] QString text() const;                       ///< "mV", "MΩ"; canonical: µ and Ω, middle dot in products
    [[nodiscard]] double factor() const;                      ///< 10^exponent
    [[nodiscard]] bool isNone() const { return m_symbol.isEmpty(); }
    [[nodiscard]] bool comparableWith(const Measure &other) const { return m_symbol == other.m_symbol; }
    bool operator==(const Measure &) const = default;

private:
    friend class Quantity;
    QString m_symbol;
    int m_exponent = 0;
};

/// A number with its measure, as shown ("11.92" "V"), and its sense.
class Quantity {
public:
    Quantity() = default;
    Quantity(double value, Measure measure, Sense sense = Sense::Plain) : m_value(value), m_measure(std::move(measure)), m_sense(sense) {}

    /// Reads a value with or without unit: "11.92 V", "-23,5mV", "4k7", "2R2", "0R5", "100n", "1e3 Hz", "200 MΩ", "about 12 V", "~12 V",
    /// "< 0.1 %", "> 200 MΩ", "OL", "OL MΩ". A number that ends in an SI prefix or letter code takes `expected`'s symbol where that is
    /// given ("100n" with F is 100 nF; "4k7" alone is 4.7 kΩ by IEC 60062 habit only if `expected` says Ω or the code uses R,
    /// else a bare 4.7 with prefix k of no symbol: Measure symbol "" exponent 3). Refuses rubbish, NaN, infinity, trailing words.
    [[nodiscard]] static Expected<Quantity> parse(QStringView text, const Measure &expected = {});

    [[nodiscard]] double value() const { return m_value; } ///< in measure(); for OverRange 0, which means nothing
    [[nodiscard]] const Measure &measure() const { return m_measure; }
    [[nodiscard]] Sense sense() const { return m_sense; }
    [[nodiscard]] double base() const; ///< value without prefix: 96 mV gives 0.096
    /// The same amount in another prefix of the same symbol; refused for another symbol.
    [[nodiscard]] Expected<Quantity> in(const Measure &other) const;
    /// "11.92 V", "about 12 V", "< 0.1 %", "over range"; shortest figures that read back the same.
    [[nodiscard]] QString text() const;
    bool operator==(const Quantity &) const = default;

private:
    double m_value = 0;
    Measure m_measure;
    Sense m_sense = Sense::Plain;
};

/// A plain number: decimal comma or point, sign, exponent; no grouping, no unit. Refuses rubbish, NaN and infinity by name.
[[nodiscard]] Expected<double> parseNumber(QStringView text);
/// The shortest decimal text that reads back as the same number: "0.4", "1200", "2.5e-07".
[[nodiscard]] QString numberText(double value);

} // namespace ts
