#include "model/values/id.h"

#include "model/values/clock.h"

#include <array>

namespace ts {

namespace {
constexpr quint32 countLimit = 0x1000; // 12 bits, RFC 9562 section 6.2 method 1
}

IdMaker::IdMaker(const Clock &clock) : m_clock(clock), m_random(QRandomGenerator::securelySeeded()) {}

IdMaker::IdMaker(const Clock &clock, quint32 seed) : m_clock(clock), m_random(seed) {}

QUuid IdMaker::nextUuid()
{
    const qint64 ms = m_clock.now().toMSecsSinceEpoch();
    if (ms > m_lastMs) {
        m_lastMs = ms;
        m_count = 0;
    } else if (++m_count >= countLimit) { // the counter is full, or the clock went back: borrow from the next millisecond
        ++m_lastMs;
        m_count = 0;
    }
    const quint64 random = m_random.generate64();
    std::array<quint8, 16> bytes{};
    for (size_t i = 0; i < 6; ++i)
        bytes[i] = static_cast<quint8>(m_lastMs >> (40 - 8 * static_cast<int>(i)));
    bytes[6] = static_cast<quint8>(0x70 | (m_count >> 8));
    bytes[7] = static_cast<quint8>(m_count);
    for (size_t i = 8; i < 16; ++i)
        bytes[i] = static_cast<quint8>(random >> (8 * (i - 8)));
    bytes[8] = static_cast<quint8>(0x80 | (bytes[8] & 0x3f)); // variant bits 10
    return QUuid::fromRfc4122(QByteArrayView(reinterpret_cast<const char *>(bytes.data()), 16));
}

} // namespace ts
