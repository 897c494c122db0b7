#pragma once
/// Settings of every search along a range of temperatures.

#include <cstddef>
#include <functional>
#include <vector>

#include "gibbsteel/errors.hpp"

namespace gibbsteel {

struct SearchOptions {
  /// Of the soaks that the search starts from [K], in [0.01, 100]. Between them amounts
  /// and driving forces are followed by their slopes, and soaks are added wherever a
  /// phase may appear or vanish.
  double node_spacing = 5.0;
  /// To which a temperature is located [K], in [1e-4, 1].
  double tolerance = 0.01;
  /// The search stops there and says so, >= 10.
  std::size_t most_soaks = 20000;
  /// Called after each soak with the number done; return false to stop.
  std::function<bool(std::size_t)> progress;

  /// Every option out of its range (gibbsteel.input.251); empty when all are valid.
  std::vector<Problem> problems() const;
};

}  // namespace gibbsteel
