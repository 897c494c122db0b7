#pragma once
/// Mass balance of carbides of known volume and composition against one matrix phase.

#include <string>
#include <vector>

#include "gibbsteel/phase_model.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel::internal {

/// All occurrences of one kind, in the proportions of their mole_percent.
struct CarbideShare {
  std::vector<Occurrence> occurrences;
  double volume_percent = 0.0;  ///< of the steel
};

/// The matrix phase, for its volume at any composition.
class MatrixVolume {
 public:
  MatrixVolume(const Steel& steel, const Occurrence& matrix);

  /// Site fractions of the phase for a composition, as model.constituents(). Empty when
  /// the composition does not fix them (an element on two sublattices).
  std::vector<double> site_fractions(const NamedValues& atom_fraction) const;
  /// [cm3 per mol of atoms] at room temperature, Eq. (V1); that of the occurrence it
  /// was made from when the site fractions are not fixed.
  double molar_volume(const NamedValues& atom_fraction) const;
  const PhaseModel& model() const noexcept { return model_; }

 private:
  const Phase* phase_;
  PhaseModel model_;
  double fallback_;
};

struct CarbideBalance {
  std::vector<double> moles;  ///< of atoms in each share, per mole of the steel
  double matrix_moles = 0.0;
  double matrix_volume = 0.0;  ///< [cm3 per mol of atoms]
  /// Moles of each element in the matrix per mole of the steel; one below zero says
  /// that the carbide holds more than the steel.
  NamedValues matrix;
  bool possible = true;  ///< every element and the sum are at least zero

  NamedValues matrix_atom_fraction() const;
  NamedValues matrix_weight_percent(const ParameterSet& set) const;
};

/// Eq. (B1) and Eq. (B2). Elements that cannot be balanced are left negative.
CarbideBalance balance_carbides(const NamedValues& steel_atom_fraction,
                                const std::vector<CarbideShare>& shares,
                                const MatrixVolume& matrix, double matrix_volume_start);

/// Eq. (B2) with the moles of atoms in each share per mole of the steel given; sets the
/// volume percents of the shares that Eq. (B1) turns into these moles.
CarbideBalance balance_moles(const NamedValues& steel_atom_fraction,
                             std::vector<CarbideShare>& shares,
                             const std::vector<double>& moles,
                             const MatrixVolume& matrix);

}  // namespace gibbsteel::internal
