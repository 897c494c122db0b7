#pragma once
/// From a state to martensite start, retained austenite and hardness, with the
/// derivative along the slope of the state. No bands, no texts: see hardening.cpp.

#include "gibbsteel/hardening.hpp"
#include "gibbsteel/state_slope.hpp"
#include "internal/along.hpp"
#include "internal/family_mix.hpp"

namespace gibbsteel::internal {

/// The equations that the options and the families lead to.
struct HardeningChoice {
  HardeningFamily family;
  std::vector<FamilyShare> shares;  ///< of it, and of those across a near border
  PropertyEquation start, austenite, hardness, pinning;
  Along offset;                  ///< added to the martensite start [C]
  double start_error = 0.0;      ///< standard deviation [C]
  Along rate;                    ///< of Eq. (H13) [1/C]; value 0: another equation
  double austenite_error = 0.0;  ///< standard deviation of the fraction
  Along hardness_offset;         ///< added to the hardness [HV]
  double hardness_error = 0.0;   ///< standard deviation [HV]
  double coldest_celsius = 20.0;
  double cooling_rate = 0.0;
};

/// @param slope  of the state, or null: all derivatives are then 0
/// @throws InputError as hardening()
HardeningChoice choose(const State& state, const HardeningOptions& options,
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
