#include "calibrate/edge_descent.hpp"

#include <Eigen/Cholesky>
#include <cmath>

#include "calibrate/least_slope.hpp"
#include "calibrate/robust_fit.hpp"

namespace gibbsteel::internal {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr Eigen::Index kMostSlopes = 80;
constexpr double kEnough = 0.1;     ///< of what the slope promises
constexpr double kShorter = 0.25;   ///< of the step before
constexpr double kOtherSide = 0.5;  ///< of the slope that goes on, at most
/// Of the whole step: how near slopes of the other side are taken. On a curved edge
/// those from farther away mix to nothing where there still is a way down.
constexpr double kNear = 1e-3, kNearest = 3e-5;

/// The misfit around a base: what is not usable there does not count, and what a trial
/// lacks stands still.
class Surroundings {
 public:
  Surroundings(const FitPoint& base, const VectorXd& x, const RobustLoss& loss)
      : base_(base), loss_(loss) {
    const VectorXd weights = weights_of(base, loss);
    misfit_ = misfit_of(base, x, loss);
    metric_.compute(base.slopes.transpose() * weights.asDiagonal() * base.slopes +
                    MatrixXd::Identity(x.size(), x.size()));
  }

  double misfit() const noexcept { return misfit_; }

  double misfit_at(const FitPoint& trial, const VectorXd& x) const {
    return misfit_of(known(trial), x, loss_);
  }

  /// L^-1 h with H = L L^T.
  VectorXd slope(const FitPoint& trial, const VectorXd& x) const {
    const FitPoint point = known(trial);
    const VectorXd pull =
        point.residuals.array().isNaN().select(0.0, point.residuals).array() *
        weights_of(point, loss_).array();
    return metric_.matrixL().solve(trial.slopes.transpose() * pull + x);
  }

  /// -H^-1 h for a mixed L^-1 h.
  VectorXd step(const VectorXd& mixed) const { return -metric_.matrixU().solve(mixed); }

 private:
  FitPoint known(const FitPoint& trial) const {
    FitPoint point{trial.residuals, {}, false};
    for (Eigen::Index i = 0; i < point.residuals.size(); ++i)
      if (std::isnan(base_.residuals[i]) || std::isnan(point.residuals[i]))
        point.residuals[i] = base_.residuals[i];
    return point;
  }

  FitPoint base_;
  const RobustLoss& loss_;
  double misfit_ = 0.0;
  Eigen::LLT<MatrixXd> metric_;
};

/// What a search along one direction came to.
struct Search {
  bool moved = false, stopped = false, jumps = false;
  VectorXd x;      ///< where it moved to, or the last trial
  VectorXd slope;  ///< L^-1 h at the last trial
};

Search search(RememberedModel& model, const Surroundings& around, const VectorXd& from,
              const VectorXd& mixed, double shortest) {
  const VectorXd step = around.step(mixed);
  const double promised = mixed.squaredNorm();
  Search found;
  for (double t = 1.0; t >= shortest && !found.moved; t *= kShorter) {
    if (model.used_up()) break;
    found.x = from + t * step;
    const FitPoint& trial = model.at(found.x);
    found.stopped = trial.stopped;
    if (trial.stopped) break;
    found.slope = around.slope(trial, found.x);
    const double rise = around.misfit_at(trial, found.x) - around.misfit();
    found.moved = rise <= -kEnough * t * promised;
    // A misfit without jumps rises by no more than the slope beyond says, and a curve.
    found.jumps = rise > t * (4.0 * std::abs(mixed.dot(found.slope)) + promised);
  }
  return found;
}

/// Slopes from both sides, from no farther than `shortest` of a step.
EdgeOutcome descend(RememberedModel& model, const Surroundings& around,
                    const FitPoint& base, double shortest, VectorXd& x) {
  MatrixXd slopes = around.slope(base, x);
  while (slopes.cols() < kMostSlopes) {
    const VectorXd mixed = slopes * least_slope_weights(slopes);
    if (mixed.squaredNorm() <= left_to_gain(around.misfit()))
      return EdgeOutcome::bottom;
    const Search found = search(model, around, x, mixed, shortest);
    if (found.moved) {
      x = found.x;
      return EdgeOutcome::moved;
    }
    if (found.stopped || found.jumps || model.used_up()) return EdgeOutcome::stuck;
    if (!(mixed.dot(found.slope) <= kOtherSide * mixed.squaredNorm()))
      return EdgeOutcome::stuck;
    slopes.conservativeResize(Eigen::NoChange, slopes.cols() + 1);
    slopes.rightCols(1) = found.slope;
  }
  return EdgeOutcome::stuck;
}

}  // namespace

EdgeOutcome descend_from_edge(RememberedModel& model, const RobustLoss& loss,
                              VectorXd& x) {
  const FitPoint base = model.base_at(x);
  if (base.stopped) return EdgeOutcome::stuck;
  const Surroundings around(base, x, loss);
  for (const double shortest : {kNear, kNearest}) {
    const EdgeOutcome outcome = descend(model, around, base, shortest, x);
    if (outcome != EdgeOutcome::bottom) return outcome;
  }
  return EdgeOutcome::bottom;
}

}  // namespace gibbsteel::internal
