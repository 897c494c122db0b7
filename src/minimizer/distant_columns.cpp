#include "minimizer/distant_columns.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gibbsteel::internal {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

/// Largest difference of a site fraction; in two chains, for they hide each other's
/// waiting.
double farthest_fraction(std::span<const double> a,
                         std::span<const double> b) noexcept {
  double even = 0.0, odd = 0.0;
  std::size_t i = 0;
  for (; i + 1 < a.size(); i += 2) {
    even = std::max(even, std::abs(a[i] - b[i]));
    odd = std::max(odd, std::abs(a[i + 1] - b[i + 1]));
  }
  if (i < a.size()) even = std::max(even, std::abs(a[i] - b[i]));
  return std::max(even, odd);
}

/// The columns of one phase in the order of their D. Distances to what is chosen are
/// looked up when they are asked for: most columns are out by the first few.
class Choice {
 public:
  Choice(const ColumnPool& pool, std::size_t phase, std::span<const double> mu)
      : pool_(pool) {
    const auto columns = pool.columns_of(phase);
    candidates_.reserve(columns.size());
    AlignedNumbers memory;
    const auto d = pool.distances(mu, memory);
    for (const std::size_t k : columns)  // what is no number comes last
      candidates_.push_back({std::isnan(d[k]) ? kInfinity : d[k], k});
    std::sort(candidates_.begin(), candidates_.end());
  }

  void by_energy(std::size_t count, double apart) {
    for (Candidate& c : candidates_) {
      if (chosen_.size() == count) return;
      if (distance(c) > apart) chosen_.push_back(c.column);
    }
  }

  /// The farthest is sought among upper bounds, that of the first brought up to date
  /// until it stays the first.
  void by_distance(std::size_t count) {
    while (chosen_.size() < count && !candidates_.empty()) {
      const auto nearer = [](const Candidate& a, const Candidate& b) {
        return a.nearest < b.nearest;
      };
      auto far = std::max_element(candidates_.begin(), candidates_.end(), nearer);
      while (far->seen < chosen_.size()) {
        distance(*far);
        far = std::max_element(candidates_.begin(), candidates_.end(), nearer);
      }
      if (far->nearest < 1e-6) return;
      chosen_.push_back(far->column);
    }
  }

  std::vector<std::size_t> chosen() && { return std::move(chosen_); }

 private:
  struct Candidate {
    double d;
    std::size_t column;
    double nearest = kInfinity;  ///< of the first `seen`
    std::size_t seen = 0;
    bool operator<(const Candidate& other) const noexcept {
      return d != other.d ? d < other.d : column < other.column;
    }
  };

  double distance(Candidate& c) const {
    const auto y = pool_.y(c.column);
    for (; c.seen < chosen_.size(); ++c.seen)
      c.nearest = std::min(c.nearest, farthest_fraction(y, pool_.y(chosen_[c.seen])));
    return c.nearest;
  }

  const ColumnPool& pool_;
  std::vector<Candidate> candidates_;
  std::vector<std::size_t> chosen_;
};

}  // namespace

std::vector<std::size_t> distant_columns(const ColumnPool& pool, std::size_t phase,
                                         std::span<const double> mu,
                                         const ColumnChoice& choice) {
  Choice columns(pool, phase, mu);
  columns.by_energy(choice.spread ? (choice.count + 1) / 2 : choice.count,
                    choice.apart);
  if (choice.spread) columns.by_distance(choice.count);
  return std::move(columns).chosen();
}

}  // namespace gibbsteel::internal
