#include "long/checks.hpp"

#include <algorithm>
#include <cmath>

#include "minimizer/phase_minimum.hpp"

namespace gibbsteel::long_run {
namespace {

using namespace internal;

std::vector<double> random_start(const CompiledPhase& phase, std::mt19937_64& random) {
  std::gamma_distribution<double> gamma(0.3, 1.0);
  std::vector<double> y(phase.size());
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    double sum = 0.0;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
      sum += y[i] = gamma(random) + 1e-6;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) y[i] /= sum;
  }
  return y;
}

}  // namespace

double balance_error(const PhaseSystem& system, const Equilibrium& result,
                     std::span<const double> x) {
  std::vector<double> held(x.size(), 0.0);
  for (const PhasePoint& point : result.present)
    add_atoms(system.phases()[point.phase].compiled(), point.y.data(), point.amount,
              held.data());
  double worst = 0.0;
  for (std::size_t e = 0; e < x.size(); ++e)
    worst = std::max(worst, std::abs(held[e] / x[e] - 1.0));
  return worst;
}

double plane(const Equilibrium& result, std::span<const double> x) {
  double sum = 0.0;
  for (std::size_t e = 0; e < x.size(); ++e) sum += result.chemical_potential[e] * x[e];
  return sum;
}

double energy_carried_over(const PhaseSystem& system, const Equilibrium& result,
                           Temperature t) {
  double sum = 0.0;
  for (const PhasePoint& point : result.present) {
    const PhaseModel& model = system.phases()[point.phase];
    std::vector<TemperatureValue> values(model.curves().size());
    const TemperaturePowers powers(t.in_kelvin());
    model.curves().evaluate(powers, values);
    PhaseCoefficients at;
    at.refresh(model.compiled(), powers, values);
    sum += point.amount * gibbs_energy(model.compiled(), at, point.y.data());
  }
  return sum;
}

double deep_search(const PhaseSystem& system, const Equilibrium& result,
                   std::span<const double> x, int starts_per_phase,
                   std::mt19937_64& random) {
  Conditions conditions = conditions_of(system, result.temperature, x);
  DescentMemory memory;
  double lowest = 0.0;
  for (const Candidate& candidate : conditions.phases)
    for (int k = 0; k < starts_per_phase; ++k) {
      auto y = random_start(*candidate.phase, random);
      const auto minimum = descend(conditions, candidate, result.chemical_potential,
                                   {60, 1e-8, false}, memory, y.data());
      lowest = std::min(lowest, minimum.d_per_atom());
    }
  return lowest;
}

}  // namespace gibbsteel::long_run
