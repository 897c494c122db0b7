#pragma once
/// Random steels as a shop may meet them, inside the validity range of the shipped file.

#include <algorithm>
#include <random>

#include "gibbsteel/gibbsteel.hpp"

namespace gibbsteel::testing {

/// Carbon and two to five other elements, weight percents uniform within the validity
/// range up to what tool steels hold (the share of the range tends to the low side).
inline Steel random_tool_steel(std::mt19937_64& random) {
  std::uniform_real_distribution<double> u(0.0, 1.0);
  std::vector<ElementRange> others;
  for (const ElementRange& range : default_parameters()->validity)
    if (range.symbol != "C" && range.symbol != "Fe") others.push_back(range);
  std::shuffle(others.begin(), others.end(), random);
  others.resize(2 + static_cast<std::size_t>(4.0 * u(random)));
  NamedValues weight_percent{{"C", 0.1 + 1.7 * u(random)}};
  for (const ElementRange& range : others)
    weight_percent.set(range.symbol, range.high * u(random) * u(random));
  return Steel(weight_percent);
}

}  // namespace gibbsteel::testing
