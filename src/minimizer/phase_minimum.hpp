#pragma once
/// Local minima of D(y) = G(y) - mu . M(y) of one phase at fixed chemical potentials:
/// damped Newton in scaled variables, descending at every step.

#include "lanes/run_descents.hpp"
#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {

/// See lanes/fractions.hpp, Eq. (N2).
void update_fractions(const CompiledPhase& phase, const double* y, const double* dy,
                      double fraction, double* out) noexcept;

/// From each start to the minimum that it leads to.
/// @param jobs  starts; the results are those of one descent after the other, to the
/// bit
void descend(Conditions& conditions, const Candidate& candidate,
             std::span<const double> mu, const DescentLimits& limits,
             DescentMemory& memory, std::span<DescentJob> jobs);

/// Starts of one phase, kept here while they descend.
class DescentStarts {
 public:
  void add(std::span<const double> y);
  /// Call it once, after the last add().
  std::span<DescentJob> jobs();
  std::span<const double> y(const DescentJob& job) const noexcept {
    return {job.y, n_};
  }

 private:
  std::size_t n_ = 0;
  std::vector<double> y_;
  std::vector<DescentJob> jobs_;
};

/// @param y  start on entry (each > 0), minimum on return
DescentResult descend(Conditions& conditions, const Candidate& candidate,
                      std::span<const double> mu, const DescentLimits& limits,
                      DescentMemory& memory, double* y);

}  // namespace gibbsteel::internal
