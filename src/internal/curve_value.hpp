#pragma once
/// Single values of named curves, for callers that need a few (carbon activity, tests).

#include <string_view>

#include "internal/temperature_functions.hpp"

namespace gibbsteel::internal {

/// Value of the named curve [J/mol]. @throws DataError gibbsteel.data.132 if unknown
double curve_value(const ParameterSet& set, std::string_view curve, double kelvin);

double expression_value(const ParameterSet& set, const Expression& expression,
                        double kelvin);

}  // namespace gibbsteel::internal
