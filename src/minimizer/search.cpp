#include "minimizer/search.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "minimizer/split_set.hpp"
#include "minimizer/twin_starts.hpp"

namespace gibbsteel::internal {
namespace {

/// Depths [J/mol of atoms] to which the cold start is carried before the refinement is
/// tried (again), and the rounds allowed for each. One round is enough for most steels:
/// what is still missing is seen at a glance, see glance().
struct Stage {
  double depth;
  int rounds;
};
constexpr std::array kStages{Stage{3000.0, 1}, Stage{100.0, 15}, Stage{1.0, 25},
                             Stage{0.01, 40}};
constexpr double kProgress = 1e-9;  ///< least fall of the energy [J/mol of atoms]

}  // namespace

Search::Search(Conditions& conditions, const SolveOptions& options)
    : conditions_(conditions), options_(options), generation_(conditions) {}

bool Search::refine_from_program() {
  sets_ = sets_from_basis(generation_);
  const auto mu = generation_.program().potentials();
  mu_.assign(mu.begin(), mu.end());
  if (sets_.empty()) return false;
  last_ = refine(conditions_, options_.max_newton_steps, options_.balance_tolerance,
                 sets_, mu_);
  newton_steps_ += last_.steps;
  return last_.converged;
}

/// The program's phases but one of them: a trace that one phase is there for may be
/// dissolved in another, at an amount that the scheme cannot shrink to in its steps.
bool Search::refine_without_one() {
  const auto all = sets_from_basis(generation_);
  const auto mu = generation_.program().potentials();
  for (std::size_t f = 0; f < all.size() && all.size() > 1; ++f) {
    sets_ = all;
    sets_.erase(sets_.begin() + static_cast<std::ptrdiff_t>(f));
    mu_.assign(mu.begin(), mu.end());
    last_ = refine(conditions_, options_.max_newton_steps, options_.balance_tolerance,
                   sets_, mu_);
    newton_steps_ += last_.steps;
    if (last_.converged) return true;
  }
  return false;
}

bool Search::start(SolveReport& report) {
  for (const Stage& stage : kStages) {
    if (!generation_.run(stage.depth, stage.rounds)) continue;
    if (generation_.program().infeasible()) {
      if (&stage != &kStages.back())
        continue;  // the next stage may have the columns that are missing
      const bool known = generation_.pool().finite_energies();
      report.status = known ? SolveStatus::infeasible : SolveStatus::stalled;
      report.reason = known ? "no mixture of the allowed phases has this composition"
                            : "energies are not finite numbers at this temperature";
      return false;
    }
    if (refine_from_program()) return true;
  }
  if (refine_without_one()) return true;
  report.status = SolveStatus::stalled;
  report.reason = "the refinement did not converge from any start";
  return false;
}

std::vector<AbsentMinimum> Search::violations() const {
  std::vector<AbsentMinimum> found;
  for (const auto& m : absent_)
    if (m.d < -options_.stability_tolerance) found.push_back(m);
  return found;
}

void Search::add_columns(const std::vector<AbsentMinimum>& violations) {
  ColumnPool& pool = generation_.pool();
  const auto add = [&](std::size_t phase, const std::vector<double>& y) {
    const Candidate& candidate = conditions_.phases[phase];
    pool.add(conditions_, phase, y.data(),
             gibbs_energy(*candidate.phase, candidate.at, y.data()));
  };
  for (const auto& m : violations) add(m.phase, m.y);
  for (const auto& set : sets_) add(set.phase, set.y);
}

/// True when the energy has fallen, or has stayed (a trace of a phase weighs next to
/// nothing) and the point is no longer below the plane.
bool Search::improves(const std::vector<PhaseSet>& sets, const std::vector<double>& mu,
                      double before, const AbsentMinimum& below) const {
  const double change = total_energy(conditions_, sets) - before;
  if (change < -kProgress) return true;
  const Candidate& candidate = conditions_.phases[below.phase];
  const CompiledPhase& phase = *candidate.phase;
  std::vector<double> formula(mu.size(), 0.0);
  add_atoms(phase, below.y.data(), 1.0, formula.data());
  double d = gibbs_energy(phase, candidate.at, below.y.data());
  for (std::size_t e = 0; e < mu.size(); ++e) d -= mu[e] * formula[e];
  return change < kProgress &&
         d > -0.5 * options_.stability_tolerance * atoms(phase, below.y.data());
}

/// Takes over what `sets` refine to. @return false when that is no better
bool Search::refine_lower(std::vector<PhaseSet> sets, const AbsentMinimum& below) {
  auto mu = mu_;
  const auto result = refine(conditions_, options_.max_newton_steps,
                             options_.balance_tolerance, sets, mu);
  newton_steps_ += result.steps;
  if (!result.converged || !improves(sets, mu, total_energy(conditions_, sets_), below))
    return false;
  sets_ = std::move(sets);
  mu_ = std::move(mu);
  last_ = result;
  return true;
}

/// The violating minimum in the place of each set in turn: a trace that one set is
/// there for may be held by the other.
bool Search::refine_in_place_of_one(const AbsentMinimum& below) {
  const auto all = sets_;
  for (std::size_t f = 0; f < all.size() && all.size() > 1; ++f) {
    auto sets = all;
    sets[f] = PhaseSet{};
    sets[f].phase = below.phase;
    sets[f].amount = first_amount(conditions_, below.phase, below.y.data());
    sets[f].y = below.y;
    if (refine_lower(std::move(sets), below)) return true;
  }
  return false;
}

/// Adds the lowest violating minimum as a small new set, or, where it lies close to a
/// set of the same phase, in the place of that set or opposite to it.
bool Search::refine_with(const std::vector<AbsentMinimum>& violations) {
  const AbsentMinimum& lowest = violations.front();
  if (sets_.size() < conditions_.elements()) {
    auto sets = sets_;
    PhaseSet added;
    added.phase = lowest.phase;
    added.amount = first_amount(conditions_, lowest.phase, lowest.y.data());
    added.y = lowest.y;
    sets.push_back(std::move(added));
    if (refine_lower(std::move(sets), lowest)) return true;
  }
  for (auto& sets : twin_starts(conditions_, sets_, violations))
    if (refine_lower(std::move(sets), lowest)) return true;
  return refine_in_place_of_one(lowest);
}

/// Adds what lies below the plane, and refines with it or from the program again:
/// deeper each time, until that is better or, where the assemblage leaves the
/// potentials free, they move.
bool Search::refine_again(const std::vector<AbsentMinimum>& violations) {
  add_columns(violations);
  if (refine_with(violations)) return true;
  const double before = total_energy(conditions_, sets_);
  for (const Stage& stage : kStages)
    if (generation_.run(stage.depth, stage.rounds) && refine_from_program() &&
        (improves(sets_, mu_, before, violations.front()) || !last_.unique))
      return true;
  return false;
}

/// A look from few starts, for what is far from complete. @return true when it found a
/// phase below the plane that could be added
bool Search::glance() {
  const auto below = glance_below(generation_, mu_, options_);
  if (below.empty()) return false;
  add_columns(below);
  return refine_with(below);
}

/// Fills absent_. @return false when some descent did not end, so that D is not known
bool Search::test() {
  NewtonMemory memory;
  condition_number_ =
      last_step(conditions_, options_.balance_tolerance, sets_, mu_, last_, memory);
  absent_ = test_plane(generation_, sets_, mu_, options_, PlaneTestDepth::all_minima);
  if (violations().empty()) polish(generation_, sets_, mu_, options_, absent_);
  return std::all_of(absent_.begin(), absent_.end(), [](const AbsentMinimum& m) {
    return m.converged && std::isfinite(m.d);
  });
}

/// Tier 2, when asked for. @return false when it found a phase below the plane
bool Search::prove() {
  if (options_.certify != Certificate::proof) return true;
  if (unbounded_potentials()) {
    proof_.progress = "not proven: the chemical potentials have no bound";
    return true;
  }
  SolveOptions left = options_;  // of the time for all rounds
  left.proof_seconds -= proof_.seconds;
  PlaneProof next = prove_plane(generation_, mu_, left);
  next.boxes += proof_.boxes;
  next.seconds += proof_.seconds;
  proof_ = std::move(next);
  return proof_.violations.empty();
}

bool Search::split_unstable() {
  if (sets_.size() >= conditions_.elements()) return false;
  auto sets = sets_;
  auto mu = mu_;
  if (!split_set(generation_, mu_, last_.unstable.front(), sets)) return false;
  const auto result = refine(conditions_, options_.max_newton_steps,
                             options_.balance_tolerance, sets, mu);
  newton_steps_ += result.steps;
  if (!result.converged || !result.unstable.empty()) return false;
  sets_ = std::move(sets);
  mu_ = std::move(mu);
  last_ = result;
  return true;
}

bool Search::certify(SolveReport& report) {
  const auto fail = [&](SolveStatus status, const char* reason) {
    report.status = status;
    report.reason = reason;
    return false;
  };
  for (; report.rounds < options_.max_rounds; ++report.rounds) {
    if (glance()) continue;
    const bool known = test();
    const auto found = violations();
    if (!found.empty()) {
      if (refine_again(found)) continue;
      return fail(SolveStatus::stalled,
                  "the refinement did not converge after a phase was added");
    }
    if (!last_.unstable.empty()) {
      if (split_unstable()) continue;
      return fail(SolveStatus::stalled,
                  "too close to a consolute point to tell one phase from two");
    }
    if (known) {
      if (prove()) return true;
      if (refine_again(proof_.violations)) continue;
      return fail(SolveStatus::stalled,
                  "the refinement did not converge after the proof found a phase");
    }
    return fail(SolveStatus::stalled, "the test of an absent phase did not converge");
  }
  return fail(SolveStatus::iteration_limit,
              "phases below the tangent plane kept appearing");
}

void Search::finish(SolveReport& report) {
  report.balance_residual = last_.balance;
  report.present_residual = last_.plane;
  report.unique = last_.unique;
  report.condition_number = condition_number_;
  if (!absent_.empty()) report.lowest_absent = absent_.front().d;
  report.proof = proof_.progress;
  report.proof_boxes = proof_.boxes;
  if (!proof_.complete) return;
  report.certificate = Certificate::proof;
  report.reason = "converged; proven that no phase lies below the tangent plane";
  double plane = 0.0;
  for (std::size_t e = 0; e < mu_.size(); ++e) plane += mu_[e] * conditions_.overall[e];
  report.proven_gap =
      options_.proof_gap + std::max(0.0, total_energy(conditions_, sets_) - plane);
}

void Search::run(SolveReport& report) {
  if (start(report) && certify(report)) {
    report.status = SolveStatus::converged;
    report.certificate = Certificate::many_starts;
    report.reason = "converged; no phase found below the tangent plane";
    finish(report);
  }
  report.newton_steps = newton_steps_;
  report.columns = static_cast<int>(generation_.pool().size());
  report.evaluations = conditions_.evaluations;
}

}  // namespace gibbsteel::internal
