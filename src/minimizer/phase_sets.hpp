#pragma once
/// Phases taken to be present, each at one composition, with amounts.

#include <vector>

#include "minimizer/column_generation.hpp"

namespace gibbsteel::internal {

struct PhaseSet {
  std::size_t phase = 0;
  double amount = 0.0;  ///< mol of formula units per mol of atoms
  std::vector<double> y;
  int shrinking_steps = 0;  ///< consecutive refinement steps that hit the lower limit
  /// When that began: the share of the step at which the amount would have been zero,
  /// and the amount.
  double vanishing_share = 0.0;
  double amount_before = 0.0;
};

/// Sets of one phase closer than this (largest difference of site fractions) are one
/// set. Just below a consolute point two true sets are a few thousandths apart.
inline constexpr double kMergeDistance = 2e-3;
/// The same for minima from which the refinement starts.
inline constexpr double kClusterDistance = 0.05;

/// Joins sets of one phase that are closer than `closest`: amounts add up, compositions
/// are averaged.
void merge_close_sets(std::vector<PhaseSet>& sets, double closest = kMergeDistance);

/// First amount of a phase that is added at y [mol of formula units].
double first_amount(const Conditions& conditions, std::size_t phase, const double* y);

/// The basis of the linear program, each column moved to the minimum of D that it
/// belongs to (its attraction basin), minima that coincide taken together.
std::vector<PhaseSet> sets_from_basis(ColumnGeneration& generation);

}  // namespace gibbsteel::internal
