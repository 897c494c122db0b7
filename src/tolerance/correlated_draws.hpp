#pragma once
/// Uncertain numbers of a parameter set, drawn together.

#include <Eigen/Core>
#include <vector>

#include "parameter_file/uncertain_numbers.hpp"

namespace gibbsteel::internal {

using parameter_file::UncertainNumber;

class CorrelatedDraws {
 public:
  /// Most numbers that one point of the sequence can hold.
  static constexpr std::size_t kMost = 3000;

  CorrelatedDraws(const ParameterSet& set, std::vector<UncertainNumber> numbers,
                  std::size_t samples, std::uint64_t seed);

  /// Values of all numbers in this sample: p0 + sd S z of parameter_band.hpp.
  std::vector<double> at(std::size_t sample) const;

 private:
  std::vector<UncertainNumber> numbers_;
  std::vector<double> points_;       ///< samples x numbers, in (0, 1)
  std::vector<std::size_t> linked_;  ///< numbers that a correlation names
  Eigen::MatrixXd root_;             ///< symmetric square root of their correlations
};

}  // namespace gibbsteel::internal
