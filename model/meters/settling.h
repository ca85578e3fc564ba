#pragma once

#include "model/values/quantity.h"

#include <QList>

namespace ts {

/// Whether a value has come to rest: so many readings in a row that differ by no more than one step of the last figure.
class Settling {
public:
    explicit Settling(int inARow = 4) : m_wanted(inARow) {}

    /// Takes the next reading and says whether the last ones agree now. `step`: what one count of the meter is, in the reading's unit. Over range
    /// settles as well; another unit, or over range after a figure, begins anew.
    bool add(const Quantity &value, double step);
    void clear() { m_last.clear(); }
    /// How many of the last readings agree, at most as many as are wanted.
    [[nodiscard]] int agreeing() const { return static_cast<int>(m_last.size()); }
    [[nodiscard]] int wanted() const { return m_wanted; }
    [[nodiscard]] bool isSettled() const { return agreeing() >= m_wanted; }

private:
    int m_wanted;
    QList<Quantity> m_last;
};

/// Takes each settled value once: after one was taken, the next only after the readings moved away from it (the probe was lifted) and came to
/// rest again.
class TakenOnce {
public:
    /// Whether this reading is to be taken now.
    [[nodiscard]] bool ready(const Quantity &value, double step, bool settled);
    void taken(const Quantity &value);
    void clear() { m_taken.reset(); }

private:
    std::optional<Quantity> m_taken;
};

} // namespace ts
