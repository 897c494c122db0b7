#pragma once
/// Lower bound of the second-order remainder over a box.

#include "proof/enclosure.hpp"

namespace gibbsteel::internal {

/// The Hessian of E over a box as midpoint and radius, with the curvature that ideal
/// mixing has at least. Midpoints are centred: where the site fractions of a sublattice
/// sum to one, d' H d does not change when H_ij loses a_i + b_j.
struct QuadraticForm {
  std::size_t n = 0;
  std::vector<double> mid, radius;  ///< n x n, full; mid as it is, for gradients
  std::vector<double> centred;      ///< n x n, full
  std::vector<double> mixing;       ///< least R T a_i / y_i
  std::vector<double> reach;        ///< largest |y_i - centre_i|

  void fill(const EnergyEnclosure& energy, const Box& box, const Box& centre,
            const Enclosure& over);
  /// Share of constituent i in what may lie below zero, >= 0:
  /// max(0, sum_j |A_ij| r_i r_j - A_ii r_i^2).
  double deficit(std::size_t i) const;

 private:
  void centre_block(const CompiledPhase& phase, std::size_t s, std::size_t t);
};

}  // namespace gibbsteel::internal
