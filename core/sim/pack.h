// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cmath>
#include <cstddef>

#ifdef __SSE2__
#include <emmintrin.h>
#endif

// Everything here is inlined into its caller, so how a vector would be passed between functions never matters.
#pragma GCC diagnostic ignored "-Wpsabi"

#define LITTORAL_INLINE [[gnu::always_inline]] inline

/// Several members side by side. A Pack holds one number of each of kLanes members and computes on all of them at
/// once;
/// formulas are templates over Real, which is double for one member or Pack for several.
namespace littoral::sim {

inline constexpr std::size_t kLanes = 4;

/// A struct round the compiler's vector type, for its alignment: the bare type is aligned to what the base instruction
/// set wants, which is less than what code compiled for a wider one relies on.
struct alignas(kLanes * sizeof(double)) Pack
{
    using Vector = double __attribute__((vector_size(kLanes * sizeof(double))));
    Vector v{};

    LITTORAL_INLINE double operator[](std::size_t lane) const { return v[lane]; }
    LITTORAL_INLINE double& operator[](std::size_t lane) { return reinterpret_cast<double*>(&v)[lane]; }

    LITTORAL_INLINE Pack& operator+=(const Pack& b) { return v += b.v, *this; }
    LITTORAL_INLINE Pack& operator-=(const Pack& b) { return v -= b.v, *this; }
    LITTORAL_INLINE Pack& operator*=(const Pack& b) { return v *= b.v, *this; }
    LITTORAL_INLINE Pack& operator+=(double b) { return v += b, *this; }
    LITTORAL_INLINE Pack& operator/=(double b) { return v /= b, *this; }

    LITTORAL_INLINE friend Pack operator-(const Pack& a) { return {-a.v}; }
    LITTORAL_INLINE friend Pack operator+(const Pack& a, const Pack& b) { return {a.v + b.v}; }
    LITTORAL_INLINE friend Pack operator-(const Pack& a, const Pack& b) { return {a.v - b.v}; }
    LITTORAL_INLINE friend Pack operator*(const Pack& a, const Pack& b) { return {a.v * b.v}; }
    LITTORAL_INLINE friend Pack operator/(const Pack& a, const Pack& b) { return {a.v / b.v}; }
    LITTORAL_INLINE friend Pack operator+(const Pack& a, double b) { return {a.v + b}; }
    LITTORAL_INLINE friend Pack operator-(const Pack& a, double b) { return {a.v - b}; }
    LITTORAL_INLINE friend Pack operator*(const Pack& a, double b) { return {a.v * b}; }
    LITTORAL_INLINE friend Pack operator+(double a, const Pack& b) { return {a + b.v}; }
    LITTORAL_INLINE friend Pack operator-(double a, const Pack& b) { return {a - b.v}; }
    LITTORAL_INLINE friend Pack operator*(double a, const Pack& b) { return {a * b.v}; }
};

/// The larger of a and b, lane by lane.
LITTORAL_INLINE double larger(double a, double b)
{
    return a > b ? a : b;
}

LITTORAL_INLINE Pack larger(const Pack& a, const Pack& b)
{
    return {a.v > b.v ? a.v : b.v};
}

LITTORAL_INLINE double magnitude(double a)
{
    return std::fabs(a);
}

LITTORAL_INLINE Pack magnitude(const Pack& a)
{
    return larger(a, -a);
}

/// Square root, lane by lane; arguments must not be negative.
LITTORAL_INLINE double root(double a)
{
    return std::sqrt(a);
}

LITTORAL_INLINE Pack root(const Pack& a)
{
    Pack result = a;
#ifdef __SSE2__
    for (std::size_t i = 0; i < kLanes; i += 2) {
        const __m128d half = _mm_sqrt_pd(_mm_set_pd(a.v[i + 1], a.v[i]));
        result.v[i] = half[0];
        result.v[i + 1] = half[1];
    }
#else
    for (std::size_t i = 0; i < kLanes; ++i) {
        result.v[i] = std::sqrt(a.v[i]);
    }
#endif
    return result;
}

/// The largest lane; NaN when any lane is NaN.
LITTORAL_INLINE double largestLane(double a)
{
    return a;
}

LITTORAL_INLINE double largestLane(const Pack& a)
{
    double largest = a[0];
    for (std::size_t i = 1; i < kLanes; ++i) {
        largest = largest >= a[i] || std::isnan(largest) ? largest : a[i];
    }
    return largest;
}

template <typename Real> LITTORAL_INLINE Real broadcast(double value)
{
    return Real{} + value;
}

} // namespace littoral::sim
