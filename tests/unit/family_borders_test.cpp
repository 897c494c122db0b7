/// Hardening estimates go over from one family of steels to the next near a border,
/// Eq. (H29), without a jump: whatever takes them says so.

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "internal/family_borders.hpp"
#include "internal/family_mix.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1040);
const std::string kBoth =
    "The steels are of the families general and high-speed: their hardening estimates "
    "have offsets and errors of their own.";
const std::string kAcross =
    "Hardening estimates go over from one family of steels to the next from 2.02 to "
    "3.18 "
    "wt% Mo (general to high-speed): that is no effect of Mo alone.";

/// At 2.7 and 2.5 % molybdenum.
std::string near(const char* shares) {
  return "The steel is near the border of its family: hardening estimates lie between "
         "those of " +
         std::string(shares) + ". Name a family to take it alone.";
}
const std::string kNear = near("high-speed (59 %) and general (41 %)");
const std::string kNearGeneral = near("general (59 %) and high-speed (41 %)");

/// Of the high-speed family from 3.4 % molybdenum on, of none of it below 1.8.
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
  const std::array steels{five_chromium(1.5), five_chromium(2.7)};
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
    return composition_for(five_chromium(1.9), "Mo", quantity, value, {low, 4.0},
                           kSoak);
  };
  const CompositionSearch across = search(quantities::retained_austenite(), 20.0, 1.0);
  CHECK(told(across.warnings()).back() == kAcross);
  CHECK(across.full().find("! [gibbsteel.warning.357] Hardening estimates go over "
                           "from one family of\n") != std::string::npos);
  CHECK(told(search(of_family("general"), 9.0, 1.0).warnings()).empty());
  CHECK(told(search(quantities::hardness_hrc(), 1.0, 3.5).warnings()).empty());
}

TEST_CASE("family borders: every border of a range, in its order") {
  const Steel steel({{"C", 1.0}, {"Mo", 0.5}, {"V", 0.3}}, {"x", {}, false});
  const CompositionSearch found = composition_for(
      steel, "Cr", quantities::hardness_hrc(), 20.0, {0.5, 13.0}, kSoak);
  CHECK(
      told(found.warnings()).back() ==
      "Hardening estimates go over from one family of steels to the next from 1.85 to "
      "2.15 wt% Cr (bearing to general), 9.73 to 11.27 wt% Cr (general to "
      "chromium-cold-work) and 11.48 to 12.51 wt% Cr (chromium-cold-work to "
      "stainless): that is no effect of Cr alone.");
}

TEST_CASE("family borders: temperatures") {
  const TemperatureRange range{Temperature::celsius(1000), Temperature::celsius(1060)};
  const auto start = quantities::martensite_start();
  const double wanted = start.value(five_chromium(2.7).soak(kSoak));
  const auto near = temperature_for(five_chromium(2.7), start, wanted, range);
  CHECK(told(near.warnings()) == Texts{kNear});
  CHECK(near.full().find("! [gibbsteel.warning.335] The steel is near the border of") !=
        std::string::npos);
  CHECK(told(temperature_for(five_chromium(3.6), start, wanted, range).warnings())
            .empty());
  const auto match = matching_temperature(five_chromium(1.5).soak(kSoak),
                                          five_chromium(3.6), start, range);
  CHECK(told(match.warnings()) == Texts{kBoth});
  CHECK(match.full().find("! [gibbsteel.warning.357] The steels are of the families "
                          "general and\n") != std::string::npos);
  WindowRules rules;
  rules.hardness = quantities::hardness_hrc();
  rules.least_hardness = 50.0;
  CHECK(told(hardening_window(five_chromium(2.7), rules, range).warnings()) ==
        Texts{kNear});
}

TEST_CASE("family borders: a grid across one") {
  const SoakGrid grid =
      soak_grid(five_chromium(1.5), SweptVariable::element("Mo", {1.5, 2.5, 3.6}),
                SweptVariable::element("Si", {0.2, 0.4}), kSoak);
  CHECK(told(grid.warnings_of(quantities::hardness_hrc())) ==
        Texts{kNearGeneral, kBoth});
  CHECK(told(grid.warnings_of(quantities::matrix("C"))).empty());
}

TEST_CASE("family borders: a row of a screen counts its own, the table says the rest") {
  const std::vector<std::string> elements{"C", "Cr", "V", "Mo"};
  const std::vector<double> numbers{1.0, 5.0, 2.0, 1.5, 1.0, 5.0,
                                    2.0, 2.5, 1.0, 5.0, 2.0, 3.6};
  const std::vector<Temperature> temperatures{kSoak};
  const ScreenInput input{elements, numbers, temperatures, false};
  ScreenOptions options;
  const std::vector<std::int32_t> plain = screen(input, options).warnings;
  options.quantities = {quantities::hardness_hrc()};
  const ScreenTable table = screen(input, options);
  const std::vector<std::int32_t>& more = table.warnings;
  REQUIRE(more.size() == 3);
  CHECK(more[0] == plain[0]);
  CHECK(more[1] == plain[1] + 1);  // near the border
  CHECK(more[2] == plain[2]);
  CHECK(table.families == std::vector<ScreenFamily>{{"general", 0}, {"high-speed", 2}});
  CHECK(told(table.table_warnings()) == Texts{kBoth});
  CHECK(table.brief().ends_with(", 357 of the whole table"));
  ScreenTable first = table;
  first.resize(2);
  CHECK(first.table_warnings().empty());
  options.quantities = {of_family("general")};
  CHECK(screen(input, options).warnings == plain);
  CHECK(screen(input, options).families.empty());
}

TEST_CASE("family borders: bands, and a design") {
  HeatTolerances tolerances;
  tolerances.ranges.push_back({"Mo", 1.7, 3.5});
  ToleranceOptions few;
  few.samples = 8;
  const auto band = tolerance_band(five_chromium(2.7), kSoak, tolerances,
                                   {quantities::hardness_hrc()}, few);
  CHECK(told(band.warnings) == Texts{kNear, kAcross});
  ParameterBandOptions options;
  options.samples = 8;
  CHECK(told(parameter_band(five_chromium(2.7), kSoak, {quantities::hardness_hrc()},
                            options)
                 .warnings) == Texts{kNear});
  const std::vector<DesignTarget> targets{
      {quantities::martensite_start(), kSoak, TargetSense::at_least, 100.0, 1.0}};
  const Design made = design(five_chromium(2.7), {{"Mo", {1.5, 3.5}}}, targets);
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
  const auto half = family_shares({{"C", 1.0}, {"Cr", 5.0}, {"Mo", 2.6}});
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

TEST_CASE("family borders: the family is that of the largest share") {
  for (double molybdenum = 1.7; molybdenum < 3.5; molybdenum += 0.1) {
    const NamedValues steel{{"C", 1.0}, {"Cr", 5.0}, {"Mo", molybdenum}};
    const auto shares = internal::family_shares(steel);
    for (const auto& s : shares) CHECK(s.share.value <= shares.front().share.value);
    CHECK(hardening_family_of(steel).key == shares.front().family->key);
    CHECK(hardening_family_of(steel).key ==
          (molybdenum < 2.6 ? "general" : "high-speed"));
  }
}

TEST_CASE("family borders: estimates have no jump, and exact slopes across one") {
  double before = 0.0;
  for (int i = 0; i <= 120; ++i) {
    const State state = five_chromium(1.7 + 0.015 * i).soak(kSoak);
    const double start = hardening(state).martensite_start.value;
    // 69 C in all over 1.6 % Mo: 1 C a step at the steepest, and what Mo does.
    if (i > 0) CHECK(std::abs(start - before) < 1.3);
    before = start;
  }
  const double step = 1e-4;
  for (const double molybdenum : {1.9, 2.6, 3.2})
    for (const Quantity& quantity :
         {quantities::martensite_start(), quantities::retained_austenite(),
          quantities::hardness_hv(), quantities::hardness_hrc()}) {
      const auto all = sensitivities(five_chromium(molybdenum), kSoak);
      const double slope = quantity.slope(all.state, all.at("Mo"));
      const double up = quantity.value(five_chromium(molybdenum + step).soak(kSoak));
      const double down = quantity.value(five_chromium(molybdenum - step).soak(kSoak));
      CHECK(slope == doctest::Approx((up - down) / (2.0 * step)).epsilon(1e-4));
    }
}

TEST_CASE("family borders: estimates lie between those of the families, none beyond") {
  const auto of = [](const State& state, const char* key) {
    HardeningOptions options;
    options.family = key;
    return hardening(state, options);
  };
  for (double molybdenum = 1.9; molybdenum < 3.4; molybdenum += 0.25) {
    const State state =
        Steel({{"C", 0.7}, {"Cr", 3.0}, {"Mo", molybdenum}}).soak(kSoak);
    const auto mixed = hardening(state);
    const auto one = of(state, "general"), other = of(state, "high-speed");
    for (Estimate HardeningEstimates::*e :
         {&HardeningEstimates::martensite_start,
          &HardeningEstimates::retained_austenite_of_matrix,
          &HardeningEstimates::hardness_hv, &HardeningEstimates::hardness_hrc}) {
      const auto [low, high] = std::minmax((one.*e).value, (other.*e).value);
      CHECK((mixed.*e).value >= low - 1e-9);
      CHECK((mixed.*e).value <= high + 1e-9);
    }
  }
}

TEST_CASE("family borders: bands hold how far the families lie apart") {
  HardeningOptions general, fast;
  general.family = "general";
  fast.family = "high-speed";
  const State state = five_chromium(2.6).soak(kSoak);
  const HardeningEstimates mixed = hardening(state), one = hardening(state, general),
                           other = hardening(state, fast);
  const auto half_apart = [](const Estimate& a, const Estimate& b) {
    return 0.5 * std::abs(a.value - b.value);
  };
  const Estimate& start = mixed.martensite_start;
  // Half of each, 30 C about either, and half of 69 C to either side.
  CHECK(start.high - start.value == doctest::Approx(std::hypot(30.0, 34.5)));
  CHECK(start.value - start.low == doctest::Approx(std::hypot(30.0, 34.5)));
  const Estimate &a = one.retained_austenite, &b = other.retained_austenite;
  const double up =
      std::sqrt(0.5 * (std::pow(a.high - a.value, 2) + std::pow(b.high - b.value, 2)));
  CHECK(mixed.retained_austenite.high - mixed.retained_austenite.value ==
        doctest::Approx(std::hypot(up, half_apart(a, b))));
  CHECK(start.source.ends_with("; mixed: high-speed (50 %) and general (50 %)"));
  CHECK(start.equation.ends_with(", mixed by (H29)"));
}

TEST_CASE(
    "family borders: a word only where estimates are moved by more than a little") {
  const auto warned = [](const NamedValues& steel) {
    return internal::near_border(steel).has_value();
  };
  CHECK(warned({{"C", 0.45}, {"Cr", 3.0}, {"W", 15.0}, {"V", 0.5}}));
  CHECK_FALSE(warned({{"C", 0.7}, {"Ni", 1.4}, {"Cr", 0.8}, {"Mo", 0.3}}));
  CHECK_FALSE(warned({{"C", 1.5}, {"Cr", 11.0}, {"Mo", 0.8}, {"V", 0.8}}));
}
