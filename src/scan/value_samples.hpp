#pragma once
/// Soaks along a line and the value of a quantity at each, less its target.

#include <map>

#include "scan/value_line.hpp"

namespace gibbsteel::internal {

struct ValueSample {
  double s = 0.0;
  State state;
  double excess = 0.0;          ///< value less target; NaN where there is none
  std::optional<double> slope;  ///< per unit of s, once asked for
  const Equilibrium* result = nullptr;
};

class ValueSamples {
 public:
  /// Starts with the nodes of the scan. Both must outlive it.
  ValueSamples(const ValueLine& line, const Quantity& quantity, double target);

  /// Soaks when there is none at s. @throws Stopped
  ValueSample& at(double s);
  double slope(ValueSample& sample);
  /// Per unit of the input.
  double slope_of_input(ValueSample& sample) { return slope(sample) / line_.length; }
  std::size_t soaks() const noexcept {
    return line_.scan->nodes.size() + added_.size();
  }
  const std::map<double, ValueSample>& all() const noexcept { return samples_; }

 private:
  void add(double s, const Equilibrium& result);

  const ValueLine& line_;
  const Quantity& quantity_;
  double target_;
  std::map<double, ValueSample> samples_;
  std::map<double, Equilibrium> added_;
};

}  // namespace gibbsteel::internal
