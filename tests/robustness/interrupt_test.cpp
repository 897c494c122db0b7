/// Work that is stopped at any moment, by an answer or by an exception of the caller's
/// progress function, leaves everything usable: the same work and a soak then give the
/// same bits as before.

#include <doctest/doctest.h>

#include <random>
#include <stdexcept>

#include "gibbsteel/gibbsteel.hpp"
#include "robustness/workload.hpp"

using namespace gibbsteel;
using testing::Bits;

namespace {

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr int kStops = 2;
#else
constexpr int kStops = 6;
#endif

using Progress = std::function<bool(std::size_t)>;

const Temperature kSoak = Temperature::celsius(1120);

TemperatureRange range(double low, double high) {
  return {Temperature::celsius(low), Temperature::celsius(high)};
}

SearchOptions search(const Progress& progress) {
  SearchOptions options;
  options.progress = progress;
  return options;
}

/// Long work that calls back. `stopped` is what the result itself says.
struct Work {
  const char* name;
  Bits (*run)(const Steel& steel, const Progress& progress, bool& stopped);
};

Bits sweep(const Steel& steel, const Progress& progress, bool& stopped) {
  std::vector<Temperature> temperatures;
  for (int k = 0; k < 12; ++k)
    temperatures.push_back(Temperature::celsius(850 + 30 * k));
  const Sweep result = steel.sweep(temperatures, {}, progress);
  stopped = result.cancelled;
  Bits bits;
  bits.add(result.states);
  return bits;
}

Bits proven_sweep(const Steel& steel, const Progress& progress, bool& stopped) {
  SoakOptions options;
  options.solve.certify = Certificate::proof;
  options.solve.proof_boxes = 500;
  options.solve.proof_seconds = 1e6;
  options.prove_every = 3;
  std::vector<Temperature> temperatures;
  for (int k = 0; k < 7; ++k)
    temperatures.push_back(Temperature::celsius(1100 + 2 * k));
  const Sweep result = steel.sweep(temperatures, options, progress);
  stopped = result.cancelled;
  Bits bits;
  bits.add(result.states);
  for (const State& state : result.states) bits.add(state.solve_report.proof);
  return bits;
}

Bits changes(const Steel& steel, const Progress& progress, bool& stopped) {
  const auto result = phase_changes(steel, range(800, 860), {}, search(progress));
  stopped = !result.stopped.empty();
  Bits bits;
  for (const PhaseChange& change : result.changes) bits.add(change.below);
  bits.add(result.full());
  return bits;
}

Bits crossings(const Steel& steel, const Progress& progress, bool& stopped) {
  const auto result = temperature_for(steel, quantities::matrix("C"), 0.5,
                                      range(1100, 1140), {}, search(progress));
  stopped = !result.stopped.empty();
  Bits bits;
  bits.add(result.full());
  return bits;
}

Bits composition(const Steel& steel, const Progress& progress, bool& stopped) {
  CompositionSearchOptions options;
  options.progress = progress;
  options.steps = 8;
  const auto result = composition_for(steel, "C", quantities::matrix("C"), 0.5,
                                      {0.4, 0.6}, kSoak, {}, options);
  stopped = !result.stopped.empty();
  Bits bits;
  bits.add(result.full());
  return bits;
}

Bits designed(const Steel& steel, const Progress& progress, bool& stopped) {
  DesignOptions options;
  options.progress = progress;
  const auto result = design(
      steel, {{"C", {0.4, 0.7}}},
      {{quantities::matrix("C"), kSoak, TargetSense::equal, 0.5, 0.005}}, options);
  stopped = result.status == DesignStatus::stopped;
  Bits bits;
  bits.add(result.full());
  return bits;
}

Bits grid(const Steel& steel, const Progress& progress, bool& stopped) {
  const auto result =
      soak_grid(steel, SweptVariable::element("C", {0.5, 0.53, 0.56, 0.59, 0.62}),
                SweptVariable::temperature({Temperature::celsius(1000),
                                            Temperature::celsius(1050),
                                            Temperature::celsius(1100), kSoak}),
                {}, {}, progress, 2);
  stopped = result.cancelled();
  Bits bits;
  for (const auto& state : result.states)
    if (state) bits.add(*state);
  return bits;
}

Bits map(const Steel& steel, const Progress& progress, bool& stopped) {
  SectionOptions options;
  options.columns = options.rows = 3;
  options.temperature_tolerance = 2.0;
  options.percent_tolerance = 0.05;
  options.threads = 2;
  options.progress = progress;
  const auto result =
      section_map(steel, SweptElement{"C", 0.4, 0.7}, range(1000, 1060), {}, options);
  stopped = !result.stopped.empty();
  Bits bits;
  bits.add(result.full());
  return bits;
}

Bits tolerances(const Steel& steel, const Progress& progress, bool& stopped) {
  HeatTolerances heat;
  heat.ranges = {{"C", 0.52, 0.58}, {"Cr", 4.2, 4.8}};
  ToleranceOptions options;
  options.samples = 64;
  options.corners = false;
  options.threads = 2;
  options.progress = progress;
  const auto result = tolerance_band(steel, kSoak, heat, {}, options);
  stopped = result.cancelled;
  Bits bits;
  bits.add(result.full());
  return bits;
}

constexpr Work kWorks[] = {{"sweep", sweep},
                           {"proven sweep", proven_sweep},
                           {"phase changes", changes},
                           {"crossings", crossings},
                           {"composition", composition},
                           {"design", designed},
                           {"grid", grid},
                           {"map", map},
                           {"tolerances", tolerances}};

Bits soak(const Steel& steel) {
  Bits bits;
  bits.add(steel.soak(kSoak));
  return bits;
}

struct Interrupted : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// Stops at the call of that number. @return true when it was stopped
bool stop(const Work& work, const Steel& steel, int call, bool by_exception) {
  bool stopped = false;
  int calls = 0;
  const Progress progress = [&](std::size_t) {
    if (++calls < call) return true;
    if (by_exception) throw Interrupted("now");
    return false;
  };
  try {
    work.run(steel, progress, stopped);
  } catch (const Interrupted&) {
    REQUIRE(by_exception);
    return true;
  }
  return stopped;
}

}  // namespace

TEST_CASE("work that is stopped anywhere leaves everything usable") {
  const Steel steel = testing::workload_steel();
  const Bits expected_soak = soak(steel);
  std::mt19937 random(99);
  for (const Work& work : kWorks) {
    CAPTURE(work.name);
    int calls = 0;
    bool stopped = true;
    const Bits expected = work.run(
        steel, [&](std::size_t) { return ++calls > 0; }, stopped);
    CHECK_FALSE(stopped);
    REQUIRE(calls > 0);
    int stops = 0;
    for (int k = 0; k < kStops; ++k) {
      const int call = 1 + static_cast<int>(random() % static_cast<unsigned>(calls));
      stops += stop(work, steel, call, k % 2 == 1) ? 1 : 0;
      CHECK(soak(steel) == expected_soak);
    }
    CHECK(stops >= kStops / 2);  // at the last call nothing may be left to stop
    CHECK(work.run(steel, {}, stopped) == expected);
  }
}
