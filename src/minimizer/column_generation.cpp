#include "minimizer/column_generation.hpp"

#include <algorithm>
#include <limits>

namespace gibbsteel::internal {
namespace {

constexpr std::size_t kStartsPerRound = 3;
constexpr double kStartsApart = 0.25;
constexpr double kWorthAColumn = -0.5;  ///< [J/mol of atoms]

std::size_t largest_phase(const Conditions& conditions) {
  std::size_t largest = 1;
  for (const auto& c : conditions.phases) largest = std::max(largest, c.size());
  return largest;
}

}  // namespace

ColumnGeneration::ColumnGeneration(Conditions& conditions)
    : conditions_(conditions),
      pool_(conditions.elements()),
      program_(conditions.overall),
      step_(largest_phase(conditions), conditions.elements()) {
  add_seeds(conditions, pool_);
}

DescentResult ColumnGeneration::descend_from(std::size_t phase, double* y,
                                             const DescentLimits& limits) {
  return descend(conditions_, conditions_.phases[phase], program_.potentials(), limits,
                 step_, y);
}

double ColumnGeneration::price(std::size_t phase) {
  if (!has_freedom(*conditions_.phases[phase].phase)) return 0.0;
  const auto starts = distant_columns(pool_, phase, program_.potentials(),
                                      kStartsPerRound, kStartsApart, false);
  double lowest = 0.0;
  for (const std::size_t start : starts) {
    const auto from = pool_.y(start);
    std::vector<double> y(from.begin(), from.end());
    const auto minimum = descend_from(phase, y.data(), {12, 1e-3, true});
    if (minimum.d_per_atom() > kWorthAColumn) continue;
    lowest = std::min(lowest, minimum.d_per_atom());
    pool_.add(conditions_, phase, y.data(), minimum.energy);
  }
  return lowest;
}

bool ColumnGeneration::run(double depth, int rounds) {
  if (!program_.solve(pool_)) return false;
  for (int round = 0; round < rounds; ++round) {
    double lowest = 0.0;
    for (std::size_t f = 0; f < conditions_.phases.size(); ++f)
      lowest = std::min(lowest, price(f));
    if (!program_.solve(pool_)) return false;
    if (lowest > -depth) break;
  }
  return true;
}

std::vector<std::size_t> distant_columns(const ColumnPool& pool, std::size_t phase,
                                         std::span<const double> mu, std::size_t count,
                                         double apart, bool spread) {
  std::vector<std::pair<double, std::size_t>> order;
  for (std::size_t k = 0; k < pool.size(); ++k)
    if (pool.phase(k) == phase) order.emplace_back(pool.d(k, mu), k);
  std::sort(order.begin(), order.end());
  std::vector<std::size_t> chosen;
  std::vector<double> nearest(order.size(), std::numeric_limits<double>::infinity());
  const auto choose = [&](std::size_t at) {
    chosen.push_back(order[at].second);
    for (std::size_t k = 0; k < order.size(); ++k)
      nearest[k] = std::min(
          nearest[k], distance(pool.y(order[k].second), pool.y(order[at].second)));
  };
  const std::size_t by_energy = spread ? (count + 1) / 2 : count;
  for (std::size_t k = 0; k < order.size() && chosen.size() < by_energy; ++k)
    if (nearest[k] > apart) choose(k);
  while (spread && chosen.size() < count) {
    const auto farthest = std::max_element(nearest.begin(), nearest.end());
    if (farthest == nearest.end() || *farthest < 1e-6) break;
    choose(static_cast<std::size_t>(farthest - nearest.begin()));
  }
  return chosen;
}

}  // namespace gibbsteel::internal
