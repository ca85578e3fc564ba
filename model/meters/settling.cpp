#include "model/meters/settling.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

bool alike(const Quantity &a, const Quantity &b, double within)
{
    const bool over = a.sense() == Sense::OverRange;
    if (over != (b.sense() == Sense::OverRange) || !a.measure().comparableWith(b.measure()))
        return false;
    // Two neighbouring figures differ by a step in their text and by a hair more in binary.
    return over || std::abs(a.base() - b.base()) <= within * (1 + 1e-9) + std::abs(a.base()) * 1e-12;
}

constexpr double awaySteps = 20;    // common practice, no source: a lifted probe moves further than the last figures do
constexpr double awayShare = 0.02;

} // namespace

bool Settling::add(const Quantity &value, double step)
{
    const double within = step * value.measure().factor();
    m_last << value;
    // All that remain differ from each other, not only from the newest, by a step at most.
    const auto parts = [&](const Quantity &each) {
        return std::any_of(m_last.begin(), m_last.end(), [&](const Quantity &other) { return !alike(each, other, within); });
    };
    while (m_last.size() > 1 && parts(m_last.last()))
        m_last.removeFirst();
    for (bool again = true; again && m_last.size() > 1;) {
        again = std::any_of(m_last.begin(), m_last.end(), parts);
        if (again)
            m_last.removeFirst();
    }
    while (m_last.size() > m_wanted)
        m_last.removeFirst();
    return isSettled();
}

bool TakenOnce::ready(const Quantity &value, double step, bool settled)
{
    if (!m_taken)
        return settled;
    const double away = std::max(awaySteps * step * value.measure().factor(), awayShare * std::abs(m_taken->base()));
    if (!alike(value, *m_taken, away))
        m_taken.reset();
    return settled && !m_taken;
}

void TakenOnce::taken(const Quantity &value)
{
    m_taken = value;
}

} // namespace ts
