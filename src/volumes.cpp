#include "gibbsteel/volumes.hpp"

namespace gibbsteel {
namespace {

/// Site fraction of the named constituent of a sublattice; 0 when it is not there.
double fraction_of(const PhaseModel& model, std::span<const double> y,
                   std::size_t sublattice, const std::string& name) {
  const auto& all = model.constituents();
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].sublattice == sublattice && all[i].name == name) return y[i];
  return 0.0;
}

}  // namespace

std::optional<double> formula_volume(const Phase& phase, const PhaseModel& model,
                                     std::span<const double> y, VolumeBasis basis,
                                     Temperature t) {
  const auto& data = basis == VolumeBasis::room ? phase.room_volume : phase.hot_volume;
  if (!data) return std::nullopt;
  double volume = 0.0;
  for (const VolumeTerm& term : data->terms) {
    double share = term.cm3_per_mol;
    for (std::size_t s = 0; s < term.on.size() && share != 0.0; ++s)
      share *= fraction_of(model, y, s, term.on[s]);
    volume += share;
  }
  if (basis == VolumeBasis::room || !data->linear_expansion) return volume;
  return volume * (1.0 + 3.0 * *data->linear_expansion * (t.in_kelvin() - data->at));
}

}  // namespace gibbsteel
