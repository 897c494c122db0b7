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

void ResumedDescent::place(std::size_t n, std::size_t sublattices) {
  n_ = n;
  if (memory_.size() < room_for(n, sublattices))
    memory_.resize(room_for(n, sublattices));
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
  evaluated_ = factored_ = false;
}

/// @return G at y, with its gradient and, if wanted, its Hessian
double ResumedDescent::evaluate(const double* y, bool with_hessian) {
  return one::energy_with_slopes(*candidate_->phase, candidate_->at, conditions_->rt, y,
                                 {gradient_, with_hessian ? hessian_ : nullptr, n_},
                                 magnetic_room(room_, n_));
}

void ResumedDescent::factor() {
  factor_.factor(*candidate_->phase, conditions_->rt, y_, hessian_, true);
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
  if (evaluated_ && !factored_) {
    look_downhill();
    if (std::abs(decrease_) < kSurely * tolerance) return true;
  }
  if (!factored_) {
    energy_ = evaluate(y_, true);
    evaluated_ = true;
    factor();
  }
  look_downhill();
  return decrease_ < tolerance;
}

/// Nearly always the first trial is taken: so all that is wanted there is evaluated at
/// once.
/// @return false when no step leads downhill
bool ResumedDescent::move() {
  double fraction = one::step_bound(direction_, n_);
  const double noise = 1e-13 * std::abs(energy_);
  for (int h = 0; h < kHalvings; ++h) {
    one::update_fractions(*candidate_->phase, y_, direction_, fraction, trial_);
    const bool is_close = is_close_to(trial_, y_, n_);
    const double energy = evaluate(trial_, !is_close);
    const double d = energy - one::dot(w_, trial_, n_);
    if (d < d_ - 1e-4 * fraction * decrease_ + noise) {
      std::copy_n(trial_, n_, y_);
      energy_ = energy;
      d_ = d;
      evaluated_ = true;
      factored_ = false;
      if (!is_close) factor();
      return true;
    }
    fraction *= 0.4;
  }
  evaluated_ = factored_ = false;  // the gradient is that of a trial
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
  return result(has_arrived(limits.tolerance));
}

}  // namespace gibbsteel::internal
