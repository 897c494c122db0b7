#include "gibbsteel/volumes.hpp"

#include "internal/formula_volume.hpp"

namespace gibbsteel {

std::optional<double> formula_volume(const Phase& phase, const PhaseModel& model,
                                     std::span<const double> y, VolumeBasis basis,
                                     Temperature t) {
  const auto& data = internal::volume_data(phase, basis);
  if (!data) return std::nullopt;
  const std::vector<double> fractions(y.begin(), y.end());
  return internal::volume_at_reference(*data, model, fractions) *
         internal::expansion(*data, basis, t.in_kelvin());
}

}  // namespace gibbsteel
