#pragma once
/// The small system of the two-level scheme for potentials and amounts,
///
///   [ sum n A^T P A   M ]
///   [ M^T             0 ]                                       matrix of Eq. (N3)
///
/// in variables scaled so that trace elements and small amounts count as much as large
/// ones. One factorization serves the Newton step and all derivatives. The matrix is
/// symmetric, and its condition number is that of its largest and smallest eigenvalue,
///
///   kappa = max |lambda| / min |lambda|                                       Eq. (N4)

#include <Eigen/Eigenvalues>
#include <Eigen/LU>
#include <Eigen/QR>
#include <span>
#include <vector>

#include "minimizer/phase_sets.hpp"
#include "minimizer/tangent_step.hpp"

namespace gibbsteel::internal {

/// Everything about one set at the current point.
struct SetPoint {
  SetPoint(std::size_t n, std::size_t elements)
      : step(n, elements), gradient(n), excess(n), formula(elements) {}
  void resize(std::size_t n, std::size_t elements) {
    step.reserve(n, elements);
    gradient.resize(n);
    excess.resize(n);
    formula.assign(elements, 0.0);
  }
  TangentStep step;
  std::vector<double> gradient, excess;  ///< excess: g - A mu, set by excess_over()
  std::vector<double> formula;           ///< M(y)
  double energy = 0.0;
  double atoms = 0.0;
  bool unstable = false;

  /// D at chemical potentials mu [J/mol of formula units].
  double d(const std::vector<double>& mu) const noexcept {
    double sum = energy;
    for (std::size_t e = 0; e < formula.size(); ++e) sum -= mu[e] * formula[e];
    return sum;
  }
};

class TwoLevelSystem {
 public:
  /// Energies alone: enough for d(), formula and atoms of the points.
  void evaluate_energies(const Conditions& conditions,
                         const std::vector<PhaseSet>& sets);
  /// Energies, gradients and factored Hessians of all sets.
  void evaluate(Conditions& conditions, const std::vector<PhaseSet>& sets);
  /// Assembles and factors the matrix. @return false when it is not finite
  bool factor(const Conditions& conditions, const std::vector<PhaseSet>& sets);
  /// Fills the excess of all points: small near the solution, whatever the size of the
  /// energies.
  void excess_over(const Conditions& conditions, const std::vector<PhaseSet>& sets,
                   const std::vector<double>& mu);
  /// False when amounts or potentials are left free; solve() then gives the smallest
  /// change.
  bool unique() const noexcept { return unique_; }
  /// Of the scaled matrix that was factored last; infinite when it is not unique().
  double condition_number();
  /// The same of sets that evaluate() was called with, factored only where it matters.
  double condition_number(const Conditions& conditions,
                          const std::vector<PhaseSet>& sets);
  /// @param right   per element [mol], then D per set [J/mol of formula units]; scaled
  ///                on return
  /// @param change  dmu [J/mol], then dn [mol]
  void solve(Eigen::VectorXd& right, Eigen::VectorXd& change) const;

  std::span<const SetPoint> points() const noexcept { return {points_.data(), used_}; }
  /// The scaled matrix that was factored last.
  const Eigen::MatrixXd& matrix() const noexcept { return matrix_; }
  /// sum n A^T P A, elements x elements, row by row.
  const std::vector<double>& response() const noexcept { return response_; }

 private:
  double ratio_of_eigenvalues();
  void assemble(const Conditions& conditions, const std::vector<PhaseSet>& sets);

  bool is_surely_regular() const;

  std::vector<SetPoint> points_;  ///< memory for as many sets as there were
  std::size_t used_ = 0;
  AlignedNumbers products_;  ///< lower triangle of response_, padded
  std::vector<double> response_;
  std::vector<double> scale_;         ///< of an element: 1 / sqrt(b)
  std::vector<double> amount_scale_;  ///< of a set: sqrt(n)
  double rt_ = 0.0;
  Eigen::MatrixXd matrix_;
  Eigen::PartialPivLU<Eigen::MatrixXd> quick_;
  Eigen::FullPivLU<Eigen::MatrixXd> full_;  ///< where the rank is in doubt
  Eigen::CompleteOrthogonalDecomposition<Eigen::MatrixXd> least_;
  Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigenvalues_;
  bool regular_ = false;  ///< quick_ serves
  bool unique_ = true;
};

}  // namespace gibbsteel::internal
