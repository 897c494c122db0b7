/// Steels side by side.

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

Steel punch() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

Steel cold_work() {
  return Steel({{"C", 1.5}, {"Cr", 12.0}, {"Mo", 0.8}, {"V", 0.9}},
               {"punch heat 3", {}, false});
}

}  // namespace

TEST_CASE("comparison: one column per state, values of the states themselves") {
  const std::array states{punch().soak(Temperature::celsius(1120)),
                          cold_work().soak(Temperature::celsius(1030))};
  const Comparison table = compare(states);
  REQUIRE(table.states.size() == 2);
  CHECK(table.row("M7C3").values ==
        std::vector<double>{0.0, states[1].volume_percent_of("M7C3")});
  CHECK(table.row("carbide").values[0] == states[0].carbide_volume_percent);
  CHECK(table.row("C in the matrix").label() == "C in the matrix [wt%]");
  CHECK(table.row("W in the matrix").values[1] == 0.0);
  CHECK(table.row("carbon activity").values[1] == states[1].carbon_activity);
  double sum = 0.0;
  for (const ComparisonRow& row : table.rows)
    if (row.unit == "vol%" && row.name != "carbide") sum += row.values[1];
  CHECK(sum == doctest::Approx(states[1].carbide_volume_percent).epsilon(1e-12));
}

TEST_CASE("comparison: steels times temperatures, and quantities of one's own") {
  const std::array steels{punch(), cold_work()};
  const std::array temperatures{Temperature::celsius(1000), Temperature::celsius(1100)};
  const std::array more{Quantity("Mo + W/2", "wt%", [](const State& state) {
    return state.matrix.weight_percent["Mo"] + 0.5 * state.matrix.weight_percent["W"];
  })};
  const Comparison table = compare(steels, temperatures, more);
  REQUIRE(table.states.size() == 4);
  CHECK(table.states[1].temperature == temperatures[1]);
  CHECK(table.states[2].steel == "punch heat 3");
  const auto& row = table.row("Mo + W/2");
  CHECK(&row == &table.rows.back());
  CHECK(row.values[0] == doctest::Approx(table.row("Mo in the matrix").values[0] +
                                         0.5 * table.row("W in the matrix").values[0])
                             .epsilon(1e-12));
  CHECK(table.brief() ==
        "comparison of 4 states, long-hold limit: punch heat 7 at 1000 C, punch heat 7 "
        "at 1100 C, punch heat 3 at 1000 C, punch heat 3 at 1100 C");
}

TEST_CASE("comparison: a state that is not usable shows no numbers") {
  std::array states{punch().soak(Temperature::celsius(1120)),
                    cold_work().soak(Temperature::celsius(1030))};
  states[1].solve_report.status = SolveStatus::stalled;
  states[1].solve_report.reason = "no step helps";
  const Comparison table = compare(states);
  for (const ComparisonRow& row : table.rows) CHECK(std::isnan(row.values[1]));
  CHECK(table.full().find("NOT USABLE: stalled (no step helps)") != std::string::npos);
}

TEST_CASE("comparison: a short soak beside the long one is marked") {
  const State limit = Steel({{"C", 1.0}, {"Cr", 1.45}}, {"punch heat 5", {}, false})
                          .soak(Temperature::celsius(845));
  const std::array states{limit, with_measured_carbide(limit, {{"M3C", 6.0}}).state};
  const std::string text = compare(states).full();
  CHECK(text.find("A: punch heat 5 at 845 C, long-hold limit; 1C 1.45Cr, balance Fe") ==
        0);
  CHECK(text.find("B: punch heat 5 at 845 C, short soak with measured carbide;") !=
        std::string::npos);
  CHECK(text.find("no better than the count") != std::string::npos);
}

TEST_CASE("comparison: bands of what has one") {
  const std::array states{punch().soak(Temperature::celsius(1120)),
                          cold_work().soak(Temperature::celsius(1030))};
  const std::array more{quantities::hardness_hrc()};
  const Comparison table = compare(states, more);
  const ComparisonRow& hardness = table.row("as-quenched hardness");
  REQUIRE(hardness.has_band());
  for (std::size_t i = 0; i < states.size(); ++i) {
    const Estimate estimate = hardening(states[i]).hardness_hrc;
    CHECK(hardness.low[i] == estimate.low);
    CHECK(hardness.high[i] == estimate.high);
  }
  CHECK(!table.row("carbide").has_band());
  const std::string bands =
      "low to high: about two in three measurements, for this austenite; of hardness\n"
      "  all 38 that were compared, 15 of them fitted to.\n";
  CHECK(table.full().find(bands) != std::string::npos);
  CHECK(table.full().find("\n  low  ") < table.full().find("\n  high  "));
  CHECK(compare(states).full().find("low to high") == std::string::npos);
}

TEST_CASE("comparison: what the bands are is said of the rows that are there") {
  const std::array states{punch().soak(Temperature::celsius(1120)),
                          punch().soak(Temperature::celsius(1060))};
  HardeningOptions options;
  options.particle_diameter = 0.5;
  const Quantity start = quantities::martensite_start();
  const Quantity hardness = quantities::hardness_hv();
  const Quantity limit = quantities::grain_limit(options);
  const auto told = [&](const std::vector<Quantity>& more) {
    const std::string text = compare(states, more).full();
    const auto begin = text.find("low to high: ");
    return begin == std::string::npos
               ? ""
               : text.substr(begin, text.find(".\n", begin) - begin + 2);
  };
  CHECK(told({start}) ==
        "low to high: about two in three measurements, for this austenite.\n");
  CHECK(
      told({hardness}) ==
      "low to high: about two in three measurements, for this austenite; of hardness\n"
      "  all 38 that were compared, 15 of them fitted to.\n");
  CHECK(told({limit}) ==
        "low to high: of the grain limit from the model hillert (H22) to zener "
        "(H23).\n");
  CHECK(
      told({limit, start}) ==
      "low to high: about two in three measurements, for this austenite; of the grain\n"
      "  limit from the model hillert (H22) to zener (H23).\n");
  CHECK(
      told({hardness, limit}) ==
      "low to high: about two in three measurements, for this austenite; of hardness\n"
      "  all 38 that were compared, 15 of them fitted to; of the grain limit from the\n"
      "  model hillert (H22) to zener (H23).\n");
}

TEST_CASE("comparison: states of several parameter sets tell whose is which") {
  std::array states{punch().soak(Temperature::celsius(1120)),
                    punch().soak(Temperature::celsius(1120)),
                    cold_work().soak(Temperature::celsius(1030))};
  for (State& state : states) state.parameters = "First set (edition 1)";
  CHECK(compare(states).full().find("\nparameters: " + states[0].parameters + "\n") !=
        std::string::npos);
  CHECK(compare(states).brief().find("parameter sets") == std::string::npos);
  states[1].parameters = "Shop set (edition 2)";
  states[1].parameters_hash = "0123456789abcdef";
  CHECK(compare(states).full().find("\nparameters of A, C: " + states[0].parameters +
                                    "\nparameters of B: Shop set (edition 2)\n") !=
        std::string::npos);
  CHECK(compare(states).brief() ==
        "comparison of 3 states, long-hold limit, 2 parameter sets: punch heat 7 at "
        "1120 C, punch heat 7 at 1120 C, punch heat 3 at 1030 C");
  for (State& state : states) state.parameters = "Shop set";
  CHECK(compare(states).full().find(
            "\nparameters of A, C: Shop set, " + states[0].parameters_hash +
            "\nparameters of B: Shop set, 0123456789abcdef\n") != std::string::npos);
}

TEST_CASE("comparison: nothing to compare, no such row") {
  CHECK(message([] { compare(std::span<const State>{}); }) ==
        "[gibbsteel.input.267] states: is empty; give at least one state");
  const std::array steels{punch()};
  CHECK(message([&] { compare(std::span<const Steel>{}, {}); }) ==
        "[gibbsteel.input.267] steels: is empty; give at least one steel");
  CHECK(message([&] { compare(steels, std::span<const Temperature>{}); }) ==
        "[gibbsteel.input.267] temperatures: is empty; give at least one temperature");
  const std::array states{punch().soak(Temperature::celsius(1120))};
  const std::string text = message([&] { compare(states).row("M9C"); });
  CHECK(text.find(
            "[gibbsteel.input.209] comparison: there is no 'M9C' in it; present: ") ==
        0);
}
