#pragma once

#include "model/values/expected.h"

#include <QList>

namespace ts {

/// An ISO 4217 currency: its three-letter code and how many decimals its minor unit has.
class Currency {
public:
    Currency() = default; ///< none; only for "not set"
    /// The currency of a code such as "GBP" (any case), or a sign that names one (£ € $); refuses unknown ones by name.
    [[nodiscard]] static Expected<Currency> parse(QStringView text);

    [[nodiscard]] QString code() const { return m_code; }
    [[nodiscard]] int decimals() const { return m_decimals; }
    /// The usual sign ("£"), or the code and a no-break space where there is none.
    [[nodiscard]] QString sign() const;
    [[nodiscard]] bool isNull() const { return m_code.isEmpty(); }
    bool operator==(const Currency &) const = default;

private:
    QString m_code;
    int m_decimals = 2;
};

/// How a sum that does not come out even is brought to whole minor units; always named at the call. By size,
/// so that money back mirrors money paid: half up goes away from zero, down towards it.
enum class Rounding { HalfUp, Down, Up };

/// Whole minor units of one currency. Never a double.
class Money {
public:
    Money() = default; ///< zero of no currency; adds to any
    Money(qint64 minor, Currency currency) : m_minor(minor), m_currency(std::move(currency)) {}

    /// Reads "30", "8.40", "8,40", "£8.40", "8.40 GBP", "GBP 8.40", "-3", "1 234,50", "1,234.50"; `fallback` where no
    /// currency is written. Refuses rubbish, too many decimals, two currencies, and anything past ± 9e15 minor units.
    [[nodiscard]] static Expected<Money> parse(QStringView text, const Currency &fallback);

    [[nodiscard]] qint64 minor() const { return m_minor; }
    [[nodiscard]] const Currency &currency() const { return m_currency; }
    [[nodiscard]] bool isZero() const { return m_minor == 0; }
    /// "8.40": decimal point, no sign of currency, no grouping; for files and JSON.
    [[nodiscard]] QString decimal() const;
    /// "£8.40" for people; grouping by comma-free thin spaces is left to the views' locale.
    [[nodiscard]] QString display() const;

    /// Same currency only (a null currency takes the other's); Q_ASSERTs otherwise, so sort by currency first.
    Money operator+(const Money &other) const;
    Money operator-(const Money &other) const;
    Money operator-() const { return {-m_minor, m_currency}; }
    Money &operator+=(const Money &other) { return *this = *this + other; }
    [[nodiscard]] Money times(qint64 count) const { return {m_minor * count, m_currency}; }
    /// This × numerator / denominator, rounded as named; exact in 128 bits in between.
    [[nodiscard]] Money scaled(qint64 numerator, qint64 denominator, Rounding rounding) const;
    /// Shares in proportion to the weights that add up to this exactly (largest remainder, ties to the earlier).
    /// Weights below 0, none at all or all 0 are refused.
    [[nodiscard]] Expected<QList<Money>> shared(const QList<double> &weights) const;

    bool operator==(const Money &) const = default;
    bool operator<(const Money &other) const { return m_minor < other.m_minor; }

private:
    qint64 m_minor = 0;
    Currency m_currency;
};

/// A percentage kept exactly, in millionths: 12.8 % is 128000.
class Rate {
public:
    Rate() = default;
    explicit Rate(qint64 millionths) : m_millionths(millionths) {}
    /// Reads "12.8 %", "12,8%" or "12.8" (percent); at most four decimals of a percent.
    [[nodiscard]] static Expected<Rate> parse(QStringView text);
    [[nodiscard]] qint64 millionths() const { return m_millionths; }
    /// "12.8": percent without trailing zeros.
    [[nodiscard]] QString percent() const;
    /// This share of a sum, rounded as named.
    [[nodiscard]] Money of(const Money &money, Rounding rounding) const { return money.scaled(m_millionths, 1'000'000, rounding); }
    bool operator==(const Rate &) const = default;

private:
    qint64 m_millionths = 0;
};

} // namespace ts
