/// Between which temperatures a steel can be hardened.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/number_format.hpp"
#include "with_liquid.hpp"

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

const std::string kGrains =
    "Grain growth is not considered, and in practice it often sets the ceiling: "
    "least_pinning_volume_percent asks for carbide that keeps the grains small, "
    "pinning_kind for one kind of it.";
const std::string kPinned =
    "Grain growth is considered by the least volume of carbide alone, which is a "
    "choice: steels that hold little carbide are hardened with less.";
const std::string kHardness =
    "Hardness is not considered: least_hardness asks for as-quenched hardness [HRC], "
    "with hardness for another quantity.";
const std::string kMartensitic =
    "As-quenched hardness is that of a fully martensitic quench, no pearlite, no "
    "bainite: section, quench and hardenability are not considered.";
const std::string kOnlyFerrite =
    " The floor is only where the last ferrite is gone; the matrix may hold too "
    "little carbon there to become hard.";
const std::string kRest =
    "Retained austenite, soak time, section and distortion are not considered.";
const std::string kNoMelting =
    "No start of melting is known of a steel like this: no rule keeps the ceiling away "
    "from it.";
const std::string kLayer =
    " With a liquid in the parameter file it is computed. Lay layers/liquid.json on "
    "it, in Python steel.with_parameters(default_parameters(\"liquid\")).";

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
  CHECK(window.remarks ==
        std::vector<std::string>{kGrains, kHardness + kOnlyFerrite, kRest});
  CHECK(window.text ==
        "835 to 1198 C; floor set by: no ferrite alone; ceiling set by: 30 C below "
        "1228 C, the low end of the start of melting of AISI M2 (HS6-5-2), 1240 C "
        "+-12");
}

TEST_CASE("what is known to be free of melt is a ceiling without a margin") {
  const Steel m42({{"C", 1.08},
                   {"Cr", 3.8},
                   {"Mo", 9.5},
                   {"W", 1.5},
                   {"V", 1.2},
                   {"Co", 8},
                   {"Si", 0.4}});
  for (const double margin : {0.0, 30.0}) {
    WindowRules rules;
    rules.solidus_margin = margin;
    const auto window = hardening_window(m42, rules, range(700, 1250));
    CHECK(window.ceiling->in_celsius() == doctest::Approx(1205.0));
    CHECK(
        window.text ==
        "836 to 1205 C; floor set by: no ferrite alone; ceiling set by: the low end of "
        "what is known to be free of melt of AISI M42 (HS2-9-1-8), 1210 C +-5");
  }
}

TEST_CASE("a steel richer in carbon than one known to be free of melt ends sooner") {
  const auto steel = [](double carbon, const NamedValues& others) {
    NamedValues all{{"C", carbon}};
    for (const auto& [symbol, percent] : others) all.set(symbol, percent);
    return all;
  };
  const NamedValues m42{{"Cr", 3.8}, {"Mo", 9.5}, {"W", 1.5}, {"V", 1.15}, {"Co", 8.0}};
  const NamedValues m7{{"Cr", 3.8}, {"Mo", 8.7}, {"W", 1.75}, {"V", 2.0}};
  const NamedValues m1{{"Cr", 3.8}, {"Mo", 8.5}, {"W", 1.5}, {"V", 1.15}};
  for (const NamedValues& each : {steel(1.15, m42), steel(1.3, m42), steel(1.45, m42),
                                  steel(1.2, m7), steel(1.45, m7), steel(0.95, m1)}) {
    const auto window = hardening_window(Steel(each), {}, range(700, 1250));
    REQUIRE(window.ceiling);
    // Beside the layer with liquid, whose solidus reads up to 30 C high itself.
    const Steel melting(each, {"heat", with_liquid(), false});
    const auto solidus = melting_range(melting, range(1000, 1550)).solidus;
    CAPTURE(each["C"]);
    CHECK(*window.ceiling < solidus.value());
    CHECK(window.text.ends_with(" for more carbon"));
  }
}

TEST_CASE("cobalt leaves the ceiling of a high-speed steel where it is") {
  NamedValues m35 = high_speed().analysis().given;
  m35.set("Co", 4.8);
  const auto window = hardening_window(Steel(m35), {}, range(700, 1250));
  CHECK(window.ceiling_rule == WindowRule::solidus);
  CHECK(window.ceiling->in_celsius() == doctest::Approx(1240.0 - 12.0 - 30.0));
}

TEST_CASE("an end that no rule sets is none, and is not in the answer") {
  const auto window = hardening_window(punch_heat(), {}, range(700, 1250));
  CHECK(
      window.text ==
      "from 824 C; floor set by: no ferrite alone; no ceiling: nothing that was given "
      "sets one up to 1250 C, where the search ended");
  CHECK(window.floor);
  CHECK_FALSE(window.ceiling);
  CHECK(window.at_ceiling.temperature.in_celsius() == doctest::Approx(1250.0));
  const std::string page = window.full();
  CHECK(page.find("\nsearched: 700 to 1250 C\nno ferrite: from 824 C\nfloor: punch "
                  "heat 7 at 824 C (1515 F), ") != std::string::npos);
  CHECK(page.find("\nhigh end of the search: punch heat 7 at 1250 C (2282 F), ") !=
        std::string::npos);
  CHECK(page.find("\nGrain growth is not considered, and in practice it often sets "
                  "the ceiling:\n") != std::string::npos);
  const auto inside = hardening_window(punch_heat(), {}, range(900, 1000));
  CHECK(
      inside.text ==
      "all over the range; no floor: nothing that was given sets one down to 900 C, "
      "where the search began; no ceiling: nothing that was given sets one up to 1000 "
      "C, where the search ended");
  CHECK_FALSE(inside.floor);
}

TEST_CASE("a least hardness alone is that of the estimate, and not kept in ferrite") {
  WindowRules rules;
  rules.least_hardness = 60.0;
  const auto window = hardening_window(punch_heat(), rules, range(700, 1250));
  CHECK(window.floor_rule == WindowRule::hardness);
  CHECK(quantities::hardness_hrc().value(window.at_floor) ==
        doctest::Approx(60.0).epsilon(1e-5));
  CHECK(window.gaps.empty());
  CHECK(window.remarks ==
        std::vector<std::string>{kNoMelting + kLayer, kGrains, kMartensitic, kRest});
  rules.hardness = quantities::hardness_hrc();
  CHECK(hardening_window(punch_heat(), rules, range(700, 1250)).text == window.text);
  rules.least_hardness = 70.0;
  const auto none = hardening_window(punch_heat(), rules, range(700, 1250));
  CHECK(none.status == WindowStatus::no_window);
  CHECK(
      none.text ==
      "none: no temperature in the range, 700 to 1250 C, keeps all rules (no ferrite: "
      "from 824 C; as-quenched hardness at least 70 HRC: nowhere)");
}

TEST_CASE("a least hardness that all austenite has begins where austenite does") {
  WindowRules rules;
  rules.no_ferrite = false;
  rules.least_hardness = 5.0;
  const auto window = hardening_window(punch_heat(), rules, range(700, 1000));
  const auto changes = phase_changes(punch_heat(), range(700, 1000));
  CHECK(window.floor_rule == WindowRule::hardness);
  CHECK(std::abs(window.floor->in_celsius() -
                 changes.ae1.temperature.value().in_celsius()) < 0.02);
}

TEST_CASE("half a rule is refused") {
  WindowRules rules;
  rules.hardness = quantities::hardness_hrc();
  rules.pinning_kind = "MC";
  CHECK_THROWS_WITH_AS(
      hardening_window(punch_heat(), rules, range(700, 1250)),
      "[gibbsteel.input.285] hardness: is 'as-quenched hardness' without a least "
      "value; "
      "give least_hardness in HRC\n"
      "[gibbsteel.input.285] pinning_kind: is 'MC' without a least volume; give "
      "least_pinning_volume_percent, for instance 1",
      InputError);
}

TEST_CASE("temperatures in the unit of the call") {
  SoakOptions options;
  options.temperature_unit = TemperatureUnit::fahrenheit;
  const TemperatureRange fahrenheit{Temperature::fahrenheit(1300),
                                    Temperature::fahrenheit(2250)};
  CHECK(hardening_window(high_speed(), {}, fahrenheit, options).text ==
        "835 to 1198 C (1535 to 2188 F); floor set by: no ferrite alone; ceiling set "
        "by: 30 C (54 F) below 1228 C (2242 F), the low end of the start of melting of "
        "AISI M2 (HS6-5-2), 1240 C +-12 (2264 F +-22)");
}

TEST_CASE("least value and pinning carbide, by rules that the user chooses") {
  WindowRules rules;
  rules.hardness = quantities::matrix("C");
  rules.least_hardness = 0.3;
  rules.pinning_kind = "M6C";
  rules.least_pinning_volume_percent = 2.0;
  const auto window = hardening_window(punch_heat(), rules, range(700, 1250));
  CHECK(window.brief() ==
        "punch heat 7, hardening window, long-hold limit: 940 to 1039 C; floor set by: "
        "C in the matrix at least 0.3 wt%; ceiling set by: M6C at least 2 vol%");
  CHECK(window.at_floor.matrix.weight_percent["C"] ==
        doctest::Approx(0.3).epsilon(1e-6));
  CHECK(window.at_ceiling.volume_percent_of("M6C") ==
        doctest::Approx(2.0).epsilon(1e-6));
  CHECK(window.remarks ==
        std::vector<std::string>{kNoMelting + kLayer, kPinned, kRest});
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
  CHECK(window.brief() ==
        "punch heat 7, hardening window, long-hold limit: none: no temperature in the "
        "range, 700 to 1250 C, keeps all rules (no ferrite: from 824 C; C in the "
        "matrix at "
        "least 0.5 wt%: from 1138 C; carbide at least 2 vol%: up to 1086 C)");
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

namespace {

Steel melting(const NamedValues& weight_percent) {
  return Steel(weight_percent, {"heat", with_liquid(), false});
}

/// Resembles no steel of the file.
const NamedValues kPlain{{"C", 1.2}};

/// The computed solidus [C].
double solidus(const Steel& steel) {
  return melting_range(steel, range(1000, 1550)).solidus.value().in_celsius();
}

std::string degrees(double celsius) { return internal::fixed(celsius, 0) + " C"; }

}  // namespace

TEST_CASE("the computed solidus is a rule where the file has a liquid") {
  const Steel steel = melting(kPlain);
  const double start = solidus(steel);
  const auto window = hardening_window(steel, {}, range(700, 1550));
  CHECK(window.ceiling_rule == WindowRule::melting);
  CHECK(std::abs(window.ceiling->in_celsius() - (start - 30.0 - kSolidusError)) < 0.05);
  CHECK(window.remarks ==
        std::vector<std::string>{kGrains, kHardness + kOnlyFerrite, kRest});
  CHECK(window.text == internal::fixed(window.floor->in_celsius(), 0) + " to " +
                           degrees(start - 30.0 - kSolidusError) +
                           "; floor set by: no ferrite alone; ceiling set by: 30 C "
                           "below " +
                           degrees(start - kSolidusError) +
                           ", the low end of the computed solidus, " + degrees(start) +
                           " +-30");
  const Steel shipped(kPlain, {"heat", {}, false});
  CHECK(hardening_window(shipped, {}, range(700, 1200)).rules.size() == 1);
}

TEST_CASE("a solidus within the margin above the range counts too") {
  const Steel steel = melting(kPlain);
  const double start = solidus(steel);
  const auto near = hardening_window(steel, {}, range(900, start - 10.0));
  CHECK(near.ceiling_rule == WindowRule::melting);
  CHECK(std::abs(near.ceiling->in_celsius() - (start - 30.0 - kSolidusError)) < 0.05);
  const auto far = hardening_window(steel, {}, range(900, start - 70.0));
  CHECK(far.ceiling_rule == WindowRule::range);
  CHECK(far.rules.back().text == "no melting computed up to " + degrees(start - 10.0));
  WindowRules at_once;
  at_once.solidus_margin = 0.0;
  const auto none = hardening_window(steel, at_once, range(900, start - 40.0));
  CHECK(none.ceiling_rule == WindowRule::range);
  CHECK(none.rules.back().text == "no melting computed up to " + degrees(start - 10.0));
}

TEST_CASE("of the computed solidus and what is known the stricter one wins") {
  const NamedValues analysis = high_speed().analysis().given;
  const Steel steel = melting(analysis);
  const auto both = hardening_window(steel, {}, range(700, 1250));
  const double known = 1240.0 - 12.0 - 30.0, computed = solidus(steel) - 30.0;
  CHECK(both.ceiling->in_celsius() == doctest::Approx(std::min(known, computed)));
  REQUIRE(both.rules.size() == 3);
  CHECK(both.rules[1].rule == WindowRule::solidus);
  CHECK(both.rules[2].rule == WindowRule::melting);
  CHECK(both.rules[2].text ==
        "30 C below the computed solidus, " + degrees(computed + 30.0));
  // Without what is known the computed one stands alone, with its error.
  auto without = std::make_shared<ParameterSet>(*with_liquid());
  without->solidus_bounds.clear();
  const auto alone =
      hardening_window(Steel(analysis, {"heat", without, false}), {}, range(700, 1250));
  CHECK(std::abs(alone.ceiling->in_celsius() - (computed - kSolidusError)) < 0.05);
}

TEST_CASE("a range that begins with liquid, and a liquid that is not allowed") {
  const Steel steel = melting(kPlain);
  const double start = solidus(steel);
  const auto none = hardening_window(steel, {}, range(start + 5.0, 1500));
  CHECK(none.status == WindowStatus::no_window);
  CHECK(none.rules.back().text ==
        "30 C below the computed solidus, not above " + degrees(start + 5.0) + " +-30");
  SoakOptions options;
  options.suppressed = {"liquid"};
  const auto forbidden = hardening_window(steel, {}, range(900, 1500), options);
  CHECK(forbidden.rules.size() == 1);
  CHECK(forbidden.remarks ==
        std::vector<std::string>{kNoMelting, kGrains, kHardness, kRest});
}

TEST_CASE("a stopped search leaves the ceiling where nothing is known beyond") {
  SearchOptions search;
  search.progress = [](std::size_t done) { return done < 30; };
  WindowRules rules;
  rules.no_ferrite = false;
  const auto part =
      hardening_window(melting(kPlain), rules, range(900, 1200), {}, search);
  CHECK(part.status == WindowStatus::found);
  CHECK(part.ceiling_rule == WindowRule::unknown);
  CHECK(part.rules.back().text.rfind(
            "30 C below the computed solidus, not known beyond ", 0) == 0);
  REQUIRE(part.remarks.size() == 4);
  const std::string rule = part.rules.back().text;
  const std::string beyond = rule.substr(rule.rfind(", not known beyond ") + 19);
  CHECK(part.remarks.front() ==
        "Not known and left out: above " + beyond + " (cancelled).");
}

TEST_CASE("a least value that is jumped over is kept at the floor") {
  WindowRules rules;
  rules.no_ferrite = false;
  rules.hardness = Quantity("step", "HRC", [](const State& s) {
    return s.temperature.in_celsius() < 1047.3 ? 50.0 : 60.0;
  });
  rules.least_hardness = 55.0;
  const auto window = hardening_window(punch_heat(), rules, range(1000, 1100));
  REQUIRE(window.floor);
  CHECK(std::abs(window.floor->in_celsius() - 1047.3) < SearchOptions{}.tolerance);
  CHECK(rules.hardness->value(window.at_floor) == 60.0);
}
