#pragma once
/// From a state to martensite start, retained austenite and hardness, with the
/// derivative along the slope of the state. No bands, no texts: see hardening.cpp.

#include "gibbsteel/hardening.hpp"
#include "gibbsteel/state_slope.hpp"
#include "internal/along.hpp"

namespace gibbsteel::internal {

/// The equations that the options and the family lead to.
struct HardeningChoice {
  HardeningFamily family;
  PropertyEquation start, austenite, hardness, pinning;
  double offset = 0.0;           ///< added to the martensite start [C]
  double start_error = 0.0;      ///< standard deviation [C]
  double austenite_error = 0.0;  ///< standard deviation of the fraction
  double hardness_offset = 0.0;  ///< added to the hardness [HV]
  double hardness_error = 0.0;   ///< standard deviation [HV]
  double coldest_celsius = 20.0;
  double cooling_rate = 0.0;
  double particle_diameter = Estimate::kUnknown;  ///< [um]; for the grain limit alone
};

/// One per family that the options or the composition lead to, the largest share first.
struct SharedChoice {
  Along share;  ///< shares sum to 1; slope along the input of the state's slope
  HardeningChoice choice;
};
/// @param slope  of the state, or null: the slopes of shares are then 0
/// @throws InputError as hardening()
std::vector<SharedChoice> choose(const State& state, const HardeningOptions& options,
                                 const StateSlope* slope = nullptr);

/// What the equations start from: amounts are fractions of the steel.
struct HardeningBasis {
  bool austenite_present = false;
  bool by_mass = false;  ///< a phase has no volume: mass fractions stand for volume
  NamedValues weight_percent;        ///< of the austenite
  NamedValues weight_percent_slope;  ///< its derivative
  Along austenite, matrix, carbide;
  Along carbide_hardness;  ///< mean over the carbides [HV]; 0 without carbide
};

/// @param slope  of the state, or null: all derivatives are then 0
HardeningBasis hardening_basis(const State& state, const StateSlope* slope);

Along martensite_start(const HardeningBasis& basis, const HardeningChoice& choice);
/// Fraction of the austenite that stays.
/// @param start  martensite start [C]
Along retained_fraction(const HardeningBasis& basis, const HardeningChoice& choice,
                        Along start);
Along martensite_hardness(const HardeningBasis& basis, const HardeningChoice& choice);

/// Diameter at which carbide stops the grains [um]; NaN without carbide.
Along grain_limit(const HardeningBasis& basis, const HardeningChoice& choice);

/// Eq. (H20) twice: carbide not counted, and counted up to 12 % of the volume [HV].
/// With the offset of the family.
struct HardnessPair {
  Along bare, counted;
  Along mean() const { return 0.5 * (bare + counted); }
};
HardnessPair hardness(const HardeningBasis& basis, const HardeningChoice& choice,
                      Along martensite, Along retained);

/// Eq. (H21); NaN below 20 HRC, where the scale ends.
Along rockwell(Along hv);

}  // namespace gibbsteel::internal
