#pragma once
/// Where cementite stops giving up carbon while its metals stay; short_soak_limit.hpp.

#include <optional>
#include <vector>

#include "gibbsteel/phase_model.hpp"

namespace gibbsteel::internal {

/// Where carbon and the vacancy beside it stand among the constituents of a phase.
struct Interstitials {
  explicit Interstitials(const PhaseModel& model);
  std::size_t carbon = 0, vacancy = 0;
};

/// Chemical potential of carbon [J/mol] in a phase (metals)(C, vacancy).
/// @param y  as model.constituents(); carbon and vacancy above 0
double carbon_potential(const PhaseModel& model, Temperature t,
                        const std::vector<double>& y);

/// Root of Eq. (B3): the chemical potential of carbon [J/mol].
/// Nothing when the cementite gives up all of its carbon, whatever the matrix holds;
/// that of nearly carbon-free austenite when it gives up none.
/// @param y  site fractions of the cementite, as cementite.constituents()
std::optional<double> cementite_stop(const PhaseModel& cementite,
                                     const std::vector<double>& y,
                                     const PhaseModel& austenite, Temperature t);

}  // namespace gibbsteel::internal
