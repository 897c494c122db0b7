/// Cold soaks of a nine-element high-speed steel, every phase of the shipped file
/// allowed, and one evaluation (energy, gradient, Hessian) of each phase model. "Cold"
/// means that nothing is known from an earlier soak: candidate phases are compiled anew
/// each time.

#include <benchmark/benchmark.h>
#include <sys/resource.h>

#include <string>
#include <vector>

#include "high_speed_steel.hpp"

namespace {

using namespace gibbsteel;
using benchmarks::high_speed_steel;

/// Largest memory the process has held so far, with code and benchmark library.
double peak_megabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) * 1024.0 / 1e6;
}

void cold_soak(benchmark::State& run) {
  const Steel& steel = high_speed_steel();
  const auto temperature = Temperature::celsius(static_cast<double>(run.range(0)));
  SoakOptions options;
  options.graphite = true;  // the one phase that is left out unless asked for
  for (auto _ : run) {
    const State state = steel.soak(temperature, options);
    if (!state.usable()) {
      run.SkipWithError(state.solve_report.brief().c_str());
      break;
    }
    benchmark::DoNotOptimize(state.carbide_volume_percent);
  }
  run.counters["peak_MB"] = peak_megabytes();
}
BENCHMARK(cold_soak)
    ->ArgName("celsius")
    ->Arg(850)
    ->Arg(1000)
    ->Arg(1150)
    ->Arg(1200)
    ->Unit(benchmark::kMillisecond);

/// Every constituent with the same share of its sublattice.
std::vector<double> even_fractions(const PhaseModel& model) {
  std::vector<double> count;
  for (const Constituent& constituent : model.constituents()) {
    if (constituent.sublattice >= count.size())
      count.resize(constituent.sublattice + 1);
    count[constituent.sublattice] += 1.0;
  }
  std::vector<double> y;
  for (const Constituent& constituent : model.constituents())
    y.push_back(1.0 / count[constituent.sublattice]);
  return y;
}

/// With the temperature functions, as every call of the public evaluate() has them.
void phase_evaluation(benchmark::State& run, const std::string& phase) {
  const PhaseSystem system(default_parameters(), high_speed_steel().elements(),
                           {phase});
  const PhaseModel& model = system.phases().front();
  const std::vector<double> y = even_fractions(model);
  for (auto _ : run)
    benchmark::DoNotOptimize(model.evaluate(Temperature::celsius(1150.0), y).value);
  run.counters["constituents"] = static_cast<double>(y.size());
}

/// Reading and checking the shipped parameter file.
void read_parameter_file(benchmark::State& run) {
  const std::string text = write_parameters(*default_parameters());
  for (auto _ : run)
    benchmark::DoNotOptimize(parse_parameters(text, "tool_steel.json"));
}
BENCHMARK(read_parameter_file)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
  for (const Phase& phase : default_parameters()->phases)
    benchmark::RegisterBenchmark(("phase_evaluation/" + phase.name).c_str(),
                                 phase_evaluation, phase.name)
        ->Unit(benchmark::kMicrosecond);
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 2;
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
  return 0;
}
