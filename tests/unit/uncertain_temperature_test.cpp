/// How sure a temperature is that a search found, by the standard deviations of the
/// file, Eq. (B8). The oracle is the same search with other numbers in the file.

#include <doctest/doctest.h>

#include <cmath>
#include <functional>

#include "first_edition.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "gibbsteel/matching_temperature.hpp"
#include "parameter_file/uncertain_numbers.hpp"

using namespace gibbsteel;
using parameter_file::UncertainNumber;

namespace {

Temperature celsius(double value) { return Temperature::celsius(value); }

TemperatureRange range(double low, double high) {
  return {celsius(low), celsius(high)};
}

Steel punch_heat(SharedParameters set = {}) {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", std::move(set), false});
}

Steel high_speed(SharedParameters set = {}) {
  return Steel({{"C", 0.9}, {"Cr", 4.0}, {"Mo", 5.0}, {"W", 6.0}, {"V", 2.0}},
               {"M2", std::move(set), false});
}

SearchOptions fine() {
  SearchOptions search;
  search.tolerance = 1e-3;
  return search;
}

/// The only answer of a search [K].
double only(const TemperatureSearch& found) {
  REQUIRE(found.crossings.size() == 1);
  return found.crossings[0].temperature.in_kelvin();
}

/// One standard deviation of an answer: it is searched for again with every uncertain
/// number a little larger and a little smaller.
double scatter(const std::function<double(const SharedParameters&)>& answer) {
  constexpr double kPart = 0.02;  // of the standard deviation
  const ParameterSet& set = *default_parameters();
  const std::vector<UncertainNumber> numbers = parameter_file::uncertain_numbers(set);
  const auto at = [&](std::size_t moved, double step) {
    std::vector<double> values;
    for (const UncertainNumber& number : numbers) values.push_back(number.value);
    values[moved] += step * numbers[moved].standard_deviation;
    return answer(
        std::make_shared<const ParameterSet>(parameter_file::with_values(set, values)));
  };
  Eigen::VectorXd moves(static_cast<Eigen::Index>(numbers.size()));
  for (std::size_t i = 0; i < numbers.size(); ++i)
    moves[static_cast<Eigen::Index>(i)] =
        (at(i, kPart) - at(i, -kPart)) / (2.0 * kPart);
  const auto correlations = parameter_file::correlations_of(set, numbers);
  return std::sqrt(moves.dot(correlations * moves));
}

}  // namespace

TEST_CASE("the temperature with a value, Eq. (B8)") {
  const Quantity carbon = quantities::matrix("C");
  const auto found =
      temperature_for(punch_heat(), carbon, 0.46, range(900, 1200), {}, fine());
  const double at = only(found) - 273.15;
  const double expected = scatter([&](const SharedParameters& set) {
    return only(temperature_for(punch_heat(set), carbon, 0.46, range(at - 12, at + 12),
                                {}, fine()));
  });
  CHECK(found.crossings[0].uncertainty_at_least ==
        doctest::Approx(expected).epsilon(0.01));
}

TEST_CASE("the temperature at which a phase vanishes or appears, Eq. (B8)") {
  const auto dissolves = [](const SharedParameters& set, TemperatureRange searched) {
    return dissolution_temperature(high_speed(set), "ferrite", searched, {}, fine());
  };
  const Dissolution found = dissolves({}, range(700, 900));
  const double at = found.temperature.value().in_celsius();
  const double expected = scatter([&](const SharedParameters& set) {
    return dissolves(set, range(at - 8, at + 8)).temperature.value().in_kelvin();
  });
  CHECK(found.uncertainty_at_least == doctest::Approx(expected).epsilon(0.01));
  const auto forms = [](const SharedParameters& set, TemperatureRange searched) {
    const auto all = phase_changes(high_speed(set), searched, {}, fine());
    for (const PhaseChange& change : all.changes)
      if (change.appears == std::vector<std::string>{"austenite"}) return change;
    FAIL("austenite does not form");
    return PhaseChange{};
  };
  const PhaseChange first = forms({}, range(700, 900));
  const double low = first.temperature.in_celsius();
  const double moved = scatter([&](const SharedParameters& set) {
    return forms(set, range(low - 8, low + 8)).temperature.in_kelvin();
  });
  CHECK(first.uncertainty_at_least == doctest::Approx(moved).epsilon(0.01));
}

TEST_CASE("a reference moves with the same numbers, Eq. (B8)") {
  const Quantity carbon = quantities::matrix("C");
  const auto match = [&](const SharedParameters& set, TemperatureRange searched) {
    const State reference = high_speed(set).soak(celsius(1150));
    return matching_temperature(reference, punch_heat(set), carbon, searched, {},
                                fine());
  };
  const auto found = match({}, range(900, 1250));
  const double at = only(found.search) - 273.15;
  const double expected = scatter([&](const SharedParameters& set) {
    return only(match(set, range(at - 12, at + 12)).search);
  });
  const double told = found.search.crossings[0].uncertainty_at_least;
  CHECK(told == doctest::Approx(expected).epsilon(0.01));
  // Typed, the same value does not move.
  const auto typed =
      temperature_for(punch_heat(), carbon, found.value, range(900, 1250), {}, fine());
  CHECK(std::abs(told - typed.crossings[0].uncertainty_at_least) > 0.05 * told);
}

TEST_CASE("nothing is told where the file states nothing") {
  const Quantity carbon = quantities::matrix("C");
  const auto uncertainty = [](const TemperatureSearch& found) {
    REQUIRE(found.crossings.size() == 1);
    return found.crossings[0].uncertainty_at_least;
  };
  const Steel first = punch_heat(first_edition());
  CHECK(
      std::isnan(uncertainty(temperature_for(first, carbon, 0.46, range(900, 1200)))));
  const Dissolution gone = dissolution_temperature(first, "M6C", range(1000, 1230));
  CHECK(gone.temperature);
  CHECK(std::isnan(gone.uncertainty_at_least));
  // Its numbers with a standard deviation are those of carbides of W, Mo, Cr and V.
  const Steel plain({{"C", 1.0}});
  const PhaseChanges changes = phase_changes(plain, range(650, 950));
  REQUIRE(changes.changes.size() == 2);
  for (const PhaseChange& change : changes.changes)
    CHECK(std::isnan(change.uncertainty_at_least));
  // No energy of M7C3 has one, whatever other phases of the steel tell.
  const Steel s7({{"C", 0.5}, {"Cr", 3.25}, {"Mo", 1.4}, {"V", 0.2}, {"Mn", 0.7}});
  const Dissolution m7c3 = dissolution_temperature(s7, "M7C3", range(800, 1000));
  CHECK(m7c3.temperature);
  CHECK(std::isnan(m7c3.uncertainty_at_least));
}

TEST_CASE("a reference that the numbers of the file do not make is not known") {
  const auto told = [](const State& reference) {
    const auto match = matching_temperature(reference, high_speed(),
                                            quantities::matrix("C"), range(900, 1250));
    REQUIRE(match.search.crossings.size() == 1);
    return match.search.crossings[0].uncertainty_at_least;
  };
  CHECK(told(punch_heat().soak(celsius(1150))) > 1.0);
  CHECK(std::isnan(told(punch_heat(first_edition()).soak(celsius(1150)))));
  const Steel bearing({{"C", 1.0}, {"Cr", 1.5}});
  const ShortSoak counted =
      with_measured_carbide(bearing.soak(celsius(845)), {{"M3C", 8.0}});
  CHECK(std::isnan(told(counted.state)));
}

TEST_CASE("no more is told than slopes hold for") {
  // M7C3 becomes M23C6, of nearly the same energy, and both change within some kelvin.
  const PhaseChanges found = phase_changes(punch_heat(), range(770, 800));
  REQUIRE(found.changes.size() == 2);
  const double apart = found.changes[1].temperature.in_kelvin() -
                       found.changes[0].temperature.in_kelvin();
  const double from_low = found.changes[0].temperature.in_celsius() - 770.0;
  CHECK(found.changes[0].uncertainty_at_least ==
        doctest::Approx(std::min(apart, from_low)));
  CHECK(found.changes[0].text == "780 C (at least +-10 C) on heating: M23C6 appears");
}
