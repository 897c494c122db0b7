#include "gibbsteel/temperature_for.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"
#include "internal/temperature_search_text.hpp"
#include "scan/value_crossings.hpp"

namespace gibbsteel {

TemperatureSearch temperature_for(const Steel& steel, const Quantity& quantity,
                                  double value, const TemperatureRange& range,
                                  const SoakOptions& soak,
                                  const SearchOptions& search) {
  if (!std::isfinite(value))
    throw InputError(
        {{"gibbsteel.input.252", "value", "is " + internal::shortest(value),
          "give the number that the quantity is to have"}});
  const auto scan = internal::scan_temperatures(steel, range, soak, search);
  TemperatureSearch found = internal::find_crossings(scan, quantity, value, search);
  internal::conclude(found);
  return found;
}

std::string_view to_string(TargetStatus status) noexcept {
  switch (status) {
    case TargetStatus::found:
      return "found";
    case TargetStatus::never_reached:
      return "never reached";
    case TargetStatus::always_equal:
      return "always equal";
    case TargetStatus::not_computable:
      return "not computable";
    case TargetStatus::not_known:
      break;
  }
  return "not known";
}

std::string_view to_string(CrossingKind kind) noexcept {
  return kind == CrossingKind::jump ? "jump" : "crossing";
}

std::vector<Warning> TemperatureSearch::warnings() const {
  std::vector<Warning> all;
  for (const Crossing& crossing : crossings)
    for (const Warning& warning : crossing.state.warnings)
      if (std::find(all.begin(), all.end(), warning) == all.end())
        all.push_back(warning);
  return all;
}

}  // namespace gibbsteel
