#include "scan/temperature_scan.hpp"

#include <array>
#include <cmath>
#include <numeric>

#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {

Temperature TemperatureScan::at(double s) const {
  return Temperature::kelvin(
      std::lerp(range.low.in_kelvin(), range.high.in_kelvin(), s));
}

Temperature TemperatureScan::temperature_of(const LineEvent& event) const {
  return at(std::midpoint(scan.nodes[event.below].s, scan.nodes[event.above].s));
}

void check_search(const TemperatureRange& range, const SearchOptions& search,
                  TemperatureUnit unit) {
  check_temperatures(std::array{range.low, range.high}, unit);
  auto problems = search.problems();
  if (!(range.low < range.high))
    problems.push_back({"gibbsteel.input.250", "range",
                        "goes from " + fixed(range.low.in_celsius(), 1) + " C to " +
                            fixed(range.high.in_celsius(), 1) + " C",
                        "give the lower temperature first"});
  if (!problems.empty()) throw InputError(std::move(problems));
}

TemperatureScan scan_temperatures(const Steel& steel, const TemperatureRange& range,
                                  const SoakOptions& soak,
                                  const SearchOptions& search) {
  check_search(range, search, soak.temperature_unit);
  TemperatureScan result{SoakProblem(steel, soak), range, search.tolerance, {}};
  const auto& moles = result.problem.mole_fractions;
  const ConditionLine line(result.problem.system, soak.solve, {range.low, moles},
                           {range.high, moles});
  const double length = range.high.in_kelvin() - range.low.in_kelvin();
  result.scan =
      scan_line(line, {search.node_spacing / length, search.tolerance / length,
                       search.most_soaks, search.progress});
  return result;
}

}  // namespace gibbsteel::internal
