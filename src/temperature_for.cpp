#include "gibbsteel/temperature_for.hpp"

#include "internal/distinct_warnings.hpp"
#include "internal/family_borders.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_warnings.hpp"
#include "internal/temperature_search.hpp"
#include "internal/temperature_search_text.hpp"
#include "scan/value_crossings.hpp"

namespace gibbsteel {
namespace {

/// Those of the answer; the ends where there is none.
std::vector<const State*> warning_states(const TemperatureSearch& search) {
  std::vector<const State*> states;
  for (const Crossing& crossing : search.crossings) states.push_back(&crossing.state);
  if (states.empty()) states = {&search.low, &search.high};
  return states;
}

}  // namespace

TemperatureSearch temperature_for(const Steel& steel, const Quantity& quantity,
                                  double value, const TemperatureRange& range,
                                  const SoakOptions& soak,
                                  const SearchOptions& search) {
  return internal::search_temperatures(
      steel, quantity, value, range, soak, search,
      [](const internal::FileScatter& scatter) { return scatter.none(); });
}

TemperatureSearch internal::search_temperatures(const Steel& steel,
                                                const Quantity& quantity, double value,
                                                const TemperatureRange& range,
                                                const SoakOptions& soak,
                                                const SearchOptions& search,
                                                const TargetScatter& target) {
  require_possible(quantity, value, *steel.parameters());
  const auto scan = scan_temperatures(steel, range, soak, search);
  const FileScatter scatter(*steel.parameters());
  std::optional<CrossingScatter> of_crossings;
  if (!scatter.empty()) of_crossings = CrossingScatter{&scatter, target(scatter)};
  TemperatureSearch found = find_crossings(scan, quantity, value, search, of_crossings);
  found.by_family = quantity.by_family();
  found.of_quantity = warnings_where_known(quantity, warning_states(found));
  conclude(found);
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
    case TargetStatus::jumps_over:
      return "jumps over";
  }
  return "not known";
}

std::string_view to_string(CrossingKind kind) noexcept {
  return kind == CrossingKind::jump ? "jump" : "crossing";
}

std::vector<Warning> TemperatureSearch::warnings() const {
  std::vector<Warning> all = internal::distinct_warnings(warning_states(*this));
  for (const Warning& warning : of_quantity) internal::add_distinct(warning, all);
  if (by_family) internal::add_distinct(internal::near_border(analysis.modelled), all);
  return all;
}

}  // namespace gibbsteel
