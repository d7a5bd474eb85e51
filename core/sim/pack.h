// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cmath>
#include <cstddef>

// Everything here is inlined into its caller, so how a vector would be passed between functions never matters.
#pragma GCC diagnostic ignored "-Wpsabi"

#define LITTORAL_INLINE [[gnu::always_inline]] inline

/// Several members side by side. A Pack holds one number of each of kLanes members and computes on all of them at
/// once; formulas are templates over Real, which is double for one member or Pack for several.
namespace littoral::sim {

/// Eight doubles fill one register of the widest kind (AVX-512) and two of the kind before.
inline constexpr std::size_t kLanes = 8;

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

LITTORAL_INLINE double magnitude(double a)
{
    return std::fabs(a);
}

LITTORAL_INLINE Pack magnitude(const Pack& a)
{
    using Bits = long long __attribute__((vector_size(kLanes * sizeof(long long))));
    return {reinterpret_cast<Pack::Vector>(reinterpret_cast<Bits>(a.v) & 0x7fffffffffffffffLL)};
}

/// a where it is above zero, else zero, exactly. Reckoned rather than chosen: where a pack takes several registers the
/// compiler compares lane by lane.
template <typename Real> LITTORAL_INLINE Real positive(const Real& a)
{
    return 0.5 * (a + magnitude(a));
}

/// The larger of a and b to within their rounding, lane by lane; NaN where either is.
template <typename Real> LITTORAL_INLINE Real larger(const Real& a, const Real& b)
{
    return 0.5 * ((a + b) + magnitude(a - b));
}

/// Square root, lane by lane; arguments must not be negative.
LITTORAL_INLINE double root(double a)
{
    return std::sqrt(a);
}

LITTORAL_INLINE Pack root(const Pack& a)
{
    // One instruction for all lanes where errno is not asked for (see the options of sim/run.cpp).
    Pack result;
    for (std::size_t i = 0; i < kLanes; ++i) {
        result.v[i] = std::sqrt(a.v[i]);
    }
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
