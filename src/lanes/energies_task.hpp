#pragma once
/// Compositions of one phase whose energies are wanted, as the lanes take them.

#include "internal/compiled_phase.hpp"

namespace gibbsteel::internal {

struct EnergiesTask {
  const CompiledPhase* phase = nullptr;
  const PhaseCoefficients* at = nullptr;
  double rt = 0.0;            ///< [J/mol]
  const double* y = nullptr;  ///< site fractions, `count` rows of n
  std::size_t count = 0;
  double* energy = nullptr;  ///< [J/mol of formula units], length count
};

}  // namespace gibbsteel::internal
