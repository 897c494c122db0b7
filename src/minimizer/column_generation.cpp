#include "minimizer/column_generation.hpp"

#include <algorithm>
#include <array>
#include <cmath>
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

/// Distances to one column: the fractions that most likely decide come first.
class DistanceTo {
 public:
  explicit DistanceTo(std::span<const double> y) : y_(y) {
    for (std::size_t i = 0; i < y.size(); ++i) {
      std::size_t k = i;
      for (; k > 0 && y[i] > y[order_[k - 1]]; --k) order_[k] = order_[k - 1];
      order_[k] = i;
    }
  }

  /// The smaller of `most` and the distance, for less work where it is `most`.
  double at_most(double most, std::span<const double> other) const noexcept {
    double largest = 0.0;
    for (std::size_t k = 0; k < y_.size() && largest < most; ++k)
      largest = std::max(largest, std::abs(y_[order_[k]] - other[order_[k]]));
    return std::min(largest, most);
  }

 private:
  std::span<const double> y_;
  std::array<std::size_t, kMaxConstituents> order_;
};

}  // namespace

ColumnGeneration::ColumnGeneration(Conditions& conditions)
    : conditions_(conditions),
      pool_(conditions.elements()),
      program_(conditions.overall),
      memory_(largest_phase(conditions)) {
  add_seeds(conditions, pool_);
}

std::span<DescentJob> ColumnGeneration::price(std::size_t phase,
                                              std::span<const double> mu,
                                              DescentStarts& starts) {
  for (const std::size_t start :
       distant_columns(pool_, phase, mu, kStartsPerRound, kStartsApart, false))
    starts.add(pool_.y(start));
  const auto jobs = starts.jobs();
  descend(conditions_, conditions_.phases[phase], mu, {12, 1e-3, true}, memory_, jobs);
  return jobs;
}

double ColumnGeneration::add_columns(std::size_t phase) {
  if (!has_freedom(*conditions_.phases[phase].phase)) return 0.0;
  double lowest = 0.0;
  DescentStarts starts;
  for (const DescentJob& job : price(phase, program_.potentials(), starts)) {
    if (job.result.d_per_atom() > kWorthAColumn) continue;
    lowest = std::min(lowest, job.result.d_per_atom());
    pool_.add(conditions_, phase, job.y, job.result.energy);
  }
  return lowest;
}

bool ColumnGeneration::run(double depth, int rounds) {
  if (!program_.solve(pool_)) return false;
  for (int round = 0; round < rounds; ++round) {
    double lowest = 0.0;
    for (std::size_t f = 0; f < conditions_.phases.size(); ++f)
      lowest = std::min(lowest, add_columns(f));
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
    const DistanceTo to(pool.y(order[at].second));
    for (std::size_t k = 0; k < order.size(); ++k)
      nearest[k] = to.at_most(nearest[k], pool.y(order[k].second));
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
