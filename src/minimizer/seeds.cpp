#include <algorithm>
#include <array>

#include "lanes/lane_kernels.hpp"
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

/// Site fractions of the seeds of one phase; their energies are worked out together.
class PhaseSeeds {
 public:
  PhaseSeeds(const Conditions& conditions, std::size_t phase)
      : conditions_(conditions), phase_(phase), n_(conditions.phases[phase].size()) {}

  std::size_t size() const noexcept { return y_.size() / n_; }
  const double* y(std::size_t seed) const noexcept { return &y_[seed * n_]; }
  void add(const std::vector<double>& y) { y_.insert(y_.end(), y.begin(), y.end()); }

  void add_to(ColumnPool& pool) const {
    const Candidate& candidate = conditions_.phases[phase_];
    std::vector<double> energy(size());
    lane_kernels().energies({candidate.phase, &candidate.at, conditions_.rt, y_.data(),
                             size(), energy.data()});
    for (std::size_t k = 0; k < size(); ++k)
      pool.add(conditions_, phase_, y(k), energy[k]);
  }

 private:
  const Conditions& conditions_;
  std::size_t phase_, n_;
  std::vector<double> y_;
};

/// Every combination of one constituent per sublattice, softened by a share of the
/// bulk-like point.
void add_corners(const Conditions& conditions, const CompiledPhase& compiled,
                 double softening, PhaseSeeds& seeds) {
  std::size_t count = 1;
  for (std::size_t s = 0; s < compiled.sublattice_count(); ++s)
    count *= compiled.first[s + 1] - compiled.first[s];
  if (count == 1) return;
  const std::size_t stride = (count + kMostCorners - 1) / kMostCorners;
  const auto soft = bulk_like(conditions, compiled, 0.5);
  std::vector<double> y(compiled.size());
  for (std::size_t corner = 0; corner < count; corner += stride) {
    std::size_t code = corner;
    for (std::size_t s = 0; s < compiled.sublattice_count(); ++s) {
      const std::size_t size = compiled.first[s + 1] - compiled.first[s];
      const double part = size > 1 ? softening : 0.0;
      for (std::size_t i = compiled.first[s]; i < compiled.first[s + 1]; ++i)
        y[i] = part * soft[i];
      y[compiled.first[s] + code % size] += 1.0 - part;
      code /= size;
    }
    seeds.add(y);
  }
}

/// Half-way points between seeds of a phase that has few of them, so that the
/// certificate has its starts.
void add_midpoints(PhaseSeeds& seeds) {
  const std::size_t corners = seeds.size();
  for (std::size_t i = 0; i < corners; ++i)
    for (std::size_t j = i + 1; j < corners; ++j) {
      if (seeds.size() >= kFewestSeeds) return;
      std::vector<double> y(seeds.y(i), seeds.y(i + 1));
      for (std::size_t k = 0; k < y.size(); ++k) y[k] = 0.5 * (y[k] + seeds.y(j)[k]);
      seeds.add(y);
    }
}

}  // namespace

void add_seeds(const Conditions& conditions, ColumnPool& pool) {
  for (std::size_t f = 0; f < conditions.phases.size(); ++f) {
    const CompiledPhase& phase = *conditions.phases[f].phase;
    PhaseSeeds seeds(conditions, f);
    bool open = false;
    for (std::size_t s = 0; s < phase.sublattice_count(); ++s)
      open = open || (has_vacancy(phase, s) && phase.first[s + 1] - phase.first[s] > 1);
    if (open)
      for (const double filling : kFillings)
        seeds.add(bulk_like(conditions, phase, filling));
    else
      seeds.add(bulk_like(conditions, phase, 0.5));
    add_corners(conditions, phase, kSoftening, seeds);
    if (seeds.size() <= kFewSeeds) add_corners(conditions, phase, kHardly, seeds);
    add_midpoints(seeds);
    seeds.add_to(pool);
  }
}

}  // namespace gibbsteel::internal
