/// The proof that no phase lies below the tangent plane, on random steels inside the
/// validity range of the shipped file: how many are proven, and none that is false.

#include <doctest/doctest.h>

#include "gibbsteel/minimizer.hpp"
#include "proof/prover.hpp"
#include "random_steels.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr int kSteels = 20;
#else
constexpr int kSteels = 300;
#endif
constexpr testing::Band kSoaks{700.0, 1250.0};

testing::RandomSteel steel_number(int k, std::mt19937_64& random) {
  random.seed(7100000u + static_cast<unsigned>(k));
  return testing::draw(*default_parameters(), kSoaks, random);
}

Candidate candidate_of(const PhaseModel& model, double kelvin) {
  std::vector<TemperatureValue> curves(model.curves().size());
  const TemperaturePowers powers(kelvin);
  model.curves().evaluate(powers, curves);
  Candidate candidate{&model.compiled(), {}};
  candidate.at.refresh(model.compiled(), powers, curves);
  return candidate;
}

/// D [J/mol of formula units] at y, in the plain kernel.
double plane_distance_at(const Candidate& candidate, const std::vector<double>& mu,
                         const std::vector<double>& y) {
  std::vector<double> w(y.size());
  plane_weights(*candidate.phase, mu, w.data());
  double d = gibbs_energy(*candidate.phase, candidate.at, y.data());
  for (std::size_t i = 0; i < y.size(); ++i) d -= w[i] * y[i];
  return d;
}

}  // namespace

TEST_CASE("random steels are proven, or say how far the proof got") {
  SolveOptions options;
  options.certify = Certificate::proof;
  int proven = 0, usable = 0;
  for (int k = 0; k < kSteels; ++k) {
    CAPTURE(k);
    std::mt19937_64 random;
    const auto steel = steel_number(k, random);
    const PhaseSystem system(default_parameters(), steel.elements,
                             testing::phases_without_graphite(*default_parameters()));
    const auto t = Temperature::celsius(steel.celsius);
    const auto result = minimize(system, t, steel.x, options);
    if (!result.report.usable()) continue;
    ++usable;
    if (result.report.certificate == Certificate::proof) {
      ++proven;
      CHECK(result.report.proven_gap >= options.proof_gap);
      CHECK(result.report.proven_gap < options.proof_gap + 1e-3);
      continue;
    }
    MESSAGE("condition " << k << ": " << result.report.proof);
    CHECK(result.report.proof.starts_with("not proven: "));
    CHECK(std::isnan(result.report.proven_gap));
  }
  MESSAGE(proven << " of " << usable << " proven to " << options.proof_gap << " J/mol");
  CHECK(100 * usable >= 99 * kSteels);
  CHECK(100 * proven >= 99 * kSteels);
}

/// Chemical potentials raised together, so that one phase lies below the plane by a
/// known depth: 1 to 5 J/mol of atoms, and hardly more than the gap.
TEST_CASE("a phase below the plane is never proven away, and is found") {
  int cases = 0;
  for (int k = 0; k < kSteels; ++k) {
    CAPTURE(k);
    std::mt19937_64 random;
    const auto steel = steel_number(k, random);
    const PhaseSystem system(default_parameters(), steel.elements,
                             testing::phases_without_graphite(*default_parameters()));
    const auto t = Temperature::celsius(steel.celsius);
    const auto result = minimize(system, t, steel.x);
    if (!result.report.usable()) continue;
    std::vector<PhasePoint> minima = result.present;
    minima.insert(minima.end(), result.absent.begin(), result.absent.end());
    const PhasePoint& p = minima[random() % minima.size()];
    const Candidate candidate = candidate_of(system.phases()[p.phase], t.in_kelvin());
    const ProofLimits limits;
    std::uniform_real_distribution<double> depth(1.0, 5.0);
    for (const double below : {depth(random), 1.05 * limits.gap}) {
      auto mu = result.chemical_potential;
      for (double& m : mu) m += below - p.driving_force;
      const PhaseProof proof = prove_phase(candidate, mu, limits);
      REQUIRE(proof.outcome == PhaseProof::Outcome::violated);
      CHECK(plane_distance_at(candidate, mu, proof.y) < 0.0);
      ++cases;
    }
  }
  MESSAGE(cases << " cases, every violation found");
  CHECK(100 * cases >= 2 * 99 * kSteels);
}
