#include "proof/box_bound.hpp"

namespace gibbsteel::internal {
namespace {

constexpr int kMostPasses = 4;        ///< of narrowing, per box
constexpr double kWorthwhile = 0.75;  ///< another pass when the box shrank below this

double sum_of_widths(const Box& box) {
  double sum = 0.0;
  for (const Interval& v : box) sum += v.width();
  return sum;
}

}  // namespace

BoxBound::BoxBound(const Candidate& candidate, std::vector<Interval> weights)
    : energy_(candidate), weights_(std::move(weights)), slope_(candidate.size()) {}

/// Everything that is needed about the box and its centre.
void BoxBound::look(const Box& box) {
  centre_of(energy_.phase(), box, centre_);
  // The centre may lie a few units in the last place outside: what is said about the
  // segments from it has to hold there too.
  wide_ = box;
  for (std::size_t i = 0; i < box.size(); ++i) wide_[i] = hull(box[i], centre_[i]);
  energy_.over(wide_, enclosure_);
  energy_.at(centre_, enclosure_.kink, enclosure_);
  form_.fill(energy_, wide_, centre_, enclosure_);
}

/// Range over the box of (dE/dy_i - w_i) - (dE/dy_k - w_k): its value at the centre, a
/// linear part, and what the spread of the Hessian allows.
Interval BoxBound::slope_difference(std::size_t i, std::size_t k, const Box& box) {
  const std::size_t n = form_.n;
  Interval at_centre =
      (enclosure_.gradient[i] - weights_[i]) - (enclosure_.gradient[k] - weights_[k]);
  if (enclosure_.kink)
    at_centre += enclosure_.kink_gradient[i] - enclosure_.kink_gradient[k];
  double spread = 0.0, size = 0.0;
  for (std::size_t j = 0; j < n; ++j) {
    const double difference = form_.mid[i * n + j] - form_.mid[k * n + j];
    slope_[j] = difference;
    spread += (form_.radius[i * n + j] + form_.radius[k * n + j]) * form_.reach[j];
    size += (std::abs(form_.mid[i * n + j]) + std::abs(form_.mid[k * n + j])) *
            form_.reach[j];
  }
  spread = rounding::up(spread + 4.0 * size * rounding::kHalfUnit,
                        3.0 * static_cast<double>(n));
  const double least = least_linear(energy_.phase(), box, centre_, slope_);
  for (double& s : slope_) s = -s;
  const double most = -least_linear(energy_.phase(), box, centre_, slope_);
  return {rounding::down(rounding::down(at_centre.lo + least) - spread),
          rounding::up(rounding::up(at_centre.hi + most) + spread)};
}

/// At a minimum of D the site fractions of a sublattice are to one another as
/// exp(-slope / (R T a)).
bool BoxBound::narrow_sublattice(std::size_t from, std::size_t to, Box& box) {
  const std::size_t m = to - from;
  std::vector<Interval> ratio(m * m, exactly(1.0));
  const Interval per = reciprocal(energy_.phase().sites[from] * exactly(energy_.rt()));
  for (std::size_t i = 0; i < m; ++i)
    for (std::size_t k = i + 1; k < m; ++k) {
      const Interval d = slope_difference(from + i, from + k, box) * per;
      ratio[i * m + k] = exp({std::max(d.lo, -700.0), std::min(d.hi, 700.0)});
      if (d.lo < -700.0) ratio[i * m + k].lo = 0.0;
      if (d.hi > 700.0) ratio[i * m + k].hi = std::numeric_limits<double>::infinity();
      ratio[k * m + i] = exp({std::max(-d.hi, -700.0), std::min(-d.lo, 700.0)});
      if (-d.hi < -700.0) ratio[k * m + i].lo = 0.0;
      if (-d.lo > 700.0) ratio[k * m + i].hi = std::numeric_limits<double>::infinity();
    }
  for (std::size_t i = 0; i < m; ++i) {
    double lo = 0.0, hi = 0.0;  // of the sum of y_k / y_i
    for (std::size_t k = 0; k < m; ++k) {
      lo = rounding::down(lo + ratio[i * m + k].lo);
      hi = rounding::up(hi + ratio[i * m + k].hi);
    }
    Interval& y = box[from + i];
    y.lo = std::max(y.lo, hi < 1e300 ? rounding::down(1.0 / hi) : 0.0);
    y.hi = std::min(y.hi, rounding::up(1.0 / std::max(lo, 0.5)));
    if (y.lo > y.hi) return false;
  }
  return true;
}

bool BoxBound::narrow(Box& box) {
  const CompiledPhase& phase = energy_.phase();
  Box narrowed = box;
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    const std::size_t from = phase.first[s], to = phase.first[s + 1];
    if (to - from == 1) continue;
    // Ranges are taken over `box`, for which form_ was made; results go to `narrowed`.
    Box own = box;
    if (!narrow_sublattice(from, to, own)) return false;
    for (std::size_t i = from; i < to; ++i) narrowed[i] = own[i];
  }
  box = narrowed;
  return narrow_to_sums(phase, box);
}

/// Tangent of D at the centre, at its least over the box.
double BoxBound::tangent_bound(const Box& box) {
  const CompiledPhase& phase = energy_.phase();
  double spread = 0.0;
  for (std::size_t i = 0; i < phase.size(); ++i) {
    const Interval slope = enclosure_.gradient[i] - weights_[i] +
                           phase.sites[i] * exactly(energy_.rt()) * log(centre_[i]);
    slope_[i] = 0.5 * (slope.lo + slope.hi);
    const double move = std::max(box[i].hi - centre_[i].lo, centre_[i].hi - box[i].lo);
    spread += std::max(slope.hi - slope_[i], slope_[i] - slope.lo) * move;
  }
  spread = rounding::up(spread, 3.0 * static_cast<double>(phase.size()));
  const double linear = least_linear(phase, box, centre_, slope_);
  return rounding::down(rounding::down(centre_energy_.lo + linear) - spread);
}

double BoxBound::lower_bound(const Box& box) {
  double below = 0.0;
  for (std::size_t i = 0; i < form_.n; ++i)
    if (const double deficit = form_.deficit(i); deficit > 0.0)
      below = rounding::up(below + deficit);
  double bound = tangent_bound(box);
  if (enclosure_.kink) bound = rounding::down(bound + enclosure_.kink_value.lo);
  return rounding::down(bound - 0.5 * below);
}

/// Along the constituent that spoils the bound most.
void BoxBound::choose_split(const Box& box) {
  double worst = -1.0;
  split_ = 0;
  for (std::size_t i = 0; i < form_.n; ++i) {
    if (!(box[i].width() > 0.0) || form_.reach[i] == 0.0) continue;
    double score = 0.0;
    for (std::size_t j = 0; j < form_.n; ++j)
      score +=
          (std::abs(form_.centred[i * form_.n + j]) + form_.radius[i * form_.n + j]) *
          form_.reach[i] * form_.reach[j];
    if (score <= worst) continue;
    worst = score;
    split_ = i;
  }
}

BoxBound::Verdict BoxBound::examine(Box& box) {
  if (!narrow_to_sums(energy_.phase(), box)) return Verdict::excluded;
  for (int pass = 0; pass < kMostPasses; ++pass) {
    look(box);
    const double before = sum_of_widths(box);
    Box narrowed = box;
    if (!narrow(narrowed)) return Verdict::excluded;
    const bool worthwhile = sum_of_widths(narrowed) < kWorthwhile * before;
    if (!worthwhile) break;
    box = narrowed;
    if (pass + 1 == kMostPasses) look(box);
  }
  Enclosure whole = enclosure_;
  if (enclosure_.kink) energy_.at(centre_, false, whole);
  centre_energy_ =
      plane_distance(energy_.phase(), energy_.rt(), centre_, whole.value, weights_);
  if (centre_energy_.hi < 0.0) return Verdict::violated;
  if (enclosure_.kink)
    centre_energy_ = plane_distance(energy_.phase(), energy_.rt(), centre_,
                                    enclosure_.value, weights_);
  if (lower_bound(box) >= 0.0) return Verdict::above;
  choose_split(box);
  return Verdict::undecided;
}

}  // namespace gibbsteel::internal
