#pragma once
/// Warnings that come from the certificate alone: 307, 318, 312, 313 and 314.

#include <vector>

#include "gibbsteel/mill_analysis.hpp"
#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/temperature_unit.hpp"
#include "gibbsteel/warnings.hpp"

namespace gibbsteel::internal {

/// @param set   for what layers beside it could model
/// @param unit  of temperatures in the texts, beside C
void check_certificate(const ParameterSet& set, const MillAnalysis& analysis,
                       TemperatureUnit unit, std::vector<Warning>& out);

}  // namespace gibbsteel::internal
