#pragma once
/// Proof for a state between two proven ones of a sweep, without looking at a phase.

#include "internal/run_sweep.hpp"
#include "internal/soak_problem.hpp"

namespace gibbsteel::internal {

/// The least D of a phase is concave in chemical potentials and temperature together
/// where its energy is concave in temperature. What is proven at two temperatures thus
/// holds on the chord between them, and at potentials of which none lies more than s
/// above the chord with a gap that is s wider:                               Eq. (E3)
///
///   D_f(y; mu, T) >= -(gap + s) atoms,   s = max(0, max_e(mu_e - chord_e))
///
/// Gives `between` the certificate `covered` and this gap when both neighbours carry
/// the certificate `proof`, concavity is shown and the gap is 5 J/mol of atoms or less;
/// else leaves it as it is.
/// @return true when covered
bool cover(const SoakProblem& problem, const State& before, const State& after,
           State& between);

/// True for the soaks of a sweep that are proven themselves.
inline bool is_anchor(std::size_t i, std::size_t count, std::size_t every) {
  return i % every == 0 || i + 1 == count;
}

/// Covers what lies between the anchors of a sweep, and proves one by one what cannot
/// be covered. Asks `progress` after each of these proofs; once the sweep is cancelled,
/// by it or before, nothing is proven any more.
/// @param asked  number of temperatures asked for; the states may be fewer
void cover_sweep(const SoakProblem& problem, std::size_t asked,
                 const SweepProgress& progress, Sweep& sweep);

}  // namespace gibbsteel::internal
