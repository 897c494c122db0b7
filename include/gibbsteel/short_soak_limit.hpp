#pragma once
/// What a soak of minutes dissolves at least of the cementite of an annealed steel.
///
/// In austenite carbon spreads over many micrometres in a second, metals over less than
/// one in minutes below about 900 C. Cementite therefore gives up carbon at once, and
/// its metals stay where it stood, as long as the austenite that comes of it has the
/// lower energy. At the carbon activity a where
///
///   G_M3C(u) = 3 sum_i u_i mu_i(u, a) + mu_C(a)                              Eq. (B3)
///
/// it stops: from there on metals have to move. u_i is the share of metal i in the
/// cementite of the annealed condition, mu_i and mu_C [J/mol] are chemical potentials
/// in austenite with the same metals and that carbon activity. By then the activity is
/// the same everywhere; the mean matrix is what Eqs. (B1) and (B2) leave.
///
/// Equilibrium in which only carbon moves: A. Hultgren, Trans. ASM 39 (1947) 915; of
/// alloyed cementite that dissolves: M. Hillert, K. Nilsson, L.-E. Torndahl, J. Iron
/// Steel Inst. 209 (1971) 49; both from memory. As a limit of shop soaks: own use.
///
/// A real soak lies between this limit and the long-hold limit, nearer to the latter
/// the hotter and longer it is. Nothing is fitted: bearing and oil-hardening steels
/// soaked for minutes near 850 C come out near this limit (`tests/reference`, records
/// with `short_soak_annealed`). Carbides rich in alloy (MC, M6C, M7C3, M23C6) give up
/// carbon only with their metals, so they stay as annealed here; for steels without
/// cementite the limit says nothing.

#include "gibbsteel/measured_carbide.hpp"

namespace gibbsteel {

struct ShortSoakLimitOptions {
  /// Where a slow cool freezes the exchange of metals between ferrite and cementite:
  /// common practice for low-alloy steel, no source. 650 or 740 C instead take 0.02
  /// or 0.06 wt% carbon from the matrix of 52100 at 845 C.
  Temperature annealed_at = Temperature::celsius(700.0);
  SharedParameters parameters;  ///< those of the state; default_parameters() when null
  SoakOptions annealing;        ///< of the soak at annealed_at
};

/// The limit at the temperature of `state`. Its state has status `short_soak_limit`,
/// warning 349 and the carbon activity; `measured` holds the carbide that was computed,
/// `bands` run from this limit to the long-hold limit.
/// @param state  long-hold limit; volumes at room temperature, austenite as matrix
/// @throws InputError with every problem: gibbsteel.input.260 (state not usable, or no
///         single matrix phase), .266 (another parameter set, or volumes not at room
///         temperature), .265 (no volume data), .284 (matrix not austenite, or so poor
///         in carbon by the limit that it would hold ferrite; annealed condition not
///         usable or without cementite)
ShortSoak short_soak_limit(const State& state,
                           const ShortSoakLimitOptions& options = {});

}  // namespace gibbsteel
