#include "tolerance/sobol_points.hpp"

#include <boost/random/sobol.hpp>
#include <random>

namespace gibbsteel::internal {
namespace {

/// Middle of one of the 2^53 equal parts of (0, 1).
double unit(std::uint64_t bits) {
  return (static_cast<double>(bits >> 11) + 0.5) * 0x1p-53;
}

}  // namespace

std::vector<double> sobol_points(std::size_t count, std::size_t dimensions,
                                 std::uint64_t seed) {
  std::mt19937_64 random(seed);  // fully specified by the standard
  std::vector<std::uint64_t> shifts(dimensions);
  for (std::uint64_t& shift : shifts) shift = random();
  boost::random::sobol_engine<std::uint64_t, 64> sequence(dimensions);
  std::vector<double> points;
  points.reserve(count * dimensions);
  for (std::size_t i = 0; i < count; ++i)
    for (const std::uint64_t shift : shifts)
      // The engine leaves out the origin; without it the first 2^k points are uneven.
      points.push_back(unit((i == 0 ? 0 : sequence()) ^ shift));
  return points;
}

}  // namespace gibbsteel::internal
