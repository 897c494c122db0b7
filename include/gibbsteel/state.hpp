#pragma once
/// The outcome of one soak: carbides, matrix, potentials, and how sure.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/assemblage.hpp"
#include "gibbsteel/mill_analysis.hpp"
#include "gibbsteel/warnings.hpp"

namespace gibbsteel {

/// All matrix phases together.
struct Matrix {
  double mass_percent = Occurrence::kUnknown;    ///< of the state
  double volume_percent = Occurrence::kUnknown;  ///< of the state
  NamedValues weight_percent;                    ///< mass-weighted composition
  NamedValues atom_fraction;
  bool operator==(const Matrix&) const = default;
};

/// Of a timed soak; 0 minutes for the short-soak limit.
struct SoakTime {
  double minutes = 0.0;               ///< at temperature
  double particle_micrometres = 0.0;  ///< of annealed cementite; 0 for the limit
  std::optional<Temperature> annealed_at = std::nullopt;  ///< none: not known
  bool operator==(const SoakTime&) const = default;
};

/// Long-hold limit (true equilibrium) of one steel at one temperature. Plain data; when
/// solve_report.usable() is false every number is NaN or empty except the report.
struct State {
  std::string steel;  ///< name of the steel, may be empty
  MillAnalysis analysis;
  Temperature temperature = Temperature::kelvin(0.0);
  VolumeBasis basis = VolumeBasis::room;
  std::vector<Occurrence> occurrences;  ///< largest volume first
  Matrix matrix;
  double carbide_volume_percent = Occurrence::kUnknown;
  double carbide_mass_percent = Occurrence::kUnknown;
  double carbon_activity =
      Occurrence::kUnknown;                    ///< relative to graphite; NaN without C
  double gibbs_energy = Occurrence::kUnknown;  ///< [J/mol of atoms]
  double density = Occurrence::kUnknown;       ///< [g/cm3] on `basis`
  NamedValues chemical_potential;  ///< [J/mol], reference: set.reference_state
  NamedValues driving_force;       ///< by kind [J/mol of atoms], <= 0 when absent
  std::vector<Warning> warnings;
  SolveReport solve_report;
  std::string parameters;  ///< title and edition of the parameter set
  std::string parameters_hash;
  std::vector<std::string> kinds;  ///< all kinds of phase that the parameter set knows
  std::vector<std::string> suppressed;  ///< phase models that were not allowed to form
  std::optional<SoakTime> soak_time;    ///< of a soak of minutes only

  /// True when the calculation converged and was checked. It does not say that the
  /// parameter file is right here: read `warnings`.
  bool usable() const noexcept { return solve_report.usable(); }
  /// Carbides, largest volume first.
  std::vector<Occurrence> carbides() const;
  /// Austenite and ferrite (and hexagonal matrix), largest first.
  std::vector<Occurrence> matrix_phases() const;
  /// By name. @throws InputError gibbsteel.input.209 naming what is present
  const Occurrence& at(std::string_view name) const;
  /// Volume percent of all occurrences of a kind; 0 when absent, NaN when not usable or
  /// when a phase has no volume data.
  /// @throws InputError gibbsteel.input.205 (the parameter set has no such kind)
  double volume_percent_of(std::string_view kind) const;
  /// Where the atoms of an element are, in percent of that element in the state (sum
  /// 100): "matrix" (all matrix phases together) first, then every other kind present,
  /// largest volume first. Empty when not usable.
  /// @throws InputError gibbsteel.input.299 (the state holds none of that element)
  NamedValues element_shares(const std::string& element) const;

  std::string brief() const;  ///< one line
  std::string full() const;   ///< table with units, warnings and cautions
};

}  // namespace gibbsteel
