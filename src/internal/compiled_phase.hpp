#pragma once
/// A phase as flat arrays for the kernels, and its coefficients at one temperature.

#include <span>
#include <string>
#include <vector>

#include "gibbsteel/phase_model.hpp"
#include "internal/polynomial_kernel.hpp"
#include "internal/temperature_functions.hpp"

namespace gibbsteel::internal {

/// A polynomial together with the temperature functions of its coefficients.
struct CompiledTerms {
  Polynomial polynomial;
  std::vector<CompiledExpression> coefficients;  ///< length coefficient_count
};

struct CompiledPhase {
  std::string name;
  bool reachable = false;
  std::vector<Constituent> constituents;
  std::vector<double> sites;       ///< of the sublattice of each constituent
  std::vector<std::size_t> first;  ///< first constituent per sublattice, then n
  CompiledTerms energy;
  Polynomial curie, moment;
  std::vector<double> curie_coefficients, moment_coefficients;
  double structure_factor = 0.0;  ///< 0: not magnetic
  double negative_value_divisor = 1.0;

  std::size_t size() const noexcept { return constituents.size(); }
  std::size_t sublattice_count() const noexcept { return first.size() - 1; }
};

/// @throws DataError for a phase beyond what the kernels hold, see phase_capacity.hpp,
///         or with the same term twice: files are checked when read, sets made by hand
///         are not
CompiledPhase compile_phase(const ParameterSet& set, const Phase& phase,
                            std::span<const std::string> active);

/// Coefficients of one phase at one temperature.
struct PhaseCoefficients {
  double kelvin = 0.0;
  std::vector<double> value, dt, dt2;  ///< length energy.polynomial.coefficient_count

  /// @param curve_values  all curves of the set at the same temperature
  void refresh(const CompiledPhase& phase, const TemperaturePowers& powers,
               std::span<const TemperatureValue> curve_values);
};

}  // namespace gibbsteel::internal
