#pragma once
/// What the standard deviations that a parameter file states do to a number of one
/// soak, and to the temperature at which it has a value: Eq. (B8) of
/// temperature_for.hpp.

#include <Eigen/Core>
#include <string>
#include <vector>

#include "gibbsteel/quantity.hpp"
#include "internal/soak_problem.hpp"
#include "parameter_file/uncertain_numbers.hpp"

namespace gibbsteel::internal {

class FileScatter {
 public:
  explicit FileScatter(const ParameterSet& set);

  /// True: the set states no standard deviation.
  bool empty() const noexcept { return places_.empty(); }

  /// Whether an energy of a kind of phase that a state holds has a standard deviation,
  /// in its steel.
  bool acts_on(const std::string& kind, const State& state) const;

  /// Of a quantity at one soak; NaN where they are not known.
  struct Slopes {
    double per_kelvin = Occurrence::kUnknown;
    bool one_sided = false;    ///< in temperature: a phase change within 0.1 K
    Eigen::VectorXd scatters;  ///< dq/dp times the standard deviation of p, of every p
  };
  /// @param state  problem.state_of(result)
  Slopes slopes(const SoakProblem& problem, const Equilibrium& result,
                const State& state, const Quantity& quantity) const;

  /// Scatters of a value that stays, and of one of which nothing is known.
  Eigen::VectorXd none() const;
  Eigen::VectorXd unknown() const;

  /// Eq. (B8) [K]: where a quantity with these slopes has the value of another one.
  /// NaN when unknown or 0.
  double of_temperature(const Slopes& slopes, const Eigen::VectorXd& target) const;

 private:
  std::vector<parameter_file::UncertainNumber> numbers_;
  std::vector<std::string> places_;  ///< of these
  Eigen::VectorXd deviations_;
  Eigen::MatrixXd correlations_;
};

}  // namespace gibbsteel::internal
