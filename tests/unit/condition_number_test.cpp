// The condition number of a result against a singular value decomposition of the same
// matrix, built once more from the public derivatives of the phases.

#include <doctest/doctest.h>

#include <Eigen/LU>
#include <Eigen/SVD>
#include <cmath>

#include "minimizer/two_level_system.hpp"
#include "solve_helpers.hpp"

using namespace gibbsteel;
using namespace gibbsteel::testing;

namespace {

constexpr double kGasConstant = 8.31446261815324;  // [J/(mol K)], CODATA 2018, exact

Eigen::Index at(std::size_t i) { return static_cast<Eigen::Index>(i); }

/// One phase present: inverse Hessian on the directions that keep the sums of the
/// sublattices (through a basis of these directions), and atoms per formula unit.
struct PhaseMatrices {
  Eigen::MatrixXd response;  ///< A^T P A
  Eigen::VectorXd formula;   ///< M(y)
};

PhaseMatrices matrices_of(const Solved& s, const PhasePoint& point) {
  const PhaseModel& model = s.system.phases()[point.phase];
  const auto& constituents = model.constituents();
  const std::size_t n = constituents.size();
  const auto derivatives = model.evaluate(s.result.temperature, point.y);
  Eigen::MatrixXd hessian(at(n), at(n)), sums, atoms;
  sums.setZero(at(constituents.back().sublattice + 1), at(n));
  atoms.setZero(at(n), at(s.overall.size()));
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j)
      hessian(at(i), at(j)) = derivatives.dy2[i * n + j];
    sums(at(constituents[i].sublattice), at(i)) = 1.0;
    if (constituents[i].element >= 0)
      atoms(at(i), constituents[i].element) = model.sites(i);
  }
  const Eigen::FullPivLU<Eigen::MatrixXd> lu(sums);
  Eigen::MatrixXd inverse = Eigen::MatrixXd::Zero(at(n), at(n));
  if (lu.dimensionOfKernel() > 0) {  // a compound of fixed composition has no direction
    const Eigen::MatrixXd kernel = lu.kernel();
    inverse =
        kernel * (kernel.transpose() * hessian * kernel).inverse() * kernel.transpose();
  }
  const Eigen::Map<const Eigen::VectorXd> y(point.y.data(), at(n));
  return {atoms.transpose() * inverse * atoms, atoms.transpose() * y};
}

/// The matrix of Eq. (N3) in the variables that the header of the minimizer names.
Eigen::MatrixXd scaled_matrix(const Solved& s) {
  const Eigen::Index elements = at(s.overall.size());
  const Eigen::Index rows = elements + at(s.result.present.size());
  Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(rows, rows);
  Eigen::VectorXd scale(rows);
  const double rt = kGasConstant * s.result.temperature.in_kelvin();
  for (Eigen::Index e = 0; e < elements; ++e)
    scale[e] = 1.0 / std::sqrt(s.overall[static_cast<std::size_t>(e)]);
  for (std::size_t f = 0; f < s.result.present.size(); ++f) {
    const PhasePoint& point = s.result.present[f];
    const PhaseMatrices phase = matrices_of(s, point);
    const Eigen::Index row = elements + at(f);
    matrix.topLeftCorner(elements, elements) += point.amount * rt * phase.response;
    matrix.col(row).head(elements) = phase.formula;
    matrix.row(row).head(elements) = phase.formula.transpose();
    scale[row] = std::sqrt(point.amount);
  }
  return scale.asDiagonal() * matrix * scale.asDiagonal();
}

double by_singular_values(const Eigen::MatrixXd& matrix) {
  const Eigen::JacobiSVD<Eigen::MatrixXd> svd(matrix);
  return svd.singularValues()[0] / svd.singularValues()[matrix.rows() - 1];
}

void check_against_svd(const Solved& s, std::size_t present) {
  REQUIRE(s.result.report.usable());
  REQUIRE(s.result.present.size() == present);
  const double expected = by_singular_values(scaled_matrix(s));
  MESSAGE("condition number " << expected);
  const SolveReport& report = s.result.report;
  CHECK(report.condition_number == doctest::Approx(expected).epsilon(1e-6));
  CHECK(report.digits_lost() == doctest::Approx(std::log10(expected)).epsilon(1e-6));
}

}  // namespace

TEST_CASE("condition number, Eq. (N4), as a singular value decomposition gives it") {
  check_against_svd(solve_weight({{"C", 0.8}}, Temperature::celsius(900)), 1);
  check_against_svd(solve_weight({{"C", 0.8}}, Temperature::celsius(650)), 2);
  check_against_svd(solve_weight({{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}},
                                 Temperature::celsius(1020)),
                    2);
  // Trace amounts count as much as large ones: the scaling keeps the number small.
  const auto traces =
      solve_weight({{"C", 1e-6}, {"Cr", 1e-5}}, Temperature::celsius(900));
  check_against_svd(traces, 1);
  CHECK(traces.result.report.condition_number < 10.0);
}

/// Of the present phases, by way of the factors, and of a line, which looks at the
/// factors in doubt only: the same bits.
void check_both_ways(const Solved& s) {
  REQUIRE(s.result.report.usable());
  auto conditions = internal::conditions_of(s.system, s.result.temperature, s.overall);
  std::vector<internal::PhaseSet> sets;
  for (const PhasePoint& point : s.result.present) {
    auto& set = sets.emplace_back();
    set.phase = point.phase;
    set.amount = point.amount;
    set.y = point.y;
  }
  internal::TwoLevelSystem factored, line;
  factored.evaluate(conditions, sets);
  line.evaluate(conditions, sets);
  REQUIRE(factored.factor(conditions, sets));
  CHECK(line.condition_number(conditions, sets) == factored.condition_number());
}

TEST_CASE("the condition number needs no factors where the rank is full for sure") {
  check_both_ways(solve_weight({{"C", 0.8}}, Temperature::celsius(650)));
  check_both_ways(solve_weight({{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}},
                               Temperature::celsius(1020)));
  check_both_ways(
      solve_moles({{"Cr", 0.5}, {"W", 0.5}}, Temperature::kelvin(1950.0), {"ferrite"}));
  check_both_ways(solve_moles({{"Fe", 3}, {"C", 1}}, Temperature::celsius(700)));
}

TEST_CASE("the condition number grows towards a consolute point") {
  // Cr-W, L = 32400 J/mol: consolute temperature L / (2 R) = 1948.4 K, as in
  // minimizer_hard_cases_test.cpp. The second derivative of G vanishes there.
  const auto at_kelvin = [](double kelvin) {
    const auto s = solve_moles({{"Cr", 0.5}, {"W", 0.5}}, Temperature::kelvin(kelvin),
                               {"ferrite"});
    REQUIRE(s.result.report.usable());
    return s.result.report.condition_number;
  };
  const double far = at_kelvin(2400.0), near = at_kelvin(1950.0);
  MESSAGE("at 2400 K " << far << ", at 1950 K " << near);
  CHECK(near > 50.0 * far);
}

TEST_CASE("no number of digits is promised where amounts or potentials are free") {
  const auto s = solve_moles({{"Fe", 3}, {"C", 1}}, Temperature::celsius(700));
  REQUIRE(s.result.report.usable());
  CHECK_FALSE(s.result.report.unique);
  CHECK(std::isinf(s.result.report.condition_number));
  CHECK(std::isinf(s.result.report.digits_lost()));
  CHECK(std::isnan(SolveReport{}.condition_number));
  CHECK(std::isnan(SolveReport{}.digits_lost()));
}
