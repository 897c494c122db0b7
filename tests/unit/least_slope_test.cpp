/// The shortest vector between several, Eq. (K6), against closed forms and draws.

#include "calibrate/least_slope.hpp"

#include <doctest/doctest.h>

#include <Eigen/LU>
#include <random>

using Eigen::MatrixXd;
using Eigen::VectorXd;
using gibbsteel::internal::least_slope_weights;

TEST_CASE("between two vectors: the foot of the perpendicular, or the shorter one") {
  const VectorXd foot = least_slope_weights(MatrixXd{{1.0, 1.0}, {3.0, -1.0}});
  CHECK(foot[0] == doctest::Approx(0.25));
  CHECK(foot[1] == doctest::Approx(0.75));
  const VectorXd shorter = least_slope_weights(MatrixXd{{1.0, 2.0}, {0.0, 5.0}});
  CHECK(shorter[0] == 1.0);
  CHECK(shorter[1] == 0.0);
  CHECK(least_slope_weights(MatrixXd{{2.0}, {1.0}})[0] == 1.0);
}

TEST_CASE("zero between the corners of a simplex around it") {
  const MatrixXd around{{1.0, -1.0, 0.5}, {0.0, 1.0, -2.0}};
  const VectorXd weights = least_slope_weights(around);
  CHECK((around * weights).norm() < 1e-5);
  // The closed form: A w = 0 with sum 1.
  MatrixXd system(3, 3);
  system << around, MatrixXd::Ones(1, 3);
  const VectorXd exact = system.inverse() * VectorXd{{0.0, 0.0, 1.0}};
  CHECK((weights - exact).norm() < 1e-5);
}

TEST_CASE("no mixture of random vectors is shorter") {
  std::mt19937 draw(7);
  std::normal_distribution<double> normal;
  std::exponential_distribution<double> share;
  for (int trial = 0; trial < 50; ++trial) {
    MatrixXd columns(5, 8);
    for (double& value : columns.reshaped()) value = normal(draw) + 0.6;
    const VectorXd weights = least_slope_weights(columns);
    CHECK(weights.minCoeff() >= 0.0);
    CHECK(weights.sum() == doctest::Approx(1.0));
    const VectorXd least = columns * weights;
    // At the least: every column lies at least as far along it.
    CHECK((columns.transpose() * least).minCoeff() >= least.squaredNorm() - 1e-6);
    for (int i = 0; i < 100; ++i) {
      VectorXd other(8);
      for (double& value : other) value = share(draw);
      CHECK((columns * (other / other.sum())).norm() >= least.norm() - 1e-9);
    }
  }
}

TEST_CASE("columns of very different lengths, and columns that are nearly alike") {
  std::mt19937 draw(11);
  std::normal_distribution<double> normal;
  for (const double length : {1e3, 1e6}) {
    for (const double apart : {1.0, 1e-9}) {
      CAPTURE(length);
      CAPTURE(apart);
      for (int trial = 0; trial < 50; ++trial) {
        MatrixXd columns(4, 6);
        for (double& value : columns.reshaped()) value = normal(draw) + 0.3;
        columns.col(1) = columns.col(0) + apart * columns.col(1);
        columns.rightCols(3) *= length;
        const VectorXd weights = least_slope_weights(columns);
        CHECK(weights.minCoeff() >= 0.0);
        CHECK(weights.sum() == doctest::Approx(1.0));
        const VectorXd least = columns * weights;
        const double square = least.squaredNorm();
        const double rounding = 1e-6 * (1.0 + square) + 1e-15 * length * length;
        CHECK((columns.transpose() * least).minCoeff() >= square - rounding);
      }
    }
  }
}
