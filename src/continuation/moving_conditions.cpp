#include "continuation/moving_conditions.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kSomeKelvin = 1000.0;

Conditions some_conditions(const PhaseSystem& system) {
  const std::size_t elements = system.elements().size();
  return conditions_of(
      system, Temperature::kelvin(kSomeKelvin),
      std::vector<double>(elements, 1.0 / static_cast<double>(elements)));
}

}  // namespace

MovingConditions::MovingConditions(const PhaseSystem& system)
    : system_(system),
      conditions_(some_conditions(system)),
      powers_(kSomeKelvin),
      curves_(system.phases().empty() ? 0 : system.phases().front().curves().size()) {}

void MovingConditions::move_to(Temperature t, std::span<const double> overall) {
  conditions_.overall.assign(overall.begin(), overall.end());
  if (t.in_kelvin() == conditions_.kelvin) return;
  conditions_.kelvin = t.in_kelvin();
  conditions_.rt = kGasConstant * conditions_.kelvin;
  powers_ = TemperaturePowers(conditions_.kelvin);
  system_.phases().front().curves().evaluate(powers_, curves_);
}

void MovingConditions::refresh(std::size_t phase) {
  Candidate& candidate = conditions_.phases[phase];
  if (candidate.at.kelvin != conditions_.kelvin)
    candidate.at.refresh(*candidate.phase, powers_, curves_);
}

void MovingConditions::refresh_all() {
  for (std::size_t f = 0; f < conditions_.phases.size(); ++f) refresh(f);
}

}  // namespace gibbsteel::internal
