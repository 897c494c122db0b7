#pragma once
/// A short soak: the carbide is what was seen under the microscope, and the matrix is
/// what it leaves of the steel.
///
///   V = 1 / (sum_k f_k / V_k + (1 - sum_k f_k) / V_m)                         Eq. (B1)
///   x_m = (b - sum_k n_k x_k) / (1 - sum_k n_k),   n_k = f_k V / V_k          Eq. (B2)
///
/// f_k volume fraction of carbide k, V_k its volume and V_m that of the matrix per mole
/// of atoms from the parameter file (Eq. V1), V that of the steel; b, x_k and x_m mole
/// fractions in steel, carbide and matrix, n_k moles of atoms in the carbide per mole
/// of the steel. V_m depends on x_m: both are repeated until they agree. Balance of
/// mass, no source needed.
///
/// A carbide keeps the composition that it has in a long soak at the same temperature,
/// or the one it had in the annealed condition. The truth of a short soak lies between
/// the two; the result gives both.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/steel.hpp"

namespace gibbsteel {

/// Carbide of one kind, counted in polished sections at room temperature.
struct MeasuredCarbide {
  std::string kind;                 ///< "M3C"
  double volume_percent = 0.0;      ///< of the steel, 0 to below 100
  double standard_deviation = 0.0;  ///< of the count [vol%], 0 when not known
  /// Smallest particle that was counted [micrometre], if there was a limit.
  std::optional<double> smallest_counted = std::nullopt;
  bool operator==(const MeasuredCarbide&) const = default;
};

/// Where the composition of a carbide is taken from first; a kind that is absent there
/// is taken from the other one.
enum class CarbideSource { soak, annealed };

/// A phase of the long-hold limit that the measurement does not name.
enum class UnlistedCarbide {
  kept,    ///< at its long-hold volume: the count was about other kinds
  absent,  ///< the count covered every kind
};

struct MeasuredCarbideOptions {
  CarbideSource composition = CarbideSource::soak;
  /// Common practice for annealing tool steels is 700 to 800 C, no source.
  Temperature annealed_at = Temperature::celsius(740.0);
  UnlistedCarbide unlisted = UnlistedCarbide::kept;
  SharedParameters parameters;  ///< those of the state; default_parameters() when null
  SoakOptions annealing;        ///< of the soak at annealed_at
};

/// A carbide as it entered the balance.
struct CarbideInBalance {
  std::string kind;
  double volume_percent = 0.0;      ///< as measured, kept or computed
  double standard_deviation = 0.0;  ///< of the count [vol%]
  double long_hold_volume = 0.0;    ///< in the state that was started from [vol%]
  /// False: kept at the long-hold volume; of a limit or timed soak, computed.
  bool measured = true;
  CarbideSource composition = CarbideSource::soak;  ///< where it was taken from
  NamedValues weight_percent;                       ///< composition used
  /// True when the other source has the kind as well, so that a band exists.
  bool other_source_exists = false;
  bool operator==(const CarbideInBalance&) const = default;
};

/// One element of the matrix and how sure it is [wt%].
struct MatrixBand {
  std::string element;
  double value = 0.0;
  double long_hold = 0.0;           ///< in the state that was started from
  double standard_deviation = 0.0;  ///< from those of the counts, taken as independent
  /// Of measured carbide with the composition of the other source; else, and where
  /// there is none, `value`.
  double other_composition = 0.0;
  /// Of measured carbide the lower and higher of the two compositions, less and plus
  /// two standard deviations; of a short-soak limit from it to the long-hold limit, of
  /// a timed soak from a third of the minutes to three times them (timed_soak.hpp).
  double low = 0.0, high = 0.0;
  bool operator==(const MatrixBand&) const = default;
};

struct ShortSoak {
  /// The state with measured carbide and the matrix it leaves: usable, status
  /// `measured`, warning 345. Potentials, driving forces, activity and energy are empty
  /// or NaN: there is no equilibrium. What is computed: short_soak_limit.hpp,
  /// timed_soak.hpp.
  State state;
  std::vector<MeasuredCarbide> measured;  ///< as entered; empty where it is computed
  std::vector<CarbideInBalance> carbides;
  std::vector<MatrixBand> bands;  ///< elements of the matrix, in the order of the file
  Temperature annealed_at = Temperature::kelvin(0.0);

  /// @throws InputError gibbsteel.input.209 (no such element in the matrix)
  const MatrixBand& band(std::string_view element) const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< tables with the band, warnings and cautions
};

/// The short soak that leaves this carbide, at the temperature of `state`.
/// @param state  long-hold limit; volumes at room temperature, one matrix phase
/// @throws InputError with every problem: gibbsteel.input.260 (state not usable, or no
///         single matrix phase), .262 (a measurement that cannot be), .205 (no such
///         kind), .264 (the kind occurs in neither soak: no composition), .265 (no
///         volume data), .266 (another parameter set, or volumes not at room
///         temperature), .263 (the carbide would hold more of an element than the
///         steel), .210 (annealing temperature)
ShortSoak with_measured_carbide(const State& state,
                                const std::vector<MeasuredCarbide>& measured,
                                const MeasuredCarbideOptions& options = {});

}  // namespace gibbsteel
