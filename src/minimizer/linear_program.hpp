#pragma once
/// The master problem: the mixture of columns with the lowest energy,
///
///   minimize  sum_k g_k x_k   subject to  sum_k a_k x_k = b,  x >= 0          Eq. (L1)
///
/// by the revised simplex method with an explicit inverse: few rows, many columns, warm
/// start from the last basis. The dual variables are chemical potentials.

#include <Eigen/Core>

#include "minimizer/column_pool.hpp"

namespace gibbsteel::internal {

class LinearProgram {
 public:
  /// Starts from artificial columns: pure elements at an energy far above the phases of
  /// any material (5000 kJ/mol of atoms).
  explicit LinearProgram(std::span<const double> overall);

  /// Solves with all columns of the pool. @return false when the pivot limit was
  /// reached
  bool solve(const ColumnPool& pool);

  struct Entry {
    std::size_t column;
    double amount;  ///< moles of atoms
  };
  /// Basis columns that are in the pool, amounts >= 0.
  std::vector<Entry> basis() const;
  /// Dual variables [J/mol], length elements.
  std::span<const double> potentials() const noexcept {
    return {mu_.data(), static_cast<std::size_t>(mu_.size())};
  }
  /// True when no mixture of pool columns has the overall composition.
  bool infeasible() const noexcept;
  /// True when an artificial column is left at amount zero: the phases cannot leave the
  /// overall composition, and some potentials have no bound.
  bool unbounded_potentials() const noexcept;

 private:
  /// [J/mol of atoms]; raised where the energies of a set are of that size themselves.
  static constexpr double kArtificialEnergy = 5e6;
  static constexpr int kMostPivots = 3000;

  bool in_basis(Eigen::Index column) const;
  Eigen::Index entering(const ColumnPool& pool);
  bool pivot(const ColumnPool& pool, Eigen::Index column);
  void raise_artificial_energy(const ColumnPool& pool);
  void refactor(const ColumnPool& pool);
  void update_potentials(const ColumnPool& pool);
  double basis_energy(const ColumnPool& pool, Eigen::Index row) const;

  Eigen::VectorXd overall_, perturbed_, amounts_, mu_, noise_;
  Eigen::MatrixXd inverse_;
  AlignedNumbers memory_;  ///< of the prices
  double artificial_energy_ = kArtificialEnergy;
  std::vector<Eigen::Index> basis_;  ///< pool column, or -1 - element when artificial
};

}  // namespace gibbsteel::internal
