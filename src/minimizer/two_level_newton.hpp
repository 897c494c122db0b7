#pragma once
/// Refinement of a set of phases to full precision: site fractions are expressed
/// through the chemical potentials by each phase's own inverse Hessian P, and one small
/// system remains for potentials and amounts,
///
///   [ sum n A^T P A   M ] [ dmu ]   [ b - sum n M - sum n A^T P (A mu - g) ]
///   [ M^T             0 ] [ dn  ] = [ G - M^T mu                          ]   Eq. (N3)
///   dy = P (A (mu + dmu) - g)
///
/// solved in variables scaled so that trace elements and small amounts count as much as
/// large ones. Hillert, Physica 103B (1981) 31 (from memory).

#include "minimizer/two_level_system.hpp"

namespace gibbsteel::internal {

struct Refinement {
  bool converged = false;
  int steps = 0;
  double balance = 0.0;  ///< largest relative element balance error
  double plane = 0.0;    ///< largest |D| of a set [J/mol of atoms]
  /// False when the assemblage leaves amounts or potentials free (a compound alone).
  bool unique = true;
  /// Sets inside a spinodal: no minimum, though the equations hold.
  std::vector<std::size_t> unstable;
};

/// What a refinement works on. Kept from one refinement of a problem to the next, it
/// needs no further memory.
struct NewtonMemory {
  TwoLevelSystem system;
  Eigen::VectorXd right, change;  ///< change: dmu, then dn
  std::vector<double> balance, dy;
};

/// @param mu    chemical potentials: estimate on entry, refined on return
/// @param sets  changed in place; sets that vanish are removed
Refinement refine(Conditions& conditions, int most_steps, double balance_tolerance,
                  std::vector<PhaseSet>& sets, std::vector<double>& mu,
                  NewtonMemory& memory);
Refinement refine(Conditions& conditions, int most_steps, double balance_tolerance,
                  std::vector<PhaseSet>& sets, std::vector<double>& mu);

/// One more step from a refined assemblage: what is left after it is rounding. Taken
/// back where it does not balance as well.
/// @param refined  what refine() returned; brought up to date
/// @return Eq. (N4) of the mixture
double last_step(Conditions& conditions, double balance_tolerance,
                 std::vector<PhaseSet>& sets, std::vector<double>& mu,
                 Refinement& refined, NewtonMemory& memory);

/// Eq. (N4) of a mixture at these conditions.
double condition_number(Conditions& conditions, const std::vector<PhaseSet>& sets,
                        NewtonMemory& memory);

/// sum n_f G_f [J/mol of atoms]
double total_energy(const Conditions& conditions, const std::vector<PhaseSet>& sets);

}  // namespace gibbsteel::internal
