#include "minimizer/phase_minimum.hpp"

#include <array>

#include "lanes/fractions.hpp"

namespace gibbsteel::internal {

void update_fractions(const CompiledPhase& phase, const double* y, const double* dy,
                      double fraction, double* out) noexcept {
  one::update_fractions(phase, y, dy, fraction, out);
}

void DescentStarts::add(std::span<const double> y) {
  n_ = y.size();
  y_.insert(y_.end(), y.begin(), y.end());
  jobs_.emplace_back();
}

std::span<DescentJob> DescentStarts::jobs() {
  for (std::size_t k = 0; k < jobs_.size(); ++k) jobs_[k].y = y_.data() + k * n_;
  return jobs_;
}

void descend(Conditions& conditions, const Candidate& candidate,
             std::span<const double> mu, const DescentLimits& limits,
             DescentMemory& memory, std::span<DescentJob> jobs) {
  std::array<double, kMaxConstituents> weights;
  plane_weights(*candidate.phase, mu, weights.data());
  DescentTask task;
  task.phase = candidate.phase;
  task.at = &candidate.at;
  task.rt = conditions.rt;
  task.weights = weights.data();
  task.limits = limits;
  task.jobs = jobs.data();
  task.count = jobs.size();
  run_descents(task, memory);
  conditions.evaluations += task.evaluations;
}

DescentResult descend(Conditions& conditions, const Candidate& candidate,
                      std::span<const double> mu, const DescentLimits& limits,
                      DescentMemory& memory, double* y) {
  DescentJob job;
  job.y = y;
  descend(conditions, candidate, mu, limits, memory, {&job, 1});
  return job.result;
}

}  // namespace gibbsteel::internal
