/// The minimizer on problems whose answer is known beforehand.

#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "first_edition.hpp"
#include "solve_helpers.hpp"

using namespace gibbsteel;
using namespace gibbsteel::testing;

namespace {

const Composition kHighSpeedSteel{{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2},
                                  {"V", 1.9},  {"Mn", 0.3}, {"Si", 0.3}};

std::string only_phase(const Solved& s) {
  REQUIRE(s.result.report.usable());
  REQUIRE(s.result.present.size() == 1);
  return s.system.phases()[s.result.present[0].phase].name();
}

}  // namespace

TEST_CASE("pure iron: ferrite, austenite, ferrite") {
  // 912 and 1394 C: Okamoto, J. Phase Equilib. 13 (1992) 543.
  CHECK(only_phase(solve_moles({{"Fe", 1}}, Temperature::celsius(905))) == "ferrite");
  CHECK(only_phase(solve_moles({{"Fe", 1}}, Temperature::celsius(919))) == "austenite");
  CHECK(only_phase(solve_moles({{"Fe", 1}}, Temperature::celsius(1387))) ==
        "austenite");
  CHECK(only_phase(solve_moles({{"Fe", 1}}, Temperature::celsius(1401))) == "ferrite");
}

TEST_CASE("regular solution: the binodal of a symmetric gap") {
  // Cr-W in the first file is a regular solution with L = 32400 J/mol; the gap obeys
  // ln(x / (1 - x)) = L (2 x - 1) / (R T) (textbook result). The magnetic part of Cr is
  // below 0.01 J/mol here.
  const double t = 1273.15;
  const auto s = solve_moles({{"Cr", 0.5}, {"W", 0.5}}, Temperature::kelvin(t),
                             {"ferrite"}, {}, first_edition());
  REQUIRE(s.result.report.usable());
  const auto sets = s.of("ferrite");
  REQUIRE(sets.size() == 2);
  for (const auto& set : sets) {
    const double x = s.site_fraction(set, "W");
    CHECK(
        std::log(x / (1.0 - x)) ==
        doctest::Approx(32400.0 * (2.0 * x - 1.0) / (kGasConstant * t)).epsilon(1e-4));
    CHECK(set.amount == doctest::Approx(0.5).epsilon(1e-3));
  }
}

TEST_CASE("two-phase field: compositions do not depend on the overall carbon") {
  const auto t = Temperature::celsius(780);
  const auto a = solve_weight({{"C", 0.2}}, t), b = solve_weight({{"C", 0.4}}, t);
  REQUIRE(a.result.present.size() == 2);
  REQUIRE(b.result.present.size() == 2);
  for (std::size_t e = 0; e < 2; ++e)
    CHECK(a.result.chemical_potential[e] ==
          doctest::Approx(b.result.chemical_potential[e]).epsilon(1e-10));
  CHECK(a.of("austenite")[0].amount < b.of("austenite")[0].amount);
}

TEST_CASE("austenite and MC are found as two sets of one model without being told") {
  const auto s = solve_weight(kHighSpeedSteel, Temperature::celsius(1150));
  REQUIRE(s.result.report.usable());
  const auto sets = s.of("austenite");
  REQUIRE(sets.size() == 2);
  CHECK(s.site_fraction(sets[0], "C") < 0.1);
  CHECK(s.site_fraction(sets[1], "C") > 0.7);
  CHECK(s.of("M6C").size() == 1);
}

TEST_CASE("M2C and the hexagonal matrix are two sets of one model") {
  const auto s = solve_moles({{"Co", 0.75}, {"Mo", 0.17}, {"C", 0.08}},
                             Temperature::celsius(1000), {"M2C"});
  REQUIRE(s.result.report.usable());
  const auto sets = s.of("M2C");
  REQUIRE(sets.size() == 2);
  CHECK(s.site_fraction(sets[0], "vacancy") > 0.9);
  CHECK(s.site_fraction(sets[0], "Co") > 0.8);
  CHECK(s.site_fraction(sets[1], "C") > 0.8);
  CHECK(s.site_fraction(sets[1], "Mo") > 0.8);
}

TEST_CASE("the energy is that of the plane, sum n G = mu . b") {
  const auto s = solve_weight(kHighSpeedSteel, Temperature::celsius(1150));
  CHECK(s.result.gibbs_energy == doctest::Approx(plane_energy(s)).epsilon(1e-12));
  CHECK(s.result.report.balance_residual < 1e-10);
  CHECK(s.result.report.present_residual < 1e-6);
  CHECK(s.result.report.lowest_absent > -1e-3);
}

TEST_CASE("fewer candidate phases never lower the energy") {
  const auto t = Temperature::celsius(1100);
  auto phases = steel_phases();
  const double free_energy = solve_weight(kHighSpeedSteel, t).result.gibbs_energy;
  std::erase(phases, "M6C");
  const auto without = solve_weight(kHighSpeedSteel, t, phases);
  REQUIRE(without.result.report.usable());
  CHECK(without.of("M6C").empty());
  CHECK(without.result.gibbs_energy > free_energy);
  const auto matrix_only = solve_weight(kHighSpeedSteel, t, {"ferrite"});
  REQUIRE(matrix_only.result.report.usable());
  CHECK(matrix_only.result.gibbs_energy > without.result.gibbs_energy);
}

TEST_CASE("the energy is convex along a line of compositions") {
  std::mt19937_64 random(5);
  std::uniform_real_distribution<double> u(0.0, 1.0);
  for (int k = 0; k < 40; ++k) {
    const auto draw = [&] {
      return Composition{{"Fe", 80 + 15 * u(random)},
                         {"C", 0.5 + 8 * u(random)},
                         {"Cr", 0.1 + 12 * u(random)},
                         {"Mo", 0.1 + 5 * u(random)},
                         {"V", 0.1 + 6 * u(random)}};
    };
    const auto t = Temperature::celsius(750 + 480 * u(random));
    const auto a = solve_moles(draw(), t), b = solve_moles(draw(), t);
    Composition middle;
    for (std::size_t e = 0; e < a.overall.size(); ++e)
      middle.emplace_back(a.system.elements()[e], a.overall[e] + b.overall[e]);
    const auto m = solve_moles(middle, t);
    REQUIRE(m.result.report.usable());
    CAPTURE(k);
    CHECK(m.result.gibbs_energy <=
          0.5 * (a.result.gibbs_energy + b.result.gibbs_energy) + 1e-7);
  }
}

TEST_CASE("trace elements obey Henry's law down to 1e-12") {
  // mu falls by R T ln 10 for every decade of dilution.
  const auto t = Temperature::celsius(1050);
  double last = 0.0;
  for (const double trace : {1e-7, 1e-8, 1e-9, 1e-10, 1e-11, 1e-12}) {
    const auto s = solve_moles(
        {{"Fe", 0.95}, {"C", 0.03}, {"Cr", 0.02}, {"V", trace}, {"W", trace}}, t);
    CAPTURE(trace);
    REQUIRE(s.result.report.usable());
    CHECK(s.result.report.balance_residual < 1e-10);
    const double mu = s.result.chemical_potential[3];
    if (trace < 5e-8)
      CHECK(
          last - mu ==
          doctest::Approx(kGasConstant * t.in_kelvin() * std::log(10.0)).epsilon(1e-5));
    last = mu;
  }
}

TEST_CASE("an element that is absent is the limit of its trace") {
  const auto t = Temperature::celsius(900);
  const auto none = solve_moles({{"Fe", 0.95}, {"C", 0.04}, {"Cr", 0.01}}, t);
  const auto trace =
      solve_moles({{"Fe", 0.95}, {"C", 0.04}, {"Cr", 0.01}, {"Mo", 1e-12}}, t);
  CHECK(trace.result.gibbs_energy ==
        doctest::Approx(none.result.gibbs_energy).epsilon(1e-10));
  CHECK(trace.result.chemical_potential[1] ==
        doctest::Approx(none.result.chemical_potential[1]).epsilon(1e-9));
}

TEST_CASE("a composition on a phase boundary is solved") {
  // The overall composition is that of the austenite of a steel with carbides: every
  // carbide is then exactly at the point of appearing.
  const auto t = Temperature::celsius(1150);
  const auto steel = solve_weight(kHighSpeedSteel, t);
  Composition matrix;
  std::vector<double> atoms(steel.system.elements().size(), 0.0);
  const auto point = steel.of("austenite")[0];
  const auto& all = steel.system.phases()[point.phase].constituents();
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].element >= 0)
      atoms[static_cast<std::size_t>(all[i].element)] += point.y[i];
  for (std::size_t e = 0; e < atoms.size(); ++e)
    matrix.emplace_back(steel.system.elements()[e], atoms[e]);
  const auto s = solve_moles(matrix, t);
  REQUIRE(s.result.report.usable());
  CHECK(s.of("austenite")[0].amount ==
        doctest::Approx(1.0 / (atoms[0] + atoms[1] + atoms[2] + atoms[3] + atoms[4] +
                               atoms[5] + atoms[6] + atoms[7]))
            .epsilon(1e-6));
  for (std::size_t e = 0; e < atoms.size(); ++e)
    CHECK(s.result.chemical_potential[e] ==
          doctest::Approx(steel.result.chemical_potential[e]).epsilon(1e-8));
}

TEST_CASE("a compound alone: its amount and energy are right") {
  const auto t = Temperature::celsius(700);
  const auto s = solve_moles({{"Fe", 3}, {"C", 1}}, t);
  REQUIRE(s.result.report.usable());
  double cementite = 0.0;
  for (const auto& set : s.of("M3C")) cementite += set.amount;
  CHECK(cementite == doctest::Approx(0.25).epsilon(1e-9));
  CHECK(s.result.gibbs_energy == doctest::Approx(plane_energy(s)).epsilon(1e-9));
  // Its carbon potential may lie anywhere between two bounds, and the report says so.
  CHECK_FALSE(s.result.report.unique);
}

TEST_CASE("the order of the elements does not matter, and runs repeat bit for bit") {
  const auto t = Temperature::celsius(1000);
  const Composition one{{"Fe", 85}, {"C", 4}, {"Cr", 8}, {"V", 3}};
  const Composition turned{{"V", 3}, {"Cr", 8}, {"C", 4}, {"Fe", 85}};
  const auto a = solve_moles(one, t), b = solve_moles(one, t),
             c = solve_moles(turned, t);
  CHECK(a.result.gibbs_energy == b.result.gibbs_energy);
  CHECK(a.result.chemical_potential == b.result.chemical_potential);
  CHECK(c.result.gibbs_energy == doctest::Approx(a.result.gibbs_energy).epsilon(1e-12));
  CHECK(c.result.chemical_potential[3] ==
        doctest::Approx(a.result.chemical_potential[0]).epsilon(1e-10));
}

TEST_CASE("phases that cannot hold the composition: infeasible, no numbers") {
  const auto s =
      solve_moles({{"Fe", 0.9}, {"C", 0.1}}, Temperature::celsius(1000), {"graphite"});
  CHECK(s.result.report.status == SolveStatus::infeasible);
  CHECK_FALSE(s.result.report.usable());
  CHECK(s.result.present.empty());
  CHECK(std::isnan(s.result.gibbs_energy));
  CHECK(s.result.report.brief() ==
        "NOT USABLE: infeasible (no mixture of the allowed phases has this "
        "composition)");
}

TEST_CASE("too few steps: flagged, no numbers") {
  SolveOptions options;
  options.max_newton_steps = 2;
  options.max_rounds = 1;
  int flagged = 0;
  for (int celsius = 700; celsius <= 1250; celsius += 10) {
    const auto s = solve_weight(kHighSpeedSteel, Temperature::celsius(celsius),
                                steel_phases(), options);
    if (s.result.report.usable()) continue;
    ++flagged;
    CHECK(s.result.present.empty());
    CHECK(std::isnan(s.result.gibbs_energy));
    CHECK(s.result.report.brief().rfind("NOT USABLE: ", 0) == 0);
  }
  CHECK(flagged > 0);
}
