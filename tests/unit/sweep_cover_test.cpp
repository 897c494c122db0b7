/// Proofs between the anchors of a sweep, Eq. (E3): what is called covered is proven
/// again here, phase by phase, with the gap that it states.

#include <doctest/doctest.h>

#include <functional>
#include <stdexcept>

#include "gibbsteel/gibbsteel.hpp"
#include "proof/prover.hpp"
#include "proof/temperature_concavity.hpp"

using namespace gibbsteel;

namespace {

const Steel& matrix_type() {
  static const Steel steel(
      {{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}});
  return steel;
}

SoakOptions proof_at_every(int every) {
  SoakOptions options;
  options.solve.certify = Certificate::proof;
  options.solve.proof_seconds = 600.0;
  options.prove_every = every;
  return options;
}

std::vector<Temperature> temperatures(double from, double step, int count) {
  std::vector<Temperature> list;
  for (int i = 0; i < count; ++i) list.push_back(Temperature::celsius(from + step * i));
  return list;
}

internal::Candidate candidate_of(const PhaseModel& model, double kelvin) {
  std::vector<internal::TemperatureValue> curves(model.curves().size());
  const internal::TemperaturePowers powers(kelvin);
  model.curves().evaluate(powers, curves);
  internal::Candidate candidate{&model.compiled(), {}};
  candidate.at.refresh(model.compiled(), powers, curves);
  return candidate;
}

/// Every allowed phase at the potentials of the state, with the gap that it states.
bool proven_again(const State& state) {
  std::vector<std::string> names;
  for (const Phase& phase : matrix_type().parameters()->phases)
    if (phase.name != "graphite") names.push_back(phase.name);
  const PhaseSystem system(matrix_type().parameters(), matrix_type().elements(), names);
  std::vector<double> mu;
  for (const std::string& symbol : system.elements())
    mu.push_back(state.chemical_potential[symbol]);
  internal::ProofLimits limits;
  limits.gap = state.solve_report.proven_gap;
  for (const PhaseModel& phase : system.phases()) {
    const auto candidate = candidate_of(phase, state.temperature.in_kelvin());
    if (internal::prove_phase(candidate, mu, limits).outcome !=
        internal::PhaseProof::Outcome::proven)
      return false;
  }
  return true;
}

PhaseSystem changed_system(const std::function<void(ParameterSet&)>& change) {
  ParameterSet set = *default_parameters();
  change(set);
  return {
      std::make_shared<const ParameterSet>(std::move(set)), {"Fe", "C"}, {"austenite"}};
}

Phase& austenite(ParameterSet& set) {
  for (Phase& phase : set.phases)
    if (phase.name == "austenite") return phase;
  throw std::logic_error("no austenite");
}

void add(ParameterSet& set, bool mixing, double coefficient) {
  for (Term& term : austenite(set).energy) {
    bool fits = true, mixes = false;
    for (const auto& names : term.on) {
      mixes = mixes || names.size() > 1;
      for (const auto& name : names)
        fits = fits && (name == "Fe" || name == "C" || name == "vacancy");
    }
    if (!fits || mixes != mixing) continue;
    TemperatureTerm curved;
    curved.power = {2, false};
    curved.coefficient = coefficient;
    term.value.terms.push_back(curved);
    return;
  }
  throw std::logic_error("no such term");
}

}  // namespace

TEST_CASE("what is covered between two proofs can be proven") {
  const Sweep sweep =
      matrix_type().sweep(temperatures(1000.0, 2.0, 6), proof_at_every(5));
  for (std::size_t i = 0; i < sweep.states.size(); ++i) {
    CAPTURE(i);
    const SolveReport& report = sweep.states[i].solve_report;
    const bool anchor = i == 0 || i == 5;
    CHECK(report.certificate == (anchor ? Certificate::proof : Certificate::covered));
    CHECK(report.proven_gap > 0.0);
    CHECK(proven_again(sweep.states[i]));
    if (!anchor) CHECK(report.proof == "covered by the proofs at 1000.0 and 1010.0 C");
  }
}

TEST_CASE("what is not covered is proven, and each of these proofs can be the last") {
  // From 800 to 1200 C several carbides go: nothing is on the chord.
  const auto celsius = temperatures(800.0, 80.0, 6);
  std::vector<std::size_t> calls;
  const auto count = [&](std::size_t done) {
    calls.push_back(done);
    return true;
  };
  const Sweep whole = matrix_type().sweep(celsius, proof_at_every(5), count);
  CHECK(calls == std::vector<std::size_t>{1, 2, 3, 4, 5, 6, 6, 6, 6, 6});
  CHECK_FALSE(whole.cancelled);
  for (const State& state : whole.states)
    CHECK(state.solve_report.certificate == Certificate::proof);

  int left = 7;
  const Sweep stopped = matrix_type().sweep(celsius, proof_at_every(5),
                                            [&](std::size_t) { return --left > 0; });
  CHECK(stopped.cancelled);
  REQUIRE(stopped.states.size() == 6);
  CHECK(stopped.states[1].solve_report.certificate == Certificate::proof);
  for (std::size_t i = 2; i < 5; ++i) {
    CHECK(stopped.states[i].solve_report.certificate == Certificate::many_starts);
    CHECK(stopped.states[i].solve_report.proof ==
          "not proven: the sweep was cancelled");
  }
}

TEST_CASE("concavity in temperature is shown, or not claimed") {
  using internal::concave_in_temperature;
  const PhaseSystem shipped = changed_system([](ParameterSet&) {});
  CHECK(concave_in_temperature(shipped, 1250.0, 1300.0));
  // The melting point of iron, where its curve has another piece.
  CHECK_FALSE(concave_in_temperature(shipped, 1800.0, 1820.0));
  // G + 0.1 T^2 takes 0.2 T from every heat capacity that it is added to.
  const PhaseSystem member =
      changed_system([](ParameterSet& set) { add(set, false, 0.1); });
  CHECK_FALSE(concave_in_temperature(member, 1250.0, 1300.0));
  const PhaseSystem interaction =
      changed_system([](ParameterSet& set) { add(set, true, -0.2); });
  CHECK_FALSE(concave_in_temperature(interaction, 1250.0, 1300.0));
  const PhaseSystem missing = changed_system([](ParameterSet& set) {
    auto& energy = austenite(set).energy;
    std::erase_if(energy, [](const Term& term) {
      return term.on == std::vector<std::vector<std::string>>{{"Fe"}, {"C"}};
    });
    add(set, true, -1e-6);
  });
  CHECK_FALSE(concave_in_temperature(missing, 1250.0, 1300.0));
}
