#include "scan/value_samples.hpp"

#include "internal/slopes_of_soak.hpp"
#include "scan/stopped.hpp"

namespace gibbsteel::internal {

ValueSamples::ValueSamples(const TemperatureScan& scan, const Quantity& quantity,
                           double target, const SearchOptions& search)
    : scan_(scan), quantity_(quantity), target_(target), search_(search) {
  for (const LineNode& node : scan.scan.nodes) add(node.s, node.result);
}

void ValueSamples::add(double s, const Equilibrium& result) {
  ValueSample sample;
  sample.s = s;
  sample.result = &result;
  sample.state = scan_.problem.state_of(result);
  sample.excess = quantity_.value(sample.state) - target_;
  samples_.emplace(s, std::move(sample));
}

ValueSample& ValueSamples::at(double s) {
  const auto known = samples_.find(s);
  if (known != samples_.end()) return known->second;
  const auto [it, added] = added_.emplace(s, scan_.problem.solve(scan_.at(s)));
  add(s, it->second);
  count_soak(search_, search_.most_soaks, soaks());
  return samples_.at(s);
}

double ValueSamples::slope(ValueSample& sample) {
  if (sample.slope) return *sample.slope;
  const auto slopes = slopes_of_soak(scan_.problem, *sample.result, sample.state,
                                     {std::vector<std::string>{}, {}, false});
  const double length = scan_.range.high.in_kelvin() - scan_.range.low.in_kelvin();
  const double slope = slopes.empty()
                           ? Occurrence::kUnknown
                           : length * quantity_.slope(sample.state, slopes.front());
  sample.slope = slope;
  return slope;
}

}  // namespace gibbsteel::internal
