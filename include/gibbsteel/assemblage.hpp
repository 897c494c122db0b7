#pragma once
/// From an equilibrium to what a metallurgist reads: occurrences with their names,
/// amounts by mole, mass and volume, and compositions.

#include <limits>
#include <string>
#include <vector>

#include "gibbsteel/minimizer.hpp"
#include "gibbsteel/named_values.hpp"
#include "gibbsteel/volumes.hpp"

namespace gibbsteel {

/// Site fractions of one sublattice, by constituent ("vacancy" included).
struct SublatticeFractions {
  double sites = 0.0;  ///< per formula unit
  NamedValues fractions;
  bool operator==(const SublatticeFractions&) const = default;
};

/// One phase region of a state: all its particles together.
struct Occurrence {
  static constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

  std::string name;   ///< "MC", "ferrite", "ferrite, chromium-rich": unique in a state
  std::string kind;   ///< name without the words that tell two of a kind apart
  std::string phase;  ///< phase model in the parameter file ("austenite" for MC)
  Role role = Role::other;
  double mole_percent = 0.0;         ///< of atoms in the state
  double mass_percent = 0.0;         ///< of the state
  double volume_percent = kUnknown;  ///< of the state; NaN without volume data
  double molar_mass = 0.0;           ///< [g per mol of atoms]
  double molar_volume = kUnknown;    ///< [cm3 per mol of atoms]
  double density = kUnknown;         ///< [g/cm3]
  NamedValues weight_percent;        ///< of this occurrence; in the order of the file
  NamedValues atom_fraction;         ///< of this occurrence
  std::vector<SublatticeFractions> site_fractions;

  std::string brief() const;  ///< one line
  bool operator==(const Occurrence&) const = default;
};

/// All occurrences of an equilibrium, largest volume first (mass where volume is
/// unknown). Two of one kind are told apart by the metal in which the smaller one is
/// richer.
std::vector<Occurrence> occurrences(const PhaseSystem& system,
                                    const Equilibrium& result, VolumeBasis basis);

/// Name under which a composition of a phase is reported: the second occurrence's name
/// when its site fraction is above the bound, the phase's own otherwise.
const std::string& kind_of(const Phase& phase, const PhaseModel& model,
                           std::span<const double> y);

/// Driving force by kind for every kind of which a local minimum exists
/// [J/mol of atoms]: 0 when present, negative when absent.
NamedValues driving_forces(const PhaseSystem& system, const Equilibrium& result);

}  // namespace gibbsteel
