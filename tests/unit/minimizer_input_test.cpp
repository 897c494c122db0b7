/// What minimize() and PhaseSystem refuse, word for word.

#include <doctest/doctest.h>

#include <limits>

#include "solve_helpers.hpp"

using namespace gibbsteel;

namespace {

PhaseSystem iron_carbon() {
  return {default_parameters(), {"Fe", "C"}, {"austenite", "ferrite"}};
}

void run(const std::vector<double>& x, const SolveOptions& options = {}) {
  minimize(iron_carbon(), Temperature::celsius(900), x, options);
}

}  // namespace

TEST_CASE("mole fractions that cannot be used") {
  CHECK_THROWS_WITH_AS(run({1.0}),
                       "[gibbsteel.input.231] mole_fractions: has 1 numbers for 2 "
                       "elements; give one number > 0 per element of the system, sum 1",
                       InputError);
  CHECK_THROWS_WITH_AS(run({1.0, 0.0}),
                       "[gibbsteel.input.231] mole_fractions: number 2 is 0; give one "
                       "number > 0 per element of the system, sum 1",
                       InputError);
  CHECK_THROWS_WITH_AS(
      run({std::numeric_limits<double>::quiet_NaN(), 0.5}),
      "[gibbsteel.input.231] mole_fractions: number 1 is nan; give one "
      "number > 0 per element of the system, sum 1",
      InputError);
  CHECK_THROWS_WITH_AS(
      run({0.9, 0.2}),
      "[gibbsteel.input.231] mole_fractions: they sum to 1.1; give one "
      "number > 0 per element of the system, sum 1",
      InputError);
}

TEST_CASE("temperatures that are none") {
  const std::vector<double> x{0.9, 0.1};
  for (const double kelvin : {0.0, -5.0, std::numeric_limits<double>::infinity()})
    CHECK_THROWS_AS(minimize(iron_carbon(), Temperature::kelvin(kelvin), x),
                    InputError);
  CHECK_THROWS_WITH_AS(minimize(iron_carbon(), Temperature::kelvin(-5.0), x),
                       "[gibbsteel.input.214] temperature: is -5 K; give a temperature "
                       "above 0 K",
                       InputError);
}

TEST_CASE("an element named twice") {
  CHECK_THROWS_WITH_AS(
      PhaseSystem(default_parameters(), {"Fe", "C", "Fe", "Fe"}, {"austenite"}),
      "[gibbsteel.input.215] elements: 'Fe' is named twice; name each element once",
      InputError);
}

TEST_CASE("options out of range are all named") {
  SolveOptions options;
  options.max_rounds = 0;
  options.stability_tolerance = -1.0;
  CHECK_THROWS_WITH_AS(
      run({0.9, 0.1}, options),
      "[gibbsteel.input.232] max_rounds: is 0; give 1 or more\n"
      "[gibbsteel.input.232] stability_tolerance: is -1; give a number above 0 "
      "[J/mol of atoms]",
      InputError);
}

TEST_CASE("unknown phases and elements") {
  CHECK_THROWS_WITH_AS(
      PhaseSystem(default_parameters(), {"Fe", "Cu"}, {"austenite", "M5C2"}),
      "[gibbsteel.input.206] elements: the parameter set does not model 'Cu'; leave it "
      "out or load a file that models it\n"
      "[gibbsteel.input.205] phases: there is no phase 'M5C2'; choose from: austenite, "
      "MC, ferrite, M6C, M7C3, M23C6, M3C, M2C, hexagonal matrix, M3C2, hexagonal MC, "
      "graphite",
      InputError);
}

TEST_CASE("a report that nobody filled confesses") {
  const SolveReport report;
  CHECK_FALSE(report.usable());
  CHECK(report.brief() == "NOT USABLE: not run (minimize() was not run)");
}
