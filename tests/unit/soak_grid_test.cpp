/// Soaks over two swept variables.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <thread>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

using namespace gibbsteel;

namespace {

Steel punch() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

SweptVariable celsius(const std::vector<double>& values) {
  std::vector<Temperature> temperatures;
  for (const double value : values) temperatures.push_back(Temperature::celsius(value));
  return SweptVariable::temperature(temperatures);
}

SweptVariable carbon(std::vector<double> values) {
  return SweptVariable::element("C", std::move(values));
}

/// The state at a cell, which must be there.
const State& cell(const SoakGrid& grid, std::size_t row, std::size_t column) {
  REQUIRE(grid.at(row, column).has_value());
  return *grid.at(row, column);
}

void check_same(const State& a, const State& b) {
  CHECK(a.temperature.in_kelvin() == doctest::Approx(b.temperature.in_kelvin()));
  CHECK(a.analysis == b.analysis);
  CHECK(a.carbide_volume_percent == doctest::Approx(b.carbide_volume_percent));
  CHECK(a.matrix.weight_percent["C"] == doctest::Approx(b.matrix.weight_percent["C"]));
}

std::string message_of(const std::function<void()>& call) {
  try {
    call();
  } catch (const InputError& error) {
    return error.what();
  }
  return "no error";
}

}  // namespace

TEST_CASE("a grid prints tables of carbide and matrix carbon") {
  SoakGrid grid = soak_grid(punch(), carbon({0.5, 0.6}), celsius({1000, 1100}));
  const auto shown = [&](std::size_t row, std::size_t column, const Quantity& q,
                         int digits) {
    return internal::fixed(q.value(*grid.at(row, column)), digits);
  };
  const auto table = [&](const Quantity& q, int digits) {
    std::vector<std::vector<std::string>> rows{{q.label(), "1000", "1100"}};
    rows.push_back({"0.5", shown(0, 0, q, digits), shown(0, 1, q, digits)});
    rows.push_back({"0.6", shown(1, 0, q, digits), shown(1, 1, q, digits)});
    return internal::text_table(rows);
  };
  const std::string text = grid.full();
  CAPTURE(text);
  CHECK(text.starts_with(
      internal::wrapped(grid.brief(), 78, 2) +
      "analysis, wt%: 0.55C 4.5Cr 2.75Mo 1V, balance Fe\nparameters: "));
  CHECK(text.find("\ndown: C in the steel [wt%]; across: temperature [C]\n\n" +
                  table(quantities::carbide_volume_percent(), 2) + "\n" +
                  table(quantities::matrix("C"), 3) +
                  "Last digits are for comparing") != std::string::npos);
  grid.states[1].reset();
  CHECK(grid.full().find("n/a\n") != std::string::npos);
  grid = soak_grid(punch(), carbon(std::vector<double>(20, 0.5)), celsius({1000}));
  CHECK(grid.full().find("[C]; evenly picked, all in to_frame()\n") !=
        std::string::npos);
}

TEST_CASE("a grid is that many single soaks of the changed steel") {
  const Steel steel = punch();
  SUBCASE("carbon by rows, temperature by columns") {
    const SoakGrid grid = soak_grid(steel, carbon({0.5, 0.6}), celsius({1000, 1100}));
    REQUIRE(grid.states.size() == 4);
    for (const std::size_t row : {0U, 1U})
      for (const std::size_t column : {0U, 1U})
        check_same(cell(grid, row, column),
                   steel.changed({{"C", grid.first.values[row]}})
                       .soak(Temperature::celsius(grid.second.values[column])));
    CHECK_FALSE(grid.temperature.has_value());
  }
  SUBCASE("temperature by rows, carbon by columns") {
    const SoakGrid grid = soak_grid(steel, celsius({1100, 1000}), carbon({0.6, 0.5}));
    check_same(cell(grid, 0, 1),
               steel.changed({{"C", 0.5}}).soak(Temperature::celsius(1100)));
    check_same(cell(grid, 1, 0),
               steel.changed({{"C", 0.6}}).soak(Temperature::celsius(1000)));
  }
  SUBCASE("two elements, one of them new to the steel") {
    const auto cobalt = SweptVariable::element("Co", {0.0, 2.0, 4.0});
    const SoakGrid grid =
        soak_grid(steel, carbon({0.5, 0.6}), cobalt, Temperature::celsius(1120));
    REQUIRE(grid.columns() == 3);
    check_same(
        cell(grid, 1, 2),
        steel.changed({{"C", 0.6}, {"Co", 4.0}}).soak(Temperature::celsius(1120)));
    CHECK(grid.brief() ==
          "punch heat 7, 2 x 3 soaks, C 0.5 to 0.6 wt%, Co 0 to 4 wt%, 1120 C, "
          "long-hold limit");
    CHECK(grid.analysis == steel.analysis());
  }
}

TEST_CASE("numbers of a quantity, row by row") {
  const SoakGrid grid = soak_grid(punch(), carbon({0.5, 0.6}), celsius({1000, 1100}));
  const auto values = grid.array(quantities::matrix("C"));
  REQUIRE(values.size() == 4);
  for (const std::size_t i : {0U, 1U, 2U, 3U})
    CHECK(values[i] == grid.states[i]->matrix.weight_percent["C"]);
  CHECK(grid.carbide_kinds() == std::vector<std::string>{"MC", "M6C"});
  CHECK(grid.first.label() == "C in the steel [wt%]");
  CHECK(grid.second.label() == "temperature [C]");
}

TEST_CASE("the caller may stop it: cells that are not done are empty, not zero") {
  std::vector<std::size_t> counts;
  const auto stop = [&](std::size_t done) {
    counts.push_back(done);
    return done < 8;
  };
  const std::vector<double> carbons{0.5, 0.52, 0.54, 0.56, 0.58};
  const SoakGrid grid =
      soak_grid(punch(), carbon(carbons), celsius({1000, 1100}), {}, {}, stop, 1);
  CHECK(counts == std::vector<std::size_t>{1, 2, 3, 4, 5, 6, 7, 8});
  CHECK(grid.cancelled());
  CHECK(grid.not_done() == 2);
  CHECK(grid.failures() == 0);
  CHECK(grid.at(3, 1).has_value());
  CHECK_FALSE(grid.at(4, 0).has_value());
  CHECK(std::isnan(grid.array(quantities::carbide_volume_percent())[8]));
  CHECK(grid.brief() ==
        "punch heat 7, 5 x 2 soaks, C 0.5 to 0.58 wt%, temperature 1000 to 1100 C, "
        "CANCELLED, 2 not done, long-hold limit");
  // Stopped when nothing is left to do: complete.
  const auto stop_at_end = [](std::size_t done) { return done < 4; };
  CHECK_FALSE(
      soak_grid(punch(), carbon({0.5, 0.6}), celsius({1000, 1100}), {}, {}, stop_at_end)
          .cancelled());
}

TEST_CASE("a grid may have more threads than cells, and is told of to its end") {
  const auto caller = std::this_thread::get_id();
  std::vector<std::size_t> counts;
  const auto note = [&](std::size_t done) {
    CHECK(std::this_thread::get_id() == caller);
    counts.push_back(done);
    return true;
  };
  soak_grid(punch(), carbon({0.5, 0.6, 0.7}), celsius({1000, 1050, 1100, 1150}), {}, {},
            note, 16);
  REQUIRE(!counts.empty());
  CHECK(std::is_sorted(counts.begin(), counts.end()));
  CHECK(counts.back() == 12);
}

TEST_CASE("the number of threads changes no bit of the result") {
  const auto run = [](std::size_t threads) {
    return soak_grid(punch(), carbon({0.5, 0.6, 0.7}),
                     celsius({1000, 1050, 1100, 1150}), {}, {}, {}, threads);
  };
  const SoakGrid one = run(1);
  for (const std::size_t threads : {3U, 12U}) {
    const SoakGrid many = run(threads);
    for (std::size_t i = 0; i < one.states.size(); ++i) {
      REQUIRE((one.states[i] && many.states[i]));
      CHECK(one.states[i]->gibbs_energy == many.states[i]->gibbs_energy);
      CHECK(one.states[i]->occurrences == many.states[i]->occurrences);
      CHECK(one.states[i]->warnings == many.states[i]->warnings);
    }
  }
}

TEST_CASE("soaks that are not usable are counted and have no number") {
  SoakOptions options;
  options.phases = {{"graphite"}};
  const SoakGrid grid =
      soak_grid(punch(), carbon({0.5, 0.6}), celsius({1000, 1100}), {}, options);
  CHECK(grid.failures() == 4);
  CHECK_FALSE(grid.cancelled());
  for (const double value : grid.array(quantities::matrix("C")))
    CHECK(std::isnan(value));
  CHECK(grid.brief() ==
        "punch heat 7, 2 x 2 soaks, C 0.5 to 0.6 wt%, temperature 1000 to 1100 C, "
        "4 NOT USABLE, long-hold limit");
}

TEST_CASE("what is no grid is refused, all problems at once") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK(message_of([] { soak_grid(punch(), carbon({0.5}), carbon({0.6})); }) ==
        "[gibbsteel.input.295] grid: sweeps 'C' twice; sweep two different variables\n"
        "[gibbsteel.input.295] grid: has no soak temperature; give one, or sweep the "
        "temperature");
  CHECK(message_of([&] {
          soak_grid(punch(), SweptVariable::element("Fe", {}), celsius({1000, nan}),
                    Temperature::celsius(1100));
        }) ==
        "[gibbsteel.input.295] grid: sweeps Fe, which is the balance; sweep the other "
        "elements\n"
        "[gibbsteel.input.295] grid: has one temperature and sweeps it too; give one "
        "or the other\n"
        "[gibbsteel.input.296] Fe: has no values; give a series of numbers\n"
        "[gibbsteel.input.296] temperature: has a value that is not a finite number; "
        "give a series of numbers");
}

TEST_CASE("temperatures and compositions are refused before the first soak") {
  int soaks = 0;
  const auto count = [&](std::size_t) { return ++soaks > 0; };
  CHECK(message_of([&] {
          soak_grid(punch(), carbon({0.5}), celsius({1000, 20}), {}, {}, count);
        }) ==
        "[gibbsteel.input.210] temperature: is 293.1 K = 20.0 C; give 300 K to 2500 K "
        "(27 C to 2227 C, 80 F to 4040 F) and check the unit");
  CHECK(message_of([&] {
          soak_grid(punch(), carbon({0.5, -0.1}), celsius({1000, 1100}), {}, {}, count);
        }) ==
        "[gibbsteel.input.203] composition, C: is negative: -0.1; give weight "
        "percent, from 0 to 100");
  CHECK(message_of([&] {
          soak_grid(punch(), carbon({0.5}), SweptVariable::element("CO", {1.0, 2.0}),
                    Temperature::celsius(1100), {}, count);
        }) ==
        "[gibbsteel.input.201] composition: 'CO' is not the symbol of an element; did "
        "you mean 'Co'?");
  CHECK(soaks == 0);
}
