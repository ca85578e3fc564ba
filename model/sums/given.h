#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// Reads what was given to a sum, key by key. The first thing that is wrong is kept, and a harmless 1 is answered for it, so that
/// a sum asks for everything first and looks once at wrong() before it works anything out.
class Given {
public:
    Given(QString sum, const SumInput &input);

    [[nodiscard]] bool has(QStringView key) const;
    [[nodiscard]] QString text(QStringView key) const; ///< trimmed; empty where it was not given
    /// In `unit` without prefix ("F": farads); a bare number is in that unit, "100n" and "4k7" take it. A volt may be written
    /// Vrms.
    double amount(QStringView key, QStringView unit);
    double positive(QStringView key, QStringView unit);                ///< the same, above zero
    double notNegative(QStringView key, QStringView unit);             ///< the same, zero or more
    std::optional<double> maybe(QStringView key, QStringView unit);    ///< the same as positive, where it was given
    double number(QStringView key);                                    ///< a plain number; "5 %" is 5, "33 1/3" is 33.333…
    qsizetype whole(QStringView key, qsizetype least, qsizetype most); ///< a whole number within these
    /// The place of the word among the choices; case aside.
    qsizetype choice(QStringView key, const QStringList &choices);

    /// Keeps this as what is wrong, unless something already is; answers nothing, for a sum to return.
    SumOutput refuse(const QString &wrong, const QString &todo = {});
    /// Keeps a trouble that came up elsewhere, with its own first part.
    SumOutput refuse(const Trouble &trouble);
    [[nodiscard]] const std::optional<Trouble> &wrong() const { return m_wrong; }

private:
    void refuseKey(QStringView key, const QString &why, const QString &todo);

    QString m_sum;
    const SumInput &m_input;
    std::optional<Trouble> m_wrong;
};

/// The work of a sum out of a function that reads the keys and answers the figures. What it answers does not count once
/// something was wrong; a key that was wrong it saw as 1.
[[nodiscard]] std::function<Expected<SumOutput>(const SumInput &)> worked(const QString &sum,
                                                                          std::function<SumOutput(Given &)> work);

/// A number or null.
[[nodiscard]] QJsonValue orNull(const std::optional<double> &number);

} // namespace ts
