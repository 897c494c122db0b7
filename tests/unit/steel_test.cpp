/// The C++ face: Steel, State, Sweep, warnings. The Python tests cover the same face
/// from the other side and in more places.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <thread>

#include "gibbsteel/gibbsteel.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

Steel high_speed() {
  return Steel({{"C", 0.85},
                {"Cr", 4.1},
                {"Mo", 5.0},
                {"W", 6.2},
                {"V", 1.9},
                {"Mn", 0.3},
                {"Si", 0.3}},
               {"M2 type", {}, false});
}

std::vector<std::string> codes(const State& state) {
  std::vector<std::string> found;
  for (const Warning& warning : state.warnings)
    found.push_back(warning.code.substr(warning.code.size() - 3));
  return found;
}

bool holds(const std::vector<std::string>& list, const std::string& item) {
  return std::find(list.begin(), list.end(), item) != list.end();
}

}  // namespace

TEST_CASE("amounts add up, and the matrix is what the carbides leave") {
  const State state = high_speed().soak(Temperature::celsius(1150));
  REQUIRE(state.usable());
  double mass = 0.0, volume = 0.0, carbon = 0.0;
  for (const Occurrence& o : state.occurrences) {
    mass += o.mass_percent;
    volume += o.volume_percent;
    carbon += 0.01 * o.mass_percent * o.weight_percent["C"];
  }
  CHECK(mass == doctest::Approx(100.0).epsilon(1e-12));
  CHECK(volume == doctest::Approx(100.0).epsilon(1e-12));
  CHECK(carbon == doctest::Approx(0.85).epsilon(1e-10));
  CHECK(state.matrix.mass_percent + state.carbide_mass_percent ==
        doctest::Approx(100.0).epsilon(1e-12));
  CHECK(state.volume_percent_of("M6C") == state.at("M6C").volume_percent);
  CHECK(state.volume_percent_of("M23C6") == 0.0);
}

TEST_CASE("carbides come largest first") {
  const State state = high_speed().soak(Temperature::celsius(1150));
  const auto carbides = state.carbides();
  REQUIRE(carbides.size() == 2);
  CHECK(carbides[0].volume_percent > carbides[1].volume_percent);
}

TEST_CASE("two matrix phases: the matrix is their mass-weighted mean") {
  const State state = Steel({{"C", 0.1}, {"Cr", 1.0}}).soak(Temperature::celsius(800));
  REQUIRE(state.usable());
  const auto phases = state.matrix_phases();
  REQUIRE(phases.size() == 2);
  double chromium = 0.0, mass = 0.0;
  for (const Occurrence& o : phases) {
    chromium += o.mass_percent * o.weight_percent["Cr"];
    mass += o.mass_percent;
  }
  CHECK(state.matrix.weight_percent["Cr"] ==
        doctest::Approx(chromium / mass).epsilon(1e-12));
  CHECK(state.brief().find("; matrix is ") != std::string::npos);
  CHECK(holds(codes(state), "305"));
}

TEST_CASE("melting: no liquid in the file, and a known solidus") {
  const auto below = high_speed().soak(Temperature::celsius(1170));
  CHECK_FALSE(holds(codes(below), "303"));
  const auto above = high_speed().soak(Temperature::celsius(1245));
  CHECK(holds(codes(above), "303"));
  REQUIRE(holds(codes(above), "304"));
  const auto other = Steel({{"C", 0.4}, {"Cr", 5.0}}).soak(Temperature::celsius(1245));
  CHECK_FALSE(holds(codes(other), "304"));
}

TEST_CASE("missing intermetallics are named where the matrix could form them") {
  const auto lean =
      Steel({{"C", 0.05}, {"Mo", 8.0}, {"Cr", 10.0}}).soak(Temperature::celsius(850));
  CHECK(holds(codes(lean), "306"));
  const auto tool = Steel({{"C", 1.0}, {"Cr", 1.45}}).soak(Temperature::celsius(850));
  CHECK_FALSE(holds(codes(tool), "306"));
}

TEST_CASE("volume data missing: volumes are NaN, and a warning says of which phase") {
  auto set = std::make_shared<ParameterSet>(*default_parameters());
  for (Phase& phase : set->phases)
    if (phase.name == "M3C") phase.room_volume.reset();
  const Steel steel({{"C", 1.2}}, {"", set, false});
  const State state = steel.soak(Temperature::celsius(800));
  REQUIRE(state.usable());
  CHECK(std::isnan(state.at("M3C").volume_percent));
  CHECK(std::isnan(state.carbide_volume_percent));
  CHECK(state.carbide_mass_percent > 0.0);
  REQUIRE(holds(codes(state), "309"));
  CHECK(
      state.warnings.back().text ==
      "The parameter file has no volume data for M3C: volume percents are not known.");
}

TEST_CASE("a steel may be soaked from several threads at once") {
  const Steel steel = high_speed();
  std::vector<double> energies(8);
  const auto run = [&](std::size_t k) {
    const auto t = Temperature::celsius(1000.0 + 20.0 * static_cast<double>(k));
    energies[k] = steel.soak(t).gibbs_energy;
  };
  {
    std::vector<std::jthread> threads;
    for (std::size_t k = 0; k < energies.size(); ++k) threads.emplace_back(run, k);
  }
  const auto parallel = energies;
  for (std::size_t k = 0; k < energies.size(); ++k) run(k);
  CHECK(parallel == energies);
}

TEST_CASE("pure chromium carbide: a steel without iron is still computed") {
  const State state =
      Steel({{"Cr", 90.0}, {"C", 10.0}}).soak(Temperature::celsius(1000));
  REQUIRE(state.usable());
  CHECK(state.matrix_phases().empty());
  CHECK(std::isfinite(state.carbide_volume_percent));
  CHECK(state.carbide_volume_percent == doctest::Approx(100.0));
  CHECK(holds(codes(state), "305"));
}

TEST_CASE("a steel with other parameters keeps name, certificate and bound tramps") {
  const Steel base({{"Fe", 98.9}, {"C", 0.5}, {"Mn", 0.5}, {"S", 0.1}},
                   {"heat 7", {}, true});
  const Steel melting = base.with_parameters(with_liquid());
  CHECK(melting.name() == "heat 7");
  CHECK(melting.binds_tramp_elements());
  CHECK(melting.analysis().given == base.analysis().given);
  CHECK(melting.analysis().modelled == base.analysis().modelled);
  CHECK(melting.parameters() == with_liquid());
  CHECK(melting.with_parameters(nullptr).parameters() == default_parameters());
}

TEST_CASE("a changed steel keeps what was not named, balance Fe") {
  const Steel base({{"C", 0.55}, {"Cr", 4.5}, {"Cu", 0.1}}, {"heat 7", {}, false});
  const Steel richer = base.changed({{"C", 0.65}, {"Co", 3.0}});
  CHECK(richer.name() == "heat 7, 0.65 C, 3 Co");
  CHECK(richer.analysis().given ==
        NamedValues{{"C", 0.65}, {"Cr", 4.5}, {"Cu", 0.1}, {"Co", 3.0}});
  CHECK(richer.analysis().modelled["Fe"] < base.analysis().modelled["Fe"]);
  CHECK(base.changed({}, "heat 8").name() == "heat 8");
  CHECK(base.changed({}).name() == "heat 7");
}

TEST_CASE("a changed steel is named as a variant, each element once") {
  const NamedValues content{{"C", 0.55}, {"Cr", 4.5}};
  const auto name = [&](const char* start, const NamedValues& first,
                        const NamedValues& second) {
    return Steel(content, {start, {}, false}).changed(first).changed(second).name();
  };
  CHECK(name("M2", {{"C", 0.9}}, {{"Co", 5.0}}) == "M2, 0.9 C, 5 Co");
  CHECK(name("M2", {{"C", 0.9}}, {{"C", 1.0 / 3.0}}) == "M2, 0.333333 C");
  CHECK(name("heat 7, bar 2 C, hot", {{"C", 0.9}}, {}) ==
        "heat 7, bar 2 C, hot, 0.9 C");
  CHECK(name("0.5 C", {{"C", 0.9}}, {}) == "0.5 C, 0.9 C");
  CHECK(name("", {{"C", 0.9}}, {}) == "");
}
