#pragma once
/// Where the assemblage of the next point of a line is likely to be.
///
/// With the conditions s = (T, ln b) of the last two points and the next one,
///
///   r = (s - s1).(s1 - s0) / |s1 - s0|^2
///   mu = mu1 + r (mu1 - mu0),  n = n1 + r (n1 - n0),  y = y1 (y1 / y0)^r    Eq. (C2)
///
/// as long as the line goes straight on and the phases are the same: the secant, which
/// leaves an error of second order in the step. Newton steps end it.

#include "minimizer/phase_sets.hpp"

namespace gibbsteel::internal {

class Predictor {
 public:
  /// The next point has nothing to do with those before.
  void forget() noexcept { known_ = false; }
  /// Moves sets and potentials of the last point, at `conditions`, to where they are
  /// likely to be at the next one, and remembers the last point for the time after.
  /// @param overall  mole fractions of the next point, sum 1
  void predict(const Conditions& conditions, double kelvin,
               std::span<const double> overall, std::vector<PhaseSet>& sets,
               std::vector<double>& mu);

 private:
  struct Point {
    double kelvin = 0.0;
    std::vector<double> overall, mu;
    std::vector<PhaseSet> sets;
  };

  bool same_phases(const std::vector<PhaseSet>& sets) const noexcept;
  double ratio(const Conditions& conditions, double kelvin,
               std::span<const double> overall) const noexcept;

  bool known_ = false;
  Point before_;  ///< the last point but one
  Point last_;
};

}  // namespace gibbsteel::internal
