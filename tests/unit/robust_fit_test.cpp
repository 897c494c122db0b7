/// The numerics of a calibration on models where the answer is known.

#include "calibrate/robust_fit.hpp"

#include <doctest/doctest.h>

#include <Eigen/LU>
#include <cmath>
#include <limits>

#include "calibrate/posterior.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr std::size_t kMost = 1000;

/// 7 residuals of 3 numbers, linear: J x - y.
MatrixXd slopes() {
  MatrixXd j(7, 3);
  j << 1.0, 0.5, -0.2, 0.3, 2.0, 0.1, -1.0, 0.4, 0.7, 0.0, 1.5, 1.0, 2.0, -0.3, 0.0,
      0.6, 0.6, 0.6, -0.4, 0.0, 3.0;
  return j;
}

VectorXd shifts_wanted() { return VectorXd{{2.0, -1.0, 4.0, 0.5, 3.0, -2.5, 1.0}}; }

FitModel linear(const MatrixXd& j, const VectorXd& y) {
  return [=](const VectorXd& x) { return FitPoint{j * x - y, j, false}; };
}

RobustFit fitted(const FitModel& model, Loss loss, double scale = 0.0) {
  return robust_fit(model, VectorXd::Zero(3), robust_loss(loss, scale), kMost);
}

}  // namespace

TEST_CASE("a linear model with squares: the closed form of Eq. (K1) and (K4)") {
  const MatrixXd j = slopes();
  const VectorXd y = shifts_wanted();
  const RobustFit fit = fitted(linear(j, y), Loss::squares);
  CHECK(fit.status == CalibrationStatus::converged);
  const MatrixXd normal = j.transpose() * j + MatrixXd::Identity(3, 3);
  const VectorXd x = normal.inverse() * j.transpose() * y;
  CHECK((fit.x - x).norm() < 1e-9);
  CHECK(fit.misfit ==
        doctest::Approx((j * x - y).squaredNorm() + x.squaredNorm()).epsilon(1e-12));
  CHECK((shift_covariance(fit) - normal.inverse()).norm() < 1e-12);
}

TEST_CASE("what the data see: standard deviations along the directions, Eq. (K5)") {
  MatrixXd j = slopes();
  j.col(2) = 2.0 * j.col(1);  // one combination of two numbers is never seen
  const RobustFit fit = fitted(linear(j, shifts_wanted()), Loss::squares);
  const auto directions = seen_directions(fit);
  REQUIRE(directions.size() == 3);
  const MatrixXd covariance = shift_covariance(fit);
  for (const SeenDirection& direction : directions) {
    const VectorXd v = Eigen::Map<const VectorXd>(direction.along.data(), 3);
    CHECK(v.norm() == doctest::Approx(1.0));
    CHECK(std::sqrt(v.dot(covariance * v)) == doctest::Approx(direction.ratio));
  }
  CHECK(directions[2].singular_value < 1e-12);
  CHECK(directions[2].ratio == doctest::Approx(1.0));
  CHECK(directions[2].along[1] == doctest::Approx(2.0 / std::sqrt(5.0)));
  CHECK(directions[2].along[2] == doctest::Approx(-1.0 / std::sqrt(5.0)));
}

TEST_CASE("at the minimum of a robust loss the gradient of Eq. (K1) is zero") {
  for (const Loss kind : {Loss::huber, Loss::cauchy}) {
    CAPTURE(to_string(kind));
    const RobustLoss loss = robust_loss(kind, 0.0);
    VectorXd y = shifts_wanted();
    y[3] = 40.0;  // an outlier
    const RobustFit fit = fitted(linear(slopes(), y), kind);
    CHECK(fit.status == CalibrationStatus::converged);
    // By central differences of the loss itself, not by the weights.
    for (Eigen::Index k = 0; k < 3; ++k) {
      const auto value = [&](double step) {
        VectorXd x = fit.x;
        x[k] += step;
        return misfit_of({slopes() * x - y, slopes(), false}, x, loss);
      };
      CHECK(std::abs(value(1e-4) - value(-1e-4)) / 2e-4 < 1e-3);
    }
  }
}

TEST_CASE("weights are rho' / (2 r) of Eq. (K2) and (K3)") {
  for (const Loss kind : {Loss::squares, Loss::huber, Loss::cauchy}) {
    const RobustLoss loss = robust_loss(kind, 1.7);
    for (const double r : {-30.0, -1.0, 0.4, 1.6, 1.8, 5.0}) {
      const double slope = (loss.value(r + 1e-5) - loss.value(r - 1e-5)) / 2e-5;
      CHECK(loss.weight(r) == doctest::Approx(slope / (2.0 * r)).epsilon(1e-7));
    }
    CHECK(loss.weight(0.0) == 1.0);
  }
  CHECK(robust_loss(Loss::huber, 0.0).scale == 1.345);
  CHECK(robust_loss(Loss::cauchy, 0.0).scale == 2.385);
}

TEST_CASE("an outlier pulls squares and leaves a robust loss where it was") {
  const VectorXd y = shifts_wanted();
  VectorXd bad = y;
  bad[3] = 40.0;
  const auto moved = [&](Loss loss) {
    return (fitted(linear(slopes(), bad), loss).x - fitted(linear(slopes(), y), loss).x)
        .norm();
  };
  CHECK(moved(Loss::squares) > 5.0);
  CHECK(moved(Loss::huber) < 0.2 * moved(Loss::squares));
  CHECK(moved(Loss::cauchy) < 0.05 * moved(Loss::squares));
}

TEST_CASE("a residual that is lost on the way never makes a step look good") {
  // The first step goes to x = 1. Beyond 0.5 the second residual is lost, 10 before,
  // and the first is twice as large: a fit that forgot the 10 there would stay.
  std::size_t lost = 0;
  const FitModel model = [&](const VectorXd& x) {
    const bool beyond = x[0] > 0.5;
    lost += beyond;
    return FitPoint{VectorXd{{beyond ? 6.0 : 3.0 - 2.0 * x[0], beyond ? kNone : 10.0}},
                    MatrixXd{{beyond ? 0.0 : -2.0}, {0.0}}, false};
  };
  const RobustFit fit =
      robust_fit(model, VectorXd::Zero(1), robust_loss(Loss::squares, 0.0), kMost);
  // Tried there, and back at once: a fit that stays spends hundreds before an edge.
  CHECK(lost > 0);
  CHECK(lost < 50);
  CHECK(fit.x[0] <= 0.5);
  CHECK(fit.x[0] > 0.45);
  CHECK(fit.weights.sum() == 2.0);
}

TEST_CASE("how a fit can end") {
  const FitModel nothing = [](const VectorXd& x) {
    return FitPoint{VectorXd::Constant(2, kNone), MatrixXd::Zero(2, x.size()), false};
  };
  CHECK(fitted(nothing, Loss::huber).status == CalibrationStatus::nothing_usable);
  const FitModel curved = [](const VectorXd& x) {
    return FitPoint{VectorXd{{std::exp(x[0]) - 9.0, x[1] * x[1] * x[1] - 2.0}},
                    MatrixXd{{std::exp(x[0]), 0.0, 0.0}, {0.0, 3.0 * x[1] * x[1], 0.0}},
                    false};
  };
  CHECK(fitted(curved, Loss::huber).status == CalibrationStatus::converged);
  const RobustFit stopped =
      robust_fit(curved, VectorXd::Zero(3), robust_loss(Loss::huber, 0.0), 3);
  CHECK(stopped.status == CalibrationStatus::not_converged);
  CHECK(stopped.evaluations == 3);
  // A jump: the residual falls towards 1 and stands 4 higher beyond, whatever its slope
  // there. Slopes of two sides say nothing where the misfit itself jumps.
  const auto jump = [](double slope_beyond) {
    return [=](const VectorXd& x) {
      const bool beyond = x[0] >= 1.0;
      const double slope = beyond ? slope_beyond : -1.0;
      return FitPoint{VectorXd{{(beyond ? 7.0 : 3.0) + slope * (x[0] - 1.0)}},
                      MatrixXd{{slope, 0.0, 0.0}}, false};
    };
  };
  for (const double slope_beyond : {-1.0, 0.0, 1.0}) {
    const RobustFit before_jump = fitted(jump(slope_beyond), Loss::squares);
    CHECK(before_jump.status == CalibrationStatus::stalled);
    CHECK(before_jump.x[0] == doctest::Approx(1.0).epsilon(1e-5));
  }
}

TEST_CASE("smooth models are never called stalled, whatever the evaluations allowed") {
  VectorXd y = shifts_wanted();
  y[3] = 40.0;
  for (const Loss kind : {Loss::huber, Loss::cauchy})
    for (std::size_t most = 2; most < 30; ++most) {
      const RobustFit fit = robust_fit(linear(slopes(), y), VectorXd::Zero(3),
                                       robust_loss(kind, 0.0), most);
      CHECK(fit.status != CalibrationStatus::stalled);
    }
}

TEST_CASE("a round may take all evaluations that are allowed") {
  // Two residuals 1 + 30 max(0, a x - b) and a point outside: one round takes more than
  // the 400 that the optimizer allows by itself. The least is from a grid.
  const MatrixXd a{{-1.5, -0.3}, {0.1, -0.1}};
  const VectorXd b{{0.3, -0.7}}, y{{-3.0, -3.0}};
  const FitModel model = [&](const VectorXd& x) {
    FitPoint point{VectorXd::Ones(4), MatrixXd::Zero(4, 2), false};
    for (Eigen::Index i = 0; i < 2; ++i) {
      const double over = a.row(i).dot(x) - b[i];
      if (over <= 0.0) continue;
      point.residuals[i] += 30.0 * over;
      point.slopes.row(i) = 30.0 * a.row(i);
    }
    point.residuals.tail(2) = x - y;
    point.slopes.bottomRows(2).setIdentity();
    return point;
  };
  const RobustLoss squares = robust_loss(Loss::squares, 0.0);
  const RobustFit fit = robust_fit(model, VectorXd::Zero(2), squares, 100000);
  double least = fit.misfit;
  for (double u = -4.0; u <= 2.0; u += 0.01)
    for (double v = -4.0; v <= 8.0; v += 0.01) {
      const VectorXd x{{u, v}};
      least = std::min(least, misfit_of(model(x), x, squares));
    }
  CHECK(fit.status == CalibrationStatus::converged);
  CHECK(fit.misfit == doctest::Approx(least).epsilon(1e-3));
}
