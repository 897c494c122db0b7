#pragma once
/// Molar volumes from the file's volume data.

#include <optional>
#include <span>

#include "gibbsteel/phase_model.hpp"

namespace gibbsteel {

/// Which volume a volume percent refers to.
enum class VolumeBasis {
  room,  ///< at room temperature: what metallography measures
  soak,  ///< at the soak temperature
};

/// Volume of one mole of formula units [cm3/mol]:
///
///   V(y) = sum over end members e of V_e prod y_e                             Eq. (V1)
///   V(y, T) = V_hot(y) (1 + 3 alpha (T - T_hot))                              Eq. (V2)
///
/// Empty when the file has no volume data of that kind for the phase.
/// @param y  site fractions, as model.constituents()
std::optional<double> formula_volume(const Phase& phase, const PhaseModel& model,
                                     std::span<const double> y, VolumeBasis basis,
                                     Temperature t);

}  // namespace gibbsteel
