#pragma once
/// Local minima of D(y) = G(y) - mu . M(y) of one phase at fixed chemical potentials,
/// in any number type: damped Newton in scaled variables, descending at every step.
/// Each lane takes a start, and the next one when it has arrived; what it does depends
/// on no other lane.

#include "lanes/descent_task.hpp"
#include "lanes/fractions.hpp"
#include "lanes/phase_energy.hpp"
#include "lanes/tangent_factor.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

template <class Real>
class Descents {
 public:
  explicit Descents(DescentTask& task) noexcept
      : task_(task), phase_(*task.phase), n_(task.phase->size()) {
    Real* memory = reinterpret_cast<Real*>(task.memory);
    const auto take = [&memory](std::size_t count) {
      Real* place = memory;
      memory += count;
      return place;
    };
    const std::size_t s = phase_.sublattice_count();
    hessian_ = take(n_ * n_);
    factor_.place(take(TangentFactor<Real>::room(n_, s)), n_, s);
    room_ = {take(n_), take(n_), take(n_ * n_), take(n_ * n_)};
    for (Real** row : {&y_, &w_, &gradient_, &direction_, &next_direction_, &trial_})
      *row = take(n_);
  }

  void run() noexcept {
    for (std::size_t l = 0; l < kLanes; ++l) job_[l] = kIdle;
    for (std::size_t l = 0; l < kLanes; ++l) load(l);
    while (busy_ > 0) {
      set_trial();
      const Mask lower = accept();
      for (std::size_t l = 0; l < kLanes; ++l) {
        if (job_[l] == kIdle) continue;
        if (lane(lower, l) ? arrived(l) : stuck(l)) load(l);
      }
    }
  }

 private:
  static constexpr std::size_t kLanes = LaneTraits<Real>::kCount;
  static constexpr std::size_t kIdle = std::numeric_limits<std::size_t>::max();
  static constexpr int kHalvings = 14;
  using Mask = MaskOf<Real>;

  /// The next start, or none: the lane then goes along where it stands.
  void load(std::size_t l) noexcept {
    if (job_[l] != kIdle) --busy_;
    job_[l] = next_ < task_.count ? next_++ : kIdle;
    steps_[l] = halvings_[l] = 0;
    set_lane(fresh_, l, true);
    if (job_[l] == kIdle && l > 0) return copy_lane(l);
    if (job_[l] == kIdle) return;
    ++busy_;
    const DescentJob& job = task_.jobs[job_[l]];
    for (std::size_t i = 0; i < n_; ++i) {
      const double atoms = phase_.constituents[i].element < 0 ? 0.0 : phase_.sites[i];
      set_lane(y_[i], l, job.y[i]);
      set_lane(w_[i], l, task_.weights[i] + job.raised * atoms);
    }
  }

  /// A lane without a start stays where it is, on numbers that are harmless.
  void copy_lane(std::size_t l) noexcept {
    for (std::size_t i = 0; i < n_; ++i) {
      set_lane(y_[i], l, lane(y_[i], 0));
      set_lane(w_[i], l, lane(w_[i], 0));
    }
  }

  Mask busy_mask() const noexcept {
    Mask mask = Real{} < 0.0;
    for (std::size_t l = 0; l < kLanes; ++l) set_lane(mask, l, job_[l] != kIdle);
    return mask;
  }

  /// The start, or a step from y along the direction.
  void set_trial() noexcept {
    update_fractions(phase_, y_, direction_, fraction_, trial_);
    if (!any(fresh_)) return;
    for (std::size_t i = 0; i < n_; ++i) trial_[i] = fresh_ ? y_[i] : trial_[i];
  }

  /// Moves to the trial where it lies lower (nearly always: so everything is evaluated
  /// there at once), with its Newton direction and predicted decrease; elsewhere the
  /// step gets shorter. @return where it moved
  Mask accept() noexcept {
    task_.evaluations += static_cast<int>(busy_);
    const Real energy = energy_with_slopes(phase_, *task_.at, task_.rt, trial_,
                                           {gradient_, hessian_, n_}, room_);
    const Real d = energy - dot(w_, trial_, n_);
    const Real noise = 1e-13 * magnitude(energy_);
    const Mask lower = fresh_ | (d < d_ - 1e-4 * fraction_ * decrease_ + noise);
    energy_ = lower ? energy : energy_;
    d_ = lower ? d : d_;
    for (std::size_t i = 0; i < n_; ++i) gradient_[i] -= w_[i];
    const Real shift =
        factor_.factor(phase_, task_.rt, trial_, hessian_, busy_mask() & lower);
    factor_.newton_direction(gradient_, next_direction_);
    const Real decrease = -dot(gradient_, next_direction_, n_);
    shift_ = lower ? shift : shift_;
    decrease_ = lower ? decrease : decrease_;
    for (std::size_t i = 0; i < n_; ++i) {
      y_[i] = lower ? trial_[i] : y_[i];
      direction_[i] = lower ? next_direction_[i] : direction_[i];
    }
    fraction_ = lower ? step_bound(direction_, n_) : 0.4 * fraction_;
    return lower;
  }

  /// @return true when the start of a lane needs no further step, or has used them
  bool arrived(std::size_t l) noexcept {
    const DescentLimits& limits = task_.limits;
    const bool started = lane(fresh_, l);
    set_lane(fresh_, l, false);
    halvings_[l] = 0;
    const double d = lane(d_, l), decrease = lane(decrease_, l);
    if (decrease < limits.tolerance) return finish(l, true);
    if (limits.stop_when_positive && d > 0.0 && decrease < 0.1 * d)
      return finish(l, false);
    const bool convex = lane(shift_, l) == 0.0 && decrease < 0.46 * task_.rt;
    if (convex && d - decrease > limits.enough) return finish(l, false, true);
    if (!started && ++steps_[l] == limits.steps) return finish(l, false);
    return false;
  }

  /// @return true when no step leads lower: then it ends there
  bool stuck(std::size_t l) noexcept {
    if (++halvings_[l] < kHalvings) return false;
    return finish(l, lane(decrease_, l) < 1e3 * task_.limits.tolerance);
  }

  bool finish(std::size_t l, bool converged, bool above = false) noexcept {
    DescentJob& job = task_.jobs[job_[l]];
    job.result.energy = lane(energy_, l);
    job.result.d = lane(d_, l);
    job.result.converged = converged;
    job.result.stopped_above = above;
    job.result.atoms = 0.0;
    for (std::size_t i = 0; i < n_; ++i) {
      job.y[i] = lane(y_[i], l);
      if (phase_.constituents[i].element >= 0)
        job.result.atoms += phase_.sites[i] * job.y[i];
    }
    return true;
  }

  DescentTask& task_;
  const CompiledPhase& phase_;
  std::size_t n_, next_ = 0, busy_ = 0;
  std::size_t job_[kLanes] = {};  ///< where the lane is, or kIdle
  int steps_[kLanes] = {}, halvings_[kLanes] = {};
  Mask fresh_ = Real{} < 0.0;  ///< at its start: nothing is known there yet
  TangentFactor<Real> factor_;
  MagneticRoom<Real> room_;
  Real *hessian_, *y_ = nullptr, *w_ = nullptr;
  Real *gradient_ = nullptr, *direction_ = nullptr, *next_direction_ = nullptr;
  Real* trial_ = nullptr;
  Real energy_{}, d_{}, decrease_{}, shift_{}, fraction_{};
};

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE
