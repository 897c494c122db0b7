#include "gibbsteel/composition_for.hpp"

#include "internal/composition_search_text.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/family_borders.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_warnings.hpp"
#include "scan/composition_scan.hpp"

namespace gibbsteel {
namespace {

CompositionCrossing crossing_of(const internal::CompositionScan& scan,
                                const WeightPercentRange& range,
                                const internal::LineCrossing& found) {
  return {scan.percent(found.s),
          found.width * (range.high - range.low),
          found.kind,
          found.rising,
          found.value,
          found.below,
          found.above,
          found.state,
          found.slope,
          found.band};
}

/// From places on the line to weight percents.
void take_over(const internal::LineSearch& line, const internal::CompositionScan& scan,
               CompositionSearch& found) {
  for (const auto& crossing : line.crossings)
    found.crossings.push_back(crossing_of(scan, found.range, crossing));
  for (const auto& span : line.equal)
    found.equal.push_back({scan.percent(span.from), scan.percent(span.to)});
  for (const auto& gap : line.gaps)
    found.gaps.push_back({scan.percent(gap.from), scan.percent(gap.to), gap.reason});
  for (const auto& gap : line.no_value)
    found.no_value.push_back(
        {scan.percent(gap.from), scan.percent(gap.to), gap.reason});
  found.lowest = {line.lowest.value, scan.percent(line.lowest.s)};
  found.highest = {line.highest.value, scan.percent(line.highest.s)};
  found.band_of_nearest = line.band_of_nearest;
  found.low = line.low;
  found.high = line.high;
  found.soaks = line.soaks;
  found.stopped = line.stopped;
}

/// Those of the answer; the ends where there is none.
std::vector<const State*> warning_states(const CompositionSearch& search) {
  std::vector<const State*> states;
  for (const CompositionCrossing& crossing : search.crossings)
    states.push_back(&crossing.state);
  if (states.empty()) states = {&search.low, &search.high};
  return states;
}

}  // namespace

CompositionSearch composition_for(const Steel& steel, const std::string& element,
                                  const Quantity& quantity, double value,
                                  const WeightPercentRange& range, Temperature t,
                                  const SoakOptions& soak,
                                  const CompositionSearchOptions& search) {
  internal::require_possible(quantity, value, *steel.parameters());
  internal::CompositionScan scan(steel, element, range, t, soak, search);
  CompositionSearch found;
  found.steel = steel.name();
  found.element = element;
  found.quantity = quantity.name();
  found.unit = quantity.unit();
  found.target = value;
  found.temperature = t;
  found.temperature_unit = soak.temperature_unit;
  found.range = range;
  found.analysis = steel.analysis();
  found.parameters = scan.blank().parameters;
  found.by_family = quantity.by_family();
  take_over(internal::search_line(scan.line(), quantity, value), scan, found);
  found.of_quantity = internal::warnings_where_known(quantity, warning_states(found));
  internal::conclude(found);
  return found;
}

std::vector<Warning> CompositionSearch::warnings() const {
  const auto states = warning_states(*this);
  std::vector<Warning> all = internal::distinct_warnings(states);
  for (const Warning& warning : of_quantity) internal::add_distinct(warning, all);
  if (!by_family) return all;
  for (const State* state : states)
    internal::add_distinct(internal::near_border(state->analysis.modelled), all);
  internal::add_distinct(
      internal::border_within(analysis.modelled, element, range.low, range.high), all);
  return all;
}

}  // namespace gibbsteel
