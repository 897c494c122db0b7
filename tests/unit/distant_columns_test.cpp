/// Which columns the descents start from: the rule written down plainly, on the seeds
/// of a high-speed steel.

#include "minimizer/distant_columns.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>

#include "../../benchmarks/high_speed_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

struct Seeds {
  explicit Seeds(double celsius)
      : system(default_parameters(), benchmarks::high_speed_steel().elements(),
               benchmarks::all_phases()),
        conditions(conditions_of(system, Temperature::celsius(celsius),
                                 benchmarks::high_speed_steel().mole_fractions())),
        pool(conditions.elements()) {
    add_seeds(conditions, pool);
    mu = minimize(system, Temperature::celsius(celsius),
                  benchmarks::high_speed_steel().mole_fractions())
             .chemical_potential;
  }
  PhaseSystem system;
  Conditions conditions;
  ColumnPool pool;
  std::vector<double> mu;
};

double nearest(const ColumnPool& pool, std::size_t column,
               const std::vector<std::size_t>& chosen) {
  double least = std::numeric_limits<double>::infinity();
  for (const std::size_t other : chosen)
    least = std::min(least, distance(pool.y(column), pool.y(other)));
  return least;
}

/// Every distance looked up, every time.
std::vector<std::size_t> plainly(const Seeds& seeds, std::size_t phase,
                                 const ColumnChoice& choice) {
  AlignedNumbers memory;
  const auto d = seeds.pool.distances(seeds.mu, memory);
  const auto columns = seeds.pool.columns_of(phase);
  std::vector<std::size_t> order(columns.begin(), columns.end()), chosen;
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return d[a] < d[b]; });
  const std::size_t lowest = choice.spread ? (choice.count + 1) / 2 : choice.count;
  for (const std::size_t k : order)
    if (chosen.size() < lowest && nearest(seeds.pool, k, chosen) > choice.apart)
      chosen.push_back(k);
  while (choice.spread && chosen.size() < choice.count && !order.empty()) {
    const std::size_t far = *std::max_element(
        order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
          return nearest(seeds.pool, a, chosen) < nearest(seeds.pool, b, chosen);
        });
    if (nearest(seeds.pool, far, chosen) < 1e-6) break;
    chosen.push_back(far);
  }
  return chosen;
}

}  // namespace

TEST_CASE("the choice is that of the plain rule, ties included") {
  for (const double celsius : {850.0, 1200.0}) {
    const Seeds seeds(celsius);
    for (std::size_t f = 0; f < seeds.conditions.phases.size(); ++f)
      for (const ColumnChoice& choice :
           {ColumnChoice{3, 0.25}, ColumnChoice{8, 0.15, true}, ColumnChoice{40, 0.0},
            ColumnChoice{500, 0.3, true}, ColumnChoice{}}) {
        CAPTURE(seeds.conditions.phases[f].phase->name);
        CAPTURE(choice.count);
        CHECK(distant_columns(seeds.pool, f, seeds.mu, choice) ==
              plainly(seeds, f, choice));
      }
  }
}

TEST_CASE("an empty pool has no columns") {
  const ColumnPool pool(3);
  CHECK(distant_columns(pool, 0, std::vector<double>(3, -1e4), {8, 0.1, true}).empty());
  CHECK(pool.columns_of(0).empty());
  AlignedNumbers memory;
  CHECK(pool.distances(std::vector<double>(3, 0.0), memory).empty());
}

TEST_CASE("columns whose energy is no number come last") {
  Seeds seeds(1100.0);
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const std::size_t before = seeds.pool.columns_of(0).size();
  const auto y = seeds.pool.y(seeds.pool.columns_of(0)[0]);
  const std::vector<double> copy(y.begin(), y.end());
  for (int k = 0; k < 20; ++k) seeds.pool.add(seeds.conditions, 0, copy.data(), nan);
  const auto all = distant_columns(seeds.pool, 0, seeds.mu, {before, -1.0});
  CHECK(all.size() == before);
  for (const std::size_t k : all) CHECK(k < seeds.pool.size() - 20);
}
