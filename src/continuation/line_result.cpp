/// The last point of a line as an equilibrium.

#include <algorithm>

#include "continuation/line_solver.hpp"
#include "minimizer/phase_points.hpp"

namespace gibbsteel::internal {
namespace {

/// Member by member: the memory of the site fractions is used again.
void put(std::size_t phase, double amount, const std::vector<double>& y,
         double driving_force, PhasePoint& point) {
  point.phase = phase;
  point.amount = amount;
  point.y = y;
  point.driving_force = driving_force;
}

}  // namespace

void LineSolver::equilibrium(Equilibrium& result, ConditionNumbers numbers) {
  if (is_cold_) {
    result = cold_;
    return;
  }
  const Temperature t = Temperature::kelvin(conditions_.kelvin);
  for (TrackedMinimum& m : tracked_) {
    moving_.refresh(m.phase);
    evaluate_fully(conditions_, mu_, descent_, m);
  }
  drop_coincident();
  std::sort(tracked_.begin(), tracked_.end(),
            [](const TrackedMinimum& a, const TrackedMinimum& b) { return a.d < b.d; });
  if (!tracked_.empty()) report_.lowest_absent = tracked_.front().d;
  if (report_.lowest_absent < -options_.stability_tolerance) {
    solve_cold(t, normalized_);
    result = cold_;
    return;
  }
  if (numbers == ConditionNumbers::wanted)
    report_.condition_number = condition_number(conditions_, sets_, newton_);
  result.report = report_;
  result.temperature = t;
  result.present.resize(sets_.size());
  for (std::size_t f = 0; f < sets_.size(); ++f)
    put(sets_[f].phase, sets_[f].amount, sets_[f].y, 0.0, result.present[f]);
  result.absent.resize(tracked_.size());
  for (std::size_t k = 0; k < tracked_.size(); ++k)
    put(tracked_[k].phase, 0.0, tracked_[k].y, -tracked_[k].d, result.absent[k]);
  sort_by_atoms(conditions_, result.present);
  result.chemical_potential = mu_;
  result.gibbs_energy = energy_;
}

}  // namespace gibbsteel::internal
