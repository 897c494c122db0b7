#include "designer/damped_least_squares.hpp"

#include <Eigen/Cholesky>
#include <algorithm>

namespace gibbsteel::internal {
namespace {

constexpr double kLongestMove = 0.25;  ///< of a coordinate of the unit cube in one step
constexpr double kLeastMove = 1e-10;
constexpr double kFirstDamping = 1e-3, kLeastDamping = 1e-12, kMostDamping = 1e8;

/// Deviations that count, their squares summed, and the normal equations.
struct Normal {
  double squares = 0.0;
  Eigen::MatrixXd matrix;
  Eigen::VectorXd slope;

  Normal(const DesignProblem& problem, const DesignValues& values)
      : matrix(Eigen::MatrixXd::Zero(size_of(problem), size_of(problem))),
        slope(Eigen::VectorXd::Zero(size_of(problem))) {
    for (std::size_t j = 0; j < problem.targets().size(); ++j) {
      const double deviation = values.deviations[j];
      if (problem.targets()[j].sense != TargetSense::equal && deviation <= 0.0)
        continue;
      const Eigen::Map<const Eigen::VectorXd> row(values.gradients[j].data(),
                                                  slope.size());
      squares += deviation * deviation;
      matrix += row * row.transpose();
      slope += deviation * row;
    }
  }

  static Eigen::Index size_of(const DesignProblem& problem) {
    return static_cast<Eigen::Index>(problem.size());
  }
};

/// The damped step; coordinates at a bound that it would leave stay.
Eigen::VectorXd step_from(const std::vector<double>& at, Normal normal,
                          double damping) {
  const Eigen::Index n = normal.slope.size();
  const double size = std::max(normal.matrix.diagonal().maxCoeff(), 1e-300);
  for (Eigen::Index i = 0; i < n; ++i) {
    const double x = at[static_cast<std::size_t>(i)];
    const double uphill = normal.slope[i];
    if ((x <= 0.0 && uphill > 0.0) || (x >= 1.0 && uphill < 0.0)) {
      normal.matrix.row(i).setZero();
      normal.matrix.col(i).setZero();
      normal.slope[i] = 0.0;
    }
    normal.matrix(i, i) += damping * normal.matrix(i, i) + 1e-12 * size;
  }
  Eigen::VectorXd step = -normal.matrix.ldlt().solve(normal.slope);
  const double longest = step.cwiseAbs().maxCoeff();
  if (longest > kLongestMove) step *= kLongestMove / longest;
  return step;
}

DesignPoint point_with(const DesignProblem& problem, const std::vector<double>& at,
                       const DesignValues& values) {
  DesignPoint point;
  point.point = at;
  point.misfit = values.misfit(problem.targets());
  point.violation = values.violation(problem.targets());
  return point;
}

}  // namespace

DesignPoint damped_least_squares(DesignProblem& problem,
                                 const std::vector<double>& start, int most_steps) {
  constexpr double kGoodEnough = 1e-9;  // misfit
  std::vector<double> at = start;
  DesignValues values = problem.evaluate(at);
  if (!values.usable) return {};
  DesignPoint best = point_with(problem, at, values);
  double damping = kFirstDamping;
  for (int k = 0; k < most_steps && damping < kMostDamping; ++k) {
    if (best.misfit <= kGoodEnough && best.violation <= DesignPoint::kHolds) break;
    const Normal normal(problem, values);
    const Eigen::VectorXd step = step_from(at, normal, damping);
    if (!(step.cwiseAbs().maxCoeff() > kLeastMove)) break;  // NaN too
    std::vector<double> next = at;
    for (std::size_t i = 0; i < next.size(); ++i)
      next[i] = std::clamp(next[i] + step[static_cast<Eigen::Index>(i)], 0.0, 1.0);
    DesignValues there = problem.evaluate(next);
    if (!there.usable || !(Normal(problem, there).squares < normal.squares)) {
      damping *= 8.0;
      continue;
    }
    at = std::move(next);
    values = std::move(there);
    damping = std::max(damping / 8.0, kLeastDamping);
    const DesignPoint here = point_with(problem, at, values);
    if (here.better_than(best)) best = here;
  }
  return best;
}

}  // namespace gibbsteel::internal
