#include "scan/value_crossings.hpp"

#include "internal/slopes_of_soak.hpp"
#include "scan/value_line.hpp"

namespace gibbsteel::internal {
namespace {

ValueLine line_of(const TemperatureScan& scan, const SearchOptions& search) {
  ValueLine line;
  line.scan = &scan.scan;
  line.solve = [&scan](double s) { return scan.problem.solve(scan.at(s)); };
  line.state = [&scan](double, const Equilibrium& result) {
    return scan.problem.state_of(result);
  };
  line.slope = [&scan](double, const Equilibrium& result, const State& state) {
    const auto slopes = slopes_of_soak(scan.problem, result, state,
                                       {std::vector<std::string>{}, {}, false});
    return slopes.empty() ? std::nullopt : std::optional(slopes.front());
  };
  line.length = scan.range.high.in_kelvin() - scan.range.low.in_kelvin();
  line.tolerance = search.tolerance / line.length;
  line.most_soaks = search.most_soaks;
  line.progress = search.progress;
  return line;
}

Crossing crossing_of(const TemperatureScan& scan, const LineCrossing& found) {
  Crossing crossing;
  crossing.temperature = found.state.temperature;
  crossing.bracket_width =
      found.width * (scan.range.high.in_kelvin() - scan.range.low.in_kelvin());
  crossing.kind = found.kind;
  crossing.rising = found.rising;
  crossing.value = found.value;
  crossing.below = found.below;
  crossing.above = found.above;
  crossing.state = found.state;
  crossing.slope = found.slope;
  crossing.band = found.band;
  return crossing;
}

double uncertainty_of(const SoakProblem& problem, const Quantity& quantity,
                      const LineCrossing& found, const CrossingScatter& scatter) {
  const auto slopes =
      scatter.file->slopes(problem, found.result, found.state, quantity);
  return slopes.one_sided ? Occurrence::kUnknown
                          : scatter.file->of_temperature(slopes, scatter.target);
}

}  // namespace

TemperatureSearch find_crossings(const TemperatureScan& scan, const Quantity& quantity,
                                 double target, const SearchOptions& search,
                                 const std::optional<CrossingScatter>& scatter) {
  const LineSearch line = search_line(line_of(scan, search), quantity, target);
  TemperatureSearch found;
  found.steel = scan.problem.blank.steel;
  found.analysis = scan.problem.blank.analysis;
  found.parameters = scan.problem.blank.parameters;
  found.quantity = quantity.name();
  found.unit = quantity.unit();
  found.target = target;
  found.range = scan.range;
  found.temperature_unit = scan.problem.options.temperature_unit;
  for (const LineCrossing& crossing : line.crossings) {
    found.crossings.push_back(crossing_of(scan, crossing));
    const bool told = scatter && !quantity.may_rest_on_more();
    if (told && crossing.kind == CrossingKind::crossing)
      found.crossings.back().uncertainty_at_least =
          uncertainty_of(scan.problem, quantity, crossing, *scatter);
  }
  for (const LineSpan& span : line.equal)
    found.equal.push_back({scan.at(span.from), scan.at(span.to)});
  for (const LineGap& gap : line.gaps)
    found.gaps.push_back({scan.at(gap.from), scan.at(gap.to), gap.reason});
  for (const LineGap& gap : line.no_value)
    found.no_value.push_back({scan.at(gap.from), scan.at(gap.to), gap.reason});
  found.lowest = {line.lowest.value, scan.at(line.lowest.s)};
  found.highest = {line.highest.value, scan.at(line.highest.s)};
  found.band_of_nearest = line.band_of_nearest;
  found.low = line.low;
  found.high = line.high;
  found.soaks = line.soaks;
  found.stopped = line.stopped;
  return found;
}

}  // namespace gibbsteel::internal
