#pragma once
/// The scan of one steel along a range of temperatures.

#include "gibbsteel/search_options.hpp"
#include "gibbsteel/temperature_range.hpp"
#include "internal/soak_problem.hpp"
#include "scan/line_scan.hpp"

namespace gibbsteel::internal {

struct TemperatureScan {
  SoakProblem problem;
  TemperatureRange range;
  double tolerance;  ///< [K]
  LineScan scan;     ///< at least one node

  Temperature at(double s) const;
  State state(std::size_t node) const {
    return problem.state_of(scan.nodes[node].result);
  }
  /// Middle of the bracket of a change.
  Temperature temperature_of(const LineEvent& event) const;
};

/// @throws InputError, with every problem: gibbsteel.input.210 (an end of the range),
///         .250 (range without length), .251 (options); and those of SoakProblem
TemperatureScan scan_temperatures(const Steel& steel, const TemperatureRange& range,
                                  const SoakOptions& soak, const SearchOptions& search);

/// The checks alone.
void check_search(const TemperatureRange& range, const SearchOptions& search,
                  TemperatureUnit unit);

}  // namespace gibbsteel::internal
