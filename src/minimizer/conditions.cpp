#include "minimizer/conditions.hpp"

#include <numeric>

namespace gibbsteel::internal {

Conditions conditions_of(const PhaseSystem& system, Temperature t,
                         std::span<const double> x) {
  Conditions conditions;
  conditions.kelvin = t.in_kelvin();
  conditions.rt = kGasConstant * conditions.kelvin;
  conditions.overall.assign(x.begin(), x.end());
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  for (double& b : conditions.overall) b /= sum;
  if (system.phases().empty()) return conditions;
  const auto& curves = system.phases().front().curves();
  std::vector<TemperatureValue> values(curves.size());
  const TemperaturePowers powers(conditions.kelvin);
  curves.evaluate(powers, values);
  for (const PhaseModel& phase : system.phases()) {
    auto& candidate = conditions.phases.emplace_back();
    candidate.phase = &phase.compiled();
    candidate.at.refresh(phase.compiled(), powers, values);
  }
  return conditions;
}

}  // namespace gibbsteel::internal
