#include "scan/quiet_interval.hpp"

#include <algorithm>

#include "scan/cubic_bounds.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kLeastAmount = 1e-10;  ///< [mol of formula units per mol of atoms]
constexpr double kLeastD = 2e-3;        ///< [J/mol of atoms]: twice the certificate's
constexpr double kAnyDistance = 0.3;    ///< absent minima farther apart are two

/// A minimum of D that only one end knows cannot reach the plane even when D falls
/// twice as fast as it does there.
bool is_far(double d, double slope_inwards, double h) {
  return d + 2.0 * h * std::min(slope_inwards, 0.0) > kLeastD;  // NaN is not
}

bool amounts_stay_positive(const LineNode& a, const LineNode& b) {
  const auto& from = a.result.present;
  const auto& to = b.result.present;
  const auto partner = partners(from, to, kAnyDistance);
  for (std::size_t i = 0; i < from.size(); ++i) {
    const std::size_t j = partner[i];
    if (j == kNoMatch) return false;
    if (!stays_positive(
            {from[i].amount, to[j].amount, a.slopes->amount[i], b.slopes->amount[j]},
            b.s - a.s, kLeastAmount))
      return false;
  }
  return true;
}

bool absent_stay_absent(const LineNode& a, const LineNode& b) {
  const auto& from = a.result.absent;
  const auto& to = b.result.absent;
  const double h = b.s - a.s;
  const auto partner = partners(from, to, kAnyDistance);
  std::vector<bool> matched(to.size(), false);
  for (std::size_t i = 0; i < from.size(); ++i) {
    const std::size_t j = partner[i];
    const double d = -from[i].driving_force;
    if (j == kNoMatch) {
      if (!is_far(d, a.slopes->d[i], h)) return false;
      continue;
    }
    matched[j] = true;
    const EndValues ends{d, -to[j].driving_force, a.slopes->d[i], b.slopes->d[j]};
    if (!stays_positive(ends, h, kLeastD)) return false;
  }
  for (std::size_t j = 0; j < to.size(); ++j)
    if (!matched[j] && !is_far(-to[j].driving_force, -b.slopes->d[j], h)) return false;
  return true;
}

}  // namespace

bool is_quiet(const LineNode& a, const LineNode& b) {
  return amounts_stay_positive(a, b) && absent_stay_absent(a, b);
}

}  // namespace gibbsteel::internal
