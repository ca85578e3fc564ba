#pragma once

#include <cmath>

namespace ts {

/// A running sum that keeps what each addition loses (Neumaier 1974).
class KeptSum {
public:
    void add(double value)
    {
        const double next = m_sum + value;
        m_lost += std::abs(m_sum) >= std::abs(value) ? (m_sum - next) + value : (value - next) + m_sum;
        m_sum = next;
    }
    [[nodiscard]] double value() const { return m_sum + m_lost; }

private:
    double m_sum = 0;
    double m_lost = 0;
};

} // namespace ts
