#include "gibbsteel/assemblage.hpp"

#include <algorithm>
#include <cmath>

#include "internal/number_format.hpp"
#include "internal/occurrence_names.hpp"
#include "internal/state_totals.hpp"

namespace gibbsteel {
namespace {

void fill_site_fractions(const PhaseModel& model, const std::vector<double>& y,
                         std::vector<SublatticeFractions>& out) {
  const auto& all = model.constituents();
  out.reserve(all.back().sublattice + 1);
  for (std::size_t begin = 0, end = 0; begin < all.size(); begin = end) {
    while (end < all.size() && all[end].sublattice == all[begin].sublattice) ++end;
    out.push_back({model.sites(begin), {}});
    out.back().fractions.reserve(end - begin);
    for (std::size_t i = begin; i < end; ++i)
      out.back().fractions.append(all[i].name, y[i]);
  }
}

void fill_composition(const PhaseSystem& system, const PhasePoint& point,
                      Occurrence& occurrence) {
  const auto& elements = system.elements();
  const PhaseModel& model = system.phases()[point.phase];
  const auto& all = model.constituents();
  std::vector<double> moles(elements.size(), 0.0);
  double atoms = 0.0, mass = 0.0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].element < 0) continue;
    moles[static_cast<std::size_t>(all[i].element)] += model.sites(i) * point.y[i];
  }
  std::vector<double> grams(moles);
  for (std::size_t e = 0; e < moles.size(); ++e) {
    grams[e] *= system.parameters().find_element(elements[e])->molar_mass;
    atoms += moles[e];
    mass += grams[e];
  }
  occurrence.atom_fraction.reserve(elements.size());
  occurrence.weight_percent.reserve(elements.size());
  for (std::size_t e = 0; e < moles.size(); ++e) {
    occurrence.atom_fraction.append(elements[e], moles[e] / atoms);
    occurrence.weight_percent.append(elements[e], 100.0 * grams[e] / mass);
  }
  occurrence.molar_mass = mass / atoms;
  occurrence.mole_percent = point.amount * atoms;  // turned into percent later
}

Occurrence occurrence_of(const PhaseSystem& system, const PhasePoint& point,
                         VolumeBasis basis, Temperature t) {
  const PhaseModel& model = system.phases()[point.phase];
  const Phase& phase = system.definition(point.phase);
  Occurrence o;
  o.phase = phase.name;
  o.kind = kind_of(phase, model, point.y);
  o.role = o.kind == phase.name ? phase.role : phase.second_occurrence->role;
  fill_composition(system, point, o);
  fill_site_fractions(model, point.y, o.site_fractions);
  if (const auto volume = formula_volume(phase, model, point.y, basis, t)) {
    o.molar_volume = *volume * point.amount / o.mole_percent;
    o.density = o.molar_mass / o.molar_volume;
  }
  return o;
}

}  // namespace

std::string Occurrence::brief() const {
  return name + ": " + internal::fixed_or(volume_percent, 2, "n/a") + " vol%, " +
         internal::fixed(mass_percent, 2) + " wt% of the steel";
}

const std::string& kind_of(const Phase& phase, const PhaseModel& model,
                           std::span<const double> y) {
  const auto& second = phase.second_occurrence;
  if (!second) return phase.name;
  const auto& all = model.constituents();
  const auto& counted = second->constituents;
  double sum = 0.0;
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].sublattice == second->sublattice &&
        std::find(counted.begin(), counted.end(), all[i].name) != counted.end())
      sum += y[i];
  return sum > second->site_fraction_above ? second->name : phase.name;
}

std::vector<Occurrence> occurrences(const PhaseSystem& system,
                                    const Equilibrium& result, VolumeBasis basis) {
  std::vector<Occurrence> all;
  all.reserve(result.present.size());
  for (const PhasePoint& point : result.present)
    all.push_back(occurrence_of(system, point, basis, result.temperature));
  internal::fill_percents(all);
  internal::sort_by_size(all);
  internal::name_occurrences(all);
  return all;
}

NamedValues driving_forces(const PhaseSystem& system, const Equilibrium& result) {
  const auto kind = [&](const PhasePoint& point) -> const std::string& {
    return kind_of(system.definition(point.phase), system.phases()[point.phase],
                   point.y);
  };
  NamedValues forces;
  forces.reserve(result.present.size() + result.absent.size());
  for (const PhasePoint& point : result.present) forces.set(kind(point), 0.0);
  for (const PhasePoint& point : result.absent) {
    // Within the tolerance of the certificate an absent minimum may lie below the
    // plane.
    const double force = std::min(point.driving_force, 0.0);
    const std::string& name = kind(point);
    if (!forces.contains(name) || force > forces[name]) forces.set(name, force);
  }
  return forces;
}

}  // namespace gibbsteel
