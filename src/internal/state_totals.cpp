#include "internal/state_totals.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {
namespace {

template <class Action>
void for_each(const State& state, Role role, const Action& action) {
  for (const Occurrence& o : state.occurrences)
    if (o.role == role) action(o);
}

/// Adds number * factor / divisor of every number of a list, name by name.
void add(const NamedValues& numbers, double factor, double divisor, NamedValues& sums) {
  if (sums.empty()) {
    sums.reserve(numbers.size());
    for (const auto& [name, number] : numbers)
      sums.append(name, 0.0 + number * factor / divisor);
    return;
  }
  for (const auto& [name, number] : numbers)
    sums.set(name, sums[name] + number * factor / divisor);
}

/// Matrix phases together: percents add up, compositions are weighted by mass and
/// atoms.
Matrix matrix_of(const State& state) {
  Matrix matrix;
  matrix.mass_percent = matrix.volume_percent = 0.0;
  double moles = 0.0;
  for_each(state, Role::matrix, [&](const Occurrence& o) {
    matrix.mass_percent += o.mass_percent;
    matrix.volume_percent += o.volume_percent;
    moles += o.mole_percent;
  });
  for_each(state, Role::matrix, [&](const Occurrence& o) {
    add(o.weight_percent, o.mass_percent, matrix.mass_percent, matrix.weight_percent);
    add(o.atom_fraction, o.mole_percent, moles, matrix.atom_fraction);
  });
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
  for_each(state, Role::carbide, [&](const Occurrence& o) {
    state.carbide_volume_percent += o.volume_percent;
    state.carbide_mass_percent += o.mass_percent;
  });
  double mass = 0.0, volume = 0.0;
  for (const Occurrence& o : state.occurrences) {
    mass += o.mole_percent * o.molar_mass;
    volume += o.mole_percent * o.molar_volume;
  }
  state.density = mass / volume;
}

}  // namespace gibbsteel::internal
