#include "continuation/resumed_descent.hpp"

#include <algorithm>
#include <cmath>

#include "lanes/fractions.hpp"
#include "lanes/phase_energy.hpp"

namespace gibbsteel::internal {
namespace {

constexpr int kHalvings = 14;
constexpr double kClose = 0.01;  ///< relative change of every site fraction
constexpr double kSurely = 0.1;  ///< of the tolerance, by the Hessian close by

/// Numbers that a descent needs for n constituents on s sublattices.
std::size_t room_for(std::size_t n, std::size_t s) {
  return n * n + one::TangentFactor<double>::room(n, s) + 2 * (n + n * n) + 5 * n;
}

one::MagneticRoom<double> magnetic_room(double* memory, std::size_t n) {
  return {memory, memory + n, memory + 2 * n, memory + 2 * n + n * n};
}

bool is_close_to(const double* a, const double* b, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i)
    if (!(std::abs(a[i] - b[i]) < kClose * b[i])) return false;
  return true;
}

}  // namespace

ResumedDescent::ResumedDescent(std::size_t constituents)
    : memory_(room_for(constituents, kMaxSublattices)) {}

void ResumedDescent::place(std::size_t n, std::size_t sublattices) {
  n_ = n;
  double* memory = memory_.data();
  const auto take = [&memory](std::size_t count) {
    double* place = memory;
    memory += count;
    return place;
  };
  hessian_ = take(n * n);
  factor_.place(take(one::TangentFactor<double>::room(n, sublattices)), n, sublattices);
  room_ = take(2 * (n + n * n));
  for (double** row : {&gradient_, &w_, &slope_, &direction_, &trial_}) *row = take(n);
}

void ResumedDescent::begin(Conditions& conditions, const Candidate& candidate,
                           double* y) {
  conditions_ = &conditions;
  candidate_ = &candidate;
  y_ = y;
  place(candidate.size(), candidate.phase->sublattice_count());
  evaluated_ = factored_ = is_close_ = false;
}

void ResumedDescent::evaluate(bool with_hessian) {
  const CompiledPhase& phase = *candidate_->phase;
  energy_ = one::energy_with_slopes(phase, candidate_->at, conditions_->rt, y_,
                                    {gradient_, with_hessian ? hessian_ : nullptr, n_},
                                    magnetic_room(room_, n_));
  evaluated_ = true;
  if (!with_hessian) return;
  factor_.factor(phase, conditions_->rt, y_, hessian_, true);
  factored_ = true;
  ++conditions_->evaluations;
}

/// D, the Newton direction, and the decrease of D that it promises.
void ResumedDescent::look_downhill() {
  d_ = energy_ - one::dot(w_, y_, n_);
  for (std::size_t i = 0; i < n_; ++i) slope_[i] = gradient_[i] - w_[i];
  factor_.newton_direction(slope_, direction_);
  decrease_ = -one::dot(slope_, direction_, n_);
}

bool ResumedDescent::has_arrived(double tolerance) {
  if (!factored_ && is_close_) {
    if (!evaluated_) evaluate(false);
    look_downhill();
    if (std::abs(decrease_) < kSurely * tolerance) return true;
  }
  if (!factored_) evaluate(true);
  look_downhill();
  return decrease_ < tolerance;
}

/// @return false when no step leads downhill
bool ResumedDescent::move() {
  const CompiledPhase& phase = *candidate_->phase;
  double fraction = one::step_bound(direction_, n_);
  const double noise = 1e-13 * std::abs(energy_);
  for (int h = 0; h < kHalvings; ++h) {
    one::update_fractions(phase, y_, direction_, fraction, trial_);
    const double energy =
        one::energy_value(phase, candidate_->at, conditions_->rt, trial_);
    const double d = energy - one::dot(w_, trial_, n_);
    if (d < d_ - 1e-4 * fraction * decrease_ + noise) {
      is_close_ = is_close_to(trial_, y_, n_);
      std::copy_n(trial_, n_, y_);
      energy_ = energy;
      d_ = d;
      evaluated_ = factored_ = false;
      return true;
    }
    fraction *= 0.4;
  }
  return false;
}

DescentResult ResumedDescent::result(bool converged) const {
  DescentResult result;
  result.energy = energy_;
  result.d = d_;
  result.converged = converged;
  result.atoms = atoms(*candidate_->phase, y_);
  return result;
}

DescentResult ResumedDescent::to_minimum(std::span<const double> mu,
                                         const DescentLimits& limits) {
  plane_weights(*candidate_->phase, mu, w_);
  for (int steps = 0; steps < limits.steps; ++steps) {
    if (has_arrived(limits.tolerance)) return result(true);
    if (!move()) return result(decrease_ < 1e3 * limits.tolerance);
  }
  return result(false);
}

}  // namespace gibbsteel::internal
