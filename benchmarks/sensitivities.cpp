/// What the slopes of a soak cost beside the soak itself: temperature and all elements
/// of a nine-element high-speed steel, or every number of the parameter file as well.

#include <benchmark/benchmark.h>

#include "high_speed_steel.hpp"

namespace {

using namespace gibbsteel;
using benchmarks::high_speed_steel;

const auto kSoak = Temperature::celsius(1150.0);

void soak_without_slopes(benchmark::State& run) {
  for (auto _ : run) {
    const State state = high_speed_steel().soak(kSoak);
    if (!state.usable()) run.SkipWithError(state.solve_report.brief().c_str());
    benchmark::DoNotOptimize(state.carbide_volume_percent);
  }
}
BENCHMARK(soak_without_slopes)->Unit(benchmark::kMillisecond);

void soak_with_slopes(benchmark::State& run) {
  SensitivityOptions chosen;
  chosen.all_parameters = run.range(0) != 0;
  std::size_t inputs = 0;
  for (auto _ : run) {
    const auto all = sensitivities(high_speed_steel(), kSoak, {}, chosen);
    if (!all.state.usable()) run.SkipWithError("not usable");
    inputs = all.slopes.size();
    benchmark::DoNotOptimize(all.slopes.data());
  }
  run.counters["inputs"] = static_cast<double>(inputs);
}
BENCHMARK(soak_with_slopes)
    ->ArgName("all_parameters")
    ->Arg(0)
    ->Arg(1)
    ->Unit(benchmark::kMillisecond);

/// One factorization and the slopes of the equilibrium to the temperature.
void linearize(benchmark::State& run) {
  const Steel& steel = high_speed_steel();
  std::vector<std::string> phases;
  for (const Phase& phase : steel.parameters()->phases) phases.push_back(phase.name);
  const PhaseSystem system(steel.parameters(), steel.elements(), phases);
  const Equilibrium result = minimize(system, kSoak, steel.mole_fractions());
  for (auto _ : run) {
    const Linearization linear(system, result, steel.mole_fractions());
    benchmark::DoNotOptimize(linear.per_kelvin().gibbs_energy);
  }
}
BENCHMARK(linearize)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
