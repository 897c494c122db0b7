#pragma once
/// A straight line of conditions: temperature and overall composition both linear in s,
/// from 0 to 1. At equal compositions it is a scan in temperature, at equal
/// temperatures a scan in composition.

#include <vector>

#include "gibbsteel/minimizer.hpp"

namespace gibbsteel::internal {

/// One end of a line. Moles need no sum: the line is straight in them, and weight
/// percents that are linear give moles (per 100 g) that are linear.
struct LineEnd {
  Temperature temperature;
  std::vector<double> moles;  ///< as PhaseSystem::elements(), >= 0
};

class ConditionLine {
 public:
  /// An element without atoms at an end is taken as a mole fraction of 1e-12 there,
  /// because its chemical potential has no bound at 0.
  /// @param system  must outlive the line
  ConditionLine(const PhaseSystem& system, const SolveOptions& options, LineEnd from,
                LineEnd to);

  const PhaseSystem& system() const noexcept { return *system_; }
  Temperature temperature(double s) const;
  /// Sum 1.
  std::vector<double> mole_fractions(double s) const;
  double kelvin_slope() const noexcept;                      ///< dT/ds
  std::vector<double> mole_fraction_slopes(double s) const;  ///< db/ds, sum 0
  /// Cold solve.
  Equilibrium solve(double s) const;

 private:
  const PhaseSystem* system_;
  SolveOptions options_;
  LineEnd from_, to_;
};

}  // namespace gibbsteel::internal
