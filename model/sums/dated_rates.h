#pragma once

#include "model/values/money.h"

#include <QDate>
#include <QList>

namespace ts {

/// A percentage that changes by law from a day on: "20", or "17.5; 20 from 2011-01-04".
class DatedRates {
public:
    DatedRates() = default;
    /// Refuses rubbish, a percentage above 100, a day that is none, two for the same day. Empty text is no rate at all.
    [[nodiscard]] static Expected<DatedRates> parse(const QString &text);
    [[nodiscard]] bool isEmpty() const { return m_steps.isEmpty(); }
    /// The one in force on that day; nothing before the first.
    [[nodiscard]] std::optional<Rate> on(const QDate &day) const;
    [[nodiscard]] std::optional<Rate> newest() const;
    bool operator==(const DatedRates &) const = default;

private:
    struct Step {
        QDate from; ///< invalid: from the beginning
        Rate rate;
        bool operator==(const Step &) const = default;
    };
    QList<Step> m_steps; ///< oldest first
};

} // namespace ts
