#pragma once
/// Short ways to set up a minimization in tests.

#include <string>
#include <utility>
#include <vector>

#include "gibbsteel/minimizer.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::testing {

using Composition = std::vector<std::pair<std::string, double>>;

/// All phases of the shipped file but graphite.
inline std::vector<std::string> steel_phases() {
  std::vector<std::string> names;
  for (const Phase& phase : default_parameters()->phases)
    if (phase.name != "graphite") names.push_back(phase.name);
  return names;
}

struct Solved {
  PhaseSystem system;
  std::vector<double> overall;
  Equilibrium result;

  /// Sets of this phase model that are present.
  std::vector<PhasePoint> of(const std::string& phase) const {
    std::vector<PhasePoint> found;
    for (const auto& point : result.present)
      if (system.phases()[point.phase].name() == phase) found.push_back(point);
    return found;
  }
  /// Site fraction in a set.
  double site_fraction(const PhasePoint& point, const std::string& name) const {
    const auto& all = system.phases()[point.phase].constituents();
    for (std::size_t i = 0; i < all.size(); ++i)
      if (all[i].name == name) return point.y[i];
    return 0.0;
  }
};

inline Solved solve_moles(const Composition& moles, Temperature t,
                          const std::vector<std::string>& phases = steel_phases(),
                          const SolveOptions& options = {},
                          SharedParameters set = default_parameters()) {
  std::vector<std::string> elements;
  std::vector<double> x;
  double sum = 0.0;
  for (const auto& [symbol, amount] : moles) {
    elements.push_back(symbol);
    x.push_back(amount);
    sum += amount;
  }
  for (double& value : x) value /= sum;
  PhaseSystem system(std::move(set), elements, phases);
  auto result = minimize(system, t, x, options);
  return {std::move(system), std::move(x), std::move(result)};
}

/// Weight percent, balance Fe.
inline Solved solve_weight(const Composition& weight_percent, Temperature t,
                           const std::vector<std::string>& phases = steel_phases(),
                           const SolveOptions& options = {}) {
  double iron = 100.0;
  Composition moles{{"Fe", 0.0}};
  for (const auto& [symbol, percent] : weight_percent) {
    iron -= percent;
    moles.emplace_back(
        symbol, percent / default_parameters()->find_element(symbol)->molar_mass);
  }
  moles[0].second = iron / default_parameters()->find_element("Fe")->molar_mass;
  return solve_moles(moles, t, phases, options);
}

/// mu . b [J/mol of atoms]
inline double plane_energy(const Solved& solved) {
  double sum = 0.0;
  for (std::size_t e = 0; e < solved.overall.size(); ++e)
    sum += solved.overall[e] * solved.result.chemical_potential[e];
  return sum;
}

}  // namespace gibbsteel::testing
