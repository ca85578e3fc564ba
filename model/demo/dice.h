#pragma once

#include <QtGlobal>

#include <iterator>

namespace ts {

/// Numbers from a seed, the same for the same seed.
class Dice {
public:
    explicit Dice(quint32 seed) : m_state(seed * 2654435761u + 0x9e3779b9u)
    {
        if (m_state == 0)
            m_state = 1; // from zero it would never leave zero
    }
    [[nodiscard]] quint32 next();
    [[nodiscard]] double real(double low, double high);
    [[nodiscard]] int whole(int low, int high); ///< both inclusive
    template <class List>
    [[nodiscard]] const auto &pick(const List &list)
    {
        return list[static_cast<size_t>(whole(0, static_cast<int>(std::size(list)) - 1))];
    }

private:
    quint32 m_state;
};

} // namespace ts
