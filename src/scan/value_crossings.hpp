#pragma once
/// Where a quantity has a value, along temperatures whose phase changes are known.

#include "gibbsteel/temperature_for.hpp"
#include "scan/temperature_scan.hpp"

namespace gibbsteel::internal {

/// Fills everything of the search but its text, which needs the status first: see
/// temperature_search_text.hpp.
TemperatureSearch find_crossings(const TemperatureScan& scan, const Quantity& quantity,
                                 double target, const SearchOptions& search);

}  // namespace gibbsteel::internal
