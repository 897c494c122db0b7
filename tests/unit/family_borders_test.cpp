/// Hardening estimates jump where the family of the steel changes: whatever takes them
/// says so.

#include <doctest/doctest.h>

#include <array>

#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1040);
const std::string kNear =
    "The steel is near the border of the family high-speed; hardening estimates jump "
    "there. Compare with: general.";
const std::string kNearGeneral =
    "The steel is near the border of the family general; hardening estimates jump "
    "there. Compare with: high-speed.";
const std::string kBoth =
    "The steels are of the families general and high-speed: hardening estimates jump "
    "from one to the other.";
const std::string kAcross =
    "Hardening estimates jump where the family of the steel changes: at 2.00 wt% Mo "
    "(from general to high-speed).";

/// High-speed family from 2 % molybdenum on.
Steel five_chromium(double molybdenum) {
  return Steel({{"C", 1.0}, {"Cr", 5.0}, {"Mo", molybdenum}, {"V", 2.0}},
               {"x", {}, false});
}

/// Of the two codes, in order.
std::vector<std::string> told(const std::vector<Warning>& warnings) {
  std::vector<std::string> texts;
  for (const Warning& warning : warnings)
    if (warning.code == "gibbsteel.warning.335" ||
        warning.code == "gibbsteel.warning.357")
      texts.push_back(warning.text);
  return texts;
}

using Texts = std::vector<std::string>;

Quantity of_family(const std::string& key) {
  HardeningOptions options;
  options.family = key;
  return quantities::retained_austenite(options);
}

}  // namespace

TEST_CASE("family borders: which quantities rest on the family") {
  CHECK(quantities::martensite_start().by_family());
  CHECK(quantities::retained_austenite().by_family());
  CHECK(quantities::hardness_hv().by_family());
  CHECK(quantities::hardness_hrc().by_family());
  CHECK_FALSE(of_family("general").by_family());
  CHECK_FALSE(quantities::matrix("C").by_family());
}

TEST_CASE("family borders: a comparison across one, and near one") {
  const std::array steels{five_chromium(1.5), five_chromium(2.05)};
  const std::array temperatures{kSoak};
  const std::array hardness{quantities::hardness_hrc()};
  const Comparison table = compare(steels, temperatures, hardness);
  CHECK(told(table.warnings()) == Texts{kBoth, kNear});
  CHECK(told(table.warnings_of(0)) == Texts{kBoth});
  CHECK(told(table.warnings_of(1)) == Texts{kNear, kBoth});
  CHECK(table.full().find("! A, B: [gibbsteel.warning.357] The steels are of the "
                          "families general and\n") != std::string::npos);
  const std::array named{of_family("general"), quantities::matrix("C")};
  CHECK(told(compare(steels, temperatures, named).warnings()).empty());
}

TEST_CASE("family borders: a search along a composition") {
  const auto search = [](const Quantity& quantity, double value, double low) {
    return composition_for(five_chromium(1.9), "Mo", quantity, value, {low, 3.0},
                           kSoak);
  };
  const CompositionSearch across = search(quantities::retained_austenite(), 20.0, 1.0);
  CHECK(told(across.warnings()).back() == kAcross);
  CHECK(across.full().find("! [gibbsteel.warning.357] Hardening estimates jump where "
                           "the family of the\n") != std::string::npos);
  CHECK(told(search(of_family("general"), 9.0, 1.0).warnings()).empty());
  CHECK(told(search(quantities::hardness_hrc(), 1.0, 2.5).warnings()).empty());
}

TEST_CASE("family borders: every border of a range, in its order") {
  const Steel steel({{"C", 1.0}, {"Mo", 0.5}, {"V", 0.3}}, {"x", {}, false});
  const CompositionSearch found = composition_for(
      steel, "Cr", quantities::hardness_hrc(), 20.0, {0.5, 13.0}, kSoak);
  CHECK(told(found.warnings()).back() ==
        "Hardening estimates jump where the family of the steel changes: at 2.00 wt% "
        "Cr (from bearing to general), 10.50 wt% Cr (from general to "
        "chromium-cold-work) and 12.00 wt% Cr (from chromium-cold-work to "
        "stainless).");
}

TEST_CASE("family borders: temperatures") {
  const TemperatureRange range{Temperature::celsius(1000), Temperature::celsius(1060)};
  const auto start = quantities::martensite_start();
  const double wanted = start.value(five_chromium(2.05).soak(kSoak));
  const auto near = temperature_for(five_chromium(2.05), start, wanted, range);
  CHECK(told(near.warnings()) == Texts{kNear});
  CHECK(near.full().find("! [gibbsteel.warning.335] The steel is near the border of") !=
        std::string::npos);
  CHECK(told(temperature_for(five_chromium(2.5), start, wanted, range).warnings())
            .empty());
  const auto match = matching_temperature(five_chromium(1.5).soak(kSoak),
                                          five_chromium(2.5), start, range);
  CHECK(told(match.warnings()) == Texts{kBoth});
  CHECK(match.full().find("! [gibbsteel.warning.357] The steels are of the families "
                          "general and\n") != std::string::npos);
  WindowRules rules;
  rules.hardness = quantities::hardness_hrc();
  rules.least_hardness = 50.0;
  CHECK(told(hardening_window(five_chromium(2.05), rules, range).warnings()) ==
        Texts{kNear});
}

TEST_CASE("family borders: a grid across one") {
  const SoakGrid grid =
      soak_grid(five_chromium(1.5), SweptVariable::element("Mo", {1.5, 1.95, 2.5}),
                SweptVariable::element("Si", {0.2, 0.4}), kSoak);
  CHECK(told(grid.warnings_of(quantities::hardness_hrc())) ==
        Texts{kNearGeneral, kBoth});
  CHECK(told(grid.warnings_of(quantities::matrix("C"))).empty());
}

TEST_CASE("family borders: rows of a screen count them") {
  const std::vector<std::string> elements{"C", "Cr", "V", "Mo"};
  const std::vector<double> numbers{1.0, 5.0,  2.0, 1.5, 1.0, 5.0,
                                    2.0, 1.95, 1.0, 5.0, 2.0, 2.5};
  const std::vector<Temperature> temperatures{kSoak};
  const ScreenInput input{elements, numbers, temperatures, false};
  ScreenOptions options;
  const std::vector<std::int32_t> plain = screen(input, options).warnings;
  options.quantities = {quantities::hardness_hrc()};
  const std::vector<std::int32_t> more = screen(input, options).warnings;
  REQUIRE(more.size() == 3);
  CHECK(more[0] == plain[0] + 1);  // several families in the block
  CHECK(more[1] == plain[1] + 2);  // and near the border
  CHECK(more[2] == plain[2] + 1);
  options.quantities = {of_family("general")};
  CHECK(screen(input, options).warnings == plain);
}

TEST_CASE("family borders: bands, and a design") {
  HeatTolerances tolerances;
  tolerances.ranges.push_back({"Mo", 1.8, 2.6});
  ToleranceOptions few;
  few.samples = 8;
  const auto band = tolerance_band(five_chromium(2.05), kSoak, tolerances,
                                   {quantities::hardness_hrc()}, few);
  CHECK(told(band.warnings) == Texts{kNear, kAcross});
  ParameterBandOptions options;
  options.samples = 8;
  CHECK(told(parameter_band(five_chromium(2.05), kSoak, {quantities::hardness_hrc()},
                            options)
                 .warnings) == Texts{kNear});
  const std::vector<DesignTarget> targets{
      {quantities::martensite_start(), kSoak, TargetSense::at_least, 100.0, 1.0}};
  const Design made = design(five_chromium(2.05), {{"Mo", {1.5, 3.0}}}, targets);
  CHECK(told(made.warnings()).back() == kAcross);
}
