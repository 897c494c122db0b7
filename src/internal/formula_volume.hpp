#pragma once
/// Eq. (V1) and (V2) for plain numbers and for numbers with a slope.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/volumes.hpp"
#include "internal/dual.hpp"

namespace gibbsteel::internal {

/// Site fraction of the named constituent of a sublattice; 0 when it is not there.
template <class Number>
Number fraction_of(const PhaseModel& model, const std::vector<Number>& y,
                   std::size_t sublattice, const std::string& name) {
  const auto& all = model.constituents();
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].sublattice == sublattice && all[i].name == name) return y[i];
  return Number(0.0);
}

/// `factor` times the site fractions that an end member names.
template <class Number>
Number end_member_share(double factor, const PhaseModel& model,
                        const std::vector<Number>& y, const VolumeTerm& term) {
  Number share(factor);
  for (std::size_t s = 0; s < term.on.size() && !is_zero(share); ++s)
    share = share * fraction_of(model, y, s, term.on[s]);
  return share;
}

/// 1 + 3 alpha (T - T_hot) of Eq. (V2); 1 on the basis of room temperature.
template <class Number>
Number expansion(const VolumeData& data, VolumeBasis basis, const Number& kelvin) {
  if (basis == VolumeBasis::room || !data.linear_expansion) return Number(1.0);
  return Number(1.0) +
         Number(3.0 * *data.linear_expansion) * (kelvin - Number(data.at));
}

/// Eq. (V1) alone, before the expansion.
template <class Number>
Number volume_at_reference(const VolumeData& data, const PhaseModel& model,
                           const std::vector<Number>& y) {
  Number volume(0.0);
  for (const VolumeTerm& term : data.terms)
    volume = volume + end_member_share(term.cm3_per_mol, model, y, term);
  return volume;
}

inline const std::optional<VolumeData>& volume_data(const Phase& phase,
                                                    VolumeBasis basis) {
  return basis == VolumeBasis::room ? phase.room_volume : phase.hot_volume;
}

}  // namespace gibbsteel::internal
