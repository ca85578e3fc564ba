#pragma once

#include <QtGlobal>

#include <array>

namespace ts {

/// Random numbers by counting: the same counter and key always give the same four, whoever asks and in whatever order. That is
/// what makes a forecast the same on one thread and on two. Philox4x32 with ten rounds (Salmon, Moraes, Dror and Shaw, Parallel
/// random numbers: as easy as 1, 2, 3, SC11; known answers in the Random123 distribution).
[[nodiscard]] constexpr std::array<quint32, 4> philox(std::array<quint32, 4> counter, std::array<quint32, 2> key)
{
    for (int round = 0; round < 10; ++round) {
        const quint64 first = quint64(0xD2511F53) * counter[0];
        const quint64 second = quint64(0xCD9E8D57) * counter[2];
        counter = {static_cast<quint32>(second >> 32) ^ counter[1] ^ key[0], static_cast<quint32>(second),
                   static_cast<quint32>(first >> 32) ^ counter[3] ^ key[1], static_cast<quint32>(first)};
        key = {key[0] + 0x9E3779B9, key[1] + 0xBB67AE85};
    }
    return counter;
}

/// The middle of the word's share of (0, 1).
[[nodiscard]] constexpr double unitShare(quint32 word)
{
    return (static_cast<double>(word) + 0.5) * (1.0 / 4294967296.0);
}

/// Four chances between 0 and 1 for a draw, of the group asked for.
[[nodiscard]] constexpr std::array<double, 4> chances(quint32 draw, quint32 group, quint64 seed)
{
    const auto words = philox({draw, group, 0, 0}, {static_cast<quint32>(seed), static_cast<quint32>(seed >> 32)});
    return {unitShare(words[0]), unitShare(words[1]), unitShare(words[2]), unitShare(words[3])};
}

} // namespace ts
