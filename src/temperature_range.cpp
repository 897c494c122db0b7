#include "gibbsteel/temperature_range.hpp"

#include <algorithm>

namespace gibbsteel {

TemperatureRange usual_range(const ParameterSet& set) {
  const Temperature low = Temperature::kelvin(set.lowest_temperature);
  const Temperature high = Temperature::kelvin(set.highest_temperature);
  const TemperatureRange usual{std::max(low, Temperature::celsius(700.0)),
                               std::min(high, Temperature::celsius(1250.0))};
  return usual.low < usual.high ? usual : TemperatureRange{low, high};
}

TemperatureRange melting_search_range(const ParameterSet& set) {
  const Temperature low = Temperature::kelvin(set.lowest_temperature);
  const Temperature high = Temperature::kelvin(set.highest_temperature);
  const Temperature hot = std::max(low, Temperature::celsius(1000.0));
  return {hot < high ? hot : low, high};
}

}  // namespace gibbsteel
