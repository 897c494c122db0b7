/// What a soak is made of, in the same nine-element high-speed steel: energies with
/// gradient and Hessian of all phases, the temperature functions before them, and the
/// Newton refinement after them. Other times are stated as multiples of the first and
/// the last one.

#include <benchmark/benchmark.h>

#include <vector>

#include "high_speed_steel.hpp"
#include "minimizer/two_level_newton.hpp"

namespace {

using namespace gibbsteel;

/// Compiled phases, all of the shipped file, and the stable ones 1 K higher.
struct Fixture {
  Steel steel = benchmarks::high_speed_steel();
  Temperature temperature = Temperature::celsius(1150.0);
  PhaseSystem system{steel.parameters(), steel.elements(), benchmarks::all_phases()};
  Equilibrium nearby =
      minimize(system, Temperature::kelvin(temperature.in_kelvin() + 1.0),
               steel.mole_fractions());

  internal::Conditions conditions() const {
    return internal::conditions_of(system, temperature, steel.mole_fractions());
  }
  std::vector<internal::PhaseSet> sets() const {
    std::vector<internal::PhaseSet> found;
    for (const PhasePoint& point : nearby.present) {
      internal::PhaseSet set;
      set.phase = point.phase;
      set.amount = point.amount;
      set.y = point.y;
      found.push_back(std::move(set));
    }
    return found;
  }
};

const Fixture& fixture() {
  static const Fixture made;
  return made;
}

/// Every constituent with the same share of its sublattice.
std::vector<double> even_fractions(const internal::CompiledPhase& phase) {
  std::vector<double> y(phase.size());
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s)
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
      y[i] = 1.0 / static_cast<double>(phase.first[s + 1] - phase.first[s]);
  return y;
}

/// One evaluation of every phase, its coefficients at the temperature known.
void evaluate_all_phases(benchmark::State& run) {
  const auto conditions = fixture().conditions();
  std::vector<std::vector<double>> y;
  for (const auto& candidate : conditions.phases)
    y.push_back(even_fractions(*candidate.phase));
  std::vector<double> gradient(internal::kMaxConstituents);
  std::vector<double> hessian(gradient.size() * gradient.size());
  for (auto _ : run) {
    double sum = 0.0;
    for (std::size_t f = 0; f < y.size(); ++f)
      sum +=
          internal::gibbs_energy(*conditions.phases[f].phase, conditions.phases[f].at,
                                 y[f].data(), gradient.data(), hessian.data());
    benchmark::DoNotOptimize(sum);
    benchmark::ClobberMemory();
  }
  run.counters["phases"] = static_cast<double>(y.size());
}
BENCHMARK(evaluate_all_phases)->Unit(benchmark::kMicrosecond);

/// Coefficients of all phases at a new temperature, memory for them included.
void temperature_functions(benchmark::State& run) {
  for (auto _ : run) benchmark::DoNotOptimize(fixture().conditions().rt);
}
BENCHMARK(temperature_functions)->Unit(benchmark::kMicrosecond);

/// From the stable phases 1 K higher to full precision. The time of one Newton step,
/// setting up shared between all, is that of `steps_per_second`.
void refine_nearby(benchmark::State& run) {
  auto conditions = fixture().conditions();
  const auto start = fixture().sets();
  int steps = 0;
  for (auto _ : run) {
    auto sets = start;
    std::vector<double> mu = fixture().nearby.chemical_potential;
    const auto refined = internal::refine(conditions, 50, 1e-11, sets, mu);
    if (!refined.converged) run.SkipWithError("not converged");
    steps = refined.steps;
  }
  run.counters["steps"] = steps;
  run.counters["sets"] = static_cast<double>(start.size());
  run.counters["steps_per_second"] =
      benchmark::Counter(steps, benchmark::Counter::kIsIterationInvariantRate);
}
BENCHMARK(refine_nearby)->Unit(benchmark::kMicrosecond);

/// A table of soaks, each from nothing.
void sweep(benchmark::State& run) {
  std::vector<Temperature> temperatures;
  for (int i = 0; i < 20; ++i)
    temperatures.push_back(Temperature::celsius(900.0 + 15.0 * i));
  for (auto _ : run)
    if (fixture().steel.sweep(temperatures).failures() > 0)
      run.SkipWithError("a soak is not usable");
  run.counters["soaks_per_second"] =
      benchmark::Counter(static_cast<double>(temperatures.size()),
                         benchmark::Counter::kIsIterationInvariantRate);
}
BENCHMARK(sweep)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
