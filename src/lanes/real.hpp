#pragma once
/// Number types of the kernels. The same templates work on one double and on several at
/// once ("lanes", vectors of the compiler): every lane does what one double would do,
/// to the bit, because the operations are elementwise and none is contracted or
/// reordered.
///
/// Code for wider vectors than the base of the platform is compiled in a namespace of
/// its own (GIBBSTEEL_LANE_NAMESPACE, set by lanes/*_lanes.cpp; `one` for double),
/// so that no function of it can be picked for a machine without them. For the same
/// reason these headers serve one number of lanes per source file: no unity builds.

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>

#ifndef GIBBSTEEL_LANE_NAMESPACE
#define GIBBSTEEL_LANE_NAMESPACE one
#endif

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

/// Numbers in a Real, and the type of its bits.
template <class Real>
struct LaneTraits;

template <>
struct LaneTraits<double> {
  static constexpr std::size_t kCount = 1;
  using Bits = std::uint64_t;
};
inline double lane(double x, std::size_t) noexcept { return x; }
inline void set_lane(double& x, std::size_t, double value) noexcept { x = value; }
inline bool lane(bool x, std::size_t) noexcept { return x; }
inline void set_lane(bool& x, std::size_t, bool value) noexcept { x = value; }
inline bool any(bool mask) noexcept { return mask; }

#ifdef GIBBSTEEL_LANE_COUNT
#define GIBBSTEEL_VECTOR __attribute__((vector_size(8 * GIBBSTEEL_LANE_COUNT)))
typedef double Lanes GIBBSTEEL_VECTOR;
typedef std::uint64_t LaneBits GIBBSTEEL_VECTOR;
using LaneMask = decltype(Lanes{} < Lanes{});  ///< -1: true, 0: false
#undef GIBBSTEEL_VECTOR

template <>
struct LaneTraits<Lanes> {
  static constexpr std::size_t kCount = GIBBSTEEL_LANE_COUNT;
  using Bits = LaneBits;
};
inline double lane(const Lanes& x, std::size_t i) noexcept { return x[i]; }
inline void set_lane(Lanes& x, std::size_t i, double value) noexcept { x[i] = value; }
inline bool lane(const LaneMask& x, std::size_t i) noexcept { return x[i] != 0; }
inline void set_lane(LaneMask& x, std::size_t i, bool value) noexcept {
  x[i] = value ? -1 : 0;
}
#ifdef GIBBSTEEL_LANE_ANY  // an instruction of the machine
inline bool any(const LaneMask& mask) noexcept { return GIBBSTEEL_LANE_ANY(mask) != 0; }
#else
inline bool any(const LaneMask& mask) noexcept {
  auto bits = mask[0];
  for (std::size_t i = 0; i < GIBBSTEEL_LANE_COUNT; ++i) bits |= mask[i];
  return bits != 0;
}
#endif
#endif

template <class Real>
using MaskOf = decltype(Real{} < Real{});

template <class Real>
Real magnitude(const Real& x) noexcept {
  return x < 0.0 ? -x : x;
}
template <class Real>
Real smaller(const Real& a, const Real& b) noexcept {
  return b < a ? b : a;
}
template <class Real>
Real larger(const Real& a, const Real& b) noexcept {
  return a < b ? b : a;
}

template <class Real>
void set_zero(Real* begin, std::size_t count) noexcept {
  for (std::size_t i = 0; i < count; ++i) begin[i] = Real{};
}

/// function(x) for one lane after the other.
template <class Real, class Function>
Real by_lane(const Real& x, const Function& function) noexcept {
  Real result = x;
  for (std::size_t i = 0; i < LaneTraits<Real>::kCount; ++i)
    set_lane(result, i, function(lane(x, i)));
  return result;
}

template <class Real>
Real square_root(const Real& x) noexcept {
  return by_lane(x, [](double value) { return std::sqrt(value); });
}
#ifdef GIBBSTEEL_LANE_ROOT
template <>
inline Lanes square_root(const Lanes& x) noexcept {
  return GIBBSTEEL_LANE_ROOT(x);
}
#endif

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE
