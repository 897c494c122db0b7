#include "scan/value_samples.hpp"

#include <cmath>

#include "scan/stopped.hpp"

namespace gibbsteel::internal {
namespace {

/// Relative: on a plateau values differ by so little and are the same.
constexpr double kRounding = 1e-9;

}  // namespace

ValueSamples::ValueSamples(const ValueLine& line, const Quantity& quantity,
                           double target)
    : line_(line), quantity_(quantity), target_(target) {
  for (const LineNode& node : line.scan->nodes) add(node.s, node.result);
}

void ValueSamples::add(double s, const Equilibrium& result) {
  ValueSample sample;
  sample.s = s;
  sample.result = &result;
  sample.state = line_.state(s, result);
  sample.excess = quantity_.value(sample.state) - target_;
  if (std::abs(sample.excess) <= kRounding * std::abs(target_)) sample.excess = 0.0;
  samples_.emplace(s, std::move(sample));
}

ValueSample& ValueSamples::at(double s) {
  const auto known = samples_.find(s);
  if (known != samples_.end()) return known->second;
  const auto [it, added] = added_.emplace(s, line_.solve(s));
  add(s, it->second);
  count_soak(line_, line_.most_soaks, soaks());
  return samples_.at(s);
}

double ValueSamples::slope(ValueSample& sample) {
  if (sample.slope) return *sample.slope;
  const auto of_state = line_.slope(sample.s, *sample.result, sample.state);
  sample.slope = of_state ? line_.length * quantity_.slope(sample.state, *of_state)
                          : Occurrence::kUnknown;
  return *sample.slope;
}

}  // namespace gibbsteel::internal
