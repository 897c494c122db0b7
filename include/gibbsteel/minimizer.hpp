#pragma once
/// Global minimum of the Gibbs energy at fixed temperature, pressure (1 bar) and
/// overall composition: amounts and site fractions of the stable phases, chemical
/// potentials, and how far the answer can be trusted.
///
///   minimize  sum_f n_f G_f(y_f)   subject to  sum_f n_f M_f(y_f) = b         Eq. (E1)
///   stable when  D_f(y) = G_f(y) - mu . M_f(y) >= 0  for all f and y          Eq. (E2)
///
/// n_f moles of formula units, M_f atoms of each element per formula unit, b the
/// overall mole fractions, mu the chemical potentials. Cold start by column generation
/// (linear program over chemical potentials, single-phase Newton minimizations as
/// pricing; after White, Johnson & Dantzig, J. Chem. Phys. 28 (1958) 751 and Mitsos &
/// Barton, AIChE J. 53 (2007) 2131), refinement by the two-level Newton scheme
/// (Hillert, Physica 103B (1981) 31), certificate by the tangent-plane test (Michelsen,
/// Fluid Phase Equilib. 9 (1982) 1) from many starts. All cited from memory.

#include <cstddef>
#include <limits>
#include <span>
#include <string>
#include <vector>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/phase_system.hpp"
#include "gibbsteel/units.hpp"

namespace gibbsteel {

/// Why the minimizer stopped. Values are only ever appended.
enum class SolveStatus {
  not_run,           ///< minimize() was not called; nothing may be used
  converged,         ///< residuals below the tolerances; see the certificate
  iteration_limit,   ///< stopped early; numbers are for diagnosis only
  stalled,           ///< no progress possible; numbers are for diagnosis only
  infeasible,        ///< the allowed phases cannot hold this composition
  measured,          ///< no equilibrium: mass balance with carbide that was measured
  short_soak_limit,  ///< no equilibrium: only carbon has moved, short_soak_limit.hpp
  timed_soak,        ///< no equilibrium: what minutes leave, timed_soak.hpp
};

/// What stands behind the claim that the minimum is the global one. Only ever appended.
enum class Certificate {
  none,         ///< not tested, or a phase with a lower energy was left standing
  many_starts,  ///< tier 1: no phase found below the tangent plane from many starts
  proof,        ///< tier 2: proven that no phase lies below it by more than a gap
  covered,      ///< the same by concavity between two proven temperatures of a sweep
  /// Between two conditions of a line with tier 1: the assemblage was followed from the
  /// condition before, and so were all minima of the absent phases; none lies below
  /// the plane.
  followed,
};

std::string_view to_string(SolveStatus) noexcept;
std::string_view to_string(Certificate) noexcept;

struct SolveOptions {
  /// Rounds that may add phases, each a look from few starts or the whole test, >= 1.
  int max_rounds = 30;
  int max_newton_steps = 200;  ///< per refinement, >= 1
  /// Mutually distant starts of the certificate, >= 1: half of them the lowest columns
  /// that the search came across, the others the farthest from these. A phase that can
  /// vary has 12 to 170 seeds to choose from.
  int starts_per_phase = 20;
  double balance_tolerance = 1e-11;   ///< per element, relative, in (0, 1e-6]
  double stability_tolerance = 1e-3;  ///< [J/mol of atoms] below the plane, > 0
  /// Certificate asked for. `proof` adds branch and prune over every allowed phase,
  /// after the test from many starts: some ten milliseconds for most steels, seconds
  /// for some.
  /// When its budget runs out the result keeps `many_starts` and says how far it got.
  Certificate certify = Certificate::many_starts;
  double proof_gap = 0.1;       ///< [J/mol of atoms], >= 2 stability_tolerance
  long proof_boxes = 1000000;   ///< per phase, >= 1
  double proof_seconds = 10.0;  ///< in all rounds, wall time, > 0

  /// Every option out of its range; empty when all are valid.
  std::vector<Problem> problems() const;
  bool operator==(const SolveOptions&) const = default;
};

/// How it went. Numbers that were not computed are NaN.
struct SolveReport {
  static constexpr double kUnset = std::numeric_limits<double>::quiet_NaN();

  SolveStatus status = SolveStatus::not_run;
  Certificate certificate = Certificate::none;
  std::string reason = "minimize() was not run";
  int rounds = 0;                    ///< that added phases, see max_rounds
  int newton_steps = 0;              ///< of the two-level scheme
  int columns = 0;                   ///< generated for the linear program
  int evaluations = 0;               ///< of a phase with its Hessian
  double balance_residual = kUnset;  ///< largest relative element balance error
  double present_residual = kUnset;  ///< largest |D| of a present set [J/mol of atoms]
  double lowest_absent = kUnset;     ///< lowest D found of all others [J/mol of atoms]
  /// False when the assemblage does not fix amounts or potentials: a compound alone has
  /// a range of potentials, and one of them is reported, or NaN where they have no
  /// bound. At the exact temperature of a reaction the assemblage of one side is
  /// reported, as unique.
  bool unique = true;
  /// Of the matrix of the last Newton step, Eq. (N3), in variables scaled so that trace
  /// elements and small amounts count as much as large ones: largest over smallest
  /// singular value at the solution, >= 1, Eq. (N4). Infinite when not `unique`. A
  /// relative error of the energies moves amounts and potentials by up to this factor
  /// more.
  double condition_number = kUnset;
  /// With the certificates `proof` and `covered`: the Gibbs energy is proven to be no
  /// more than this above the lowest possible one [J/mol of atoms], for the phases
  /// allowed and the coefficients of the file at this temperature in double precision.
  double proven_gap = kUnset;
  long proof_boxes = 0;     ///< examined by branch and prune
  std::string proof;        ///< how far the proof got; empty when not asked for
  double seconds = kUnset;  ///< wall time

  /// True when converged and certified: every number may be used. Also true for a
  /// balance with measured carbide, whose potentials are unknown
  /// (measured_carbide.hpp).
  bool usable() const noexcept;
  /// True when the matrix is what known carbide leaves, and there is no equilibrium.
  bool by_mass_balance() const noexcept;
  /// Decimal digits of amounts and potentials that rounding may cost, of the 16 that a
  /// number holds: log10 of the condition number. NaN when that is not known.
  double digits_lost() const noexcept;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< small table
};

/// A composition of one phase model: present with an amount, or absent.
struct PhasePoint {
  std::size_t phase = 0;  ///< index into PhaseSystem::phases()
  double amount = 0.0;    ///< mol of formula units per mol of atoms; 0: absent
  std::vector<double> y;  ///< site fractions, as PhaseModel::constituents()
  /// Lowest D per mole of atoms at this local minimum, sign reversed [J/mol of atoms]:
  /// 0 for present sets, negative for absent ones.
  double driving_force = 0.0;
};

struct Equilibrium {
  SolveReport report;
  Temperature temperature = Temperature::kelvin(0.0);
  double gibbs_energy =
      SolveReport::kUnset;                 ///< [J/mol of atoms], elements as reference
  std::vector<double> chemical_potential;  ///< [J/mol], as PhaseSystem::elements()
  std::vector<PhasePoint> present;         ///< largest amount of atoms first
  std::vector<PhasePoint> absent;  ///< distinct local minima of D that are not present
};

/// @param system         candidate phases for exactly the elements present
/// @param mole_fractions overall composition, as system.elements(), each > 0, sum 1
/// within
///                       1e-9 (then normalized); down to 1e-9 and below is handled
/// @throws InputError gibbsteel.input.231 (length, sign or sum), .232 (options), .214
///         (temperature not above 0 K). Never
///         throws for numerical trouble: see Equilibrium::report.
Equilibrium minimize(const PhaseSystem& system, Temperature t,
                     std::span<const double> mole_fractions,
                     const SolveOptions& options = {});

}  // namespace gibbsteel
