#pragma once
/// Logarithm and exponential in any number type, without the C library: the same bits
/// wherever they run.

#include "lanes/real.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

inline constexpr double kLn2High = 0x1.62e42fee00000p-1;
inline constexpr double kLn2Low = 0x1.a39ef35793c76p-33;

/// ln x for normal numbers x > 0, within 1 unit in the last place: x = 2^k m with
/// sqrt(1/2) <= m < sqrt(2), and with f = m - 1, s = f / (2 + f), z = s^2
///   ln m = f - (f^2/2 - s (f^2/2 + R)),  R = 2 z/3 + 2 z^2/5 + ...            Eq. (F1)
/// the series of the inverse hyperbolic tangent, of which ten terms are left where
/// z < 0.0295.
template <class Real>
Real logarithm_of_normal(const Real& x) noexcept {
  using Bits = typename LaneTraits<Real>::Bits;
  constexpr std::uint64_t kOne = 0x3ff0000000000000, kRootHalf = 0x3fe6a09e667f3bcd;
  constexpr std::uint64_t kFraction = 0x000fffffffffffff, kTwo52 = 0x4330000000000000;
  const Bits bits = __builtin_bit_cast(Bits, x) + (kOne - kRootHalf);
  const Real m = __builtin_bit_cast(Real, (bits & kFraction) + kRootHalf);
  const Real k = __builtin_bit_cast(Real, (bits >> 52) | kTwo52) - (0x1p52 + 1023.0);
  const Real f = m - 1.0, half = 0.5 * f * f, s = f / (2.0 + f), z = s * s;
  Real series = z * (2.0 / 21.0) + 2.0 / 19.0;
  series = (series * z + 2.0 / 17.0) * z + 2.0 / 15.0;
  series = (series * z + 2.0 / 13.0) * z + 2.0 / 11.0;
  series = (series * z + 2.0 / 9.0) * z + 2.0 / 7.0;
  series = (series * z + 2.0 / 5.0) * z + 2.0 / 3.0;
  return k * kLn2High + (f - (half - (s * (half + z * series) + k * kLn2Low)));
}

/// True when every number in every lane is normal and > 0.
template <class Real>
bool all_normal(const Real* x, std::size_t n) noexcept {
  Real least = x[0], most = x[0];
  MaskOf<Real> odd = least != least;
  for (std::size_t i = 0; i < n; ++i) {
    least = smaller(least, x[i]);
    most = larger(most, x[i]);
    odd |= x[i] != x[i];
  }
  odd |= least < std::numeric_limits<double>::min();
  odd |= most > std::numeric_limits<double>::max();
  return !any(odd);
}

/// ln x for any x, as the C library has it where x is not normal: lane by lane, for
/// what is in one must not change what another gets.
template <class Real>
Real logarithm(const Real& x) noexcept {
  if (all_normal(&x, 1)) return logarithm_of_normal(x);
  return by_lane(x, [](double one) {
    return all_normal(&one, 1) ? logarithm_of_normal(one) : std::log(one);
  });
}

/// e^x within 2 units in the last place, for -700 <= x <= 700 (beyond, that of the
/// end): with x = k ln 2 + r, |r| <= ln 2 / 2,
///   e^x = 2^k (1 + r + r^2/2! + ... + r^13/13!)                               Eq. (F2)
template <class Real>
Real exponential(const Real& x) noexcept {
  using Bits = typename LaneTraits<Real>::Bits;
  constexpr double kShift = 0x1.8p52;  // makes the last bits of a sum a whole number
  const Real least = Real{} - 700.0, most = Real{} + 700.0;
  const Real within = smaller(larger(x, least), most);
  const Real shifted = within * (1.0 / 0x1.62e42fefa39efp-1) + kShift;
  const Real k = shifted - kShift;
  const Real r = (within - k * kLn2High) - k * kLn2Low;
  Real p = r * (1.0 / 6227020800.0) + 1.0 / 479001600.0;
  p = (p * r + 1.0 / 39916800.0) * r + 1.0 / 3628800.0;
  p = (p * r + 1.0 / 362880.0) * r + 1.0 / 40320.0;
  p = (p * r + 1.0 / 5040.0) * r + 1.0 / 720.0;
  p = (p * r + 1.0 / 120.0) * r + 1.0 / 24.0;
  p = (p * r + 1.0 / 6.0) * r + 0.5;
  const Real value = 1.0 + (r + r * r * p);
  const Bits exponent = (__builtin_bit_cast(Bits, shifted) + 1023) << 52;
  return value * __builtin_bit_cast(Real, exponent);
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE
