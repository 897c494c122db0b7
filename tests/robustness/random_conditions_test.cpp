/// Random steels inside the validity range of the shipped file, also with the layer
/// that adds liquid: everything converges or says so, and nothing that is called good
/// has a lower energy somewhere else.
///
/// Reference search: 40 random starts per phase (gamma-distributed site fractions, so
/// from well mixed to nearly pure), each followed down to its own local minimum of D at
/// the chemical potentials of the result. It shares no start with the certificate.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>

#include "gibbsteel/minimizer.hpp"
#include "minimizer/phase_minimum.hpp"
#include "robustness/random_steels.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;
using testing::Band;
using testing::draw;
using testing::phases_without_graphite;
using testing::RandomSteel;

namespace {

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr int kConditions = 150;  // the sanitizers slow every one down about 15 times
#else
constexpr int kConditions = 2000;
#endif
/// Temperatures of a soak, and all that the facade accepts.
struct Check {
  Band band;
  int conditions;
  int per_unusable;  ///< at most one condition in this many may come back unusable
};
constexpr Check kSoaks{{700.0, 1250.0}, kConditions, 1000};
constexpr Check kMelting{{1200.0, 1540.0}, kConditions / 4, 500};
constexpr Check kAccepted{{27.0, 2226.0}, kConditions / 2, 250};
constexpr int kReferenceStarts = 40;

std::vector<double> random_start(const CompiledPhase& phase, std::mt19937_64& random) {
  std::gamma_distribution<double> gamma(0.3, 1.0);
  std::vector<double> y(phase.size());
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    double sum = 0.0;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
      sum += y[i] = gamma(random) + 1e-6;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) y[i] /= sum;
  }
  return y;
}

/// Lowest D [J/mol of atoms] that the reference search finds.
double reference_search(const PhaseSystem& system, const RandomSteel& steel,
                        const Equilibrium& result, std::mt19937_64& random) {
  Conditions conditions;
  conditions.kelvin = result.temperature.in_kelvin();
  conditions.rt = kGasConstant * conditions.kelvin;
  conditions.overall = steel.x;
  const auto& curves = system.phases().front().curves();
  std::vector<TemperatureValue> values(curves.size());
  const TemperaturePowers powers(conditions.kelvin);
  curves.evaluate(powers, values);
  DescentMemory memory;
  double lowest = 0.0;
  for (const auto& phase : system.phases()) {
    Candidate candidate{&phase.compiled(), {}};
    candidate.at.refresh(phase.compiled(), powers, values);
    for (int k = 0; k < kReferenceStarts; ++k) {
      auto y = random_start(phase.compiled(), random);
      const auto minimum = descend(conditions, candidate, result.chemical_potential,
                                   {60, 1e-8, false}, memory, y.data());
      lowest = std::min(lowest, minimum.d_per_atom());
    }
  }
  return lowest;
}

void run(const Check& check, const SharedParameters& set = default_parameters()) {
  const auto phases = phases_without_graphite(*set);
  int not_usable = 0;
  for (int k = 0; k < check.conditions; ++k) {
    std::mt19937_64 random(20261125u + static_cast<unsigned>(k));
    const RandomSteel steel = draw(*set, check.band, random);
    const PhaseSystem system(set, steel.elements, phases);
    const auto t = Temperature::celsius(steel.celsius);
    const auto result = minimize(system, t, steel.x);
    CAPTURE(k);
    if (!result.report.usable()) {
      ++not_usable;
      MESSAGE("condition " << k << ": " << result.report.brief());
      CHECK(result.present.empty());
      CHECK(std::isnan(result.gibbs_energy));
      continue;
    }
    CHECK(result.report.balance_residual <= 1e-10);
    CHECK(result.report.present_residual <= 1e-6);
    CHECK(result.report.lowest_absent >= -1e-3);
    CHECK(reference_search(system, steel, result, random) >= -1e-3);
  }
  MESSAGE(not_usable << " of " << check.conditions << " not usable, all flagged");
  CHECK(not_usable * check.per_unusable <= check.conditions);
}

}  // namespace

TEST_CASE("random steels at soaking temperatures: never silently wrong") {
  run(kSoaks);
}

TEST_CASE("random steels that melt: never silently wrong") {
  run(kMelting, with_liquid());
}

TEST_CASE("random steels at every temperature that is accepted: never silently wrong") {
  run(kAccepted);
}
