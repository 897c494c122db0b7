#include "proof/box.hpp"

#include <array>
#include <numeric>

#include "internal/phase_kernel.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kFloor = 1e-300;  ///< upper ends stay above it, so that ln exists

bool narrow_sublattice(std::span<Interval> y) {
  Interval sum;
  for (const Interval& v : y) sum = {sum.lo + v.lo, sum.hi + v.hi};
  const double slack = 4.0 * static_cast<double>(y.size()) * rounding::kHalfUnit;
  if (sum.lo > 1.0 + slack || sum.hi < 1.0 - slack) return false;
  for (Interval& v : y) {
    // 1 minus what the others have at least, or at most; sums err by less than slack.
    const Interval before = v;
    v.lo = std::max(v.lo, 1.0 - (sum.hi - before.hi) - 2.0 * slack);
    v.hi = std::min(v.hi, 1.0 - (sum.lo - before.lo) + 2.0 * slack);
    v.hi = std::max(v.hi, kFloor);
    if (v.lo > v.hi) return false;
  }
  return true;
}

/// Least slope . (y - centre) for one sublattice with the multiplier of the constituent
/// at which a greedy filling stops.
double least_of_sublattice(std::span<const Interval> box,
                           std::span<const Interval> centre,
                           std::span<const double> slope) {
  std::array<std::size_t, kMaxConstituents> order;
  const auto last = order.begin() + static_cast<std::ptrdiff_t>(box.size());
  std::iota(order.begin(), last, std::size_t{0});
  std::sort(order.begin(), last,
            [&](std::size_t a, std::size_t b) { return slope[a] < slope[b]; });
  double room = 1.0;
  for (const Interval& v : box) room -= v.lo;
  double multiplier = slope[order[box.size() - 1]];
  for (std::size_t k = 0; k < box.size(); ++k) {
    room -= box[order[k]].hi - box[order[k]].lo;
    if (room > 0.0) continue;
    multiplier = slope[order[k]];
    break;
  }
  double sum = 0.0, size = 0.0;
  for (std::size_t i = 0; i < box.size(); ++i) {
    const double reduced = slope[i] - multiplier;
    const double move =
        reduced > 0.0 ? box[i].lo - centre[i].hi : box[i].hi - centre[i].lo;
    sum += reduced * move;
    size += std::abs(reduced * move) + std::abs(slope[i]) * std::abs(move);
  }
  return rounding::down(sum - 8.0 * size * rounding::kHalfUnit *
                                  static_cast<double>(box.size()));
}

}  // namespace

Box whole_box(const CompiledPhase& phase) {
  Box box(phase.size(), {0.0, 1.0});
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s)
    if (phase.first[s + 1] - phase.first[s] == 1) box[phase.first[s]] = exactly(1.0);
  return box;
}

bool narrow_to_sums(const CompiledPhase& phase, Box& box) {
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    const std::size_t n = phase.first[s + 1] - phase.first[s];
    if (n > 1 && !narrow_sublattice({&box[phase.first[s]], n})) return false;
  }
  return true;
}

void centre_of(const CompiledPhase& phase, const Box& box, Box& centre) {
  std::array<double, kMaxConstituents> y;
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    const std::size_t from = phase.first[s], to = phase.first[s + 1];
    double sum = 0.0, up = 0.0, down = 0.0;
    for (std::size_t i = from; i < to; ++i) {
      y[i] = 0.5 * (box[i].lo + box[i].hi);
      sum += y[i];
      up += box[i].hi - y[i];
      down += y[i] - box[i].lo;
    }
    const double excess = sum - 1.0;
    for (std::size_t i = from; i < to; ++i) {
      if (excess > 0.0 && down > 0.0)
        y[i] -= std::min(1.0, excess / down) * (y[i] - box[i].lo);
      if (excess < 0.0 && up > 0.0)
        y[i] += std::min(1.0, -excess / up) * (box[i].hi - y[i]);
      y[i] = std::max(y[i], kFloor);
    }
  }
  thin_box(phase, {y.data(), phase.size()}, centre);
}

void thin_box(const CompiledPhase& phase, std::span<const double> y, Box& thin) {
  thin.resize(phase.size());
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    const std::size_t from = phase.first[s], to = phase.first[s + 1];
    if (to - from == 1) {
      thin[from] = exactly(1.0);
      continue;
    }
    double sum = 0.0;
    for (std::size_t i = from; i < to; ++i) sum += y[i];
    const double halves = 4.0 * static_cast<double>(to - from);
    for (std::size_t i = from; i < to; ++i) {
      thin[i].lo = std::max(kFloor, rounding::down(y[i] / sum, halves));
      thin[i].hi = std::max(thin[i].lo, rounding::up(y[i] / sum, halves));
    }
  }
}

double least_linear(const CompiledPhase& phase, const Box& box, const Box& centre,
                    std::span<const double> slope) {
  double sum = 0.0;
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    const std::size_t from = phase.first[s], n = phase.first[s + 1] - from;
    if (n == 1) continue;
    sum = rounding::down(sum + least_of_sublattice({&box[from], n}, {&centre[from], n},
                                                   {&slope[from], n}));
  }
  return sum;
}

}  // namespace gibbsteel::internal
