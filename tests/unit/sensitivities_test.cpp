/// Slopes of a state against differences of soaks, and what the facade refuses.
/// The wide comparison, over random steels, is robustness/random_slopes_test.cpp.

#include "gibbsteel/sensitivities.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "state_numbers.hpp"

using namespace gibbsteel;
using testing::numbers_of;

namespace {

const Steel& high_speed() {
  static const Steel steel({{"C", 0.85},
                            {"Cr", 4.1},
                            {"Mo", 5.0},
                            {"W", 6.2},
                            {"V", 1.9},
                            {"Mn", 0.3},
                            {"Si", 0.3}});
  return steel;
}

/// Central differences of two steps, extrapolated to step 0: error of order h^4.
template <class Soak>
std::vector<double> differences(const Soak& soak, double h) {
  const auto wide_up = numbers_of(soak(2.0 * h)),
             wide_down = numbers_of(soak(-2.0 * h));
  const auto up = numbers_of(soak(h)), down = numbers_of(soak(-h));
  REQUIRE(up.size() == down.size());
  REQUIRE(wide_up.size() == wide_down.size());
  REQUIRE(up.size() == wide_up.size());
  std::vector<double> slopes;
  for (std::size_t i = 0; i < up.size(); ++i) {
    const double narrow = (up[i].second - down[i].second) / (2.0 * h);
    const double wide = (wide_up[i].second - wide_down[i].second) / (4.0 * h);
    slopes.push_back(narrow + (narrow - wide) / 3.0);
  }
  return slopes;
}

/// Relative to the slope, or to what a change of the number by 1e-9 of it would make.
template <class Soak>
void compare(const StateSlope& slope, const State& state, const Soak& soak, double h) {
  const auto expected = differences(soak, h);
  const auto exact = numbers_of(slope), values = numbers_of(state);
  REQUIRE(exact.size() == expected.size());
  REQUIRE(exact.size() == values.size());
  CHECK_FALSE(slope.one_sided);
  for (std::size_t i = 0; i < exact.size(); ++i) {
    CAPTURE(exact[i].first);
    CHECK(exact[i].first == values[i].first);
    const double noise = 2e-11 * std::abs(values[i].second) / h;
    CHECK(std::abs(exact[i].second - expected[i]) <=
          2e-6 * std::abs(expected[i]) + noise);
  }
}

}  // namespace

TEST_CASE("slopes to the temperature agree with differences of soaks") {
  for (const VolumeBasis basis : {VolumeBasis::room, VolumeBasis::soak}) {
    SoakOptions options;
    options.basis = basis;
    const auto all = sensitivities(high_speed(), Temperature::celsius(1100.0), options);
    REQUIRE(all.state.usable());
    const auto soak = [&](double h) {
      return high_speed().soak(Temperature::celsius(1100.0 + h), options);
    };
    compare(all.at("temperature"), all.state, soak, 0.5);
    CHECK(all.at("temperature").input ==
          Input{Input::Kind::temperature, "temperature", "K"});
  }
}

TEST_CASE("slopes to every element, balance Fe, agree with differences of soaks") {
  const auto all = sensitivities(high_speed(), Temperature::celsius(1100.0));
  REQUIRE(all.slopes.size() == 8);
  for (const auto& [symbol, percent] : high_speed().analysis().given) {
    CAPTURE(symbol);
    const auto soak = [&, symbol = symbol, percent = percent](double h) {
      return high_speed()
          .changed({{symbol, percent + h}})
          .soak(Temperature::celsius(1100.0));
    };
    compare(all.at(symbol), all.state, soak, 1e-3 * percent);
    CHECK(all.at(symbol).input == Input{Input::Kind::element, symbol, "wt%"});
  }
}
