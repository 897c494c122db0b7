#pragma once
/// A range of temperatures to search.

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/units.hpp"

namespace gibbsteel {

struct TemperatureRange {
  Temperature low, high;  ///< low < high
  bool operator==(const TemperatureRange&) const = default;
};

/// 700 to 1250 C, as far as it lies in the validity of the parameter set; the validity
/// itself when the two do not overlap.
TemperatureRange usual_range(const ParameterSet& set);

/// 1000 C to the end of the validity of the parameter set; the validity itself when it
/// ends below that.
TemperatureRange melting_search_range(const ParameterSet& set);

}  // namespace gibbsteel
