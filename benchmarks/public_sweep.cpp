/// What a sweep costs its user beyond the soaks themselves: Steel::sweep, with states,
/// driving forces of all absent phases, condition numbers and warnings, against the
/// same soaks followed and certified and nothing kept of them, in the same run.

#include <benchmark/benchmark.h>

#include <ctime>
#include <vector>

#include "continuation/line_solver.hpp"
#include "high_speed_steel.hpp"
#include "internal/candidate_phases.hpp"

namespace {

using namespace gibbsteel;

/// 850 to 1250 C, both included.
std::vector<Temperature> temperatures(std::int64_t count) {
  std::vector<Temperature> all;
  for (std::int64_t i = 0; i < count; ++i)
    all.push_back(Temperature::celsius(850.0 + 400.0 * static_cast<double>(i) /
                                                   static_cast<double>(count - 1)));
  return all;
}

/// Processor time of a call [s].
template <class Call>
double seconds_of(const Call& call) {
  const std::clock_t begin = std::clock();
  call();
  return static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
}

void follow(const PhaseSystem& system, const std::vector<double>& x,
            const std::vector<Temperature>& all) {
  internal::LineSolver line(system, {});
  for (const Temperature t : all) {
    line.next(t, x);
    if (line.distance() >= 1.0) line.certify();
  }
  benchmark::DoNotOptimize(line.report().balance_residual);
}

/// The argument is the number of soaks, the first one cold. Counters: time per soak of
/// the sweep and of the followed soaks, and how many times as long the former takes.
void public_sweep(benchmark::State& run) {
  const Steel& steel = benchmarks::high_speed_steel();
  const PhaseSystem system(steel.parameters(), steel.elements(),
                           internal::candidate_phases(*steel.parameters(), {}));
  const auto x = steel.mole_fractions();
  const auto all = temperatures(run.range(0));
  double of_sweeps = 0.0, of_followed = 0.0, soaks = 0.0;
  for (auto _ : run) {
    Sweep sweep;
    of_sweeps += seconds_of([&] { sweep = steel.sweep(all); });
    run.PauseTiming();
    if (sweep.failures() > 0) run.SkipWithError("a soak is not usable");
    of_followed += seconds_of([&] { follow(system, x, all); });
    soaks += static_cast<double>(all.size());
    run.ResumeTiming();
  }
  run.counters["microseconds_per_soak"] = 1e6 * of_sweeps / soaks;
  run.counters["microseconds_followed"] = 1e6 * of_followed / soaks;
  run.counters["times_a_followed_soak"] = of_sweeps / of_followed;
}
BENCHMARK(public_sweep)->Arg(100)->Arg(500)->Arg(2000)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
