#include "minimizer/column_generation.hpp"

#include <algorithm>

#include "minimizer/distant_columns.hpp"

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
      memory_(largest_phase(conditions)) {
  add_seeds(conditions, pool_);
}

std::span<DescentJob> ColumnGeneration::price(std::size_t phase,
                                              std::span<const double> mu,
                                              DescentStarts& starts) {
  for (const std::size_t start :
       distant_columns(pool_, phase, mu, {kStartsPerRound, kStartsApart}))
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

}  // namespace gibbsteel::internal
