#pragma once
/// Tangent-plane test, Eq. (E2), from many starts per phase: tier 1 of the certificate.

#include "gibbsteel/minimizer.hpp"
#include "minimizer/phase_sets.hpp"

namespace gibbsteel::internal {

/// A local minimum of D that is no present set: not close to one of the same phase, or
/// close and below the plane.
struct AbsentMinimum {
  std::size_t phase = 0;
  std::vector<double> y;
  double d = 0.0;  ///< [J/mol of atoms]
  bool converged = false;
};

/// How much of the minima is wanted.
enum class PlaneTestDepth {
  all_minima,   ///< every minimum that the starts lead to
  near_minima,  ///< those that may lie within kNearPlane above the plane
};
inline constexpr double kNearPlane = 500.0;  ///< [J/mol of atoms]

/// All distinct minima found, the lowest first.
std::vector<AbsentMinimum> test_plane(ColumnGeneration& generation,
                                      const std::vector<PhaseSet>& sets,
                                      std::span<const double> mu,
                                      const SolveOptions& options,
                                      PlaneTestDepth depth);

/// Points below the plane that few starts with few steps lead to, the lowest first:
/// enough to go on where the assemblage is not yet complete.
std::vector<AbsentMinimum> glance_below(ColumnGeneration& generation,
                                        std::span<const double> mu,
                                        const SolveOptions& options);

/// Moves a minimum of D per formula unit to the minimum of D per mole of atoms, which
/// differs where the number of atoms depends on y (fractional programming: D - d N(y)
/// is D at potentials raised by d). Coincident minima are dropped.
void polish(ColumnGeneration& generation, const std::vector<PhaseSet>& sets,
            std::span<const double> mu, const SolveOptions& options,
            std::vector<AbsentMinimum>& minima);

}  // namespace gibbsteel::internal
