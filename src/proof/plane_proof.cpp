#include "proof/plane_proof.hpp"

#include <chrono>

#include "internal/number_format.hpp"
#include "proof/prover.hpp"

namespace gibbsteel::internal {
namespace {

std::string stopped(const std::string& phase, const PhaseProof& proof) {
  const char* budget =
      proof.outcome == PhaseProof::Outcome::out_of_time ? "time" : "box";
  return "not proven: " + phase + " used up the " + budget + " budget after " +
         std::to_string(proof.boxes) + " boxes with " +
         std::to_string(proof.boxes_left) + " left";
}

}  // namespace

PlaneProof prove_plane(ColumnGeneration& generation, std::span<const double> mu,
                       const SolveOptions& options) {
  using Clock = std::chrono::steady_clock;
  const auto begin = Clock::now();
  const auto used = [begin] {
    return std::chrono::duration<double>(Clock::now() - begin).count();
  };
  Conditions& conditions = generation.conditions();
  PlaneProof result;
  for (std::size_t f = 0; f < conditions.phases.size(); ++f) {
    const Candidate& candidate = conditions.phases[f];
    const ProofLimits limits{options.proof_gap, options.proof_boxes,
                             options.proof_seconds - used()};
    const PhaseProof proof = prove_phase(candidate, mu, limits);
    result.boxes += proof.boxes;
    if (proof.outcome == PhaseProof::Outcome::violated) {
      AbsentMinimum m{f, proof.y, proof.d, true};
      const auto descent = descend(conditions, candidate, mu, {300, 1e-8},
                                   generation.memory(), m.y.data());
      m.d = descent.d_per_atom();
      m.converged = descent.converged;
      result.violations.push_back(std::move(m));
    } else if (proof.outcome != PhaseProof::Outcome::proven) {
      if (result.progress.empty())
        result.progress = stopped(candidate.phase->name, proof);
    }
  }
  result.seconds = used();
  result.complete = result.violations.empty() && result.progress.empty();
  if (result.complete)
    result.progress =
        "proven for every allowed phase: " + std::to_string(result.boxes) + " boxes";
  return result;
}

}  // namespace gibbsteel::internal
