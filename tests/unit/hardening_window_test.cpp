/// Between which temperatures a steel can be hardened.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

TemperatureRange range(double low, double high) {
  return {Temperature::celsius(low), Temperature::celsius(high)};
}

Steel punch_heat() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

Steel high_speed() {
  return Steel({{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.3}, {"V", 1.9}},
               {"M2", {}, false});
}

bool has(const State& state, const std::string& kind) {
  for (const Occurrence& o : state.occurrences)
    if (o.kind == kind) return true;
  return false;
}

}  // namespace

TEST_CASE("ferrite sets the floor, known melting the ceiling") {
  const auto window = hardening_window(high_speed(), {}, range(700, 1250));
  CHECK(window.status == WindowStatus::found);
  CHECK(window.floor_rule == WindowRule::ferrite);
  CHECK(window.ceiling_rule == WindowRule::solidus);
  CHECK_FALSE(has(window.at_floor, "ferrite"));
  CHECK(has(high_speed().soak(Temperature::kelvin(window.floor->in_kelvin() - 0.05)),
            "ferrite"));
  // The file knows 1240 +-12 C for M2; the margin is 30 K.
  CHECK(window.ceiling->in_celsius() == doctest::Approx(1240.0 - 12.0 - 30.0));
  CHECK(window.remarks.empty());
}

TEST_CASE("least value and pinning carbide, by rules that the user chooses") {
  WindowRules rules;
  rules.hardness = quantities::matrix("C");
  rules.least_hardness = 0.3;
  rules.pinning_kind = "M6C";
  rules.least_pinning_volume_percent = 2.0;
  const auto window = hardening_window(punch_heat(), rules, range(700, 1250));
  CHECK(window.brief() ==
        "punch heat 7, hardening window, long-hold limit: 943 to 1038 C; floor set by: "
        "C in the matrix at least 0.3 wt%; ceiling set by: M6C at least 2 vol%");
  CHECK(window.at_floor.matrix.weight_percent["C"] ==
        doctest::Approx(0.3).epsilon(1e-6));
  CHECK(window.at_ceiling.volume_percent_of("M6C") ==
        doctest::Approx(2.0).epsilon(1e-6));
  CHECK(window.remarks == std::vector<std::string>{
                              "No start of melting is known of a steel like this: no "
                              "rule keeps the ceiling away from it."});
}

TEST_CASE("no window is an answer") {
  WindowRules rules;
  rules.hardness = quantities::matrix("C");
  rules.least_hardness = 0.5;
  rules.least_pinning_volume_percent = 2.0;
  const auto window = hardening_window(punch_heat(), rules, range(700, 1250));
  CHECK(window.status == WindowStatus::no_window);
  CHECK_FALSE(window.floor);
  CHECK_FALSE(window.at_floor.usable());
  CHECK(
      window.brief() ==
      "punch heat 7, hardening window, long-hold limit: none: no temperature in the "
      "range keeps all rules (no ferrite: 831 to 1250 C; C in the matrix at least 0.5 "
      "wt%: 1144 to 1250 C; carbide at least 2 vol%: 700 to 1088 C)");
}

TEST_CASE("ferrite that comes back at high temperature is a ceiling") {
  const auto window = hardening_window(Steel({{"Cr", 11.0}}), {}, range(800, 1250));
  CHECK(window.floor_rule == WindowRule::ferrite);
  CHECK(window.ceiling_rule == WindowRule::ferrite);
  CHECK_FALSE(has(window.at_ceiling, "ferrite"));
}

TEST_CASE("a window that is searched in part is not called none") {
  SearchOptions search;
  search.progress = [](std::size_t done) { return done < 5; };
  const auto window = hardening_window(punch_heat(), {}, range(700, 1250), {}, search);
  CHECK(window.status == WindowStatus::not_known);
}

TEST_CASE("rules out of their range, all at once") {
  WindowRules rules;
  rules.hardness = quantities::matrix("C");
  rules.least_hardness = INFINITY;
  rules.least_pinning_volume_percent = 0.0;
  rules.solidus_margin = -1.0;
  CHECK_THROWS_WITH_AS(
      hardening_window(punch_heat(), rules, range(700, 1250)),
      "[gibbsteel.input.254] least_hardness: is inf; give a number\n"
      "[gibbsteel.input.254] least_pinning_volume_percent: is 0; give a number above "
      "0, "
      "below 100 [vol%]\n"
      "[gibbsteel.input.254] solidus_margin: is -1; give 0 or more [K]",
      InputError);
}
