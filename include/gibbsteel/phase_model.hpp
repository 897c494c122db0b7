#pragma once
/// One phase of a parameter set, compiled for a list of elements: Gibbs energy of the
/// sublattice (compound energy) model with analytic derivatives.
///
///   G(y, T) = sum_t L_t(T) P_t(y) + R T sum_i a_i y_i ln y_i + G_mag(y, T)    Eq. (G1)
///
/// per mole of formula units; y_i is the site fraction of constituent i on its
/// sublattice, a_i the number of sites of that sublattice, and P_t the product of the
/// site fractions a term names, times, per sublattice on which the term mixes
/// constituents,
///
///   (y_i - y_j)^n                         two constituents, order n           Eq. (G2)
///   y_n + (1 - y_1 - y_2 - y_3)/3         three, order n = 0, 1, 2            Eq. (G3)
///   1                                     mixing on two sublattices at once   Eq. (G4)
///
///   G_mag = R T ln(beta + 1) g(T / T_C)                                       Eq. (G5)
///
/// Sources: Hillert & Staffansson, Acta Chem. Scand. 24 (1970) 3618 (G1); Redlich &
/// Kister, Ind. Eng. Chem. 40 (1948) 345 (G2); Muggianu, Gambino & Bros, J. Chim. Phys.
/// 72 (1975) 83 (G3); Hillert & Jarl, CALPHAD 2 (1978) 227 (G5). All cited from memory.

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/units.hpp"

namespace gibbsteel {

namespace internal {
struct CompiledPhase;
class CurveTable;
}  // namespace internal

/// A constituent that can occur in a phase for the chosen elements.
struct Constituent {
  std::string name;        ///< element symbol or "vacancy"
  std::size_t sublattice;  ///< index from 0, as in the parameter file
  int element;             ///< index into the active elements, -1 for a vacancy
};

/// Energies and derivatives at one point, per mole of formula units.
struct PhaseDerivatives {
  double value = 0.0;        ///< G [J/mol]
  double dt = 0.0;           ///< dG/dT = -S [J/(mol K)]
  double dt2 = 0.0;          ///< d2G/dT2 = -Cp/T [J/(mol K^2)]
  std::vector<double> dy;    ///< dG/dy_i [J/mol], length n
  std::vector<double> dydt;  ///< d2G/dy_i dT [J/(mol K)], length n
  std::vector<double> dy2;   ///< d2G/dy_i dy_j [J/mol], n x n, row by row
};

class PhaseModel {
 public:
  /// @param active  element symbols, each modelled by `set`, order kept
  /// Constituents that are no active element and no vacancy are left out, and so are
  /// the terms that name them.
  PhaseModel(const ParameterSet& set, const Phase& phase,
             std::span<const std::string> active);
  /// The same, sharing the curves of `set` with other models.
  PhaseModel(const ParameterSet& set, const Phase& phase,
             std::span<const std::string> active,
             std::shared_ptr<const internal::CurveTable> curves);
  ~PhaseModel();
  PhaseModel(PhaseModel&&) noexcept;
  PhaseModel& operator=(PhaseModel&&) noexcept;

  const std::string& name() const noexcept;
  /// False when some sublattice has no constituent left; nothing else may be called
  /// then.
  bool reachable() const noexcept;
  /// All constituents, sublattice by sublattice: the order of every y below.
  const std::vector<Constituent>& constituents() const noexcept;
  /// Sites of the sublattice of constituent i, per formula unit.
  double sites(std::size_t i) const noexcept;

  /// Value and all derivatives as if every y_i were an independent variable.
  /// @param y  site fractions, length constituents().size(), each in [0, 1]. Where y_i
  /// = 0
  ///           y ln y is 0, the derivative is -infinity and the second one +infinity.
  /// @throws InputError (gibbsteel.input.230) when the length of y is wrong
  PhaseDerivatives evaluate(Temperature t, std::span<const double> y) const;

  /// Curie temperature [K] (effective: negative values divided, Eq. G5) and moment.
  double curie_temperature(std::span<const double> y) const;
  double magnetic_moment(std::span<const double> y) const;

  /// The flat form that the kernels in src/internal use.
  const internal::CompiledPhase& compiled() const noexcept { return *compiled_; }
  const internal::CurveTable& curves() const noexcept { return *curves_; }

 private:
  std::unique_ptr<internal::CompiledPhase> compiled_;
  std::shared_ptr<const internal::CurveTable> curves_;
};

}  // namespace gibbsteel
