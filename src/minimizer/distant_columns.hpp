#pragma once
/// Which columns of a phase the descents start from.

#include "minimizer/column_pool.hpp"

namespace gibbsteel::internal {

/// How many columns are wanted, and how far they lie from each other at least (largest
/// difference of a site fraction).
struct ColumnChoice {
  std::size_t count = 0;
  double apart = 0.0;
  /// Half of them (rounded up) by energy, the others the farthest from all chosen.
  bool spread = false;
};

/// Columns of one phase, the lowest D at `mu` first, each at least `apart` from those
/// before it; then, if `spread`, the ones farthest from all chosen. At most `count`.
std::vector<std::size_t> distant_columns(const ColumnPool& pool, std::size_t phase,
                                         std::span<const double> mu,
                                         const ColumnChoice& choice);

}  // namespace gibbsteel::internal
