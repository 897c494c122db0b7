/// Lines and screens of the nine-element high-speed steel: soaks that follow one
/// another, with every test from many starts that a sweep makes.

#include <benchmark/benchmark.h>

#include <vector>

#include "continuation/line_solver.hpp"
#include "high_speed_steel.hpp"

namespace {

using namespace gibbsteel;

/// 900 to 1200 C; the argument is the number of soaks, the first one cold and not
/// timed. Counters per soak.
void followed_soaks(benchmark::State& run) {
  const Steel& steel = benchmarks::high_speed_steel();
  const PhaseSystem system(steel.parameters(), steel.elements(),
                           benchmarks::all_phases());
  const auto x = steel.mole_fractions();
  const auto count = run.range(0);
  internal::LineCounts counts;
  for (auto _ : run) {
    run.PauseTiming();
    internal::LineSolver line(system, {});
    line.next(Temperature::celsius(900.0), x);
    run.ResumeTiming();
    for (std::int64_t i = 1; i <= count; ++i) {
      line.next(Temperature::celsius(900.0 + 300.0 * static_cast<double>(i) /
                                                 static_cast<double>(count)),
                x);
      if (line.distance() >= 1.0) line.certify();
    }
    counts = line.counts();
  }
  const auto soaks = static_cast<double>(count);
  run.counters["soaks_per_second"] =
      benchmark::Counter(soaks, benchmark::Counter::kIsIterationInvariantRate);
  run.counters["newton_steps"] = static_cast<double>(counts.newton_steps) / soaks;
  run.counters["tests_from_many_starts"] = static_cast<double>(counts.anchors);
}
BENCHMARK(followed_soaks)->Arg(100)->Arg(500)->Arg(2000)->Unit(benchmark::kMillisecond);

/// A high-speed steel with carbon and chromium varied, at four temperatures on one
/// thread.
void screened_rows(benchmark::State& run) {
  std::vector<double> compositions;
  for (int i = 0; i < 16; ++i)
    for (int j = 0; j < 16; ++j)
      compositions.insert(compositions.end(),
                          {0.7 + 0.02 * i, 3.5 + 0.1 * j, 5.0, 6.2, 1.9});
  ScreenInput input;
  input.elements = {"C", "Cr", "Mo", "W", "V"};
  input.compositions = compositions;
  input.temperatures = {Temperature::celsius(1000.0), Temperature::celsius(1050.0),
                        Temperature::celsius(1100.0), Temperature::celsius(1150.0)};
  ScreenOptions options;
  options.threads = 1;
  for (auto _ : run) benchmark::DoNotOptimize(screen(input, options));
  run.counters["rows_per_second"] = benchmark::Counter(
      static_cast<double>(input.rows()), benchmark::Counter::kIsIterationInvariantRate);
}
BENCHMARK(screened_rows)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
