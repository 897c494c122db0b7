#pragma once
/// A line of soaks along one input, temperature or weight percent, whose phase changes
/// are known, and where a quantity has a value on it.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/quantity.hpp"
#include "gibbsteel/temperature_for.hpp"
#include "scan/line_scan.hpp"

namespace gibbsteel::internal {

struct ValueLine {
  const LineScan* scan = nullptr;
  std::function<Equilibrium(double s)> solve;
  std::function<State(double s, const Equilibrium&)> state;
  /// Of the state per unit of the input; empty when not known.
  std::function<std::optional<StateSlope>(double s, const Equilibrium&, const State&)>
      slope;
  double length = 1.0;     ///< of the line in units of the input
  double tolerance = 0.0;  ///< to which its phase changes are known, in s
  std::size_t most_soaks = 20000;
  std::function<bool(std::size_t)> progress;
};

struct LineCrossing {
  double s = 0.0;
  double width = 0.0;  ///< of the bracket, in s
  CrossingKind kind = CrossingKind::crossing;
  bool rising = true;
  double value = 0.0, below = 0.0, above = 0.0;
  double slope = Occurrence::kUnknown;  ///< per unit of the input
  Quantity::Ends band;
  State state;
  Equilibrium result;  ///< of `state`
};

struct LineValue {
  double value = Occurrence::kUnknown;
  double s = 0.0;
};

struct LineSpan {
  double from = 0.0, to = 0.0;
};

/// All in s, in its order.
struct LineSearch {
  double target = 0.0;
  std::vector<LineCrossing> crossings;
  std::vector<LineSpan> equal;
  std::vector<LineGap> gaps;      ///< nothing is known there
  std::vector<LineGap> no_value;  ///< the soaks are known and have none
  LineValue lowest, highest;
  /// Of the one nearer to the target where no crossing and no equal span was found.
  Quantity::Ends band_of_nearest;
  State low, high;  ///< first and last
  std::size_t soaks = 0;
  std::string stopped;
};

LineSearch search_line(const ValueLine& line, const Quantity& quantity, double target);

}  // namespace gibbsteel::internal
