/// Twins made from the matrix of another steel.

#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1200);

Steel high_speed(NamedValues more = {}) {
  NamedValues percents{{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2},
                       {"V", 1.9},  {"Mn", 0.3}, {"Si", 0.3}};
  for (const auto& [symbol, percent] : more) percents.set(symbol, percent);
  return Steel(percents, {"punch heat 12", {}, false});
}

MatrixTwinOptions exact() {
  MatrixTwinOptions options;
  options.makeable = MakeableSteps::none();
  return options;
}

}  // namespace

TEST_CASE("twin: exact, it is the matrix alone with the same potentials") {
  const State steel = high_speed().soak(kSoak);
  REQUIRE(steel.usable());
  REQUIRE(steel.carbide_volume_percent > 5.0);
  const Steel twin = matrix_twin(high_speed(), kSoak, exact());
  const State state = twin.soak(kSoak);
  REQUIRE(state.usable());
  CHECK(state.carbide_volume_percent < 1e-6);
  CHECK(state.matrix_phases().size() == 1);
  for (const auto& entry : steel.matrix.weight_percent) {
    const std::string symbol = entry.first;
    const double percent = entry.second;
    CAPTURE(symbol);
    CHECK(twin.analysis().modelled[symbol] == doctest::Approx(percent).epsilon(1e-9));
  }
  for (const auto& entry : steel.chemical_potential) {
    const std::string symbol = entry.first;
    const double potential = entry.second;
    CAPTURE(symbol);
    CHECK(state.chemical_potential[symbol] == doctest::Approx(potential).epsilon(1e-7));
  }
}

TEST_CASE("twin: carbides and twin together make up the steel again") {
  const Steel steel = high_speed();
  const State state = steel.soak(kSoak);
  const Steel twin = matrix_twin(steel, state, exact());
  for (const auto& entry : steel.analysis().modelled) {
    const std::string symbol = entry.first;
    const double given = entry.second;
    CAPTURE(symbol);
    double sum = state.matrix.mass_percent * twin.analysis().modelled[symbol];
    for (const Occurrence& o : state.carbides())
      sum += o.mass_percent * o.weight_percent[symbol];
    CHECK(sum / 100.0 == doctest::Approx(given).epsilon(1e-9));
  }
}

TEST_CASE("twin: rounded to what can be ordered, and named") {
  const State state = high_speed().soak(kSoak);
  const Steel twin = matrix_twin(high_speed(), kSoak);
  CHECK(twin.name() == "matrix of punch heat 12 at 1200 C");
  for (const auto& entry : twin.analysis().given) {
    const std::string symbol = entry.first;
    const double percent = entry.second;
    CAPTURE(symbol);
    const double step = symbol == "C" ? 0.01 : 0.05;
    const double steps = percent / step;
    CHECK(steps == doctest::Approx(std::round(steps)).epsilon(1e-9));
    CHECK(std::abs(percent - state.matrix.weight_percent[symbol]) <= 0.5001 * step);
  }
}

TEST_CASE("makeable steps: nearest, nothing below half a step, iron is the balance") {
  const NamedValues percents{{"Fe", 90.0}, {"C", 0.5549}, {"Cr", 4.12}, {"V", 0.024}};
  CHECK(to_makeable(percents, {}) == NamedValues{{"C", 0.55}, {"Cr", 4.1}});
  const MakeableSteps coarse{{{"C", 0.05}, {"V", 0.001}}, 0.5};
  CHECK(to_makeable(percents, coarse) ==
        NamedValues{{"C", 0.55}, {"Cr", 4.0}, {"V", 0.024}});
  CHECK(to_makeable(percents, MakeableSteps::none()) ==
        NamedValues{{"C", 0.5549}, {"Cr", 4.12}, {"V", 0.024}});
}

TEST_CASE("makeable steps: every step that cannot be is named") {
  CHECK(message([] {
          to_makeable({{"C", 0.5}}, {{{"C", 0.0}, {"Cr", -1.0}}, 20.0});
        }) ==
        "[gibbsteel.input.261] steps, C: is 0; give a step above 0, at most 10 wt%\n"
        "[gibbsteel.input.261] steps, Cr: is -1; give a step above 0, at most 10 wt%\n"
        "[gibbsteel.input.261] steps, others: is 20; give a step above 0, at most 10 "
        "wt%");
}

TEST_CASE("twin: elements that are not modelled are left out unless asked for") {
  const Steel steel = high_speed({{"P", 0.02}, {"S", 0.01}});
  CHECK(matrix_twin(steel, kSoak).analysis().not_modelled.empty());
  MatrixTwinOptions keep;
  keep.keep_not_modelled = true;
  CHECK(matrix_twin(steel, kSoak, keep).analysis().not_modelled ==
        NamedValues{{"P", 0.02}, {"S", 0.01}});
}

TEST_CASE("twin: a state that is not usable has none") {
  State state = high_speed().soak(kSoak);
  state.solve_report.status = SolveStatus::stalled;
  CHECK(message([&] { matrix_twin(high_speed(), state); }) ==
        "[gibbsteel.input.260] state: is not usable; read its solve report; change "
        "the conditions slightly");
  SoakOptions compound;
  compound.phases = {"M3C"};
  CHECK(message([&] {
          const Steel carbide({{"C", 6.7}});
          MatrixTwinOptions options;
          options.soak.phases = {"M3C", "graphite"};
          options.soak.graphite = true;
          matrix_twin(carbide, Temperature::celsius(900), options);
        }) ==
        "[gibbsteel.input.260] state: has no matrix phase; take another temperature or "
        "composition");
}

TEST_CASE("twin: a partly molten steel has none") {
  const Steel steel({{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5}, {"W", 6.2}, {"V", 1.9}},
                    {"melting", with_liquid(), false});
  CHECK(message([&] { matrix_twin(steel, Temperature::celsius(1280)); }) ==
        "[gibbsteel.input.260] state: is partly molten; take a temperature below the "
        "solidus");
  CHECK_NOTHROW(matrix_twin(steel, Temperature::celsius(1220)));
}

TEST_CASE(
    "twin study: colder soaks leave carbide in the twin, the text says how much") {
  const std::array others{Temperature::celsius(1000), Temperature::celsius(1100)};
  const TwinStudy study = twin_study(high_speed(), kSoak, others);
  REQUIRE(study.same.usable());
  REQUIRE(study.others.states.size() == 2);
  CHECK(study.same.carbide_volume_percent < 0.3);  // what rounding leaves
  CHECK(study.others.states[0].carbide_volume_percent >
        study.others.states[1].carbide_volume_percent);
  CHECK(study.others.states[1].carbide_volume_percent >
        study.same.carbide_volume_percent);
  CHECK(study.reference.carbide_volume_percent >
        study.others.states[0].carbide_volume_percent);
  CHECK(study.warnings().empty());
  const std::string text = study.full();
  CHECK(text.find("full-carbide steel") != std::string::npos);
  CHECK(text.find("long-hold limit") != std::string::npos);
}

TEST_CASE("twin study: a twin of another hardening family says so") {
  const Steel steel({{"C", 1.55}, {"Cr", 12}, {"Mo", 0.8}, {"V", 0.9}},
                    {"D2", {}, false});
  const TwinStudy study = twin_study(steel, Temperature::celsius(1030), {});
  const std::vector<Warning> expected{
      {"gibbsteel.warning.357",
       "Hardening estimates of the twin are those of the family general, of the "
       "full-carbide steel those of chromium-cold-work: they differ for the same "
       "austenite. Name one family for both to compare them, "
       "family=\"chromium-cold-work\"."}};
  CHECK(study.warnings() == expected);
  CHECK(study.full().find("! twin: [gibbsteel.warning.357] Hardening estimates of the "
                          "twin are those of\n") != std::string::npos);
  const auto start = [](const State& state) {
    HardeningOptions options;
    options.family = "chromium-cold-work";
    return hardening(state, options).martensite_start.value;
  };
  // What is left of it is what rounding moves.
  CHECK(std::abs(start(study.same) - start(study.reference)) < 5.0);
}
