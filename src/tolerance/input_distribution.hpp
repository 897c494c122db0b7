#pragma once
/// From what the user says about the scatter of a heat to distributions and a box.

#include <vector>

#include "gibbsteel/tolerance.hpp"

namespace gibbsteel::internal {

/// Ends and moments of a normal distribution cut at 0 and at six standard deviations.
TolerancedInput normal_input(const std::string& name, const std::string& unit,
                             double nominal, double standard_deviation);
TolerancedInput uniform_input(const std::string& name, const std::string& unit,
                              double nominal, double low, double high);

/// The value below which a share `u` (in (0, 1)) of the distribution lies.   Eq. (U2)
double quantile_of(const TolerancedInput& input, double u);

/// Ranges, standard deviations, furnace and segregation, in this order; what does not
/// scatter is left out.
std::vector<TolerancedInput> inputs_of(const Steel& steel, Temperature t,
                                       const HeatTolerances& tolerances);

}  // namespace gibbsteel::internal
