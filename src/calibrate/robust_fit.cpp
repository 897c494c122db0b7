#include "calibrate/robust_fit.hpp"

#include <Eigen/Cholesky>
#include <Eigen/QR>
#include <cmath>
#include <limits>
#include <unsupported/Eigen/LevenbergMarquardt>

#include "calibrate/edge_descent.hpp"

namespace gibbsteel::internal {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double kSameShift = 1e-5;  ///< between rounds [prior standard deviations]
/// Of the misfit, that one more step would still gain if all were linear.
constexpr double kLeftToGain = 1e-4;
/// Of that: steps down from an edge that gain less lead nowhere.
constexpr double kCrawl = 1e-3;

/// What the optimizer minimizes in one round: weighted residuals, then the shifts.
class Round : public Eigen::DenseFunctor<double> {
 public:
  Round(RememberedModel& model, VectorXd weights, const VectorXd& base)
      : DenseFunctor(static_cast<int>(base.size()),
                     static_cast<int>(weights.size() + base.size())),
        model_(model),
        roots_(weights.cwiseSqrt()),
        held_(VectorXd::Zero(weights.size())) {
    hold(model.base_at(base));
  }

  int operator()(const VectorXd& x, VectorXd& out) {
    if (!model_.may_be_at(x)) return -1;
    const FitPoint& point = model_.at(x);
    if (point.stopped) return -1;
    out.resize(values());
    for (Eigen::Index i = 0; i < held_.size(); ++i) {
      const double residual = point.residuals[i];
      out[i] = roots_[i] * (std::isnan(residual) ? held_[i] : residual);
    }
    out.tail(x.size()) = x;
    return 0;
  }

  int df(const VectorXd& x, MatrixXd& out) {
    const FitPoint& point = model_.base_at(x);
    if (point.stopped) return -1;
    hold(point);
    out = MatrixXd::Zero(values(), inputs());
    out.topRows(held_.size()) = roots_.asDiagonal() * point.slopes;
    out.bottomRows(x.size()).setIdentity();
    return 0;
  }

 private:
  /// Residuals of the base of a step: those that a trial lacks stand still there.
  void hold(const FitPoint& base) {
    for (Eigen::Index i = 0; i < held_.size(); ++i)
      if (!std::isnan(base.residuals[i])) held_[i] = base.residuals[i];
  }

  RememberedModel& model_;
  VectorXd roots_, held_;
};

/// Least squares with fixed weights, from x; true when nothing is left to do.
bool minimize(Round& round, const RobustLoss& loss, VectorXd& x) {
  namespace space = Eigen::LevenbergMarquardtSpace;
  Eigen::LevenbergMarquardt<Round> optimizer(round);
  // Shifts are in prior standard deviations already; the first step is one of them.
  optimizer.setExternalScaling(true);
  optimizer.diag() = VectorXd::Ones(x.size());
  const double size = x.norm();
  optimizer.setFactor(size == 0.0 ? 1.0 : std::max(1.0, 1.0 / size));
  // Other losses come back with better weights.
  optimizer.setFtol(loss.kind == Loss::squares ? 1e-12 : 1e-8);
  optimizer.setXtol(1e-7);
  optimizer.setMaxfev(std::numeric_limits<int>::max());  // the model counts
  const auto status = optimizer.minimize(x);
  return status != space::UserAsked && status != space::TooManyFunctionEvaluation &&
         status != space::ImproperInputParameters;
}

/// Whether a Gauss-Newton step would still gain much: then the optimizer stood before
/// an edge and not in a valley.
bool is_valley(const FitPoint& point, const VectorXd& weights, const VectorXd& x,
               double misfit) {
  const auto n = x.size();
  const VectorXd residuals =
      point.residuals.array().isNaN().select(0.0, point.residuals);
  const MatrixXd weighted = weights.asDiagonal() * point.slopes;
  const VectorXd gradient = weighted.transpose() * residuals + x;
  const MatrixXd hessian =
      point.slopes.transpose() * weighted + MatrixXd::Identity(n, n);
  return gradient.dot(hessian.ldlt().solve(gradient)) <= left_to_gain(misfit);
}

void stand_at(const VectorXd& x, RememberedModel& model, const RobustLoss& loss,
              RobustFit& fit) {
  fit.x = x;
  fit.point = model.at(x);
  fit.weights = weights_of(fit.point, loss);
  fit.misfit = misfit_of(fit.point, x, loss);
}

/// Rounds until weights and shifts stay; false when the evaluations are used up.
bool reweighted_rounds(RememberedModel& model, const RobustLoss& loss, RobustFit& fit) {
  for (;;) {
    ++fit.rounds;
    Round round(model, fit.weights, fit.x);
    VectorXd x = fit.x;
    const VectorXd from = fit.x, weights = fit.weights;
    const bool finished = minimize(round, loss, x);
    stand_at(x, model, loss, fit);
    if (!finished) return false;
    // The same measurements with the same weights would give the same minimum.
    const bool same = ((fit.weights.array() > 0.0) == (weights.array() > 0.0)).all();
    if (same &&
        ((x - from).cwiseAbs().maxCoeff() <= kSameShift || fit.weights == weights))
      return true;
  }
}

/// Where the rounds end: a valley, the bottom of an edge, or a step down from one,
/// after which they go on (not_converged).
CalibrationStatus end_of(RememberedModel& model, const RobustLoss& loss,
                         RobustFit& fit) {
  if (is_valley(fit.point, fit.weights, fit.x, fit.misfit))
    return CalibrationStatus::converged;
  VectorXd x = fit.x;
  const double before = fit.misfit;
  const EdgeOutcome outcome = descend_from_edge(model, loss, x);
  if (outcome == EdgeOutcome::bottom) return CalibrationStatus::converged;
  if (outcome == EdgeOutcome::stuck) return CalibrationStatus::stalled;
  const VectorXd usable = fit.weights.cwiseSign();
  stand_at(x, model, loss, fit);
  // A measurement that came or went makes the misfits incomparable.
  const bool crawls = usable == fit.weights.cwiseSign() &&
                      before - fit.misfit < kCrawl * left_to_gain(fit.misfit);
  return crawls ? CalibrationStatus::stalled : CalibrationStatus::not_converged;
}

}  // namespace

Eigen::VectorXd weights_of(const FitPoint& point, const RobustLoss& loss) {
  return point.residuals.unaryExpr(
      [&](double r) { return std::isnan(r) ? 0.0 : loss.weight(r); });
}

double misfit_of(const FitPoint& point, const Eigen::VectorXd& x,
                 const RobustLoss& loss) {
  double sum = x.squaredNorm();
  for (const double r : point.residuals)
    if (!std::isnan(r)) sum += loss.value(r);
  return sum;
}

double left_to_gain(double misfit) { return kLeftToGain * (1.0 + misfit); }

RobustFit robust_fit(const FitModel& model, const Eigen::VectorXd& start,
                     const RobustLoss& loss, std::size_t most) {
  RememberedModel remembered(model, most);
  RobustFit fit;
  stand_at(start, remembered, loss, fit);
  if (!fit.point.stopped && fit.weights.sum() > 0.0)
    fit.status = CalibrationStatus::not_converged;
  bool edge = false;
  while (fit.status == CalibrationStatus::not_converged) {
    if (!reweighted_rounds(remembered, loss, fit)) {
      if (edge) fit.status = CalibrationStatus::stalled;
      break;
    }
    fit.status = end_of(remembered, loss, fit);
    edge = true;
  }
  fit.evaluations = remembered.evaluations();
  return fit;
}

}  // namespace gibbsteel::internal
