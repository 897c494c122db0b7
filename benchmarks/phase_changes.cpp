/// A search for all phase changes from 700 to 1250 C in cold soaks of the same steel,
/// and a search for a temperature, which starts from it.

#include <benchmark/benchmark.h>

#include <chrono>

#include "high_speed_steel.hpp"

namespace {

using namespace gibbsteel;
using benchmarks::high_speed_steel;

/// Mean time of a cold soak over the range [s].
double cold_soak_seconds(const Steel& steel, const TemperatureRange& range) {
  constexpr int kSoaks = 12;
  const double low = range.low.in_kelvin(), high = range.high.in_kelvin();
  const auto begin = std::chrono::steady_clock::now();
  for (int k = 0; k < kSoaks; ++k)
    benchmark::DoNotOptimize(
        steel.soak(Temperature::kelvin(low + (high - low) * (k + 0.5) / kSoaks)));
  const std::chrono::duration<double> elapsed =
      std::chrono::steady_clock::now() - begin;
  return elapsed.count() / kSoaks;
}

/// Runs `search`, which returns the number of soaks it took.
template <class Search>
void in_cold_soaks(benchmark::State& run, const Search& search) {
  const Steel& steel = high_speed_steel();
  const TemperatureRange range = usual_range(*steel.parameters());
  const double soak = cold_soak_seconds(steel, range);
  double soaks = 0.0, seconds = 0.0;
  for (auto _ : run) {
    const auto begin = std::chrono::steady_clock::now();
    const auto found = search(steel, range);
    const std::chrono::duration<double> elapsed =
        std::chrono::steady_clock::now() - begin;
    if (!found.complete()) {
      run.SkipWithError(found.brief().c_str());
      break;
    }
    soaks = static_cast<double>(found.soaks);
    seconds = elapsed.count();
  }
  run.counters["soaks"] = soaks;
  run.counters["time_in_cold_soaks"] = seconds / soak;
}

void all_phase_changes(benchmark::State& run) {
  in_cold_soaks(run, [](const Steel& steel, const TemperatureRange& range) {
    return phase_changes(steel, range);
  });
}
BENCHMARK(all_phase_changes)->Unit(benchmark::kMillisecond);

void temperature_for_matrix_carbon(benchmark::State& run) {
  in_cold_soaks(run, [](const Steel& steel, const TemperatureRange& range) {
    return temperature_for(steel, quantities::matrix("C"), 0.45, range);
  });
}
BENCHMARK(temperature_for_matrix_carbon)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
