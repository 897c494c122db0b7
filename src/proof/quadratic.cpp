#include "proof/quadratic.hpp"

namespace gibbsteel::internal {
namespace {

/// Reach-weighted means of the rows of a block; a plain mean where nothing can move.
double weighted_mean(const double* row, const double* weight, std::size_t from,
                     std::size_t to) {
  double sum = 0.0, total = 0.0;
  for (std::size_t j = from; j < to; ++j) {
    sum += weight[j] * row[j];
    total += weight[j];
  }
  return total > 0.0 ? sum / total : 0.0;
}

}  // namespace

void QuadraticForm::centre_block(const CompiledPhase& phase, std::size_t s,
                                 std::size_t t) {
  const std::size_t i0 = phase.first[s], i1 = phase.first[s + 1];
  const std::size_t j0 = phase.first[t], j1 = phase.first[t + 1];
  std::vector<double> row(n, 0.0), column(n, 0.0);
  for (std::size_t i = i0; i < i1; ++i)
    row[i] = weighted_mean(&mid[i * n], reach.data(), j0, j1);
  const double mean = weighted_mean(row.data(), reach.data(), i0, i1);
  if (s == t) {
    for (std::size_t i = i0; i < i1; ++i) column[i] = row[i] -= 0.5 * mean;
  } else {
    for (std::size_t j = j0; j < j1; ++j)
      column[j] = weighted_mean(&mid[j * n], reach.data(), i0, i1) - mean;
  }
  for (std::size_t i = i0; i < i1; ++i)
    for (std::size_t j = j0; j < j1; ++j) {
      const double m = mid[i * n + j] - row[i] - column[j];
      centred[i * n + j] = centred[j * n + i] = m;
      // The shift itself is exact in no more than these digits.
      const double slack =
          8.0 * rounding::kHalfUnit *
          (std::abs(mid[i * n + j]) + std::abs(row[i]) + std::abs(column[j]));
      radius[i * n + j] = radius[j * n + i] = rounding::up(radius[i * n + j] + slack);
    }
}

void QuadraticForm::fill(const EnergyEnclosure& energy, const Box& box,
                         const Box& centre, const Enclosure& over) {
  const CompiledPhase& phase = energy.phase();
  n = phase.size();
  for (auto* square : {&mid, &radius, &centred}) square->resize(n * n);
  mixing.resize(n);
  reach.resize(n);
  for (std::size_t i = 0; i < n; ++i) {
    reach[i] = rounding::up(
        std::max({box[i].hi - centre[i].lo, centre[i].hi - box[i].lo, 0.0}));
    mixing[i] = rounding::down(phase.sites[i] * energy.rt() / box[i].hi, 8.0);
    for (std::size_t j = i; j < n; ++j) {
      const Interval& h = over.hessian[i * n + j];
      const double m = 0.5 * (h.lo + h.hi);
      mid[i * n + j] = mid[j * n + i] = m;
      const double r = rounding::up(std::max(h.hi - m, m - h.lo));
      radius[i * n + j] = radius[j * n + i] = r;
    }
  }
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    if (phase.first[s + 1] - phase.first[s] == 1) reach[phase.first[s]] = 0.0;
  }
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s)
    for (std::size_t t = s; t < phase.sublattice_count(); ++t)
      centre_block(phase, s, t);
}

double QuadraticForm::deficit(std::size_t i) const {
  const double* row = &centred[i * n];
  const double* r = &radius[i * n];
  double off = 0.0;
  for (std::size_t j = 0; j < n; ++j)
    if (j != i) off += (std::abs(row[j]) + r[j]) * reach[j];
  const double diagonal = row[i] - r[i] + mixing[i];
  const double value = off - diagonal * reach[i];
  // What the roundings of the sums may be off by, whatever cancels in them.
  const double size = off + (std::abs(row[i]) + r[i] + mixing[i]) * reach[i];
  const double slack = 3.0 * static_cast<double>(n + 2) * rounding::kHalfUnit * size;
  const double bound = rounding::up(value + slack);
  if (std::isnan(bound)) return std::numeric_limits<double>::infinity();
  return bound > 0.0 ? rounding::up(bound * reach[i]) : 0.0;
}

}  // namespace gibbsteel::internal
