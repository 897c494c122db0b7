#pragma once
/// A steel from one annealed condition on, at one temperature: how much cementite is
/// left after minutes, Eqs. (B4) to (B7) of timed_soak.hpp, and the matrix beside it.

#include <optional>
#include <vector>

#include "gibbsteel/timed_soak.hpp"
#include "short_soak/cementite_left.hpp"
#include "short_soak/particle_surface.hpp"
#include "short_soak/short_soak_start.hpp"
#include "short_soak/shrinking_spheres.hpp"

namespace gibbsteel::internal {

class TimedDissolution {
 public:
  /// @throws InputError as short_soak_limit(), and .284 for a metal whose diffusion is
  ///         not known
  TimedDissolution(const State& state, double micrometres,
                   const ShortSoakLimitOptions& annealed);
  TimedDissolution(const TimedDissolution&) = delete;
  TimedDissolution& operator=(const TimedDissolution&) = delete;

  /// Of the metal atoms, those in cementite, Eq. (B7).
  /// @param minutes  rising
  /// @throws InputError gibbsteel.input.284 (no result)
  std::vector<double> shares(const std::vector<double>& minutes) const;
  /// The same when the metals that the first stage leaves have spread at once: metals
  /// move from its end on.
  std::vector<double> shares_without_waiting(const std::vector<double>& minutes) const;
  /// Minutes after which this share is left; 0 where carbon alone gets there; nothing
  /// where it is never reached.
  std::optional<double> minutes_to(double share) const;

  /// When annealed, where the stage of carbon ends, and at the very end.
  double start() const { return cementite_.share(cementite_.most()); }
  double stop() const noexcept { return stop_; }
  double end() const;

  NamedValues matrix_weight_percent(double share) const;
  /// The whole balance. @param potential  of carbon in its matrix [J/mol], set
  ShortSoak balance(double share, double& potential) const;
  const ShortSoakStart& annealed() const noexcept { return start_; }

 private:
  DissolvingSpeed speed() const;
  std::vector<double> shares_from(double share,
                                  const std::vector<double>& minutes) const;

  const State& state_;
  double radius_;  ///< [m]
  ShortSoakStart start_;
  mutable CementiteLeft cementite_;
  mutable ParticleSurface surface_;
  double stop_;
};

/// Matrix [wt%] after so many minutes, without band or texts.
/// @throws InputError as timed_soak()
NamedValues timed_matrix(const State& state, double minutes,
                         const TimedSoakOptions& options);

/// The balance with this share left, and what its state says of itself; bands are not
/// set.
/// @throws InputError gibbsteel.input.284 (the matrix would hold ferrite)
ShortSoak timed_result(const State& state, const TimedDissolution& soak, double share,
                       const SoakTime& time, bool none_hotter);

/// The state after so many minutes, without band.
/// @throws InputError as timed_soak()
State timed_state(const State& state, double minutes, const TimedSoakOptions& options);

}  // namespace gibbsteel::internal
