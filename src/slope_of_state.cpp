#include "internal/slope_of_state.hpp"

#include <algorithm>
#include <cmath>

#include "internal/formula_volume.hpp"

namespace gibbsteel::internal {
namespace {

using Duals = std::vector<Dual>;

/// One present set with slopes, everything per mole of atoms.
struct Region {
  const Occurrence* occurrence = nullptr;
  Duals y;
  Duals atom_fraction, weight_fraction;  ///< as PhaseSystem::elements()
  Dual amount;                           ///< moles of atoms
  Dual molar_mass, molar_volume;
  Dual mole_percent, mass_percent, volume_percent;
};

/// The occurrence that was made of a set: site fractions are copied to the last bit.
const Occurrence* occurrence_of(const State& state, const PhaseSystem& system,
                                const PhasePoint& point) {
  const auto& name = system.definition(point.phase).name;
  const auto same = [&](const Occurrence& o) {
    if (o.phase != name) return false;
    std::size_t i = 0;
    for (const auto& sublattice : o.site_fractions)
      for (const auto& [constituent, fraction] : sublattice.fractions)
        if (fraction != point.y[i++]) return false;
    return true;
  };
  const auto found =
      std::find_if(state.occurrences.begin(), state.occurrences.end(), same);
  return found == state.occurrences.end() ? nullptr : &*found;
}

void fill_composition(const PhaseSystem& system, const PhaseModel& model, Dual formulas,
                      Region& region) {
  const auto& elements = system.elements();
  Duals moles(elements.size()), grams(elements.size());
  for (std::size_t i = 0; i < region.y.size(); ++i) {
    const int element = model.constituents()[i].element;
    if (element >= 0)
      moles[static_cast<std::size_t>(element)] += model.sites(i) * region.y[i];
  }
  Dual atoms, mass;
  for (std::size_t e = 0; e < elements.size(); ++e) {
    grams[e] = system.parameters().find_element(elements[e])->molar_mass * moles[e];
    atoms += moles[e];
    mass += grams[e];
  }
  for (std::size_t e = 0; e < elements.size(); ++e) {
    region.atom_fraction.push_back(moles[e] / atoms);
    region.weight_fraction.push_back(grams[e] / mass);
  }
  region.amount = formulas * atoms;
  region.molar_mass = mass / atoms;
}

Dual volume_of(const PhaseSystem& system, const PhasePoint& point, const Duals& y,
               VolumeBasis basis, Dual kelvin) {
  const auto& data = volume_data(system.definition(point.phase), basis);
  if (!data) return {Occurrence::kUnknown, Occurrence::kUnknown};
  return volume_at_reference(*data, system.phases()[point.phase], y) *
         expansion(*data, basis, kelvin);
}

std::vector<Region> regions_of(const PhaseSystem& system, const Equilibrium& result,
                               const State& state, const EquilibriumSlope& slope,
                               const DirectSlopes& direct) {
  std::vector<Region> regions;
  const Dual kelvin(result.temperature.in_kelvin(), direct.kelvin);
  for (std::size_t f = 0; f < result.present.size(); ++f) {
    const PhasePoint& point = result.present[f];
    Region& region = regions.emplace_back();
    region.occurrence = occurrence_of(state, system, point);
    for (std::size_t i = 0; i < point.y.size(); ++i)
      region.y.emplace_back(point.y[i], slope.present[f].y[i]);
    const Dual formulas(point.amount, slope.present[f].amount);
    fill_composition(system, system.phases()[point.phase], formulas, region);
    Dual volume = volume_of(system, point, region.y, state.basis, kelvin);
    if (!direct.volume.empty()) volume.slope += direct.volume[f];
    region.molar_volume = volume * formulas / region.amount;
  }
  // In the order of the state.
  std::sort(regions.begin(), regions.end(), [](const Region& a, const Region& b) {
    return a.occurrence < b.occurrence;
  });
  return regions;
}

void fill_percents(std::vector<Region>& regions) {
  Dual atoms, mass, volume;
  for (const Region& r : regions) {
    atoms += r.amount;
    mass += r.amount * r.molar_mass;
    volume += r.amount * r.molar_volume;
  }
  for (Region& r : regions) {
    r.mole_percent = 100.0 * r.amount / atoms;
    r.mass_percent = 100.0 * r.amount * r.molar_mass / mass;
    r.volume_percent = 100.0 * r.amount * r.molar_volume / volume;
  }
}

void set_slopes(const PhaseSystem& system, const Duals& values, double factor,
                NamedValues& out) {
  for (std::size_t e = 0; e < values.size(); ++e)
    out.set(system.elements()[e], factor * values[e].slope);
}

Occurrence occurrence_slope(const PhaseSystem& system, const Region& r) {
  Occurrence o;
  o.name = r.occurrence->name;
  o.kind = r.occurrence->kind;
  o.phase = r.occurrence->phase;
  o.role = r.occurrence->role;
  o.mole_percent = r.mole_percent.slope;
  o.mass_percent = r.mass_percent.slope;
  o.volume_percent = r.volume_percent.slope;
  o.molar_mass = r.molar_mass.slope;
  o.molar_volume = r.molar_volume.slope;
  o.density = (r.molar_mass / r.molar_volume).slope;
  set_slopes(system, r.weight_fraction, 100.0, o.weight_percent);
  set_slopes(system, r.atom_fraction, 1.0, o.atom_fraction);
  std::size_t i = 0;
  for (const auto& sublattice : r.occurrence->site_fractions) {
    auto& slopes = o.site_fractions.emplace_back();
    slopes.sites = sublattice.sites;
    for (const auto& [constituent, fraction] : sublattice.fractions)
      slopes.fractions.set(constituent, r.y[i++].slope);
  }
  return o;
}

Matrix matrix_slope(const PhaseSystem& system, const std::vector<Region>& regions) {
  const std::size_t elements = system.elements().size();
  Duals grams(elements), moles(elements);
  Dual mass, volume, amount;
  bool any = false;
  for (const Region& r : regions) {
    if (r.occurrence->role != Role::matrix) continue;
    any = true;
    mass += r.mass_percent;
    volume += r.volume_percent;
    amount += r.mole_percent;
    for (std::size_t e = 0; e < elements; ++e) {
      grams[e] += r.weight_fraction[e] * r.mass_percent;
      moles[e] += r.atom_fraction[e] * r.mole_percent;
    }
  }
  Matrix matrix;
  matrix.mass_percent = mass.slope;
  matrix.volume_percent = volume.slope;
  for (std::size_t e = 0; any && e < elements; ++e) {
    grams[e] = grams[e] / mass;
    moles[e] = moles[e] / amount;
  }
  if (!any) return matrix;
  set_slopes(system, grams, 100.0, matrix.weight_percent);
  set_slopes(system, moles, 1.0, matrix.atom_fraction);
  return matrix;
}

void fill_totals(const std::vector<Region>& regions, StateSlope& out) {
  Dual mass, volume;
  out.carbide_volume_percent = out.carbide_mass_percent = 0.0;
  for (const Region& r : regions) {
    mass += r.amount * r.molar_mass;
    volume += r.amount * r.molar_volume;
    if (r.occurrence->role != Role::carbide) continue;
    out.carbide_volume_percent += r.volume_percent.slope;
    out.carbide_mass_percent += r.mass_percent.slope;
  }
  out.density = (mass / volume).slope;
}

/// Slope of a = exp((mu - graphite) / (R T)).
double carbon_activity_slope(const PhaseSystem& system, const State& state,
                             const EquilibriumSlope& slope,
                             const DirectSlopes& direct) {
  const auto& elements = system.elements();
  const auto at = std::find(elements.begin(), elements.end(), "C");
  if (at == elements.end()) return Occurrence::kUnknown;
  const double dmu =
      slope.chemical_potential[static_cast<std::size_t>(at - elements.begin())];
  const double kelvin = state.temperature.in_kelvin();
  const double activity = state.carbon_activity;
  return activity * ((dmu - direct.graphite) / (kGasConstant * kelvin) -
                     std::log(activity) * direct.kelvin / kelvin);
}

/// As driving_forces(): the nearest minimum of each kind.
NamedValues driving_force_slopes(const PhaseSystem& system, const Equilibrium& result,
                                 const EquilibriumSlope& slope) {
  const auto kind = [&](const PhasePoint& point) -> const std::string& {
    return kind_of(system.definition(point.phase), system.phases()[point.phase],
                   point.y);
  };
  NamedValues slopes, nearest;
  for (const PhasePoint& point : result.present) {
    slopes.set(kind(point), 0.0);
    nearest.set(kind(point), 0.0);
  }
  for (std::size_t k = 0; k < result.absent.size(); ++k) {
    const double force = std::min(result.absent[k].driving_force, 0.0);
    const std::string& name = kind(result.absent[k]);
    if (nearest.contains(name) && !(force > nearest[name])) continue;
    nearest.set(name, force);
    slopes.set(name, slope.absent_driving_force[k]);
  }
  return slopes;
}

}  // namespace

StateSlope slope_of_state(const PhaseSystem& system, const Equilibrium& result,
                          const State& state, const EquilibriumSlope& slope,
                          const DirectSlopes& direct) {
  StateSlope out;
  auto regions = regions_of(system, result, state, slope, direct);
  fill_percents(regions);
  for (const Region& region : regions)
    out.occurrences.push_back(occurrence_slope(system, region));
  out.matrix = matrix_slope(system, regions);
  fill_totals(regions, out);
  out.carbon_activity = carbon_activity_slope(system, state, slope, direct);
  out.gibbs_energy = slope.gibbs_energy;
  for (std::size_t e = 0; e < system.elements().size(); ++e)
    out.chemical_potential.set(system.elements()[e], slope.chemical_potential[e]);
  out.driving_force = driving_force_slopes(system, result, slope);
  return out;
}

}  // namespace gibbsteel::internal
