#pragma once
/// Value of one named curve of a parameter set, Eq. (P1).

#include <string_view>

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/units.hpp"

namespace gibbsteel {

/// Curves are the non-magnetic part: where an element orders magnetically, its phase
/// has a lower energy (see phase_model.hpp), by kilojoules for iron below 1043 K.
/// @return the curve at `t` [J/mol]; beyond its pieces the nearest one is continued
/// @throws InputError gibbsteel.input.213 when the set has no such curve
double curve_value(const ParameterSet& set, std::string_view curve, Temperature t);

}  // namespace gibbsteel
