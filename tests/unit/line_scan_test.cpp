/// All changes of the phase set along a line of conditions.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "scan/line_scan.hpp"
#include "solve_helpers.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;
using gibbsteel::testing::steel_phases;

namespace {

using Names = std::vector<std::string>;

/// Moles in 100 g of Fe with C.
std::vector<double> iron_with_carbon(double weight_percent) {
  const auto set = default_parameters();
  return {(100.0 - weight_percent) / set->find_element("Fe")->molar_mass,
          weight_percent / set->find_element("C")->molar_mass};
}

PhaseSystem iron_carbon() {
  return PhaseSystem(default_parameters(), {"Fe", "C"}, steel_phases());
}

/// Carbon from 0 to 2 wt% at one temperature: s = 0.5 is 1 wt%.
ConditionLine carbon_line(const PhaseSystem& system, double celsius) {
  return {system,
          {},
          {Temperature::celsius(celsius), iron_with_carbon(0.0)},
          {Temperature::celsius(celsius), iron_with_carbon(2.0)}};
}

double middle(const LineScan& scan, const LineEvent& event) {
  return 0.5 * (scan.nodes[event.below].s + scan.nodes[event.above].s);
}

void check_brackets(const LineScan& scan, double tolerance) {
  for (const LineEvent& event : scan.events) {
    CHECK(event.above > event.below);
    CHECK(scan.nodes[event.above].s - scan.nodes[event.below].s <= tolerance);
    CHECK(scan.nodes[event.below].usable());
    CHECK(scan.nodes[event.above].usable());
  }
}

}  // namespace

TEST_CASE("carbon added to iron at 800 C: ferrite, A3, Acm") {
  const PhaseSystem system = iron_carbon();
  LineScanOptions options;
  options.spacing = 0.05;
  options.tolerance = 5e-6;  // 1e-5 wt%
  const LineScan scan = scan_line(carbon_line(system, 800.0), options);
  CHECK(scan.gaps.empty());
  CHECK(scan.stopped.empty());
  REQUIRE(scan.events.size() == 3);
  check_brackets(scan, options.tolerance);
  CHECK(scan.events[0].appears == Names{"austenite"});
  CHECK(scan.events[0].disappears.empty());
  CHECK(scan.events[1].disappears == Names{"ferrite"});
  CHECK(scan.events[1].appears.empty());
  CHECK(scan.events[2].appears == Names{"M3C"});
  // Derived from activities of Ban-ya, Elliott & Chipman, Metall. Trans. 1 (1970)
  // 1313: A3 at 800 C is 0.33 +-0.03 wt% C, Acm 0.966 +-0.04.
  CHECK(std::abs(2.0 * middle(scan, scan.events[1]) - 0.33) < 0.03);
  CHECK(std::abs(2.0 * middle(scan, scan.events[2]) - 0.966) < 0.04);
}

TEST_CASE("slopes along a line that changes temperature and composition") {
  const PhaseSystem system = iron_carbon();
  const ConditionLine line(system, {},
                           {Temperature::celsius(760.0), iron_with_carbon(0.3)},
                           {Temperature::celsius(740.0), iron_with_carbon(0.6)});
  const double s = 0.4, step = 1e-4;
  const LineNode at = solve_node(line, s);
  const LineNode above = solve_node(line, s + step), below = solve_node(line, s - step);
  REQUIRE(at.phase_set() == Names{"austenite", "ferrite"});
  REQUIRE(same_phase_set(below, above));
  const LineSlopes slopes = slopes_of(line, at);
  const auto low = partners(at.result.present, below.result.present, kSamePhase);
  const auto high = partners(at.result.present, above.result.present, kSamePhase);
  for (std::size_t i = 0; i < at.result.present.size(); ++i) {
    const double difference =
        (above.result.present[high[i]].amount - below.result.present[low[i]].amount) /
        (2.0 * step);
    CHECK(slopes.amount[i] == doctest::Approx(difference).epsilon(1e-5));
  }
  const auto low_absent = partners(at.result.absent, below.result.absent, kSamePhase);
  const auto high_absent = partners(at.result.absent, above.result.absent, kSamePhase);
  REQUIRE_FALSE(at.result.absent.empty());
  for (std::size_t i = 0; i < at.result.absent.size(); ++i) {
    REQUIRE(low_absent[i] != kNoMatch);
    REQUIRE(high_absent[i] != kNoMatch);
    const double difference = -(above.result.absent[high_absent[i]].driving_force -
                                below.result.absent[low_absent[i]].driving_force) /
                              (2.0 * step);
    CHECK(slopes.d[i] == doctest::Approx(difference).epsilon(1e-4));
  }
}

TEST_CASE("the same changes from nodes far apart") {
  const PhaseSystem system = iron_carbon();
  LineScanOptions fine, coarse;
  fine.spacing = 0.01;
  coarse.spacing = 0.5;
  fine.tolerance = coarse.tolerance = 5e-6;
  const LineScan a = scan_line(carbon_line(system, 760.0), fine);
  const LineScan b = scan_line(carbon_line(system, 760.0), coarse);
  REQUIRE(a.events.size() == 3);
  REQUIRE(b.events.size() == 3);
  for (std::size_t i = 0; i < 3; ++i)
    CHECK(std::abs(middle(a, a.events[i]) - middle(b, b.events[i])) < 5e-6);
  CHECK(b.nodes.size() < a.nodes.size());
}

TEST_CASE("a phase that comes and goes between two nodes with the same phases") {
  // The austenite loop of iron with 12 wt% chromium: ferrite on both sides. The loop
  // reaches to about 12.7 wt% Cr: from memory, common to all published diagrams.
  const Steel steel({{"Cr", 12.0}});
  SearchOptions two_nodes;
  two_nodes.node_spacing = 100.0;
  const TemperatureRange range{Temperature::celsius(850), Temperature::celsius(1150)};
  const PhaseChanges coarse = phase_changes(steel, range, {}, two_nodes);
  const PhaseChanges fine = phase_changes(steel, range);
  REQUIRE(coarse.changes.size() == 2);
  REQUIRE(fine.changes.size() == 2);
  for (std::size_t i = 0; i < 2; ++i)
    CHECK(std::abs(coarse.changes[i].temperature.in_kelvin() -
                   fine.changes[i].temperature.in_kelvin()) < 0.01);
  CHECK(coarse.changes[0].appears == Names{"austenite"});
  CHECK(coarse.changes[1].disappears == Names{"austenite"});
}

TEST_CASE("what no mixture of the phases can be made of is a gap with its reason") {
  const PhaseSystem system(default_parameters(), {"Fe", "C"}, {"M3C", "M7C3"});
  const ConditionLine line(system, {},
                           {Temperature::celsius(700.0), iron_with_carbon(6.0)},
                           {Temperature::celsius(700.0), iron_with_carbon(8.0)});
  LineScanOptions options;
  options.spacing = 0.1;
  options.tolerance = 1e-5;
  const LineScan scan = scan_line(line, options);
  REQUIRE(scan.gaps.size() == 1);
  CHECK(scan.gaps[0].from == 0.0);
  CHECK(scan.gaps[0].reason == "no mixture of the allowed phases has this composition");
  // Stoichiometry of M3C: 12.011 / (12.011 + 3 x 55.845) = 6.69 wt%.
  CHECK(std::abs(6.0 + 2.0 * scan.gaps[0].to - 6.690) < 0.002);
}

TEST_CASE("the caller or the limit stops it: what is done is kept and marked") {
  const PhaseSystem system = iron_carbon();
  LineScanOptions options;
  options.spacing = 0.05;
  options.progress = [](std::size_t done) { return done < 12; };
  LineScan scan = scan_line(carbon_line(system, 800.0), options);
  CHECK(scan.stopped == "cancelled");
  CHECK(scan.reached < 1.0);
  CHECK(scan.nodes.back().s <= scan.reached);
  options.progress = {};
  options.most_solves = 15;
  scan = scan_line(carbon_line(system, 800.0), options);
  CHECK(scan.stopped == "the limit of 15 soaks was reached");
  CHECK(scan.reached < 1.0);
}
