#pragma once
/// From derivatives of an equilibrium to those of everything in a state: the chain rule
/// through assemblage.cpp, volumes.cpp and soak_problem.cpp.

#include <vector>

#include "gibbsteel/linearization.hpp"
#include "gibbsteel/state_slope.hpp"

namespace gibbsteel::internal {

/// What an input changes beside the equilibrium, per unit of it.
struct DirectSlopes {
  double kelvin = 0.0;    ///< dT/dx
  double graphite = 0.0;  ///< of the reference of carbon [J/mol], through T as well
  /// Of the volume of a formula unit at fixed site fractions and temperature [cm3/mol],
  /// as Equilibrium::present; empty: zero.
  std::vector<double> volume;
};

/// @param state  made of `result`
StateSlope slope_of_state(const PhaseSystem& system, const Equilibrium& result,
                          const State& state, const EquilibriumSlope& slope,
                          const DirectSlopes& direct);

}  // namespace gibbsteel::internal
