// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/random.h"

#include <bit>
#include <cmath>

namespace littoral {

namespace {

std::uint64_t splitMix(std::uint64_t& state)
{
    state += 0x9e3779b97f4a7c15ULL;
    std::uint64_t z = state;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
}

} // namespace

std::uint64_t mixSeed(std::uint64_t seed, std::uint64_t value)
{
    std::uint64_t state = seed;
    state = splitMix(state) ^ value;
    return splitMix(state);
}

Random::Random(std::uint64_t seed, std::uint64_t stream)
{
    std::uint64_t state = mixSeed(seed, stream);
    for (auto& word : m_state) {
        word = splitMix(state);
    }
}

std::uint64_t Random::bits()
{
    const std::uint64_t result = std::rotl(m_state[0] + m_state[3], 23) + m_state[0];
    const std::uint64_t shifted = m_state[1] << 17;
    m_state[2] ^= m_state[0];
    m_state[3] ^= m_state[1];
    m_state[1] ^= m_state[2];
    m_state[0] ^= m_state[3];
    m_state[2] ^= shifted;
    m_state[3] = std::rotl(m_state[3], 45);
    return result;
}

double Random::uniform()
{
    // 52 bits, shifted by half a cell so that neither 0 nor 1 can come out.
    return (static_cast<double>(bits() >> 12) + 0.5) * 0x1.0p-52;
}

double Random::normal()
{
    if (m_hasSpare) {
        m_hasSpare = false;
        return m_spare;
    }
    double u = 0.0;
    double v = 0.0;
    double square = 0.0;
    do {
        u = 2.0 * uniform() - 1.0;
        v = 2.0 * uniform() - 1.0;
        square = u * u + v * v;
    } while (square >= 1.0 || square == 0.0);
    const double factor = std::sqrt(-2.0 * std::log(square) / square);
    m_spare = v * factor;
    m_hasSpare = true;
    return u * factor;
}

} // namespace littoral
