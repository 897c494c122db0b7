/// Hardening estimates go over from one family of steels to the next near a border,
/// Eq. (H29), without a jump: whatever takes them says so.

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "internal/family_mix.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1040);
const std::string kBoth =
    "The steels are of the families general and high-speed: their hardening estimates "
    "have offsets and errors of their own.";
const std::string kAcross =
    "Hardening estimates go over from one family of steels to the next: at 2.00 wt% Mo "
    "(from general to high-speed).";

/// At 2.05 and 1.95 % molybdenum.
std::string near(const char* shares) {
  return "The steel is near the border of its family: hardening estimates lie between "
         "those of " +
         std::string(shares) + ". Name a family to take it alone.";
}
const std::string kNear = near("high-speed (68 %) and general (32 %)");
const std::string kNearGeneral = near("general (68 %) and high-speed (32 %)");

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
  CHECK(across.full().find("! [gibbsteel.warning.357] Hardening estimates go over "
                           "from one family of\n") != std::string::npos);
  CHECK(told(search(of_family("general"), 9.0, 1.0).warnings()).empty());
  CHECK(told(search(quantities::hardness_hrc(), 1.0, 2.5).warnings()).empty());
}

TEST_CASE("family borders: every border of a range, in its order") {
  const Steel steel({{"C", 1.0}, {"Mo", 0.5}, {"V", 0.3}}, {"x", {}, false});
  const CompositionSearch found = composition_for(
      steel, "Cr", quantities::hardness_hrc(), 20.0, {0.5, 13.0}, kSoak);
  CHECK(told(found.warnings()).back() ==
        "Hardening estimates go over from one family of steels to the next: at 2.00 "
        "wt% Cr (from bearing to general), 10.50 wt% Cr (from general to "
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

TEST_CASE("family borders: shares sum to 1, are whole away from borders, and go over") {
  using internal::family_shares;
  const NamedValues m2{{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};
  const auto whole = family_shares(m2);
  REQUIRE(whole.size() == 1);
  CHECK(whole[0].family->key == "high-speed");
  CHECK(whole[0].share.value == 1.0);
  // Half of a bound that stands alone; all of 440C is stainless, all of D2 is not.
  const auto half = family_shares({{"C", 1.0}, {"Cr", 5.0}, {"Mo", 2.0}});
  REQUIRE(half.size() == 2);
  CHECK(half[0].share.value == doctest::Approx(0.5));
  CHECK(family_shares({{"C", 1.0}, {"Cr", 17.0}}).front().family->key == "stainless");
  CHECK(family_shares({{"C", 1.5}, {"Cr", 12.0}}).size() == 1);
  for (const double chromium : {2.1, 2.9, 6.3, 9.9, 10.5, 11.3})
    for (const double molybdenum : {0.55, 0.65, 1.9, 2.1}) {
      double sum = 0.0;
      for (const auto& s :
           family_shares({{"C", 0.8}, {"Cr", chromium}, {"Mo", molybdenum}}))
        sum += s.share.value;
      CHECK(sum == doctest::Approx(1.0));
    }
}

TEST_CASE(
    "family borders: the largest share is that of the rule, where one bound counts") {
  for (double molybdenum = 1.7; molybdenum < 2.35; molybdenum += 0.04) {
    const NamedValues steel{{"C", 1.0}, {"Cr", 5.0}, {"Mo", molybdenum}};
    const auto shares = internal::family_shares(steel);
    const auto largest = std::max_element(
        shares.begin(), shares.end(),
        [](const auto& a, const auto& b) { return a.share.value < b.share.value; });
    CHECK(largest->family->key == hardening_family_of(steel).key);
  }
}

TEST_CASE("family borders: estimates have no jump, and exact slopes across one") {
  double before = 0.0;
  for (int i = 0; i <= 120; ++i) {
    const State state = five_chromium(1.7 + 0.005 * i).soak(kSoak);
    const double start = hardening(state).martensite_start.value;
    // 69 C in all over 0.4 % Mo: 1.3 C a step at the steepest, and what Mo does.
    if (i > 0) CHECK(std::abs(start - before) < 1.6);
    before = start;
  }
  const double step = 1e-4;
  for (const double molybdenum : {1.85, 2.0, 2.12})
    for (const Quantity& quantity :
         {quantities::martensite_start(), quantities::retained_austenite(),
          quantities::hardness_hv()}) {
      const auto all = sensitivities(five_chromium(molybdenum), kSoak);
      const double slope = quantity.slope(all.state, all.at("Mo"));
      const double up = quantity.value(five_chromium(molybdenum + step).soak(kSoak));
      const double down = quantity.value(five_chromium(molybdenum - step).soak(kSoak));
      CHECK(slope == doctest::Approx((up - down) / (2.0 * step)).epsilon(1e-4));
    }
}

TEST_CASE("family borders: the error spans the families where they lie apart") {
  HardeningOptions one;
  one.family = "general";
  const State state = five_chromium(2.0).soak(kSoak);
  const auto width = [&](const HardeningEstimates& e) {
    return e.martensite_start.high - e.martensite_start.low;
  };
  CHECK(width(hardening(state, one)) == doctest::Approx(60.0));
  // 30 C of each, and half of 69 C to either side.
  CHECK(width(hardening(state)) == doctest::Approx(2.0 * std::hypot(30.0, 34.5)));
}
