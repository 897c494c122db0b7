#pragma once
/// The numbers of a parameter set that carry a standard deviation.

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/named_values.hpp"
#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

struct UncertainNumber {
  std::string place;  ///< JSON pointer in the written set, as parameter_inputs()
  double value = 0.0;
  double standard_deviation = 0.0;
  std::optional<CoefficientName> name;  ///< none for a volume
};

/// True of an energy, Curie temperature or moment of a phase that counts in a steel of
/// these elements.
bool acts_on(const UncertainNumber& number, const std::string& phase,
             const NamedValues& elements);

/// In the order of the set.
std::vector<UncertainNumber> uncertain_numbers(const ParameterSet& set);

/// Correlation of each with each: 1 on the diagonal, 0 where the set says nothing.
Eigen::MatrixXd correlations_of(const ParameterSet& set,
                                const std::vector<UncertainNumber>& numbers);

/// The set with these values instead, as uncertain_numbers().
ParameterSet with_values(ParameterSet set, const std::vector<double>& values);

}  // namespace gibbsteel::parameter_file
