/// The deficit of a constituent bounds its exact value from above, whatever cancels:
/// against 50 digits.

#include <doctest/doctest.h>

#include <boost/multiprecision/cpp_bin_float.hpp>
#include <cmath>
#include <limits>
#include <random>

#include "proof/quadratic.hpp"

using gibbsteel::internal::QuadraticForm;

namespace {

using Exact = boost::multiprecision::cpp_bin_float_50;

QuadraticForm form_of(std::size_t n) {
  QuadraticForm form;
  form.n = n;
  form.mid.assign(n * n, 0.0);
  form.radius.assign(n * n, 0.0);
  form.centred.assign(n * n, 0.0);
  form.mixing.assign(n, 0.0);
  form.reach.assign(n, 0.0);
  return form;
}

/// max(0, sum_j (|A_ij| + R_ij) r_j r_i - (A_ii - R_ii + mixing_i) r_i^2)
Exact exact_deficit(const QuadraticForm& form, std::size_t i) {
  const double* row = &form.centred[i * form.n];
  const double* radius = &form.radius[i * form.n];
  Exact sum = 0;
  for (std::size_t j = 0; j < form.n; ++j)
    if (j != i) sum += (Exact(std::abs(row[j])) + radius[j]) * form.reach[j];
  sum -= (Exact(row[i]) - radius[i] + form.mixing[i]) * form.reach[i];
  return sum > 0 ? Exact(sum * form.reach[i]) : Exact(0);
}

}  // namespace

TEST_CASE("the deficit is never below its exact value") {
  std::mt19937_64 random(5);
  std::uniform_real_distribution<double> u(-1.0, 1.0);
  for (int k = 0; k < 2000; ++k) {
    QuadraticForm form = form_of(2 + random() % 12);
    const double scale = std::pow(10.0, 12.0 * u(random));
    for (double& a : form.centred) a = scale * u(random);
    for (double& r : form.radius) r = 1e-3 * scale * std::abs(u(random));
    for (double& m : form.mixing) m = scale * std::abs(u(random));
    for (double& r : form.reach) r = std::abs(u(random));
    // Off-diagonal part and diagonal cancel to the last digits.
    double off = 0.0;
    for (std::size_t j = 1; j < form.n; ++j)
      off += (std::abs(form.centred[j]) + form.radius[j]) * form.reach[j];
    form.centred[0] = off / form.reach[0] + form.radius[0] - form.mixing[0];
    for (std::size_t i = 0; i < form.n; ++i) {
      const double bound = form.deficit(i);
      CHECK(Exact(bound) >= exact_deficit(form, i));
    }
  }
}

TEST_CASE("a diagonal that cancels keeps the slack of what it is made of") {
  std::mt19937_64 random(6);
  std::uniform_real_distribution<double> u(0.5, 1.0);
  for (int k = 0; k < 2000; ++k) {
    QuadraticForm form = form_of(2);
    form.reach = {1.0, 1.0};
    form.centred[0] = u(random);
    form.radius[0] = 1e10 * u(random);  // row - radius loses six digits
    form.mixing[0] = form.radius[0];
    form.centred[1] = form.centred[0] - form.radius[0] + form.mixing[0];
    CHECK(Exact(form.deficit(0)) >= exact_deficit(form, 0));
    CHECK(form.deficit(0) < 1e-3);
  }
}

TEST_CASE(
    "a deficit that cancels to zero keeps its slack, and one unknown is no zero") {
  QuadraticForm form = form_of(2);
  form.centred = {1e6, 1e6, 1e6, 1e6};
  form.reach = {1.0, 1.0};
  CHECK(form.deficit(0) > 1e-10);
  CHECK(form.deficit(0) < 1e-6);
  form.centred[1] = std::numeric_limits<double>::quiet_NaN();
  CHECK(form.deficit(0) == std::numeric_limits<double>::infinity());
}
