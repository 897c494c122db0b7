#include "continuation/line_solver.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "minimizer/search.hpp"
#include "minimizer/two_level_newton.hpp"

namespace gibbsteel::internal {
namespace {

constexpr int kWarmSteps = 14;  ///< more, and a cold start is as good
constexpr int kMostRounds = 6;  ///< phases that may come in at one point
constexpr double kSame = 2.0 * kMergeDistance;
constexpr double kVanishedMove = 0.1;   ///< of a site fraction within one point
constexpr double kAnchorKelvin = 25.0;  ///< at most this far to the next anchor
constexpr double kAnchorLog = 0.5;      ///< change of ln b of any element
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

LineSolver::LineSolver(const PhaseSystem& system, const SolveOptions& options)
    : system_(system),
      options_(options),
      conditions_(conditions_of(
          system, Temperature::kelvin(1000.0),
          std::vector<double>(system.elements().size(),
                              1.0 / static_cast<double>(system.elements().size())))),
      curves_(system.phases().empty() ? 0 : system.phases().front().curves().size()),
      step_(largest_phase(conditions_), conditions_.elements()) {}

LineSolver::~LineSolver() = default;

void LineSolver::move_to(Temperature t, std::span<const double> x) {
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  for (std::size_t e = 0; e < x.size(); ++e) conditions_.overall[e] = x[e] / sum;
  if (t.in_kelvin() == conditions_.kelvin) return;
  conditions_.kelvin = t.in_kelvin();
  conditions_.rt = kGasConstant * conditions_.kelvin;
  system_.phases().front().curves().evaluate(conditions_.kelvin, curves_);
  for (Candidate& candidate : conditions_.phases)
    candidate.at.refresh(*candidate.phase, conditions_.kelvin, curves_);
}

/// Largest change of ln b of any element.
double LineSolver::log_distance(std::span<const double> x) const noexcept {
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  double log = 0.0;
  for (std::size_t e = 0; e < x.size(); ++e)
    log = std::max(log, std::abs(std::log(x[e] / sum / conditions_.overall[e])));
  return log;
}

bool LineSolver::far(Temperature t, std::span<const double> x) const noexcept {
  return sets_.empty() || !(std::abs(t.in_kelvin() - conditions_.kelvin) < kFarKelvin &&
                            log_distance(x) < kFarLog);
}

bool LineSolver::refined(int most_steps) {
  const auto before = sets_;
  const Refinement r =
      refine(conditions_, most_steps, options_.balance_tolerance, sets_, mu_);
  report_.newton_steps += r.steps;
  report_.balance_residual = r.balance;
  report_.present_residual = r.plane;
  report_.unique = r.unique;
  if (!r.converged || !r.unique || !r.unstable.empty()) return false;
  track_vanished(before);
  return true;
}

void LineSolver::track_vanished(const std::vector<PhaseSet>& before) {
  for (const PhaseSet& set : before) {
    if (near_any(sets_, set.phase, set.y, kVanishedMove)) continue;
    ++counts_.events;
    TrackedMinimum minimum;
    minimum.phase = set.phase;
    minimum.y = set.y;
    evaluate(conditions_, mu_, step_, minimum);
    tracked_.push_back(std::move(minimum));
  }
  if (before.size() != sets_.size()) drop_coincident();
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
    evaluate(conditions_, mu_, step_, m);
    moved = true;
    known = known && m.converged && std::isfinite(m.d);
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
  if (sets_.empty() || !refined(kWarmSteps)) return false;
  for (int round = 0; round < kMostRounds; ++round) {
    if (!check_tracked()) return false;
    if (!add_lowest()) return true;
    if (sets_.size() > conditions_.elements() || !refined(4 * kWarmSteps)) return false;
  }
  return false;
}

bool LineSolver::solve_cold() {
  ++counts_.cold;
  Search search(conditions_, options_);
  report_ = SolveReport{};
  search.run(report_);
  sets_ = search.sets();
  mu_ = search.potentials();
  tracked_.clear();
  if (!report_.usable() || search.unbounded_potentials() || !report_.unique) {
    const bool usable = report_.usable();
    distance_ = 0.0;
    if (!usable) sets_.clear();
    return usable;
  }
  for (const AbsentMinimum& absent : search.absent()) {
    TrackedMinimum minimum;
    minimum.phase = absent.phase;
    minimum.y = absent.y;
    evaluate(conditions_, mu_, step_, minimum);
    tracked_.push_back(std::move(minimum));
  }
  distance_ = 0.0;
  ++counts_.anchors;
  return true;
}

bool LineSolver::next(Temperature t, std::span<const double> mole_fractions) {
  ++counts_.points;
  if (far(t, mole_fractions)) forget();
  distance_ += std::abs(t.in_kelvin() - conditions_.kelvin) / kAnchorKelvin +
               log_distance(mole_fractions) / kAnchorLog;
  move_to(t, mole_fractions);
  report_ = SolveReport{};
  conditions_.evaluations = 0;
  bool usable = follow();
  if (usable) {
    report_.status = SolveStatus::converged;
    report_.certificate = Certificate::many_starts;
    report_.reason = "followed";
  } else {
    usable = solve_cold();
  }
  counts_.newton_steps += report_.newton_steps;
  counts_.evaluations += conditions_.evaluations;
  return usable;
}

bool LineSolver::certify() {
  if (distance_ == 0.0 || sets_.empty()) return true;
  ++counts_.anchors;
  ColumnGeneration generation(conditions_);
  auto minima = test_plane(generation, sets_, mu_, options_.starts_per_phase);
  std::vector<TrackedMinimum> fresh;
  for (const AbsentMinimum& absent : minima) {
    TrackedMinimum minimum;
    minimum.phase = absent.phase;
    minimum.y = absent.y;
    evaluate(conditions_, mu_, step_, minimum);
    if (minimum.d < -options_.stability_tolerance || !minimum.converged) {
      forget();
      return false;
    }
    fresh.push_back(std::move(minimum));
  }
  for (TrackedMinimum& old : tracked_) fresh.push_back(std::move(old));
  tracked_ = std::move(fresh);
  drop_coincident();
  distance_ = 0.0;
  return true;
}

Equilibrium LineSolver::equilibrium() const {
  Equilibrium result;
  result.report = report_;
  result.temperature = Temperature::kelvin(conditions_.kelvin);
  if (!report_.usable()) return result;
  for (const PhaseSet& set : sets_)
    result.present.push_back({set.phase, set.amount, set.y, 0.0});
  result.chemical_potential = mu_;
  result.gibbs_energy = total_energy(conditions_, sets_);
  return result;
}

}  // namespace gibbsteel::internal
