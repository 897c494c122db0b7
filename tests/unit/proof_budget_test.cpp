/// What a proof says that did not end, or that found a phase below the plane.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "proof/plane_proof.hpp"

using namespace gibbsteel;

namespace {

const Steel& punch() {
  static const Steel steel(
      {{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}});
  return steel;
}

SolveReport soaked(long boxes, double seconds) {
  SoakOptions options;
  options.solve.certify = Certificate::proof;
  options.solve.proof_boxes = boxes;
  options.solve.proof_seconds = seconds;
  return punch().soak(Temperature::celsius(1050.0), options).solve_report;
}

}  // namespace

TEST_CASE("a proof out of boxes leaves what is known without it") {
  const SolveReport report = soaked(1, 600.0);
  CHECK(report.usable());
  CHECK(report.certificate == Certificate::many_starts);
  CHECK(std::isnan(report.proven_gap));
  CHECK(report.proof ==
        "not proven: austenite used up the box budget after 1 boxes with 2 left");
  CHECK(report.reason == "converged; no phase found below the tangent plane");
}

TEST_CASE("a proof out of time leaves what is known without it") {
  const SolveReport report = soaked(1000000, 1e-9);
  CHECK(report.usable());
  CHECK(report.certificate == Certificate::many_starts);
  CHECK(std::isnan(report.proven_gap));
  CHECK(report.proof ==
        "not proven: austenite used up the time budget after 0 boxes with 1 left");
  CHECK(report.proof_boxes == 0);
}

TEST_CASE("phases below the plane are handed over, and nothing is proven") {
  std::vector<std::string> names;
  for (const Phase& phase : default_parameters()->phases) names.push_back(phase.name);
  const PhaseSystem system(punch().parameters(), punch().elements(), names);
  const auto t = Temperature::celsius(1050.0);
  const Equilibrium result = minimize(system, t, punch().mole_fractions());
  auto conditions = internal::conditions_of(system, t, punch().mole_fractions());
  internal::ColumnGeneration generation(conditions);
  SolveOptions options;
  const auto proven =
      internal::prove_plane(generation, result.chemical_potential, options);
  CHECK(proven.complete);
  CHECK(proven.violations.empty());
  CHECK(proven.seconds > 0.0);
  auto raised = result.chemical_potential;
  for (double& mu : raised) mu += 2.0;  // all that is present: 2 J/mol below
  const auto refuted = internal::prove_plane(generation, raised, options);
  CHECK_FALSE(refuted.complete);
  REQUIRE(refuted.violations.size() == 2);  // of the models austenite and M6C
  for (const auto& below : refuted.violations) CHECK(below.d < -1.9);
}
