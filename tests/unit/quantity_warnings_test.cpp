/// What hardening estimates say about themselves stays with them: whatever takes them
/// as quantities hands it on.

#include <doctest/doctest.h>

#include <algorithm>
#include <array>

#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

using Texts = std::vector<std::string>;

/// Much carbon in the austenite when hot, ferrite beside it when not hot enough.
Steel bearing() {
  return Steel({{"C", 1.0}, {"Cr", 1.5}, {"Mn", 0.35}, {"Si", 0.25}},
               {"bearing", {}, false});
}

Temperature celsius(double degrees) { return Temperature::celsius(degrees); }

/// "331: text" of the codes 330 to 338.
Texts told(const std::vector<Warning>& warnings) {
  Texts texts;
  for (const Warning& warning : warnings) {
    const std::string number = warning.code.substr(warning.code.rfind('.') + 1);
    if (number >= "330" && number <= "338")
      texts.push_back(number + ": " + warning.text);
  }
  return texts;
}

Texts of_hardening(const State& state) { return told(hardening(state).warnings); }

/// Without those that were told before.
Texts joined(Texts texts, const Texts& more) {
  for (const std::string& text : more)
    if (std::find(texts.begin(), texts.end(), text) == texts.end())
      texts.push_back(text);
  return texts;
}

bool has(const Texts& texts, const std::string& number) {
  return std::any_of(texts.begin(), texts.end(), [&](const std::string& text) {
    return text.rfind(number + ": ", 0) == 0;
  });
}

}  // namespace

TEST_CASE("estimates as quantities: their warnings are those of the estimates") {
  const State hot = bearing().soak(celsius(860));
  REQUIRE(has(of_hardening(hot), "331"));
  REQUIRE(has(of_hardening(hot), "336"));
  CHECK(told(quantities::hardness_hrc().warnings(hot)) == of_hardening(hot));
  CHECK(quantities::matrix("C").warnings(hot).empty());
  // With a family that is named they are told as well.
  HardeningOptions options;
  options.family = "general";
  CHECK(told(quantities::hardness_hrc(options).warnings(hot)) ==
        told(hardening(hot, options).warnings));
}

TEST_CASE("estimates as quantities: of ranges only those that the number rests on") {
  const State hot = bearing().soak(celsius(860));
  const auto range_of = [&](const Quantity& quantity) {
    for (const std::string& text : told(quantity.warnings(hot)))
      if (text.rfind("331", 0) == 0) return text;
    return std::string();
  };
  const std::string start = range_of(quantities::martensite_start());
  CHECK(start.find("exponential-mean") != std::string::npos);
  CHECK(start.find("carbon-quadratic") == std::string::npos);
  CHECK(range_of(quantities::hardness_hrc()).find("carbon-quadratic") !=
        std::string::npos);
  CHECK(range_of(quantities::retained_austenite()).find("carbon-quadratic") ==
        std::string::npos);
}

TEST_CASE("estimates as quantities: by their own options") {
  const State hot = bearing().soak(celsius(1100));
  HardeningOptions warm;
  warm.coldest = celsius(150);
  CHECK(has(told(quantities::hardness_hrc(warm).warnings(hot)), "332"));
  CHECK_FALSE(has(told(quantities::hardness_hrc().warnings(hot)), "332"));
}

TEST_CASE("estimates as quantities: a hardening window") {
  WindowRules rules;
  rules.least_hardness = 64.0;
  const auto window = hardening_window(bearing(), rules, {celsius(700), celsius(860)});
  const Texts expected =
      joined(of_hardening(window.at_floor), of_hardening(window.at_ceiling));
  REQUIRE(has(expected, "336"));
  CHECK(told(window.warnings()) == expected);
  CHECK(window.full().find("! [gibbsteel.warning.336] A soak of minutes can leave") !=
        std::string::npos);
  rules.hardness = quantities::matrix("C");
  rules.least_hardness = 0.6;
  CHECK(
      told(hardening_window(bearing(), rules, {celsius(700), celsius(860)}).warnings())
          .empty());
}

TEST_CASE("estimates as quantities: searches") {
  const auto hardness = quantities::hardness_hrc();
  const auto found =
      temperature_for(bearing(), hardness, 64.0, {celsius(700), celsius(800)});
  REQUIRE(found.crossings.size() == 1);
  CHECK(told(found.warnings()) == of_hardening(found.crossings[0].state));
  CHECK(has(told(found.warnings()), "336"));
  CHECK(found.full().find("! [gibbsteel.warning.336] A soak of minutes can leave") !=
        std::string::npos);
  // Without a crossing those of the ends; nothing where there is no number.
  const auto none =
      temperature_for(bearing(), hardness, 90.0, {celsius(650), celsius(800)});
  CHECK(none.crossings.empty());
  CHECK(told(none.warnings()) == of_hardening(none.high));
  const auto start = quantities::martensite_start();
  const auto carbon =
      composition_for(bearing(), "Cr", start, start.value(bearing().soak(celsius(850))),
                      {1.0, 1.8}, celsius(850));
  REQUIRE(carbon.crossings.size() == 1);
  CHECK(has(told(carbon.warnings()), "336"));
  const auto match = matching_temperature(bearing().soak(celsius(850)), bearing(),
                                          start, {celsius(800), celsius(900)});
  CHECK(has(told(match.warnings()), "336"));
}

TEST_CASE("estimates as quantities: tables, state by state") {
  const std::array states{bearing().soak(celsius(770)), bearing().soak(celsius(860))};
  const std::array hardness{quantities::hardness_hrc()};
  const Comparison table = compare(states, hardness);
  for (std::size_t i = 0; i < states.size(); ++i)
    CHECK(told(table.warnings_of(i)) == of_hardening(states[i]));
  CHECK(told(compare(states).warnings()).empty());
  const SoakGrid grid =
      soak_grid(bearing(), SweptVariable::element("Cr", {1.4, 1.6}),
                SweptVariable::element("Si", {0.2, 0.4}), celsius(860));
  const Texts texts = told(grid.warnings_of(hardness[0]));
  // Of each code the first.
  CHECK(texts == of_hardening(*grid.at(0, 0)));
  CHECK(told(grid.warnings_of(quantities::matrix("C"))).empty());
}

TEST_CASE("estimates as quantities: a screen counts them") {
  const std::vector<double> numbers{1.0, 1.5, 0.4, 1.0};
  ScreenInput input;
  input.elements = {"C", "Cr"};
  input.compositions = numbers;
  input.temperatures = {celsius(860)};
  ScreenOptions options;
  options.parameters = default_parameters();
  options.quantities = {quantities::hardness_hrc()};
  const auto counted = screen(input, options).count_warnings();
  CHECK(counted.at("gibbsteel.warning.336") == 1);
  CHECK(counted.at("gibbsteel.warning.331") == 1);
  options.quantities.clear();
  CHECK(screen(input, options).count_warnings().count("gibbsteel.warning.336") == 0);
}

TEST_CASE("estimates as quantities: bands and designs") {
  const auto hardness = quantities::hardness_hrc();
  ToleranceOptions tolerance;
  tolerance.samples = 0;
  tolerance.corners = false;
  HeatTolerances limits;
  limits.ranges = {{"C", 0.98, 1.02}};
  const auto band =
      tolerance_band(bearing(), celsius(860), limits, {hardness}, tolerance);
  CHECK(told(band.warnings) == of_hardening(band.nominal));
  const Design result =
      design(bearing(), {{"Cr", {1.2, 1.8}}},
             {{hardness, celsius(860), TargetSense::at_least, 60.0, 0.5}});
  CHECK(told(result.warnings()) == of_hardening(result.states[0]));
}
