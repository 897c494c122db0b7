/// What quantities name and what they can be, asked before a soak is spent on them.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1120);

Steel punch() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

const TemperatureRange kRange{Temperature::celsius(900), Temperature::celsius(1200)};

const std::string kNiobium =
    "[gibbsteel.input.206] quantity, Nb in the matrix: Nb is not modelled by the "
    "parameter file; choose from: Fe, C, Cr, Mo, W, V, Co, Ni, Mn, Si; or load a file "
    "that models it";
const std::string kCementite =
    "[gibbsteel.input.205] kind: there is no phase 'cementite'; did you mean 'M3C'? "
    "choose from: austenite, MC, ferrite, M6C, M7C3, M23C6, M3C, M2C, hex"
    "agonal matrix, M3C2, hexagonal MC, graphite";

}  // namespace

TEST_CASE("quantity: what is no element is refused where it is made") {
  const auto refused = [](const std::string& what, const std::string& remedy) {
    return "[gibbsteel.input.201] element: '" + what +
           "' is not the symbol of an element; " + remedy;
  };
  CHECK(message([] { quantities::matrix("c"); }) == refused("c", "did you mean 'C'?"));
  CHECK(message([] { quantities::in_phase("M6C", "w"); }) ==
        refused("w", "did you mean 'W'?"));
  CHECK(message([] { quantities::in_carbides("Chromium"); }) ==
        refused("Chromium", "did you mean 'Cr'?"));
  CHECK(message([] { quantities::short_soak_matrix("Xx"); }) ==
        refused("Xx", "give a symbol such as C, Cr, Mo"));
}

TEST_CASE("quantity: what the parameter set lacks is refused before any soak") {
  const std::vector<Quantity> both{quantities::matrix("Nb"),
                                   quantities::mass_percent("cementite"),
                                   quantities::matrix("Nb")};
  const std::string problems = kNiobium + "\n" + kCementite;
  SearchOptions search;
  search.progress = [](std::size_t) -> bool { throw std::logic_error("a soak"); };
  CHECK(message([&] { temperature_for(punch(), both[0], 0.1, kRange, {}, search); }) ==
        kNiobium);
  CHECK(message([&] {
          matching_temperature(punch().soak(kSoak), punch(), both[1], kRange, {},
                               search);
        }) == kCementite);
  CHECK(message([&] {
          composition_for(punch(), "C", both[1], 2.0, {0.3, 0.8}, kSoak);
        }) == kCementite);
  WindowRules rules;
  rules.hardness = both[0];
  rules.least_hardness = 0.1;
  CHECK(message([&] { hardening_window(punch(), rules, kRange, {}, search); }) ==
        kNiobium);
  const std::vector<double> numbers{0.55, 4.5};
  ScreenOptions options;
  options.quantities = both;
  CHECK(message([&] { screen({{"C", "Cr"}, numbers, {kSoak}}, options); }) == problems);
  const std::vector<Steel> steels{punch()};
  const std::vector<Temperature> temperatures{kSoak};
  CHECK(message([&] { compare(steels, temperatures, both); }) == problems);
  CHECK(message([&] { parameter_band(punch(), kSoak, both); }) == problems);
  HeatTolerances tolerances;
  tolerances.furnace_error = 5.0;
  CHECK(message([&] { tolerance_band(punch(), kSoak, tolerances, both); }) == problems);
  CHECK(message([&] {
          design(punch(), {{"C", {0.3, 0.8}}},
                 {{both[0], kSoak, TargetSense::at_most, 1.0, 0.0}});
        }) == kNiobium);
}

TEST_CASE("quantity: a state refuses what it left out, not what it has none of") {
  CHECK(quantities::matrix("Co").value(punch().soak(kSoak)) == 0.0);
  const State state = punch().changed({{"Nb", 0.1}}).soak(kSoak);
  CHECK(message([&] { quantities::matrix("Nb").value(state); }) ==
        "[gibbsteel.input.206] quantity, Nb in the matrix: Nb is not modelled by the "
        "parameter file; load a file that models it");
  CHECK(message([&] { quantities::volume_percent("cementite").value(state); }) ==
        kCementite);
  CHECK(std::isnan(quantities::matrix("Nb").value(State{})));
}

TEST_CASE("quantity: a wish that no state can have is refused") {
  const auto wish = [](const Quantity& quantity, double value) {
    return message([&] { temperature_for(punch(), quantity, value, kRange); });
  };
  CHECK(wish(quantities::matrix("C"), -0.5) ==
        "[gibbsteel.input.340] value: is -0.5, which 'C in the matrix' can never be; "
        "give 0 to 100 wt%");
  CHECK(wish(quantities::carbon_activity(), -1.0) ==
        "[gibbsteel.input.340] value: is -1, which 'carbon activity' can never be; "
        "give 0 or more");
  CHECK(message([] {
          composition_for(punch(), "C", quantities::carbide_volume_percent(), 101.0,
                          {0.3, 0.8}, kSoak);
        }) ==
        "[gibbsteel.input.340] value: is 101, which 'carbide' can never be; give 0 to "
        "100 vol%");
  CHECK(message([] {
          design(punch(), {{"C", {0.3, 0.8}}},
                 {{quantities::retained_austenite(), kSoak, TargetSense::at_most, -1.0,
                   0.0}});
        }) ==
        "[gibbsteel.input.340] targets, retained austenite: is -1, which 'retained "
        "austenite' can never be; give 0 to 100 vol%");
  // All of a steel may be a little more than 100 vol% of it.
  const State austenite = Steel({{"C", 0.5}}).soak(Temperature::celsius(1000));
  const auto match = matching_temperature(
      austenite, Steel({{"C", 0.6}}), quantities::volume_percent("austenite"),
      {Temperature::celsius(900), Temperature::celsius(1000)});
  CHECK(match.search.status == TargetStatus::always_equal);
}
