/// Conditions on which an earlier state of the minimizer was wrong, stalled, or claimed
/// too much. Energies of the better minimum are from searches with many more starts.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/steel.hpp"
#include "solve_helpers.hpp"

using namespace gibbsteel;
using namespace gibbsteel::testing;

TEST_CASE("a minimum that eight starts do not see") {
  const auto s = solve_moles({{"Mn", .030924829368513},
                              {"Fe", .060365078340576},
                              {"C", .11239061760749},
                              {"W", .47689581390632},
                              {"Si", .29481587510444},
                              {"Ni", .00053961526604295},
                              {"Cr", .024068170406624}},
                             Temperature::kelvin(1220.784498226),
                             {"austenite", "M6C", "M7C3", "M2C"});
  REQUIRE(s.result.report.usable());
  CHECK(s.result.gibbs_energy < -52127.2);
  CHECK(s.of("M2C").size() == 2);
}

TEST_CASE("two ferrites far below the validity range") {
  const auto s = solve_moles(
      {{"Mn", .28089415766884}, {"V", .27150595329344}, {"Cr", .44759988903773}},
      Temperature::kelvin(460.60386199952));
  REQUIRE(s.result.report.usable());
  CHECK(s.result.gibbs_energy < -20120.66);
  CHECK(s.of("ferrite").size() == 2);
}

TEST_CASE("what polishing the absent phases finds is not left standing") {
  const auto s = solve_moles({{"Fe", .82034306613},
                              {"C", .03305702867},
                              {"Cr", .03732372006},
                              {"Mo", .0242973048},
                              {"W", .02812609139},
                              {"V", .01951056807},
                              {"Mn", .0158447036},
                              {"Si", .02149751727}},
                             Temperature::kelvin(614.33));
  REQUIRE(s.result.report.usable());
  CHECK(s.result.report.lowest_absent >= -1e-3);
}

TEST_CASE("inside a narrow gap one phase is never certified") {
  // Cr-W, L = 32400 J/mol: consolute temperature L / (2 R) = 1948.4 K. Just below it
  // the middle of the gap is inside the spinodal.
  int solved = 0;
  for (const double kelvin : {1947.2, 1947.7, 1947.91, 1948.11}) {
    CAPTURE(kelvin);
    const auto s = solve_moles({{"Cr", 0.5}, {"W", 0.5}}, Temperature::kelvin(kelvin),
                               {"ferrite"});
    if (!s.result.report.usable()) continue;
    ++solved;
    CHECK(s.of("ferrite").size() == 2);
  }
  CHECK(solved >= 2);  // the others come back flagged
}

TEST_CASE("a compound alone among the candidates has no potentials") {
  const auto s = solve_moles({{"Fe", 3}, {"C", 1}}, Temperature::kelvin(1000), {"M3C"});
  REQUIRE(s.result.report.usable());
  CHECK_FALSE(s.result.report.unique);
  CHECK(std::isnan(s.result.chemical_potential[0]));
  CHECK(std::isnan(s.result.chemical_potential[1]));
  CHECK(std::isfinite(s.result.gibbs_energy));
}

TEST_CASE("a trace that the majority phases do not dissolve") {
  for (const double nickel : {1e-12, 3e-14, 1e-15}) {
    CAPTURE(nickel);
    const auto s = solve_moles({{"Cr", .778}, {"C", .222}, {"Ni", nickel}},
                               Temperature::kelvin(1647.7));
    REQUIRE(s.result.report.usable());
    CHECK(s.result.report.balance_residual < 1e-10);
  }
}

TEST_CASE("many traces at once") {
  const auto t = Temperature::celsius(1038.8600503181765);
  const auto s = solve_weight({{"C", 1.8124612378912608},
                               {"W", 3.504056803277497e-08},
                               {"V", 2.9416758972281468e-09},
                               {"Mn", 1.00617110480613e-09},
                               {"Si", 2.1009057813803598e-08}},
                              t);
  CHECK(s.result.report.usable());
}

TEST_CASE("pure iron at the temperature of its transition: either phase is right") {
  const auto s = solve_moles({{"Fe", 1}}, Temperature::kelvin(1184.811939626715));
  REQUIRE(s.result.report.usable());
  CHECK(s.result.report.lowest_absent > -1e-3);
  CHECK(s.result.report.lowest_absent < 1e-3);
}

TEST_CASE("iron with next to no carbon just below its transition") {
  // Ferrite alone. Per mole of carbon the energy differs by its potential, which is R T
  // ln x, some -160 to -210 kJ/mol, and the energy of solution: less than 250 kJ/mol.
  for (const double celsius : {908.5, 909.5, 910.5, 911.5}) {
    const auto t = Temperature::celsius(celsius);
    const auto pure = solve_moles({{"Fe", 1}}, t);
    REQUIRE(pure.result.report.usable());
    for (const double carbon : {1e-6, 1e-7, 1e-8}) {
      CAPTURE(celsius);
      CAPTURE(carbon);
      const auto s = solve_weight({{"C", carbon}}, t);
      REQUIRE(s.result.report.usable());
      CHECK(s.of("ferrite").size() == 1);
      CHECK(s.result.present.size() == 1);
      CHECK(std::abs(s.result.gibbs_energy - pure.result.gibbs_energy) <
            2.5e5 * s.overall[1]);
    }
  }
}

TEST_CASE("graphite in the place of the carbide that a trace was there for") {
  // Added to the assemblage, graphite left too many phases for the elements that count;
  // the search then stalled. Judge: the proof.
  const Steel steel({{"C", 1.8596216903},
                     {"Cr", 9.4945359921},
                     {"Mo", 2.338e-10},
                     {"W", 1.8123e-9},
                     {"V", 0.858804},
                     {"Co", 1.78869e-9},
                     {"Ni", 2.5717547235},
                     {"Mn", 1.6988472233},
                     {"Si", 7.29579e-11}});
  SoakOptions options;
  options.graphite = true;
  for (const double celsius : {292.0, 302.3, 312.0}) {
    CAPTURE(celsius);
    const State state = steel.soak(Temperature::celsius(celsius), options);
    CHECK(state.usable());
    options.solve.certify = Certificate::proof;
    const State proven = steel.soak(Temperature::celsius(celsius), options);
    options.solve.certify = Certificate::many_starts;
    CHECK(proven.solve_report.certificate == Certificate::proof);
    CHECK(std::abs(state.gibbs_energy - proven.gibbs_energy) < 1e-3);
  }
}
