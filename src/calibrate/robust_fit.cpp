#include "calibrate/robust_fit.hpp"

#include <Eigen/Cholesky>
#include <Eigen/QR>
#include <cmath>
#include <unsupported/Eigen/LevenbergMarquardt>

namespace gibbsteel::internal {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double kSameShift = 1e-5;  ///< between rounds [prior standard deviations]
/// Of the misfit, that one more step would still gain if all were linear.
constexpr double kLeftToGain = 1e-4;

/// The model with the base of a step and the last trial remembered.
class Remembered {
 public:
  Remembered(const FitModel& model, std::size_t most) : model_(model), most_(most) {}

  const FitPoint& at(const VectorXd& x) {
    for (const Known* known : {&base_, &trial_})
      if (known->first.size() == x.size() && known->first == x) return known->second;
    trial_ = {x, model_(x)};
    ++evaluations_;
    return trial_.second;
  }
  /// The base from now on.
  const FitPoint& base_at(const VectorXd& x) {
    at(x);
    if (trial_.first.size() == x.size() && trial_.first == x) base_ = trial_;
    return base_.second;
  }
  std::size_t evaluations() const noexcept { return evaluations_; }
  bool used_up() const noexcept { return evaluations_ >= most_; }

 private:
  using Known = std::pair<VectorXd, FitPoint>;

  const FitModel& model_;
  std::size_t most_, evaluations_ = 0;
  Known base_, trial_;
};

/// What the optimizer minimizes in one round: weighted residuals, then the shifts.
class Round : public Eigen::DenseFunctor<double> {
 public:
  Round(Remembered& model, VectorXd weights, const VectorXd& base)
      : DenseFunctor(static_cast<int>(base.size()),
                     static_cast<int>(weights.size() + base.size())),
        model_(model),
        roots_(weights.cwiseSqrt()),
        held_(VectorXd::Zero(weights.size())) {
    hold(model.base_at(base));
  }

  int operator()(const VectorXd& x, VectorXd& out) {
    if (model_.used_up()) return -1;
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

  Remembered& model_;
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
  return gradient.dot(hessian.ldlt().solve(gradient)) <= kLeftToGain * (1.0 + misfit);
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

RobustFit robust_fit(const FitModel& model, const Eigen::VectorXd& start,
                     const RobustLoss& loss, std::size_t most) {
  Remembered remembered(model, most);
  RobustFit fit;
  fit.x = start;
  fit.point = remembered.at(start);
  fit.weights = weights_of(fit.point, loss);
  bool done = false;
  if (!fit.point.stopped && fit.weights.sum() > 0.0)
    fit.status = CalibrationStatus::not_converged;
  while (fit.status == CalibrationStatus::not_converged && !done) {
    ++fit.rounds;
    Round round(remembered, fit.weights, fit.x);
    const VectorXd x = fit.x, weights = fit.weights;
    const bool finished = minimize(round, loss, fit.x);
    fit.point = remembered.at(fit.x);
    fit.weights = weights_of(fit.point, loss);
    if (!finished) break;
    // The same measurements with the same weights would give the same minimum.
    const bool same = ((fit.weights.array() > 0.0) == (weights.array() > 0.0)).all();
    done = same &&
           ((fit.x - x).cwiseAbs().maxCoeff() <= kSameShift || fit.weights == weights);
  }
  fit.misfit = misfit_of(fit.point, fit.x, loss);
  fit.evaluations = remembered.evaluations();
  if (done)
    fit.status = is_valley(fit.point, fit.weights, fit.x, fit.misfit)
                     ? CalibrationStatus::converged
                     : CalibrationStatus::stalled;
  return fit;
}

}  // namespace gibbsteel::internal
