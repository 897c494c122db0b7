/// Temperatures at which a number of the state has a value.

#include <doctest/doctest.h>

#include <cmath>

#include "first_edition.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/number_format.hpp"
#include "internal/slopes_of_soak.hpp"
#include "messages.hpp"
#include "scan/temperature_scan.hpp"
#include "scan/value_line.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

Temperature celsius(double value) { return Temperature::celsius(value); }

TemperatureRange range(double low, double high) {
  return {celsius(low), celsius(high)};
}

Steel punch_heat() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

}  // namespace

TEST_CASE("matrix carbon: a soak at the temperature has it") {
  const Steel steel = punch_heat();
  const auto found =
      temperature_for(steel, quantities::matrix("C"), 0.46, range(900, 1200));
  CHECK(found.status == TargetStatus::found);
  REQUIRE(found.crossings.size() == 1);
  const Crossing& only = found.crossings[0];
  CHECK(only.kind == CrossingKind::crossing);
  CHECK(only.rising);
  CHECK(only.bracket_width <= 1e-4);
  const State soak = steel.soak(only.temperature);
  CHECK(std::abs(soak.matrix.weight_percent["C"] - 0.46) < 1e-6);
  CHECK(soak.matrix == only.state.matrix);
  CHECK(found.text == "C in the matrix is 0.46 wt% at 1105 C (rising, at least +-9 C)");
}

TEST_CASE("a value that is passed on the way up and on the way down") {
  const Steel steel({{"Cr", 11.0}});  // ferrite below and above the austenite
  const Quantity austenite = quantities::volume_percent("austenite");
  const auto found = temperature_for(steel, austenite, 50.0, range(850, 1250));
  REQUIRE(found.crossings.size() == 2);
  CHECK(found.crossings[0].rising);
  CHECK_FALSE(found.crossings[1].rising);
  // The sign changes of a scan of single soaks at 0.5 K are these.
  std::size_t changes = 0;
  double last = austenite.value(steel.soak(celsius(850))) - 50.0;
  for (double t = 850.5; t <= 1250.0; t += 0.5) {
    const double next = austenite.value(steel.soak(celsius(t))) - 50.0;
    if (last * next < 0.0) {
      REQUIRE(changes < found.crossings.size());
      const double at = found.crossings[changes].temperature.in_celsius();
      CHECK(at >= t - 0.5);
      CHECK(at <= t);
      ++changes;
    }
    last = next;
  }
  CHECK(changes == 2);
}

TEST_CASE("two crossings between two nodes of the search") {
  // Ferrite and austenite over the whole range: no phase change to help.
  SearchOptions coarse;
  coarse.node_spacing = 100.0;
  const Steel steel({{"Cr", 12.0}});
  const Quantity austenite = quantities::volume_percent("austenite");
  const auto fine = temperature_for(steel, austenite, 20.0, range(898, 1121));
  const auto found =
      temperature_for(steel, austenite, 20.0, range(898, 1121), {}, coarse);
  REQUIRE(found.crossings.size() == fine.crossings.size());
  CHECK(fine.crossings.size() == 2);
  for (std::size_t i = 0; i < found.crossings.size(); ++i)
    CHECK(std::abs(found.crossings[i].temperature.in_kelvin() -
                   fine.crossings[i].temperature.in_kelvin()) < 1e-3);
}

TEST_CASE("a jump across the value is told as such") {
  const Steel steel({{"C", 0.4}});
  const auto found = temperature_for(steel, quantities::volume_percent("ferrite"), 70,
                                     range(700, 800));
  REQUIRE(found.crossings.size() == 1);
  CHECK(found.crossings[0].kind == CrossingKind::jump);
  CHECK_FALSE(found.crossings[0].rising);
  CHECK(found.status == TargetStatus::jumps_over);
  CHECK(found.text == "ferrite jumps over 70 vol% at 727 C (from 94.16 to 48.27 vol%)");
  CHECK(found.full().find("727 C (jump from 94.16 vol% to 48.27 vol%)") !=
        std::string::npos);
}

TEST_CASE("a jump where no phase changes is no crossing, a steep slope is one") {
  const auto from_1100 = [](const State& s) {
    return s.temperature.in_celsius() - 1100;
  };
  const Quantity step("step", "",
                      [&](const State& s) { return from_1100(s) < 0.0 ? 1.0 : 3.0; });
  const auto over = temperature_for(punch_heat(), step, 2.0, range(1050, 1150));
  CHECK(over.status == TargetStatus::jumps_over);
  CHECK(over.brief() ==
        "punch heat 7, 1050 to 1150 C, long-hold limit: jumps over: step jumps over 2 "
        "at 1100 C (from 1 to 3)");
  REQUIRE(over.crossings.size() == 1);
  CHECK(over.crossings[0].below == 1.0);
  CHECK(over.crossings[0].above == 3.0);
  const Quantity steep("steep", "", [&](const State& s) {
    return 2.0 + std::tanh(10.0 * from_1100(s));
  });
  const auto found = temperature_for(punch_heat(), steep, 2.5, range(1050, 1150));
  CHECK(found.status == TargetStatus::found);
  REQUIRE(found.crossings.size() == 1);
  CHECK(found.crossings[0].kind == CrossingKind::crossing);
}

TEST_CASE("why there is none") {
  const Steel steel = punch_heat();
  const auto never =
      temperature_for(steel, quantities::matrix("C"), 0.7, range(900, 1200));
  CHECK(never.status == TargetStatus::never_reached);
  CHECK(never.crossings.empty());
  CHECK(never.text ==
        "C in the matrix is between 0.2716 wt% (900 C) and 0.55 wt% (1176 C) in the "
        "range and never 0.7 wt%");
  // What is known of the ends of the range is known of the answer.
  CHECK(never.low.temperature == celsius(900));
  CHECK(never.high.temperature == celsius(1200));
  CHECK(never.warnings() == internal::distinct_warnings({&never.low, &never.high}));
  CHECK(codes(never.high) == std::vector<std::string>{"303"});
  CHECK(never.full().find("! [gibbsteel.warning.303] ") != std::string::npos);
  const auto always =
      temperature_for(steel, quantities::mass_percent("M2C"), 0.0, range(700, 1250));
  CHECK(always.status == TargetStatus::always_equal);
  CHECK(always.text == "M2C is 0 mass% in the whole range");
  const auto without = temperature_for(
      Steel({{"Cr", 4.5}}), quantities::carbon_activity(), 0.5, range(800, 900));
  CHECK(without.status == TargetStatus::not_computable);
  CHECK(without.text == "carbon activity has no value anywhere in the range");
  SearchOptions stop;
  stop.progress = [](std::size_t done) { return done < 4; };
  const auto part =
      temperature_for(steel, quantities::matrix("C"), 0.5, range(900, 1200), {}, stop);
  CHECK(part.status == TargetStatus::not_known);
  CHECK(part.stopped == "cancelled");
}

TEST_CASE("where there is no value, nothing is unknown") {
  const Steel steel({{"C", 0.4}, {"Cr", 5.0}, {"Mo", 1.35}, {"V", 1.0}, {"Si", 1.0}},
                    {"H13", {}, false});
  const auto found =
      temperature_for(steel, quantities::hardness_hrc(), 52, range(700, 1200));
  CHECK(found.complete());
  CHECK(found.gaps.empty());
  REQUIRE(found.no_value.size() == 2);
  CHECK(found.no_value[0].low == celsius(700));
  CHECK(found.no_value[0].reason == "no austenite");
  CHECK(found.no_value[1].reason == "the quantity has no value there");
  const auto whole = [](Temperature t) { return internal::fixed(t.in_celsius(), 0); };
  // Narrower than a degree.
  const std::string end =
      "; no value below " + whole(found.no_value[0].high) +
      " C: no austenite; no value from " +
      internal::fixed(found.no_value[1].low.in_celsius(), 2) + " to " +
      internal::fixed(found.no_value[1].high.in_celsius(), 2) + " C";
  CHECK(found.text.ends_with(end));
  CHECK(found.full().find("NOT KNOWN") == std::string::npos);
  const auto never =
      temperature_for(steel, quantities::hardness_hrc(), 69, range(700, 1200));
  CHECK(never.status == TargetStatus::never_reached);
  CHECK(never.text.ends_with(" in the range and never 69 HRC" + end));
  const auto in_m6c = temperature_for(punch_heat(), quantities::in_phase("M6C", "Mo"),
                                      90, range(1100, 1200));
  CHECK(in_m6c.no_value.back().reason == "no M6C");
  CHECK(in_m6c.text.ends_with("; no value above " + whole(in_m6c.no_value.back().low) +
                              " C: no M6C"));
}

TEST_CASE("a soak without a result is not known, one without a value is") {
  const auto scan = internal::scan_temperatures(punch_heat(), range(900, 1200), {}, {});
  internal::ValueLine line;
  line.scan = &scan.scan;
  line.length = 300.0;
  line.tolerance = 0.01 / line.length;
  line.solve = [&](double s) { return scan.problem.solve(scan.at(s)); };
  line.state = [&](double s, const Equilibrium& result) {
    const double at = scan.at(s).in_celsius();
    return at > 1001 && at < 1049 ? State{} : scan.problem.state_of(result);
  };
  line.slope = [&](double, const Equilibrium& result, const State& state) {
    const auto slopes = internal::slopes_of_soak(
        scan.problem, result, state, {std::vector<std::string>{}, {}, false});
    return slopes.empty() ? std::nullopt : std::optional(slopes.front());
  };
  const Quantity most("most", "C", [](const State& state) {
    const double at = state.temperature.in_celsius();
    return at > 1101 && at < 1149 ? std::nan("") : at;
  });
  const auto found = internal::search_line(line, most, 1075.0);
  CHECK(found.crossings.size() == 1);
  REQUIRE(found.gaps.size() == 1);
  CHECK(found.gaps[0].reason == "minimize() was not run");
  CHECK(std::abs(scan.at(found.gaps[0].from).in_celsius() - 1001.0) < 0.01);
  CHECK(std::abs(scan.at(found.gaps[0].to).in_celsius() - 1049.0) < 0.01);
  REQUIRE(found.no_value.size() == 1);
  CHECK(found.no_value[0].reason == "the quantity has no value there");
  CHECK(std::abs(scan.at(found.no_value[0].from).in_celsius() - 1101.0) < 0.01);
  CHECK(std::abs(scan.at(found.no_value[0].to).in_celsius() - 1149.0) < 0.01);
}

TEST_CASE("a value that is kept from a phase change on") {
  const auto found = temperature_for(punch_heat(), quantities::volume_percent("M6C"),
                                     0.0, range(1100, 1200));
  CHECK(found.status == TargetStatus::found);
  REQUIRE(found.crossings.size() == 1);
  CHECK(found.crossings[0].bracket_width > 0.0);  // located no closer than the change
  CHECK(found.crossings[0].bracket_width <= 0.01);
  REQUIRE(found.equal.size() == 1);
  CHECK(found.equal[0].high == celsius(1200));
  CHECK(found.text ==
        "M6C is 0 vol% at 1168 C (falling), and all the way from 1168 C to 1200 C");
}

TEST_CASE("any function of a state, without a slope of its own") {
  const Quantity ratio("Mo + W/2 in the matrix", "wt%", [](const State& s) {
    return s.matrix.weight_percent["Mo"] + 0.5 * s.matrix.weight_percent["W"];
  });
  const Steel steel = punch_heat();
  const auto found = temperature_for(steel, ratio, 3.0, range(900, 1200));
  REQUIRE(found.crossings.size() == 1);
  CHECK(std::abs(ratio.value(steel.soak(found.crossings[0].temperature)) - 3.0) < 1e-5);
}

TEST_CASE("matching temperature: the same matrix carbon in another steel") {
  const State reference = punch_heat().soak(celsius(1120));
  const Steel other = punch_heat().changed({{"C", 0.65}, {"Co", 3.0}}, "punch heat 8");
  const auto match =
      matching_temperature(reference, other, quantities::matrix("C"), range(900, 1250));
  CHECK(match.value == reference.matrix.weight_percent["C"]);
  REQUIRE(match.search.crossings.size() == 1);
  const State there = other.soak(match.search.crossings[0].temperature);
  CHECK(std::abs(there.matrix.weight_percent["C"] - match.value) < 1e-6);
  CHECK(match.brief() ==
        "as punch heat 7 at 1120 C (C in the matrix 0.4783 wt%): punch heat 8, 900 to "
        "1250 C, long-hold limit: found: C in the matrix is 0.4783 wt% at 1076 C "
        "(rising, at least +-2 C)");
  const State before = Steel(reference.analysis.given, {"old", first_edition(), false})
                           .soak(celsius(1120));
  const auto across =
      matching_temperature(before, other, quantities::matrix("C"), range(900, 1250));
  CHECK(
      across.brief().starts_with("as old at 1120 C (C in the matrix 0.467 wt%; made "
                                 "with Tool steels: Fe C Cr Mo W V Co Ni Mn Si "
                                 "(edition 2026-11-25)): punch heat 8"));
  CHECK_THROWS_WITH_AS(
      matching_temperature(State{}, other, quantities::matrix("C"), range(900, 1250)),
      "[gibbsteel.input.253] reference: the state is not usable: minimize() was not "
      "run; choose a soak with a usable result, or another quantity",
      InputError);
}

TEST_CASE("wrong values") {
  CHECK_THROWS_WITH_AS(
      temperature_for(punch_heat(), quantities::matrix("C"), std::nan(""),
                      range(900, 1200)),
      "[gibbsteel.input.252] value: is nan; give the number that the quantity is to "
      "have",
      InputError);
  CHECK_THROWS_AS(temperature_for(punch_heat(), quantities::volume_percent("M6"), 1.0,
                                  range(900, 910)),
                  InputError);
}

TEST_CASE("in a melting steel a crossing says so, and no matrix has no carbon") {
  const Steel steel({{"C", 0.8}}, {"heat", with_liquid(), false});
  const auto melting = melting_range(steel, melting_search_range(*with_liquid()));
  const double from = melting.solidus.value().in_celsius(),
               to = melting.liquidus.value().in_celsius();
  const State half = steel.soak(Temperature::celsius(0.5 * (from + to)));
  const double carbon = half.matrix.weight_percent["C"];
  const auto found = temperature_for(
      steel, quantities::matrix("C"), carbon,
      {Temperature::celsius(from - 5.0), Temperature::celsius(to + 5.0)});
  REQUIRE(found.crossings.size() == 1);
  CHECK(found.text == "C in the matrix is " + internal::significant(carbon, 4) +
                          " wt% at " + internal::fixed(0.5 * (from + to), 0) +
                          " C (falling, partly molten); no value above " +
                          internal::fixed(to, 0) + " C: no austenite");
  CHECK(found.complete());
  const State molten = steel.soak(Temperature::celsius(to + 5.0));
  CHECK(std::isnan(quantities::matrix("C").value(molten)));
  CHECK(quantities::matrix("Cr").value(half) == 0.0);
  const std::vector<double> compositions{0.8};
  ScreenOptions options;
  options.parameters = with_liquid();
  const auto table = screen(
      {{"C"}, compositions, {Temperature::celsius(from), molten.temperature}}, options);
  const std::size_t columns = table.elements.size();
  CHECK(table.matrix_weight_percent[columns] != table.matrix_weight_percent[columns]);
  CHECK(table.matrix_weight_percent[0] > 90.0);
}
