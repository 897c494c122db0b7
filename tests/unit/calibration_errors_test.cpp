/// What calibrate() refuses, whole messages.

#include <doctest/doctest.h>

#include <cmath>

#include "calibration_helpers.hpp"
#include "gibbsteel/errors.hpp"

using namespace gibbsteel;
using namespace calibration_helpers;

namespace {

const char* const kPlace = "/phases/M6C/energy/2/terms/1";

Measurement one() {
  return {"M2",
          heats()[0].weight_percent,
          Temperature::celsius(1100.0),
          quantities::matrix("C"),
          0.4,
          0.02};
}

std::string message(const std::vector<Measurement>& measurements,
                    const std::vector<FreeNumber>& numbers,
                    const CalibrationOptions& options = {}) {
  try {
    calibrate(measurements, numbers, first_edition(), options);
  } catch (const InputError& error) {
    return error.what();
  }
  return "accepted";
}

}  // namespace

TEST_CASE("numbers that cannot be fitted") {
  const std::vector<FreeNumber> many(101, {kPlace, 500.0});
  CHECK(message({one()}, many)
            .starts_with("[gibbsteel.input.300] numbers: are 101; give at most 100\n"));
  CHECK(message({one()}, {{"/phases/M6C/energy/900/terms/1", 1.0}}) ==
        "[gibbsteel.input.300] numbers, /phases/M6C/energy/900/terms/1: there is no "
        "number at this place; give places such as "
        "'/phases/austenite/energy/9/terms/1' or what they are called, 'austenite, "
        "energy on (Fe, C), power 1'; parameter_inputs of the parameter set lists "
        "all places");
  CHECK(message({one()}, {{kPlace, 500.0}, {kPlace, 500.0}}) ==
        "[gibbsteel.input.300] numbers, /phases/M6C/energy/2/terms/1: is given twice; "
        "give it once");
  CHECK(message({one()}, {{kPlace}}) ==
        "[gibbsteel.input.300] numbers, /phases/M6C/energy/2/terms/1: has no prior "
        "standard deviation, and the file states none; give one, in J/mol");
  CHECK(message({one()}, {{kPlace, -2.0}}) ==
        "[gibbsteel.input.300] numbers, /phases/M6C/energy/2/terms/1: has a prior "
        "standard deviation of -2; give a number above 0, in J/mol");
  CHECK(message({one()}, {{kPlace, 500.0, std::nan("")}}) ==
        "[gibbsteel.input.300] numbers, /phases/M6C/energy/2/terms/1: starts at nan; "
        "give a finite number in J/mol");
}

TEST_CASE("a name that no number has, with a file that states standard deviations") {
  try {
    calibrate({one()}, {{"C"}});
    FAIL("accepted");
  } catch (const InputError& error) {
    CHECK(
        std::string(error.what()) ==
        "[gibbsteel.input.300] numbers, C: there is no number at this place; give "
        "places such as '/phases/austenite/energy/17/terms/1' or what they are called, "
        "'austenite, energy on (W, C), power 1'; parameter_inputs of the parameter set "
        "lists all places; in Python leave numbers out (stated_numbers() in C++) for "
        "the 31 whose standard deviation the set states");
  }
}

TEST_CASE("no numbers, of a set that states no standard deviation") {
  CHECK_THROWS_WITH_AS(stated_numbers(*first_edition()),
                       "[gibbsteel.input.300] numbers: none was named, and the set "
                       "states no standard deviation; name numbers with their prior "
                       "standard deviations",
                       InputError);
}

TEST_CASE("numbers that a layer cannot hold") {
  std::string curve, factor, expansion;
  for (const auto& number : parameter_file::parameter_numbers(*first_edition())) {
    using Number = parameter_file::ParameterNumber;
    if (number.where == Number::Where::curve)
      curve = number.place;
    else if (number.entry == Number::Entry::factor)
      factor = number.place;
    else if (number.entry == Number::Entry::expansion)
      expansion = number.place;
  }
  CHECK(message({one()}, {{curve, 1.0}, {factor, 1.0}, {expansion, 1.0}}) ==
        "[gibbsteel.input.300] numbers, " + curve +
            ": belongs to a curve, which a layer keeps; free coefficients of terms, "
            "and volumes\n[gibbsteel.input.300] numbers, " +
            factor +
            ": is the factor of a curve, which has no standard deviation; free "
            "coefficients of terms, and volumes\n[gibbsteel.input.300] numbers, " +
            expansion +
            ": is an expansion, which a layer keeps; free coefficients of terms, and "
            "volumes");
}

TEST_CASE("measurements that cannot be fitted to, all of them at once") {
  Measurement bad = one();
  bad.steel = "";
  bad.value = INFINITY;
  bad.uncertainty = 0.0;
  bad.weight_percent = {{"C", 0.8}, {"Xx", 1.0}};
  Measurement cold = one();
  cold.temperature = Temperature::celsius(20.0);
  Measurement held_back = one();
  held_back.held_back = true;
  CHECK(message({bad, cold}, {{kPlace, 500.0}}) ==
        "[gibbsteel.input.301] measurements, 1: has no name of the steel; name it: "
        "leaving out goes by it\n"
        "[gibbsteel.input.301] measurements, 1: has the value inf; give what was "
        "measured\n"
        "[gibbsteel.input.301] measurements, 1: has an uncertainty of 0; give a number "
        "above 0 in the unit of the quantity\n"
        "[gibbsteel.input.201] measurements, 1, composition: 'Xx' is not the symbol of "
        "an element; give symbols such as C, Cr, Mo\n"
        "[gibbsteel.input.210] measurements, 2 (M2), temperature: is 293.1 K = 20.0 C; "
        "give 300 K to 2500 K (27 C to 2227 C, 80 F to 4040 F) and check the unit");
  for (const auto& none : {std::vector<Measurement>{}, {held_back}})
    CHECK(message(none, {{kPlace, 500.0}}) ==
          "[gibbsteel.input.301] measurements: there is none to fit to; give one that "
          "is not held back");
  CHECK(message({}, {}) ==
        "[gibbsteel.input.301] measurements: there is none; give what was measured");
}

TEST_CASE("options outside their range, all of them at once") {
  CalibrationOptions options;
  options.loss_scale = -1.0;
  options.most_evaluations = 1;
  options.title = "";
  CHECK(message({one()}, {{kPlace, 500.0}}, options) ==
        "[gibbsteel.input.302] loss_scale: is -1; give uncertainties above 0, or 0\n"
        "[gibbsteel.input.302] most_evaluations: is 1; give 2 to 100000\n"
        "[gibbsteel.input.302] title: is empty; give a text for the layer");
}
