#include <algorithm>
#include <array>

#include "minimizer/column_pool.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kSoftening = 0.06;  ///< share of the bulk-like part at a corner
constexpr double kHardly = 0.003;    ///< the same, of phases with few corners
constexpr std::size_t kFewSeeds = 30;
constexpr std::size_t kFewestSeeds = 12;   ///< of a phase that has freedom
constexpr std::size_t kMostCorners = 160;  ///< per phase; more are thinned out evenly
constexpr std::array kFillings{0.002, 0.02, 0.08, 0.25, 0.5, 0.75, 0.92, 0.985};

bool has_vacancy(const CompiledPhase& phase, std::size_t s) noexcept {
  for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
    if (phase.constituents[i].element < 0) return true;
  return false;
}

/// Site fractions like the bulk; on sublattices with vacancies the elements together
/// fill `filling` of the sites.
std::vector<double> bulk_like(const Conditions& conditions, const CompiledPhase& phase,
                              double filling) {
  std::vector<double> y(phase.size());
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    double sum = 0.0;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) {
      const int element = phase.constituents[i].element;
      if (element >= 0)
        sum += y[i] = conditions.overall[static_cast<std::size_t>(element)];
    }
    const double filled = has_vacancy(phase, s) ? (sum > 0.0 ? filling : 0.0) : 1.0;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
      y[i] = phase.constituents[i].element < 0 ? 1.0 - filled : y[i] * filled / sum;
  }
  return y;
}

void add_seed(const Conditions& conditions, std::size_t phase,
              const std::vector<double>& y, ColumnPool& pool) {
  const Candidate& candidate = conditions.phases[phase];
  pool.add(conditions, phase, y.data(),
           gibbs_energy(*candidate.phase, candidate.at, y.data()));
}

/// Every combination of one constituent per sublattice, softened by a share of the
/// bulk-like point.
void add_corners(const Conditions& conditions, std::size_t phase, double softening,
                 ColumnPool& pool) {
  const CompiledPhase& compiled = *conditions.phases[phase].phase;
  std::size_t count = 1;
  for (std::size_t s = 0; s < compiled.sublattice_count(); ++s)
    count *= compiled.first[s + 1] - compiled.first[s];
  if (count == 1) return;
  const std::size_t stride = (count + kMostCorners - 1) / kMostCorners;
  const auto soft = bulk_like(conditions, compiled, 0.5);
  for (std::size_t corner = 0; corner < count; corner += stride) {
    std::vector<double> y(compiled.size());
    std::size_t code = corner;
    for (std::size_t s = 0; s < compiled.sublattice_count(); ++s) {
      const std::size_t size = compiled.first[s + 1] - compiled.first[s];
      const double part = size > 1 ? softening : 0.0;
      for (std::size_t i = compiled.first[s]; i < compiled.first[s + 1]; ++i)
        y[i] = part * soft[i];
      y[compiled.first[s] + code % size] += 1.0 - part;
      code /= size;
    }
    add_seed(conditions, phase, y, pool);
  }
}

/// Half-way points between seeds of a phase that has few of them, so that the
/// certificate has its starts.
void add_midpoints(const Conditions& conditions, std::size_t phase, std::size_t begin,
                   ColumnPool& pool) {
  const std::size_t corners = pool.size();
  for (std::size_t i = begin; i < corners; ++i)
    for (std::size_t j = i + 1; j < corners; ++j) {
      if (pool.size() - begin >= kFewestSeeds) return;
      std::vector<double> y(pool.y(i).begin(), pool.y(i).end());
      for (std::size_t k = 0; k < y.size(); ++k) y[k] = 0.5 * (y[k] + pool.y(j)[k]);
      add_seed(conditions, phase, y, pool);
    }
}

}  // namespace

void add_seeds(const Conditions& conditions, ColumnPool& pool) {
  for (std::size_t f = 0; f < conditions.phases.size(); ++f) {
    const CompiledPhase& phase = *conditions.phases[f].phase;
    const std::size_t begin = pool.size();
    bool open = false;
    for (std::size_t s = 0; s < phase.sublattice_count(); ++s)
      open = open || (has_vacancy(phase, s) && phase.first[s + 1] - phase.first[s] > 1);
    if (open)
      for (const double filling : kFillings)
        add_seed(conditions, f, bulk_like(conditions, phase, filling), pool);
    else
      add_seed(conditions, f, bulk_like(conditions, phase, 0.5), pool);
    add_corners(conditions, f, kSoftening, pool);
    if (pool.size() - begin <= kFewSeeds) add_corners(conditions, f, kHardly, pool);
    add_midpoints(conditions, f, begin, pool);
  }
}

}  // namespace gibbsteel::internal
