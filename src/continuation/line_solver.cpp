#include "continuation/line_solver.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>

#include "minimizer/certificate.hpp"
#include "minimizer/kink_starts.hpp"

namespace gibbsteel::internal {
namespace {

constexpr int kWarmSteps = 14;   ///< more, and a cold start is as good
constexpr int kEventSteps = 60;  ///< where a phase comes in
constexpr int kMostRounds = 6;   ///< phases that may come in at one point
constexpr double kSame = 2.0 * kMergeDistance;
constexpr double kVanishedMove = 0.1;   ///< of a site fraction within one point
constexpr double kJump = 0.05;          ///< the same: another minimum of the phase
constexpr double kAnchorKelvin = 25.0;  ///< at most this far to the next anchor
constexpr double kAnchorLog = 0.5;      ///< change of ln a, or (ahead) ln b
constexpr double kFarKelvin = 60.0, kFarLog = 2.0;  ///< in one step: solved cold

std::size_t largest_phase(const Conditions& conditions) {
  std::size_t largest = 1;
  for (const auto& c : conditions.phases) largest = std::max(largest, c.size());
  return largest;
}

bool near_any(const std::vector<PhaseSet>& sets, std::size_t phase,
              std::span<const double> y, double closest) {
  return std::any_of(sets.begin(), sets.end(), [&](const PhaseSet& set) {
    return set.phase == phase && distance(set.y, y) < closest;
  });
}

}  // namespace

LineCounts& LineCounts::operator+=(const LineCounts& other) noexcept {
  points += other.points;
  cold += other.cold;
  again += other.again;
  anchors += other.anchors;
  events += other.events;
  newton_steps += other.newton_steps;
  evaluations += other.evaluations;
  checks += other.checks;
  skipped += other.skipped;
  return *this;
}

LineSolver::LineSolver(const PhaseSystem& system, const SolveOptions& options)
    : system_(system),
      options_(options),
      moving_(system),
      memory_(largest_phase(conditions_)) {}

/// Largest change of ln b of any element.
double LineSolver::log_distance(std::span<const double> x) const noexcept {
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  double log = 0.0;
  for (std::size_t e = 0; e < x.size(); ++e) {
    const double ratio = x[e] / sum / conditions_.overall[e];
    if (ratio != 1.0) log = std::max(log, std::abs(std::log(ratio)));
  }
  return log;
}

bool LineSolver::far(Temperature t, std::span<const double> x) const noexcept {
  return sets_.empty() || !(std::abs(t.in_kelvin() - conditions_.kelvin) < kFarKelvin &&
                            log_distance(x) < kFarLog);
}

double LineSolver::step_to(Temperature t, std::span<const double> x) const noexcept {
  return std::abs(t.in_kelvin() - conditions_.kelvin) / kAnchorKelvin +
         log_distance(x) / kAnchorLog;
}

/// How far the tangent plane has come: what lies above it depends on temperature and
/// potentials alone.
double LineSolver::travelled(double kelvin_before) const noexcept {
  double largest = 0.0;
  for (std::size_t e = 0; e < mu_.size(); ++e)
    largest = std::max(largest, std::abs(mu_[e] - mu_before_[e]));
  return std::max(std::abs(conditions_.kelvin - kelvin_before) / kAnchorKelvin,
                  largest / (conditions_.rt * kAnchorLog));
}

bool LineSolver::refined(int most_steps) {
  before_ = sets_;
  for (const PhaseSet& set : sets_) moving_.refresh(set.phase);
  const Refinement r =
      refine(conditions_, most_steps, options_.balance_tolerance, sets_, mu_, newton_);
  report_.newton_steps += r.steps;
  report_.balance_residual = r.balance;
  report_.present_residual = r.plane;
  report_.unique = r.unique;
  if (!r.converged || !r.unique || !r.unstable.empty()) return false;
  energy_ = 0.0;  // those of the test that ended the refinement
  for (std::size_t f = 0; f < sets_.size(); ++f)
    energy_ += sets_[f].amount * newton_.system.points()[f].energy;
  for (const PhaseSet& set : sets_)
    if (!near_any(before_, set.phase, set.y, kJump)) return false;
  track_vanished();
  return true;
}

/// @return false when the minimum on the other side of a kink lies below the plane
bool LineSolver::check_kinks() {
  for (const PhaseSet& set : sets_) {
    const Candidate& candidate = conditions_.phases[set.phase];
    for (auto& y : kink_starts(*candidate.phase, conditions_.kelvin, set.y)) {
      const auto beyond =
          descend(conditions_, candidate, mu_, {200, 1e-8}, memory_, y.data());
      if (!(beyond.d_per_atom() > -options_.stability_tolerance)) return false;
    }
  }
  return true;
}

void LineSolver::track_vanished() {
  for (const PhaseSet& set : before_) {
    if (near_any(sets_, set.phase, set.y, kVanishedMove)) continue;
    ++counts_.events;
    TrackedMinimum minimum;
    minimum.phase = set.phase;
    minimum.y = set.y;
    evaluate(conditions_, mu_, memory_, minimum);
    tracked_.push_back(std::move(minimum));
  }
  if (before_.size() != sets_.size()) drop_coincident();
}

/// Removes tracked minima that have become a present set or one another.
void LineSolver::drop_coincident() {
  for (std::size_t i = 0; i < tracked_.size();) {
    bool same = near_any(sets_, tracked_[i].phase, tracked_[i].y, kSame);
    for (std::size_t j = 0; j < i && !same; ++j)
      same = tracked_[j].phase == tracked_[i].phase &&
             internal::distance(tracked_[j].y, tracked_[i].y) < kSame;
    if (same)
      tracked_.erase(tracked_.begin() + static_cast<std::ptrdiff_t>(i));
    else
      ++i;
  }
}

/// @return false when D is not known
bool LineSolver::update(TrackedMinimum& minimum) {
  moving_.refresh(minimum.phase);
  evaluate(conditions_, mu_, memory_, minimum);
  return minimum.converged && std::isfinite(minimum.d);
}

/// Brings every tracked minimum that may have come near the plane up to date.
/// @return false when one is not known
bool LineSolver::check_tracked() {
  bool known = true, moved = false;
  for (TrackedMinimum& m : tracked_) {
    ++counts_.checks;
    if (m.far_above(conditions_.kelvin, mu_)) {
      ++counts_.skipped;
      continue;
    }
    known = update(m) && known;
    moved = true;
  }
  if (moved) drop_coincident();
  return known;
}

/// Makes the lowest tracked minimum below the plane a present set.
/// @return false when there is none
bool LineSolver::add_lowest() {
  const auto lowest = std::min_element(
      tracked_.begin(), tracked_.end(),
      [](const TrackedMinimum& a, const TrackedMinimum& b) { return a.d < b.d; });
  if (lowest == tracked_.end() || !(lowest->d < -options_.stability_tolerance))
    return false;
  ++counts_.events;
  PhaseSet added;
  added.phase = lowest->phase;
  added.y = lowest->y;
  added.amount = first_amount(conditions_, lowest->phase, lowest->y.data());
  sets_.push_back(std::move(added));
  tracked_.erase(lowest);
  return true;
}

bool LineSolver::follow() {
  if (!known_ || !refined(kWarmSteps)) return false;
  for (int round = 0; round < kMostRounds; ++round) {
    if (!check_tracked()) return false;
    if (!add_lowest()) return check_kinks();
    if (sets_.size() > conditions_.elements() || !refined(kEventSteps)) return false;
  }
  return false;
}

bool LineSolver::solve_cold(Temperature t, std::span<const double> mole_fractions) {
  ++counts_.cold;
  cold_ = minimize(system_, t, mole_fractions, options_);
  report_ = cold_.report;
  is_cold_ = true;
  known_ = report_.usable() && report_.unique;
  distance_ = 0.0;
  if (!known_) return report_.usable();
  sets_.clear();
  for (const PhasePoint& point : cold_.present) {
    PhaseSet& set = sets_.emplace_back();
    set.phase = point.phase;
    set.amount = point.amount;
    set.y = point.y;
  }
  mu_ = cold_.chemical_potential;
  tracked_.clear();
  for (const PhasePoint& point : cold_.absent) {
    TrackedMinimum& minimum = tracked_.emplace_back();
    minimum.phase = point.phase;
    minimum.y = point.y;
    known_ = update(minimum) && known_;
  }
  return true;
}

bool LineSolver::next(Temperature t, std::span<const double> mole_fractions) {
  ++counts_.points;
  if (far(t, mole_fractions)) forget();
  if (!known_) predictor_.forget();
  const double kelvin_before = conditions_.kelvin;
  mu_before_ = mu_;
  normalized_.assign(mole_fractions.begin(), mole_fractions.end());
  const double sum = std::accumulate(normalized_.begin(), normalized_.end(), 0.0);
  for (double& x : normalized_) x /= sum;
  if (known_) predictor_.predict(conditions_, t.in_kelvin(), normalized_, sets_, mu_);
  moving_.move_to(t, normalized_);
  static const SolveReport blank;
  report_ = blank;  // a copy keeps the memory of its texts
  is_cold_ = false;
  conditions_.evaluations = 0;
  if (!follow()) return solve_cold(t, mole_fractions);
  distance_ += travelled(kelvin_before);
  report_.status = SolveStatus::converged;
  report_.certificate = Certificate::followed;
  report_.reason = "followed from a condition nearby; no known phase below the plane";
  report_.evaluations = conditions_.evaluations;
  counts_.newton_steps += report_.newton_steps;
  counts_.evaluations += conditions_.evaluations;
  return true;
}

bool LineSolver::certify() {
  if (!known_ || is_cold_) return true;
  ++counts_.anchors;
  moving_.refresh_all();
  ColumnGeneration generation(conditions_);
  std::vector<TrackedMinimum> fresh;
  for (const AbsentMinimum& absent :
       test_plane(generation, sets_, mu_, options_, PlaneTestDepth::near_minima)) {
    TrackedMinimum& minimum = fresh.emplace_back();
    minimum.phase = absent.phase;
    minimum.y = absent.y;
    if (!update(minimum) || minimum.d < -options_.stability_tolerance) {
      forget();
      return false;
    }
  }
  std::move(tracked_.begin(), tracked_.end(), std::back_inserter(fresh));
  tracked_ = std::move(fresh);
  drop_coincident();
  distance_ = 0.0;
  return true;
}

}  // namespace gibbsteel::internal
