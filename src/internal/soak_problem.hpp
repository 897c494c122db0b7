#pragma once
/// What many soaks of one steel share, and the way from an equilibrium to a state.

#include <vector>

#include "gibbsteel/steel.hpp"

namespace gibbsteel::internal {

/// A steel made ready for the minimizer: compiled phases and overall composition.
struct SoakProblem {
  PhaseSystem system;
  std::vector<double> mole_fractions;  ///< as system.elements()
  SoakOptions options;
  State blank;  ///< everything that does not depend on temperature

  /// @throws InputError gibbsteel.input.205, .212, .232 (prove_every)
  SoakProblem(const Steel& steel, const SoakOptions& chosen);

  /// Cold solve: equilibrium at one temperature, without warnings or names.
  Equilibrium solve(Temperature t) const;
  /// The same with the certificate from many starts, whatever the options ask for.
  Equilibrium solve_unproven(Temperature t) const;
  /// Everything a metallurgist reads, with the warnings.
  State state_of(const Equilibrium& result) const;
};

/// What a state of any soak with these settings says before it is computed.
State blank_state(const ParameterSet& set, std::string hash, const SoakOptions& chosen);

/// Fills a blank state (with its analysis) from an equilibrium: everything a
/// metallurgist reads, with the warnings.
/// @param unit  in which the temperature was given
void fill_state(const PhaseSystem& system, const Equilibrium& result, State& state,
                TemperatureUnit unit = TemperatureUnit::celsius);

/// The range of temperatures that a soak takes. False for NaN.
bool is_soak_temperature(Temperature t) noexcept;

Temperature highest_soak_temperature() noexcept;

/// Refuses all that are not temperatures of a soak, in one go.
/// @param unit  in which they were given
/// @throws InputError gibbsteel.input.210
void check_temperatures(std::span<const Temperature> temperatures,
                        TemperatureUnit unit = TemperatureUnit::celsius);

}  // namespace gibbsteel::internal
