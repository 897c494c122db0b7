/// Cost of a soak against the number of soaks asked for at once: lines and screens as a
/// user calls them, on one thread, everything that is handed back included.

#include <benchmark/benchmark.h>

#include <random>
#include <vector>

#include "high_speed_steel.hpp"

namespace {

using namespace gibbsteel;

/// Evenly spaced, both ends included.
std::vector<double> spaced(double low, double high, std::int64_t count) {
  std::vector<double> values;
  for (std::int64_t i = 0; i < count; ++i)
    values.push_back(low + (high - low) * static_cast<double>(i) /
                               static_cast<double>(count - 1));
  return values;
}

/// What the page needs: the number of soaks, and that all of them are right.
void report(benchmark::State& run, std::size_t soaks, std::size_t unusable) {
  run.counters["soaks"] = static_cast<double>(soaks);
  if (unusable > 0) run.SkipWithError("a soak is not usable");
}

void single_soak(benchmark::State& run) {
  const Steel& steel = benchmarks::high_speed_steel();
  std::size_t unusable = 0;
  for (auto _ : run)
    if (!steel.soak(Temperature::celsius(1050.0)).usable()) ++unusable;
  report(run, 1, unusable);
}
BENCHMARK(single_soak)->Unit(benchmark::kMillisecond);

void temperature_line(benchmark::State& run) {
  std::vector<Temperature> temperatures;
  for (const double celsius : spaced(900.0, 1200.0, run.range(0)))
    temperatures.push_back(Temperature::celsius(celsius));
  std::size_t unusable = 0;
  for (auto _ : run)
    unusable += benchmarks::high_speed_steel().sweep(temperatures).failures();
  report(run, temperatures.size(), unusable);
}

/// Compositions of the steel, screened at 1100 C.
class Heats {
 public:
  Heats() {
    for (const auto& [symbol, percent] :
         benchmarks::high_speed_steel().analysis().given) {
      input_.elements.push_back(symbol);
      steel_row_.push_back(percent);
    }
    input_.temperatures = {Temperature::celsius(1100.0)};
  }

  /// The steel; carbon is the first number, chromium the second.
  const std::vector<double>& steel_row() const noexcept { return steel_row_; }
  void add(const std::vector<double>& row) {
    compositions_.insert(compositions_.end(), row.begin(), row.end());
  }

  void screen_all(benchmark::State& run) {
    input_.compositions = compositions_;
    ScreenOptions options;
    options.threads = 1;
    std::size_t unusable = 0;
    for (auto _ : run) {
      auto count = screen(input_, options).count();
      unusable += input_.rows() - count[ScreenStatus::usable];
    }
    report(run, input_.rows(), unusable);
  }

 private:
  std::vector<double> steel_row_, compositions_;
  ScreenInput input_;
};

void carbon_line(benchmark::State& run) {
  Heats heats;
  auto row = heats.steel_row();
  for (const double carbon : spaced(0.6, 1.1, run.range(0))) {
    row[0] = carbon;
    heats.add(row);
  }
  heats.screen_all(run);
}

/// The argument is the number of values of carbon, and that of chromium.
void screened_grid(benchmark::State& run) {
  Heats heats;
  auto row = heats.steel_row();
  for (const double chromium : spaced(3.5, 4.5, run.range(0)))
    for (const double carbon : spaced(0.6, 1.1, run.range(0))) {
      row[0] = carbon;
      row[1] = chromium;
      heats.add(row);
    }
  heats.screen_all(run);
}

/// Every element within 20 % of the steel, in no order: neighbours are far apart.
void screened_at_random(benchmark::State& run) {
  Heats heats;
  std::mt19937 random(5);
  for (std::int64_t i = 0; i < run.range(0); ++i) {
    auto row = heats.steel_row();
    for (double& percent : row)  // the same numbers from every standard library
      percent *= 0.8 + 0.4 * static_cast<double>(random()) / 4294967296.0;
    heats.add(row);
  }
  heats.screen_all(run);
}

void line_lengths(benchmark::internal::Benchmark* line) {
  for (const std::int64_t points : {50, 100, 200, 500, 1000, 2000, 5000})
    line->Arg(points);
  line->Unit(benchmark::kMillisecond);
}
BENCHMARK(temperature_line)->Apply(line_lengths);
BENCHMARK(carbon_line)->Apply(line_lengths);
BENCHMARK(screened_grid)
    ->Arg(10)
    ->Arg(18)
    ->Arg(32)
    ->Arg(56)
    ->Arg(100)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(screened_at_random)
    ->Arg(100)
    ->Arg(300)
    ->Arg(1000)
    ->Arg(3000)
    ->Arg(10000)
    ->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
