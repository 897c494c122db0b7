#include "internal/state_totals.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {
namespace {

/// Matrix phases together: percents add up, compositions are weighted by mass and
/// atoms.
Matrix matrix_of(const State& state) {
  Matrix matrix;
  matrix.mass_percent = matrix.volume_percent = 0.0;
  double moles = 0.0;
  const auto phases = state.matrix_phases();
  for (const Occurrence& o : phases) {
    matrix.mass_percent += o.mass_percent;
    matrix.volume_percent += o.volume_percent;
    moles += o.mole_percent;
  }
  for (const Occurrence& o : phases)
    for (const auto& [symbol, percent] : o.weight_percent) {
      const double mass = percent * o.mass_percent / matrix.mass_percent;
      const double fraction = o.atom_fraction[symbol] * o.mole_percent / moles;
      matrix.weight_percent.set(symbol, matrix.weight_percent[symbol] + mass);
      matrix.atom_fraction.set(symbol, matrix.atom_fraction[symbol] + fraction);
    }
  return matrix;
}

}  // namespace

void fill_percents(std::vector<Occurrence>& all) {
  double atoms = 0.0, mass = 0.0, volume = 0.0;
  for (const Occurrence& o : all) {
    atoms += o.mole_percent;
    mass += o.mole_percent * o.molar_mass;
    volume += o.mole_percent * o.molar_volume;  // NaN when one is unknown
  }
  for (Occurrence& o : all) {
    o.mass_percent = 100.0 * o.mole_percent * o.molar_mass / mass;
    o.volume_percent = 100.0 * o.mole_percent * o.molar_volume / volume;
    o.mole_percent *= 100.0 / atoms;
  }
}

void sort_by_size(std::vector<Occurrence>& all) {
  std::stable_sort(
      all.begin(), all.end(), [](const Occurrence& a, const Occurrence& b) {
        return std::isnan(a.volume_percent) ? a.mass_percent > b.mass_percent
                                            : a.volume_percent > b.volume_percent;
      });
}

void fill_totals(State& state) {
  state.matrix = matrix_of(state);
  state.carbide_volume_percent = state.carbide_mass_percent = 0.0;
  for (const Occurrence& o : state.carbides()) {
    state.carbide_volume_percent += o.volume_percent;
    state.carbide_mass_percent += o.mass_percent;
  }
  double mass = 0.0, volume = 0.0;
  for (const Occurrence& o : state.occurrences) {
    mass += o.mole_percent * o.molar_mass;
    volume += o.mole_percent * o.molar_volume;
  }
  state.density = mass / volume;
}

}  // namespace gibbsteel::internal
