#pragma once
/// What cementite of an annealed steel dissolves when only carbon moves: about what a
/// soak of minutes does.
///
/// In austenite carbon spreads over micrometres in a second, metals over less than one
/// in minutes below about 900 C. Cementite can therefore give up carbon at once, its
/// metals left where it stood, as long as the austenite that comes of it has the lower
/// energy. At the carbon activity a where
///
///   G_M3C(u) = 3 sum_i u_i mu_i(u, a) + mu_C(a)                              Eq. (B3)
///
/// it stops: from there on metals have to move. u_i is the share of metal i in the
/// cementite of the annealed condition, mu_i and mu_C [J/mol] are chemical potentials
/// in austenite with the same metals and that carbon activity. By then the activity is
/// the same everywhere; the mean matrix is what Eqs. (B1) and (B2) leave, and other
/// carbides keep the amount they have when annealed.
///
/// Equilibrium in which only carbon moves: A. Hultgren, Trans. ASM 39 (1947) 915; fast
/// and slow stages of the dissolution of alloyed cementite: M. Hillert, K. Nilsson,
/// L.-E. Torndahl, J. Iron Steel Inst. 209 (1971) 49; both from memory. As a limit of
/// shop soaks: own use. It takes for granted that metals do not move across the
/// interface either; if they did, cementite would stop much sooner (52100 at 845 C: at
/// a carbon activity of 0.05 for 0.49). What is published of bearing and oil-hardening
/// steels soaked for minutes near 850 C lies near this limit (`tests/reference`,
/// records with `minutes`;
/// `test_timed_soaks.py` holds the limit against them). No number of the limit was
/// fitted to those soaks; the chromium of annealed cementite was, to one analysis. How
/// far so many minutes get beyond it: timed_soak.hpp.
///
/// As a rule a real soak lies between this limit and the long-hold limit, nearer to the
/// latter the hotter and longer it is: timed_soak.hpp. It can leave more carbide where
/// cementite took up more metal than in equilibrium at the annealing temperature, or is
/// coarse. The matrix of steels with vanadium can read up to 0.01 wt% carbon above the
/// long-hold limit, where MC has still to form. Carbides rich in alloy (MC, M6C, M7C3,
/// M23C6) give up carbon only with their metals: for steels that hold more than a tenth
/// of their carbon in these when annealed, the limit is refused.

#include "gibbsteel/measured_carbide.hpp"
#include "gibbsteel/quantity.hpp"

namespace gibbsteel {

struct ShortSoakLimitOptions {
  /// Where a slow cool freezes the exchange of metals between ferrite and cementite;
  /// below A1. When left out 700 C (common practice for low-alloy steel, no source), or
  /// 10 C below A1 where that is lower (own choice), down to 600 C. 600 to 735 C give
  /// 52100 at 845 C 0.59 to 0.65 wt% carbon in the matrix.
  std::optional<Temperature> annealed_at = std::nullopt;
  SharedParameters parameters;  ///< those of the state; default_parameters() when null
  SoakOptions annealing;        ///< of the soak at annealed_at
};

/// The limit at the temperature of `state`. Its state has status `short_soak_limit`,
/// warning 349 and the carbon activity; `bands` run from this limit to the long-hold
/// limit.
/// @param state  long-hold limit; volumes at room temperature, austenite as matrix.
///               Phases that it suppressed are suppressed when annealed as well
/// @throws InputError gibbsteel.input.260 (state not usable, a mass balance, or without
///         a single matrix phase), .205 (no M3C in the parameter set), .266 (another
///         parameter set, or volumes not at room temperature), .265 (no volume data),
///         .284 (matrix not austenite, or so poor in carbon by the limit that it would
///         hold ferrite; partly molten; annealed condition not usable, above A1,
///         outside the validity of the file, without cementite, or with more than a
///         tenth of the carbon in other carbide)
ShortSoak short_soak_limit(const State& state,
                           const ShortSoakLimitOptions& options = {});

namespace quantities {

/// An element in the matrix by the short-soak limit [wt%], of a long hold or of the
/// limit itself: what searches for temperatures, matches and comparisons can be about.
/// NaN where there is no such limit (gibbsteel.input.260 and .284), or one of another
/// annealing. Slopes, parameter sets and name as those of timed_soak_matrix().
/// @throws InputError by the first state: .266 (another parameter set)
Quantity short_soak_matrix(const std::string& element,
                           const ShortSoakLimitOptions& options = {});

}  // namespace quantities

}  // namespace gibbsteel
