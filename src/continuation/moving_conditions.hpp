#pragma once
/// Conditions that move along a line: the coefficients of a phase are brought to the
/// temperature when the phase is looked at, for most absent phases rarely are.

#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {

class MovingConditions {
 public:
  /// Any composition at 1000 K. `system` is referred to.
  explicit MovingConditions(const PhaseSystem& system);

  /// @param overall  mole fractions, sum 1
  void move_to(Temperature t, std::span<const double> overall);
  /// Coefficients of one phase, or of all, at the temperature.
  void refresh(std::size_t phase);
  void refresh_all();

  /// Phases that were not refreshed since the last move still hold older coefficients.
  Conditions& conditions() noexcept { return conditions_; }
  const Conditions& conditions() const noexcept { return conditions_; }

 private:
  const PhaseSystem& system_;
  Conditions conditions_;
  TemperaturePowers powers_;
  std::vector<TemperatureValue> curves_;
};

}  // namespace gibbsteel::internal
