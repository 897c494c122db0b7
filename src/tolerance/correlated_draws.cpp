#include "tolerance/correlated_draws.hpp"

#include <Eigen/Eigenvalues>
#include <boost/math/distributions/normal.hpp>

#include "tolerance/sobol_points.hpp"

namespace gibbsteel::internal {
namespace {

/// Of a positive semidefinite matrix; rounding below zero counts as zero.
Eigen::MatrixXd square_root(const Eigen::MatrixXd& matrix) {
  if (matrix.size() == 0) return matrix;
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(matrix);
  const Eigen::VectorXd roots = solver.eigenvalues().cwiseMax(0.0).cwiseSqrt();
  return solver.eigenvectors() * roots.asDiagonal() * solver.eigenvectors().transpose();
}

bool is_linked(const ParameterSet& set, const UncertainNumber& number) {
  for (const Correlation& correlation : set.correlations)
    if (number.name == correlation.first || number.name == correlation.second)
      return true;
  return false;
}

}  // namespace

CorrelatedDraws::CorrelatedDraws(const ParameterSet& set,
                                 std::vector<UncertainNumber> numbers,
                                 std::size_t samples, std::uint64_t seed)
    : numbers_(std::move(numbers)),
      points_(sobol_points(samples, numbers_.size(), seed)) {
  std::vector<UncertainNumber> linked;
  for (std::size_t i = 0; i < numbers_.size(); ++i) {
    if (!is_linked(set, numbers_[i])) continue;
    linked_.push_back(i);
    linked.push_back(numbers_[i]);
  }
  root_ = square_root(parameter_file::correlations_of(set, linked));
}

std::vector<double> CorrelatedDraws::at(std::size_t sample) const {
  const boost::math::normal_distribution<double> normal;
  std::vector<double> z;
  for (std::size_t i = 0; i < numbers_.size(); ++i)
    z.push_back(boost::math::quantile(normal, points_[sample * numbers_.size() + i]));
  Eigen::VectorXd together(static_cast<Eigen::Index>(linked_.size()));
  for (std::size_t i = 0; i < linked_.size(); ++i)
    together[static_cast<Eigen::Index>(i)] = z[linked_[i]];
  together = root_ * together;
  for (std::size_t i = 0; i < linked_.size(); ++i)
    z[linked_[i]] = together[static_cast<Eigen::Index>(i)];
  std::vector<double> values;
  for (std::size_t i = 0; i < numbers_.size(); ++i)
    values.push_back(numbers_[i].value + numbers_[i].standard_deviation * z[i]);
  return values;
}

}  // namespace gibbsteel::internal
