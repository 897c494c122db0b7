#pragma once
/// Every number of a state, or of its slope, as a flat list with names, so that tests
/// miss none.

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "gibbsteel/state_slope.hpp"

namespace gibbsteel::testing {

using Numbers = std::vector<std::pair<std::string, double>>;

inline void add_list(const std::string& prefix, const NamedValues& values,
                     Numbers& out) {
  for (const auto& [name, value] : values) out.emplace_back(prefix + name, value);
}

inline void add_occurrence(const Occurrence& o, Numbers& out) {
  const std::string at = o.name + " ";
  out.emplace_back(at + "mole percent", o.mole_percent);
  out.emplace_back(at + "mass percent", o.mass_percent);
  out.emplace_back(at + "volume percent", o.volume_percent);
  out.emplace_back(at + "molar mass", o.molar_mass);
  out.emplace_back(at + "molar volume", o.molar_volume);
  out.emplace_back(at + "density", o.density);
  add_list(at + "weight percent ", o.weight_percent, out);
  add_list(at + "atom fraction ", o.atom_fraction, out);
  for (std::size_t s = 0; s < o.site_fractions.size(); ++s)
    add_list(at + "site fraction " + std::to_string(s + 1) + " ",
             o.site_fractions[s].fractions, out);
}

/// @param s  a State or a StateSlope: the same numbers in the same order
template <class StateOrSlope>
Numbers numbers_of(const StateOrSlope& s) {
  Numbers out;
  for (const Occurrence& o : s.occurrences) add_occurrence(o, out);
  out.emplace_back("matrix mass percent", s.matrix.mass_percent);
  out.emplace_back("matrix volume percent", s.matrix.volume_percent);
  add_list("matrix weight percent ", s.matrix.weight_percent, out);
  add_list("matrix atom fraction ", s.matrix.atom_fraction, out);
  out.emplace_back("carbide volume percent", s.carbide_volume_percent);
  out.emplace_back("carbide mass percent", s.carbide_mass_percent);
  out.emplace_back("carbon activity", s.carbon_activity);
  out.emplace_back("gibbs energy", s.gibbs_energy);
  out.emplace_back("density", s.density);
  add_list("chemical potential ", s.chemical_potential, out);
  // The nearest phase comes first: the order may differ between neighbouring states.
  const auto forces = static_cast<std::ptrdiff_t>(out.size());
  add_list("driving force ", s.driving_force, out);
  std::sort(out.begin() + forces, out.end(),
            [](const auto& a, const auto& b) { return a.first < b.first; });
  return out;
}

}  // namespace gibbsteel::testing
