#pragma once
/// What cementite of an annealed steel dissolves in so many minutes of soaking.
///
/// First only carbon moves, in seconds, until Eq. (B3) stops it: short_soak_limit.hpp.
/// From then on metals have to diffuse away from the particles. Cementite spheres of
/// one size, with the metals that they took up in annealing, stand each in its share of
/// austenite. At the surface austenite and cementite are in equilibrium, at the carbon
/// activity that rules everywhere:
///
///   D_i = D_0 exp(-Q / RT)                                                    Eq. (B4)
///   3 mu_i(u, a) + mu_C(a) = mu_i3C(y')      for each metal i of cementite    Eq. (B5)
///   -r dr/dt (y_i - u_i) = (D_i / g) (u_i - U_i),
///       g = (1 - 1.8 f^(1/3) + f - 0.2 f^2) / (1 - f)^2                       Eq. (B6)
///   f = min(f_c, f_0 (r / r_0)^3)                                             Eq. (B7)
///
/// u_i share of metal i among the metals of austenite at the surface and U_i on the
/// mean, y_i that of the annealed cementite, y' that of its thin skin, a the carbon
/// activity of the mean, mu [J/mol] chemical potentials, D_i diffusion in austenite
/// [m2/s], r radius, f share of the metal atoms that is in cementite, f_0 when annealed
/// and f_c where Eq. (B3) stops. Eqs. (B5) and (B6) together give r dr/dt and all u_i.
/// g is 1 for a lone sphere; it is the steady field in a shell that nothing leaves. U_i
/// and a follow from balances of mass, Eqs. (B1) and (B2); other carbide keeps the
/// amount that it has when annealed, however long the soak. The time for any share goes
/// with the square of the diameter.
///
/// The lesser share of (B7) is a choice, not a bound. The first stage leaves the metals
/// of what it dissolved around the particle, and until they have spread cementite
/// stands still; by local equilibrium alone it would grow again on them for a while.
/// What is published of soaks of minutes does not show that.
///
/// Sources: local equilibrium at the surface with fast carbon, A. Hultgren, Trans. ASM
/// 39 (1947) 915 and M. Hillert, K. Nilsson, L.-E. Torndahl, J. Iron Steel Inst. 209
/// (1971) 49 (B5); steady field around a sphere, C. Zener, J. Appl. Phys. 20 (1949) 950
/// (B6, lone sphere); its g: own derivation. All from memory. Diffusion coefficients:
/// from memory, source file src/short_soak/austenite_diffusion.cpp.
///
/// How sure: the default diameter, 0.6 micrometre, is about the mean of commercial
/// spheroidized bearing stock (0.4 to 0.8, from memory), the diffusion of chromium an
/// assessed one; measured ones are up to three times faster, so that 1 micrometre with
/// them comes to the same. Which of them was taken was decided with the published
/// carbon of 52100 known, 0.62 +-0.06 wt% after 20 to 40 minutes at 845 C; no number
/// was fitted. Carbon speeds metals up, and grain boundaries do; most coefficients were
/// measured above 950 C. Bands run from a third of the minutes, annealed up to 50 C
/// colder, but not below 600 C, where the file ends, to three times, annealed up to 30
/// C hotter, but not above A1; at least to what the minutes dissolve when the metals
/// that the first stage leaves have spread at once, so that a wait of unknown length
/// does not make them narrow. A form without the first stage was looked at and given
/// up: three oil-hardening steels came out 60 to 120 C high in martensite start. What
/// is published of other temperatures and steels is in `tests/reference` (records with
/// `minutes`).
///
/// Minutes count from when the whole section is at temperature; those near A1, or of a
/// minute or two, are about heating through and ferrite, not about this. Pearlite and
/// hardened stock dissolve sooner than spheroidized. Against the full diffusion field
/// Eq. (B6) leaves up to a tenth more of the cementite in the first minutes and a
/// twentieth less at the end (`tests/unit/shrinking_spheres_test.cpp`). Particles of
/// many sizes dissolve faster at first and slower at last than those of one, and
/// without the kink where the first stage ends. Cementite does not change its metals
/// while it stands: hours end near the long-hold limit, up to 0.01 wt% carbon beyond
/// it, and up to 0.05 to either side where MC, M6C or WC hold carbon when annealed.

#include <vector>

#include "gibbsteel/short_soak_limit.hpp"

namespace gibbsteel {

struct TimedSoakOptions {
  double particle_micrometres = 0.6;  ///< diameter of annealed cementite, 0.05 to 50
  ShortSoakLimitOptions annealed;     ///< the condition before the soak
};

/// The steel after so many minutes at the temperature of `state`. Its state has status
/// `timed_soak`, warning 360 and the carbon activity; `bands` run from a third to three
/// times the minutes.
/// @param state    long-hold limit, as for short_soak_limit()
/// @param minutes  at temperature, above 0 to 100 000
/// @throws InputError gibbsteel.input.287 (minutes or diameter out of range), .284 (as
///         short_soak_limit(); the matrix would still hold ferrite after that time; a
///         metal whose diffusion is not known; no result) and what short_soak_limit()
///         refuses of a state
ShortSoak timed_soak(const State& state, double minutes,
                     const TimedSoakOptions& options = {});

/// The same at several times, in the order given, for less than one by one.
std::vector<ShortSoak> timed_soaks(const State& state,
                                   const std::vector<double>& minutes,
                                   const TimedSoakOptions& options = {});

namespace quantities {

/// An element in the matrix after so many minutes [wt%], of a long hold or of such a
/// timed soak itself: what searches for temperatures, matches and comparisons can be
/// about. NaN where there is no timed soak (gibbsteel.input.260 and .284), as of a soak
/// of other minutes, size or annealing. Slopes are differences of soaks; to numbers of
/// the file NaN but in parameter bands and calibrations, which take the set of each of
/// their steels. The name tells what is not usual.
/// @throws InputError gibbsteel.input.287; by the first state: .266
Quantity timed_soak_matrix(const std::string& element, double minutes,
                           const TimedSoakOptions& options = {});

/// Any quantity of the steel after so many minutes, for instance hardness_hrc(); NaN,
/// slopes and errors as those of timed_soak_matrix().
Quantity after_minutes(const Quantity& quantity, double minutes,
                       const TimedSoakOptions& options = {});

}  // namespace quantities

}  // namespace gibbsteel
