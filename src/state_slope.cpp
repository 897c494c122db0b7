#include "gibbsteel/state_slope.hpp"

namespace gibbsteel {
namespace {

NamedValues moved(const NamedValues& values, const NamedValues& slopes, double step) {
  NamedValues result;
  for (const auto& [name, value] : values)
    result.set(name, value + step * slopes[name]);
  return result;
}

Occurrence moved(Occurrence o, const Occurrence& slope, double step) {
  for (double Occurrence::*number :
       {&Occurrence::mole_percent, &Occurrence::mass_percent,
        &Occurrence::volume_percent, &Occurrence::molar_mass, &Occurrence::molar_volume,
        &Occurrence::density})
    o.*number += step * slope.*number;
  o.weight_percent = moved(o.weight_percent, slope.weight_percent, step);
  o.atom_fraction = moved(o.atom_fraction, slope.atom_fraction, step);
  for (std::size_t s = 0; s < o.site_fractions.size(); ++s)
    o.site_fractions[s].fractions =
        moved(o.site_fractions[s].fractions, slope.site_fractions[s].fractions, step);
  return o;
}

}  // namespace

State shifted(const State& state, const StateSlope& slope, double step) {
  State result = state;
  for (std::size_t i = 0; i < state.occurrences.size(); ++i)
    result.occurrences[i] = moved(state.occurrences[i], slope.occurrences[i], step);
  result.matrix.mass_percent += step * slope.matrix.mass_percent;
  result.matrix.volume_percent += step * slope.matrix.volume_percent;
  result.matrix.weight_percent =
      moved(state.matrix.weight_percent, slope.matrix.weight_percent, step);
  result.matrix.atom_fraction =
      moved(state.matrix.atom_fraction, slope.matrix.atom_fraction, step);
  result.carbide_volume_percent += step * slope.carbide_volume_percent;
  result.carbide_mass_percent += step * slope.carbide_mass_percent;
  result.carbon_activity += step * slope.carbon_activity;
  result.gibbs_energy += step * slope.gibbs_energy;
  result.density += step * slope.density;
  result.chemical_potential =
      moved(state.chemical_potential, slope.chemical_potential, step);
  result.driving_force = moved(state.driving_force, slope.driving_force, step);
  if (slope.input.kind == Input::Kind::temperature)
    result.temperature = Temperature::kelvin(state.temperature.in_kelvin() + step);
  return result;
}

}  // namespace gibbsteel
