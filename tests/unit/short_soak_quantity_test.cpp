/// Quantities of soaks of minutes: which soak they are of, what they are called, and
/// what their slopes take from the state.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "bearing_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/short_soak_quantity.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

ShortSoakLimitOptions annealed(double degrees) { return {celsius(degrees), {}, {}}; }

TimedSoakOptions timed(double micrometres, double degrees) {
  return {micrometres, annealed(degrees)};
}

double chromium_by_hand(const Quantity& quantity, NamedValues given,
                        const SteelOptions& steel, const SoakOptions& soak) {
  const double chromium = given["Cr"];
  const auto value = [&](double by) {
    given.set("Cr", chromium + by);
    return quantity.value(Steel(given, steel).soak(celsius(850), soak));
  };
  return (value(0.001) - value(-0.001)) / 0.002;
}

double chromium_slope(const Quantity& quantity, const NamedValues& given,
                      const SteelOptions& steel, const SoakOptions& soak) {
  StateSlope slope;
  slope.input = {Input::Kind::element, "Cr", "wt%"};
  return quantity.slope(Steel(given, steel).soak(celsius(850), soak), slope);
}

}  // namespace

TEST_CASE("a limit of another annealing is not taken for the one asked for") {
  const State long_hold = bearing().soak(celsius(845));
  const Quantity usual = quantities::short_soak_matrix("C");
  const Quantity cold = quantities::short_soak_matrix("C", annealed(650));
  const State limit = short_soak_limit(long_hold).state;
  const State of_cold = short_soak_limit(long_hold, annealed(650)).state;
  CHECK(usual.value(limit) == limit.matrix.weight_percent["C"]);
  CHECK(cold.value(of_cold) == of_cold.matrix.weight_percent["C"]);
  CHECK(quantities::short_soak_matrix("C", annealed(700)).value(limit) ==
        usual.value(limit));
  CHECK(std::isnan(usual.value(of_cold)));
  CHECK(std::isnan(cold.value(limit)));
  CHECK(internal::why_no_short_soak(usual, limit) == "");
  CHECK(internal::why_no_short_soak(usual, of_cold) ==
        "state is a short-soak limit, annealed at 650 C, not the one asked for; give "
        "the long hold, what steel.soak returns");
  State old = limit;  // of a pickle that does not say
  old.soak_time.reset();
  CHECK(std::isnan(usual.value(old)));
  CHECK(internal::why_no_short_soak(usual, old) ==
        "state is a short-soak limit, annealed at a temperature that it does not say, "
        "not the one asked for; give the long hold, what steel.soak returns");
}

TEST_CASE("a timed soak is known by minutes, size and annealing, as asked for or not") {
  const State long_hold = bearing().soak(celsius(845));
  const Quantity usual = quantities::timed_soak_matrix("C", 40);
  const State state = timed_soak(long_hold, 40).state;
  const State at_700 = timed_soak(long_hold, 40, timed(0.6, 700)).state;
  const State at_650 = timed_soak(long_hold, 40, timed(0.6, 650)).state;
  CHECK(usual.value(at_700) == usual.value(state));
  CHECK(quantities::timed_soak_matrix("C", 40, timed(0.6, 700)).value(state) ==
        usual.value(state));
  CHECK(std::isnan(usual.value(at_650)));
  CHECK(internal::why_no_short_soak(usual, at_650) ==
        "state is a timed soak of 40 min, M3C of 0.6 micrometre, annealed at 650 C, "
        "not the one asked for; give the long hold, what steel.soak returns");
  State old = state;  // of a pickle that says what was asked for only
  old.soak_time->annealed_at.reset();
  CHECK(usual.value(old) == usual.value(state));
}

TEST_CASE("the usual annealing of a state of another parameter set is not guessed") {
  State state = short_soak_limit(bearing().soak(celsius(845))).state;
  state.parameters_hash = "0123456789abcdef";
  CHECK(message([&] { quantities::short_soak_matrix("C").value(state); }) ==
        "[gibbsteel.input.266] parameters: are not those the state was made with; give "
        "the parameter set of the steel");
}

TEST_CASE("names tell what is not usual, and what searches are about follows") {
  const auto name = [](const TimedSoakOptions& options) {
    return quantities::timed_soak_matrix("C", 30, options).name();
  };
  CHECK(name({}) == "C in the matrix, timed soak of 30 min");
  CHECK(name(timed(0.4, 650)) ==
        "C in the matrix, timed soak of 30 min, M3C of 0.4 micrometre, annealed at 650 "
        "C");
  const std::string limit = quantities::short_soak_matrix("C", annealed(650)).name();
  CHECK(limit == "C in the matrix, short soak, annealed at 650 C");
  CHECK(internal::condition_of(limit) == "short-soak limit, annealed at 650 C");
  CHECK(internal::condition_of("C in the matrix, short soak") == "short-soak limit");
  CHECK(internal::condition_of("C, short soaking") == "long-hold limit");
  CHECK(internal::condition_of(name({0.4, {}})) ==
        "timed soak of 30 min, M3C of 0.4 micrometre");
  CHECK(internal::caution_of(limit) == internal::caution_of("C, short soak"));
  CHECK(internal::caution_of(limit) != internal::caution_of("C in the matrix"));
  CHECK(internal::long_hold_mark(limit) == ", long hold");
}

TEST_CASE("slopes soak as the state was soaked: bound and left out alike") {
  const Quantity quantity = quantities::timed_soak_matrix("C", 30);
  const NamedValues sulphur{
      {"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}, {"S", 0.15}};
  const SteelOptions bound{"", {}, true};
  const double with_sulphide = chromium_slope(quantity, sulphur, bound, {});
  CHECK(with_sulphide ==
        doctest::Approx(chromium_by_hand(quantity, sulphur, bound, {})).epsilon(1e-9));
  CHECK(with_sulphide !=
        doctest::Approx(chromium_by_hand(quantity, sulphur, {}, {})).epsilon(1e-6));

  const NamedValues tungsten{
      {"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}, {"W", 0.5}};
  SoakOptions without;
  without.suppressed = {"hexagonal MC"};
  const double left_out = chromium_slope(quantity, tungsten, {}, without);
  CHECK(
      left_out ==
      doctest::Approx(chromium_by_hand(quantity, tungsten, {}, without)).epsilon(1e-9));
  CHECK(left_out !=
        doctest::Approx(chromium_by_hand(quantity, tungsten, {}, {})).epsilon(1e-6));
}

TEST_CASE("what is to know about a hardness is to know about it after minutes") {
  HardeningOptions quench;
  quench.coldest = celsius(20);
  quench.family = "bearing";
  const Quantity hardness = quantities::hardness_hrc(quench);
  const Quantity early = quantities::after_minutes(hardness, 30);
  const State long_hold = bearing().soak(celsius(900));
  const State soak = timed_soak(long_hold, 30).state;
  REQUIRE(!hardness.warnings(soak).empty());
  CHECK(early.warnings(long_hold) == hardness.warnings(soak));
  CHECK(early.warnings(soak) == hardness.warnings(soak));
  CHECK(early.warnings(bearing().soak(celsius(600))).empty());
}

TEST_CASE("the band of a hardness is that of the soak of minutes") {
  const Quantity hardness = quantities::hardness_hrc();
  const Quantity early = quantities::after_minutes(hardness, 30);
  const State long_hold = bearing().soak(celsius(860));
  const State soak = timed_soak(long_hold, 30).state;
  REQUIRE(early.has_band());
  const Quantity::Ends ends = hardness.band(soak);
  REQUIRE(ends.low < ends.high);
  for (const State& state : {long_hold, soak}) {
    CHECK(early.band(state).low == ends.low);
    CHECK(early.band(state).high == ends.high);
  }
  CHECK(std::isnan(early.band(bearing().soak(celsius(600))).low));
  CHECK(!quantities::after_minutes(quantities::matrix("C"), 30).has_band());
}

TEST_CASE("bands fall back on an annealing that can be taken, at both ends") {
  const Steel steel(
      {{"C", 0.5}, {"Cr", 1.0}, {"Mn", 0.3}, {"Si", 0.25}, {"Mo", 0.3}, {"W", 0.4}});
  const State long_hold = steel.soak(celsius(800));
  for (const double refused : {650.0, 730.0})
    CHECK(message([&] {
            timed_soak(long_hold, 3, timed(0.6, refused));
          }).find("more than a tenth") != std::string::npos);
  const ShortSoak soak = timed_soak(long_hold, 3);
  const auto band = *std::find_if(soak.bands.begin(), soak.bands.end(),
                                  [](const MatrixBand& b) { return b.element == "C"; });
  CHECK(
      band.low ==
      doctest::Approx(carbon(timed_soak(long_hold, 1, timed(0.6, 675)))).epsilon(1e-9));
  CHECK(
      band.high ==
      doctest::Approx(carbon(timed_soak(long_hold, 9, timed(0.6, 720)))).epsilon(1e-9));
}

TEST_CASE("a quantity of minutes is not taken after minutes again") {
  const Quantity once = quantities::after_minutes(quantities::matrix("C"), 20);
  CHECK(message([&] { quantities::after_minutes(once, 20); }) ==
        "[gibbsteel.input.220] quantity: is of a soak of minutes already: C in the "
        "matrix, timed soak of 20 min; give a quantity of the long hold");
}
