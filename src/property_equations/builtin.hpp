#pragma once
/// The equations that the library brings along; one file per kind.

#include <vector>

#include "gibbsteel/property_equation.hpp"

namespace gibbsteel::internal {

std::vector<PropertyEquation> martensite_start_equations();
std::vector<PropertyEquation> retained_austenite_equations();
std::vector<PropertyEquation> martensite_hardness_equations();
std::vector<PropertyEquation> grain_pinning_equations();

/// Eq. (H13) with another rate [1/C]; the key tells the rate when it is not 0.011.
PropertyEquation koistinen_marburger(double rate);

}  // namespace gibbsteel::internal
