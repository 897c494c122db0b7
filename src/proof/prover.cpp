#include "proof/prover.hpp"

#include <chrono>

namespace gibbsteel::internal {
namespace {

/// w_i of the plane that lies `gap` lower per mole of atoms.
std::vector<Interval> lowered_weights(const CompiledPhase& phase,
                                      std::span<const double> mu, double gap) {
  std::vector<Interval> weights(phase.size());
  for (std::size_t i = 0; i < phase.size(); ++i) {
    const int element = phase.constituents[i].element;
    if (element < 0) continue;
    weights[i] = phase.sites[i] *
                 (exactly(mu[static_cast<std::size_t>(element)]) - exactly(gap));
  }
  return weights;
}

void cut_in_two(Box box, std::size_t i, std::vector<Box>& open) {
  const double middle = 0.5 * (box[i].lo + box[i].hi);
  open.push_back(box);
  open.back()[i].lo = middle;
  box[i].hi = middle;
  open.push_back(std::move(box));
}

}  // namespace

PhaseProof prove_phase(const Candidate& candidate, std::span<const double> mu,
                       const ProofLimits& limits) {
  using Verdict = BoxBound::Verdict;
  using Clock = std::chrono::steady_clock;
  const CompiledPhase& phase = *candidate.phase;
  BoxBound bound(candidate, lowered_weights(phase, mu, limits.gap));
  std::vector<Box> open{whole_box(phase)};
  const auto begin = Clock::now();
  PhaseProof proof;
  const auto stop = [&](PhaseProof::Outcome why) {
    proof.outcome = why;
    proof.boxes_left = static_cast<long>(open.size());
    return proof;
  };
  while (!open.empty()) {
    const std::chrono::duration<double> elapsed = Clock::now() - begin;
    if (proof.boxes >= limits.most_boxes)
      return stop(PhaseProof::Outcome::out_of_boxes);
    if (elapsed.count() > limits.most_seconds)
      return stop(PhaseProof::Outcome::out_of_time);
    Box box = std::move(open.back());
    open.pop_back();
    ++proof.boxes;
    const Verdict verdict = bound.examine(box);
    if (verdict == Verdict::violated) {
      proof.outcome = PhaseProof::Outcome::violated;
      for (const Interval& v : bound.violation())
        proof.y.push_back(0.5 * (v.lo + v.hi));
      proof.d = bound.violation_energy();
      proof.boxes_left = static_cast<long>(open.size());
      return proof;
    }
    if (verdict != Verdict::undecided) continue;
    cut_in_two(std::move(box), bound.split(), open);
  }
  proof.outcome = PhaseProof::Outcome::proven;
  return proof;
}

}  // namespace gibbsteel::internal
