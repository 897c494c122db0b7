/// Fits on models whose slope jumps, Eq. (K6), against closed forms and grids.

#include "calibrate/edge_descent.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>

#include "calibrate/robust_fit.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

constexpr std::size_t kMost = 1000;

}  // namespace

TEST_CASE("an edge whose slope jumps: down to its bottom, in closed form") {
  // 2 + 10 |x0 - x1| holds x0 = x1 = s together, where (s - 3)^2 + (s - 1)^2 + 2 s^2 is
  // least at s = 1; each side alone pulls across the edge.
  const FitModel model = [](const VectorXd& x) {
    const double apart = x[0] - x[1], side = apart < 0.0 ? -10.0 : 10.0;
    return FitPoint{VectorXd{{2.0 + side * apart, x[0] - 3.0, x[1] - 1.0}},
                    MatrixXd{{side, -side}, {1.0, 0.0}, {0.0, 1.0}}, false};
  };
  for (const auto& start : {VectorXd{{2.0, 2.5}}, VectorXd{{0.0, 0.0}}}) {
    const RobustFit fit =
        robust_fit(model, start, robust_loss(Loss::squares, 0.0), kMost);
    CHECK(fit.status == CalibrationStatus::converged);
    CHECK(fit.misfit == doctest::Approx(10.0).epsilon(2e-3));
    CHECK((fit.x - VectorXd{{1.0, 1.0}}).norm() < 0.05);
  }
}

TEST_CASE("a steep bent edge: no bottom where there is still a way down") {
  // 1 + k |x1 - x0^2| with x0 pulled to 1.5 and x1 to 2: along the edge x1 = x0^2 the
  // least of (2 (x0 - 1.5))^2 + (x0^2 - 2)^2 + x0^2 + x0^4.
  for (const double k : {30.0, 300.0, 3000.0}) {
    CAPTURE(k);
    const FitModel model = [k](const VectorXd& x) {
      const double apart = x[1] - x[0] * x[0], side = apart < 0.0 ? -k : k;
      return FitPoint{VectorXd{{1.0 + side * apart, 2.0 * (x[0] - 1.5), x[1] - 2.0}},
                      MatrixXd{{-2.0 * side * x[0], side}, {2.0, 0.0}, {0.0, 1.0}},
                      false};
    };
    double least = 1e9;
    for (double a = 0.0; a < 2.0; a += 1e-4)
      least =
          std::min(least, 1.0 + 4.0 * (a - 1.5) * (a - 1.5) +
                              (a * a - 2.0) * (a * a - 2.0) + a * a + a * a * a * a);
    const RobustFit fit = robust_fit(model, VectorXd{{-1.0, 1.0}},
                                     robust_loss(Loss::squares, 0.0), 100000);
    // On the steepest the evaluations may end on the way, never at a bottom that is
    // none.
    const bool there = fit.misfit == doctest::Approx(least).epsilon(0.02);
    CHECK((there || fit.status == CalibrationStatus::stalled));
    if (k < 1000.0) {
      CHECK(there);
      CHECK(fit.status == CalibrationStatus::converged);
    }
  }
}

TEST_CASE("two edges that cross: down to the corner") {
  const FitModel model = [](const VectorXd& x) {
    const double a = x[0] < 0.5 ? -4.0 : 4.0, b = x[0] + x[1] < 1.5 ? -3.0 : 3.0;
    return FitPoint{
        VectorXd{{3.0 + a * (x[0] - 0.5), 3.0 + b * (x[0] + x[1] - 1.5), x[0] - 2.0}},
        MatrixXd{{a, 0.0}, {b, b}, {1.0, 0.0}}, false};
  };
  const RobustFit fit =
      robust_fit(model, VectorXd{{3.0, -2.0}}, robust_loss(Loss::squares, 0.0), kMost);
  CHECK(fit.status == CalibrationStatus::converged);
  CHECK((fit.x - VectorXd{{0.5, 1.0}}).norm() < 0.02);
}

TEST_CASE("evaluations that end at an edge: what was found stays, more is no worse") {
  const FitModel model = [](const VectorXd& x) {
    const double side = x[0] < 1.0 ? -30.0 : 30.0;
    return FitPoint{VectorXd{{3.0 + side * (x[0] - 1.0), x[1] - 2.0}},
                    MatrixXd{{side, 0.0}, {0.0, 1.0}}, false};
  };
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t most = 3; most < 60; ++most) {
    const RobustFit fit =
        robust_fit(model, VectorXd{{0.0, 0.0}}, robust_loss(Loss::squares, 0.0), most);
    CHECK(fit.evaluations <= most);
    const bool found = fit.status == CalibrationStatus::converged ||
                       fit.status == CalibrationStatus::stalled;
    // Once it stood at the edge, fewer evaluations than it takes lose nothing.
    if (least < std::numeric_limits<double>::infinity()) CHECK(found);
    if (!found) continue;
    CHECK(fit.misfit <= least);
    least = fit.misfit;
  }
  CHECK(least == doctest::Approx(12.0).epsilon(1e-3));
}

TEST_CASE("at an edge: a robust loss, and a caller who stops") {
  // |x0 - x1| + 2 under Huber beside an outlier that squares would follow.
  const FitModel model = [](const VectorXd& x) {
    const double apart = x[0] - x[1], side = apart < 0.0 ? -10.0 : 10.0;
    return FitPoint{VectorXd{{2.0 + side * apart, x[0] - 3.0, x[1] - 60.0}},
                    MatrixXd{{side, -side}, {1.0, 0.0}, {0.0, 1.0}}, false};
  };
  const RobustLoss huber = robust_loss(Loss::huber, 0.0);
  const RobustFit fit = robust_fit(model, VectorXd::Zero(2), huber, kMost);
  CHECK(fit.status == CalibrationStatus::converged);
  double least = fit.misfit;
  for (double a = -1.0; a <= 3.0; a += 0.01)
    for (double b = a - 0.3; b <= a + 0.3; b += 0.01) {
      const VectorXd x{{a, b}};
      least = std::min(least, misfit_of(model(x), x, huber));
    }
  CHECK(fit.misfit == doctest::Approx(least).epsilon(1e-3));
  CHECK(fit.x[1] < 3.0);
  for (std::size_t last = 1; last < fit.evaluations; ++last) {
    std::size_t calls = 0;
    const FitModel stopping = [&](const VectorXd& x) {
      FitPoint point = model(x);
      point.stopped = ++calls >= last;
      return point;
    };
    robust_fit(stopping, VectorXd::Zero(2), huber, kMost);
    CHECK(calls == last);  // not asked again
  }
}
