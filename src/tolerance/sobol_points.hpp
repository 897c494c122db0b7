#pragma once
/// Points that fill the unit cube evenly.

#include <cstdint>
#include <vector>

namespace gibbsteel::internal {

/// The first `count` points of the Sobol sequence in `dimensions` (at least 1), the
/// origin included, with one random digital shift per dimension: row by row, count x
/// dimensions, each number strictly between 0 and 1. The same seed gives the same
/// points on every machine, and fewer points are the first of more.
std::vector<double> sobol_points(std::size_t count, std::size_t dimensions,
                                 std::uint64_t seed);

}  // namespace gibbsteel::internal
