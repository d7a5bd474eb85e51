// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>

namespace littoral {

/// Seeded pseudo-random numbers whose sequence is ours, not the standard library's: the same seed and stream give the
/// same numbers with every compiler. Generator: xoshiro256++ (D. Blackman and S. Vigna, 2019, public domain), its state
/// filled by SplitMix64 (G. Steele, D. Lea and C. Flood, 2014). Not for secrets. One object per thread.
class Random final
{
public:
    /// Different streams of one seed are independent for all practical purposes.
    explicit Random(std::uint64_t seed, std::uint64_t stream = 0);

    /// 64 uniformly distributed bits.
    [[nodiscard]] std::uint64_t bits();
    /// Uniform in the open interval (0, 1).
    [[nodiscard]] double uniform();
    /// Standard normal (polar method, G. Marsaglia and T. Bray, 1964).
    [[nodiscard]] double normal();

private:
    std::array<std::uint64_t, 4> m_state{};
    double m_spare = 0.0;
    bool m_hasSpare = false;
};

/// Folds one more value into a seed: hash of a tank's identity and readings, one item at a time.
[[nodiscard]] std::uint64_t mixSeed(std::uint64_t seed, std::uint64_t value);

} // namespace littoral
