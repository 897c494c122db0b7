#pragma once
/// Exact first derivatives of an equilibrium, by the implicit function theorem from the
/// matrix of the last Newton step. For an input x (temperature, composition, a number
/// of the parameter file), with subscript x for a derivative at fixed potentials,
/// amounts and site fractions:
///
///   [ sum n A^T P A   M ] [ dmu/dx ]   [ db/dx + sum n A^T P g_x ]
///   [ M^T             0 ] [ dn/dx  ] = [ G_x                     ]            Eq. (S1)
///   dy/dx = P (A dmu/dx - g_x)                                                Eq. (S2)
///
/// n amounts, M(y) atoms per formula unit and A their derivative in y, P the inverse
/// Hessian on the directions that keep the sums of the sublattices, g the gradient of
/// G(y), b the overall composition. A minimum of D per mole of atoms that is not
/// present does not move D in first order by its own shift (envelope theorem), and so
///
///   d(D/N)/dx = (G_x - M . dmu/dx) / N                                        Eq. (S3)
///   dG_total/dx = mu . db/dx + sum n G_x                                      Eq. (S4)
///
/// N atoms per formula unit. The two-level system is that of Hillert, Physica 103B
/// (1981) 31 (from memory); (S1) to (S4) follow by differentiating Eq. (E1) and (E2).

#include <memory>
#include <span>
#include <vector>

#include "gibbsteel/minimizer.hpp"

namespace gibbsteel {

/// What an input does to one phase at fixed site fractions.
struct PhaseDisturbance {
  double value = 0.0;      ///< G_x [J/mol of formula units per unit of x]
  std::vector<double> dy;  ///< g_x, as the site fractions; empty: zero
};

/// What an input does at fixed potentials, amounts and site fractions.
struct Disturbance {
  std::vector<double> overall;  ///< db/dx [mole fraction per unit]; empty: zero
  /// As Equilibrium::present and Linearization::absent(), at the site fractions that
  /// stand there; empty: zero. `dy` of absent ones is not used.
  std::vector<PhaseDisturbance> present, absent;
};

/// Derivatives per unit of x.
struct EquilibriumSlope {
  struct Point {
    double amount = 0.0;  ///< dn/dx
    std::vector<double> y;
  };
  std::vector<double> chemical_potential;    ///< as PhaseSystem::elements()
  std::vector<Point> present;                ///< as Equilibrium::present
  std::vector<double> absent_driving_force;  ///< as Equilibrium::absent
  double gibbs_energy = 0.0;
};

/// Work space is kept inside: one object for each thread.
class Linearization {
 public:
  /// Factors once. Keep `system` alive.
  /// @param result          usable, of this system
  /// @param mole_fractions  with which it was made
  /// @throws InputError gibbsteel.input.219 (result not usable, or of another system)
  Linearization(const PhaseSystem& system, const Equilibrium& result,
                std::span<const double> mole_fractions);
  ~Linearization();
  Linearization(Linearization&&) noexcept;
  Linearization& operator=(Linearization&&) noexcept;

  /// False when amounts or potentials are left free (see SolveReport::unique): no
  /// derivative exists, and every slope is NaN.
  bool unique() const noexcept;

  /// Equilibrium::absent with the site fractions of the minima to full precision: D
  /// needs them to half as many digits as its slope.
  const std::vector<PhasePoint>& absent() const noexcept;

  /// For any input. Lists that are empty count as zeros.
  EquilibriumSlope slope(const Disturbance& disturbance) const;
  /// Per K.
  EquilibriumSlope per_kelvin() const;
  /// Per unit of a change of the overall mole fractions, which must sum to 0.
  EquilibriumSlope along(std::span<const double> overall) const;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace gibbsteel
