#include "model/demo/dice.h"

namespace ts {

quint32 Dice::next()
{
    // Xorshift, 32 bits: Marsaglia, Journal of Statistical Software 8 (14), 2003.
    m_state ^= m_state << 13;
    m_state ^= m_state >> 17;
    m_state ^= m_state << 5;
    return m_state;
}

double Dice::real(double low, double high)
{
    return low + (high - low) * (next() / 4294967296.0);
}

int Dice::whole(int low, int high)
{
    return low + static_cast<int>(next() % static_cast<quint32>(high - low + 1));
}

} // namespace ts
