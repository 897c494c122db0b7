/// How much of one element gives a wanted value.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/number_format.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1050);

Steel punch(double carbon = 0.55) {
  return Steel({{"C", carbon}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

void check_soak(const Steel& steel, const CompositionSearch& search,
                const Quantity& quantity) {
  for (const CompositionCrossing& crossing : search.crossings) {
    CAPTURE(crossing.weight_percent);
    const State again = steel.changed({{search.element, crossing.weight_percent}})
                            .soak(search.temperature);
    REQUIRE(again.usable());
    CHECK(quantity.value(again) == doctest::Approx(crossing.value).epsilon(1e-8));
    if (crossing.kind == CrossingKind::crossing)
      CHECK(std::abs(crossing.value - search.target) < 1e-3);
  }
}

struct Question {
  const char* element;
  WeightPercentRange range;
  Quantity quantity;
  double target;
};

/// Single soaks at 60 steps: wherever two neighbours bracket the target, the search has
/// a crossing. @return how often they do
std::size_t check_brackets(const Question& c, const CompositionSearch& found) {
  constexpr int kSteps = 60;
  std::size_t seen = 0;
  double last = std::nan(""), before = 0.0;
  for (int i = 0; i <= kSteps; ++i) {
    const double percent = std::lerp(c.range.low, c.range.high, double(i) / kSteps);
    const double excess =
        c.quantity.value(punch().changed({{c.element, percent}}).soak(kSoak)) -
        c.target;
    REQUIRE(std::isfinite(excess));
    const auto between = [&](const CompositionCrossing& crossing) {
      return crossing.weight_percent >= before && crossing.weight_percent <= percent;
    };
    if (i > 0 && std::signbit(excess) != std::signbit(last)) {
      ++seen;
      CHECK(std::any_of(found.crossings.begin(), found.crossings.end(), between));
    }
    last = excess;
    before = percent;
  }
  return seen;
}

}  // namespace

TEST_CASE("composition: the steel from which the target was computed is found") {
  struct Case {
    const char* element;
    double percent;
    WeightPercentRange range;
    Quantity quantity;
  };
  const std::vector<Case> cases{
      {"C", 0.55, {0.1, 1.2}, quantities::matrix("C")},
      {"C", 0.55, {0.1, 1.2}, quantities::carbide_volume_percent()},
      {"V", 1.0, {0.0, 4.0}, quantities::volume_percent("MC")},
      {"Mo", 2.75, {0.0, 6.0}, quantities::volume_percent("M6C")},
      {"Cr", 4.5, {1.0, 9.0}, quantities::carbon_activity()}};
  const State state = punch().soak(kSoak);
  for (const Case& c : cases) {
    CAPTURE(c.element);
    CAPTURE(c.quantity.name());
    const double target = c.quantity.value(state);
    const CompositionSearch found =
        composition_for(punch(), c.element, c.quantity, target, c.range, kSoak);
    REQUIRE(found.status == TargetStatus::found);
    CHECK(found.complete());
    double nearest = 1e9;
    for (const auto& crossing : found.crossings)
      nearest = std::min(nearest, std::abs(crossing.weight_percent - c.percent));
    CHECK(nearest < 1e-4);
    check_soak(punch(), found, c.quantity);
  }
}

TEST_CASE("composition: no crossing that single soaks bracket is missed") {
  // Matrix carbon against vanadium falls; M6C against carbon goes up and down again.
  const std::vector<Question> cases{
      {"V", {0.0, 5.0}, quantities::matrix("C"), 0.30},
      {"C", {0.05, 1.6}, quantities::volume_percent("M6C"), 0.5},
      {"C", {0.05, 1.6}, quantities::matrix("Mo"), 2.0}};
  for (const Question& c : cases) {
    CAPTURE(c.element);
    const CompositionSearch found =
        composition_for(punch(), c.element, c.quantity, c.target, c.range, kSoak);
    const std::size_t seen = check_brackets(c, found);
    CHECK(seen > 0);
    CHECK(found.crossings.size() >= seen);
    check_soak(punch(), found, c.quantity);
  }
}

TEST_CASE("composition: an element that is not in the steel yet") {
  const CompositionSearch found =
      composition_for(Steel({{"C", 1.0}}), "Cr", quantities::volume_percent("M7C3"),
                      2.0, {0.0, 12.0}, Temperature::celsius(950));
  REQUIRE(found.status == TargetStatus::found);
  check_soak(Steel({{"C", 1.0}}), found, quantities::volume_percent("M7C3"));
}

TEST_CASE("composition: a quantity that jumps") {
  const Steel steel({{"C", 1.0}, {"Cr", 5}, {"V", 2}, {"Si", 0.4}, {"Mn", 0.4}});
  const Quantity austenite("allowance", "vol%", [](const State& state) {
    const double molybdenum = state.analysis.modelled["Mo"];
    return molybdenum < 2.0 ? 8.5 + 0.5 * molybdenum : 34.0 + 0.5 * molybdenum;
  });
  for (const double wish : {20.0, 30.0}) {
    const auto over = composition_for(steel, "Mo", austenite, wish, {1.0, 4.0},
                                      Temperature::celsius(1040));
    CHECK(over.status == TargetStatus::jumps_over);
    REQUIRE(over.crossings.size() == 1);
    const CompositionCrossing& jump = over.crossings[0];
    CHECK(jump.kind == CrossingKind::jump);
    CHECK(jump.value == jump.below);
    CHECK(jump.below < wish);
    CHECK(jump.above > wish);
    CHECK(over.text == "allowance jumps over " + internal::significant(wish, 4) +
                           " vol% at 2.00 wt% Mo (from 9.5 to 35 vol%)");
    CHECK(over.full().find("2.00 wt% Mo (jump from 9.5 vol% to 35 vol%)") !=
          std::string::npos);
  }
  const auto found = composition_for(steel, "Mo", austenite, 9.4, {1.0, 4.0},
                                     Temperature::celsius(1040));
  CHECK(found.status == TargetStatus::found);
  REQUIRE(!found.crossings.empty());
  CHECK(found.crossings.front().kind == CrossingKind::crossing);
}

TEST_CASE("composition: a value that does not occur, and one that is everywhere") {
  const auto never = composition_for(punch(), "C", quantities::carbide_volume_percent(),
                                     60.0, {0.3, 0.8}, kSoak);
  CHECK(never.status == TargetStatus::never_reached);
  CHECK(never.crossings.empty());
  CHECK(never.text.find("in the range and never 60 vol%") != std::string::npos);
  CHECK(never.low.analysis.given["C"] == doctest::Approx(0.3));
  CHECK(never.high.analysis.given["C"] == doctest::Approx(0.8));
  CHECK(never.warnings() == internal::distinct_warnings({&never.low, &never.high}));
  CHECK(never.lowest.weight_percent == doctest::Approx(0.3));
  CHECK(never.highest.weight_percent == doctest::Approx(0.8));
  const auto always = composition_for(punch(), "C", quantities::volume_percent("M7C3"),
                                      0.0, {0.3, 0.4}, kSoak);
  CHECK(always.status == TargetStatus::always_equal);
  CHECK(always.text == "M7C3 is 0 vol% in the whole range");
}

TEST_CASE("composition: a quantity without a value, and a search that is stopped") {
  const Quantity none("nothing", "", [](const State&) { return std::nan(""); });
  CHECK(composition_for(punch(), "C", none, 1.0, {0.3, 0.4}, kSoak).status ==
        TargetStatus::not_computable);
  CompositionSearchOptions short_one;
  short_one.most_soaks = 10;
  const auto stopped = composition_for(punch(), "C", quantities::matrix("C"), 0.5,
                                       {0.3, 0.8}, kSoak, {}, short_one);
  CHECK(stopped.stopped == "the limit of 10 soaks was reached");
  CHECK_FALSE(stopped.complete());
  CHECK(stopped.full().find("NOT COMPLETE: the limit of 10 soaks") !=
        std::string::npos);
}

TEST_CASE("composition: every problem at once") {
  CompositionSearchOptions bad;
  bad.steps = 1;
  bad.tolerance = 0.0;
  bad.most_soaks = 1;
  CHECK(message([&] {
          composition_for(punch(), "Fe", quantities::matrix("C"), 0.5, {0.8, 0.3},
                          kSoak, {}, bad);
        }) ==
        "[gibbsteel.input.268] element: Fe is the balance of all others; choose an "
        "element that the parameter file models, other than Fe\n"
        "[gibbsteel.input.268] range: goes from 0.8 to 0.3 wt%; give 0 or more, the "
        "lower number first\n"
        "[gibbsteel.input.268] steps: is 1; give 4 to 10000\n"
        "[gibbsteel.input.268] tolerance: is 0; give 1e-8 to 1 wt%\n"
        "[gibbsteel.input.268] most_soaks: is 1; give 10 or more");
  CHECK(message([] {
          composition_for(punch(), "Cu", quantities::matrix("C"), 0.5, {0.0, 95.0},
                          kSoak);
        }) ==
        "[gibbsteel.input.268] element: Cu is not modelled by the parameter file; "
        "choose an element that the parameter file models, other than Fe\n"
        "[gibbsteel.input.268] range: goes from 0 to 95 wt%; the other elements leave "
        "89.20 wt%");
}

TEST_CASE("composition: no element, no number, no straight line") {
  CHECK(
      message([] {
        composition_for(punch(), "Xx", quantities::matrix("C"), 0.5, {0.0, 1.0}, kSoak);
      }) ==
      "[gibbsteel.input.268] element: 'Xx' is not the symbol of an element; choose "
      "an element that the parameter file models, other than Fe");
  CHECK(message([] {
          composition_for(punch(), "C", quantities::matrix("C"), std::nan(""),
                          {0.0, 1.0}, kSoak);
        }) ==
        "[gibbsteel.input.252] value: is nan; give the number that the quantity is to "
        "have");
  const Steel bound({{"C", 0.5}, {"Mn", 0.1}, {"S", 0.1}}, {"", {}, true});
  CHECK(
      message([&] {
        composition_for(bound, "Mn", quantities::matrix("Mn"), 0.1, {0.0, 0.5}, kSoak);
      }) ==
      "[gibbsteel.input.268] range: Mn is tied up by tramp elements in a part of it; "
      "start the range higher, or do not bind tramp elements");
}
