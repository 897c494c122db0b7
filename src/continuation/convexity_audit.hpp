#pragma once
/// Lowest energies are concave in temperature and convex in composition. Points of a
/// line are held against the ones before them,
///
///   G(x_j) >= mu_i . x_j  at one temperature                                  Eq. (C3)
///   G(T_j) >= G(T_i) + (G(T_k) - G(T_i)) (T_j - T_i) / (T_k - T_i),
///       T_j between T_i and T_k, at one composition                           Eq. (C4)
///
/// and what does not hold tells that one of them is not the lowest: a check that shares
/// nothing with the search for phases. Gibbs 1876 (textbook thermodynamics).

#include <array>
#include <span>
#include <vector>

#include "gibbsteel/minimizer.hpp"

namespace gibbsteel::internal {

class ConvexityAudit {
 public:
  /// Takes the next point of the line in.
  /// @param x  mole fractions, as PhaseSystem::elements()
  /// @return false when an energy of this point and the two before it is more than
  ///         `tolerance` [J/mol of atoms] off
  bool add(const Equilibrium& result, std::span<const double> x, double tolerance);

 private:
  struct Point {
    double kelvin = 0.0, energy = 0.0;
    std::vector<double> x, mu;  ///< x: sum 1

    double plane_at(std::span<const double> at) const noexcept;
  };

  static bool is_convex(const Point& a, const Point& b, double tolerance) noexcept;
  static bool is_concave(const Point& a, const Point& b, const Point& c,
                         double tolerance) noexcept;

  std::array<Point, 3> points_;  ///< the last one first
  int known_ = 0;                ///< so many of them are points of the line
};

}  // namespace gibbsteel::internal
