/// Lowest energies are concave in temperature, Eq. (C4), and convex in composition,
/// Eq. (C3): soaks of a high-speed steel pass, and a stretch of them without M6C among
/// others with it, which is no lowest energy, does not.

#include "continuation/convexity_audit.hpp"

#include <doctest/doctest.h>

#include "../../benchmarks/high_speed_steel.hpp"
#include "continuation/solve_line.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

constexpr double kTolerance = 1e-3;  // [J/mol of atoms]

PhaseSystem system_of(std::vector<std::string> phases) {
  return {default_parameters(), benchmarks::high_speed_steel().elements(),
          std::move(phases)};
}

std::vector<std::string> without_m6c() {
  auto phases = benchmarks::all_phases();
  std::erase(phases, "M6C");
  return phases;
}

struct Soaked {
  std::vector<double> x;
  Equilibrium result;
};

/// 40 soaks, number 15 to 24 of them with `other` phases.
using Line = std::vector<Soaked>;
Line line(const PhaseSystem& usual, const PhaseSystem& other, double kelvin_step,
          double carbon_step) {
  Line soaks;
  for (int i = 0; i < 40; ++i) {
    const Steel steel =
        benchmarks::high_speed_steel().changed({{"C", 0.85 + carbon_step * i}});
    const auto t = Temperature::kelvin(1373.15 + kelvin_step * i);
    const PhaseSystem& system = i >= 15 && i < 25 ? other : usual;
    soaks.push_back(
        {steel.mole_fractions(), minimize(system, t, steel.mole_fractions())});
    REQUIRE(soaks.back().result.report.usable());
  }
  return soaks;
}

/// The soaks at which the audit finds something odd.
std::vector<std::size_t> odd(const Line& soaks) {
  ConvexityAudit audit;
  std::vector<std::size_t> found;
  for (std::size_t k = 0; k < soaks.size(); ++k)
    if (!audit.add(soaks[k].result, soaks[k].x, kTolerance)) found.push_back(k);
  return found;
}

}  // namespace

TEST_CASE("lowest energies pass: temperatures, compositions, both at once") {
  const PhaseSystem all = system_of(benchmarks::all_phases());
  CHECK(odd(line(all, all, 2.0, 0.0)).empty());
  CHECK(odd(line(all, all, 0.0, 0.01)).empty());
  CHECK(odd(line(all, all, 2.0, 0.01)).empty());  // nothing is asked
}

TEST_CASE("a stretch without the carbide that is stable is odd at its ends") {
  const PhaseSystem all = system_of(benchmarks::all_phases());
  const PhaseSystem some = system_of(without_m6c());
  // Up to number 15 the energies jump up, which no chord sees before the next soak; at
  // number 25 they are back.
  CHECK(odd(line(all, some, 2.0, 0.0)) == std::vector<std::size_t>{15, 26});
  CHECK(odd(line(all, some, 0.0, 0.01)) == std::vector<std::size_t>{15, 25});
}

TEST_CASE("one energy that is too high by 0.01 J/mol is seen") {
  const PhaseSystem all = system_of(benchmarks::all_phases());
  Line temperatures = line(all, all, 0.05, 0.0),
       compositions = line(all, all, 0.0, 1e-4);
  CHECK(odd(temperatures).empty());
  CHECK(odd(compositions).empty());
  temperatures[20].result.gibbs_energy += 0.01;
  compositions[20].result.gibbs_energy -= 0.01;  // too low: the others are too high
  CHECK(odd(temperatures) == std::vector<std::size_t>{20, 22});
  CHECK(odd(compositions) == std::vector<std::size_t>{20, 21});
}

TEST_CASE("what is not usable is no point of the line") {
  const PhaseSystem all = system_of(benchmarks::all_phases());
  Line soaks = line(all, system_of(without_m6c()), 0.0, 0.01);
  for (std::size_t k = 15; k < 25; ++k)
    soaks[k].result.report.status = SolveStatus::stalled;
  CHECK(odd(soaks).empty());
}

TEST_CASE("a line that no cold soak mends is flagged, and says why") {
  // Invented: iron with a negative heat capacity. Every soak is the lowest energy, and
  // no line of temperatures is concave.
  ParameterSet set = *default_parameters();
  for (Curve& curve : set.curves)
    if (curve.name == "iron, body-centred")
      for (auto& piece : curve.pieces)
        piece.value.terms.push_back({{2, false}, 0.05});  // [J/mol/K^2]
  const Steel plain({{"C", 0.4}});
  const PhaseSystem system(std::make_shared<const ParameterSet>(std::move(set)),
                           plain.elements(), {"austenite", "M3C"});
  std::vector<LinePoint> points;
  for (int i = 0; i < 6; ++i)
    points.push_back({Temperature::celsius(1000.0 + 2.0 * i), plain.mole_fractions()});
  std::vector<SolveReport> reports;
  const LineCounts counts =
      solve_line(system, {}, points, [&](std::size_t, Equilibrium&& result) {
        reports.push_back(result.report);
        return true;
      });
  REQUIRE(reports.size() == points.size());
  CHECK(counts.again > 0);  // solved again, cold, before it was flagged
  for (const SolveReport& report : reports) {
    CHECK(report.status == SolveStatus::stalled);
    CHECK(report.reason ==
          "the energies of the points around are not concave in temperature or not "
          "convex in composition: one of them is not the lowest, or the parameter file "
          "has a negative heat capacity there");
  }
}
