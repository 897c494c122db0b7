#pragma once
/// Compositions of phases as columns of the linear program over chemical potentials:
/// composition and Gibbs energy per mole of atoms, and the site fractions behind them.

#include "lanes/column_blocks.hpp"
#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {

class ColumnPool {
 public:
  explicit ColumnPool(std::size_t elements) : elements_(elements), blocks_(elements) {}

  /// @param energy  G(y) [J/mol of formula units]
  /// @return index of the new column
  std::size_t add(const Conditions& conditions, std::size_t phase, const double* y,
                  double energy);

  std::size_t size() const noexcept { return phase_.size(); }
  std::size_t phase(std::size_t column) const noexcept { return phase_[column]; }
  /// Of one phase, in the order of their numbers.
  std::span<const std::size_t> columns_of(std::size_t phase) const noexcept {
    if (phase >= of_phase_.size()) return {};
    return of_phase_[phase];
  }
  /// Atom fractions, length elements.
  const double* composition(std::size_t column) const noexcept {
    return &composition_[column * elements_];
  }
  double energy(std::size_t column) const noexcept { return energy_[column]; }
  bool finite_energies() const noexcept;
  /// Atoms per formula unit.
  double atoms(std::size_t column) const noexcept { return atoms_[column]; }
  std::span<const double> y(std::size_t column) const noexcept {
    return {&y_[offset_[column]], offset_[column + 1] - offset_[column]};
  }
  /// D per mole of atoms of every column at chemical potentials mu, in `memory`.
  std::span<const double> distances(std::span<const double> mu,
                                    AlignedNumbers& memory) const;

 private:
  std::size_t elements_;
  std::vector<std::size_t> phase_;
  std::vector<double> composition_, energy_, atoms_, y_;
  std::vector<std::size_t> offset_{0};
  std::vector<std::vector<std::size_t>> of_phase_;
  ColumnBlocks blocks_;
};

/// Softened end members and compositions like the bulk with several interstitial
/// fillings: where minima of D are looked for first.
void add_seeds(const Conditions& conditions, ColumnPool& pool);

}  // namespace gibbsteel::internal
