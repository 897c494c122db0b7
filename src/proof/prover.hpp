#pragma once
/// Branch and prune at fixed chemical potentials: a proof that no composition of a
/// phase lies below the tangent plane, Eq. (E2), by more than a gap. Tier 2 of the
/// certificate.

#include "proof/box_bound.hpp"

namespace gibbsteel::internal {

struct ProofLimits {
  double gap = 0.1;            ///< [J/mol of atoms], > 0
  long most_boxes = 200000;    ///< per phase
  double most_seconds = 60.0;  ///< per phase, wall time
};

struct PhaseProof {
  enum class Outcome { proven, violated, out_of_boxes, out_of_time };
  Outcome outcome = Outcome::out_of_boxes;
  long boxes = 0;
  long boxes_left = 0;    ///< not examined when it stopped
  std::vector<double> y;  ///< of the violation
  double d = 0.0;         ///< there, upper bound of D + gap x atoms, per formula unit
};

/// @param mu  chemical potentials [J/mol], as the elements of the candidate
PhaseProof prove_phase(const Candidate& candidate, std::span<const double> mu,
                       const ProofLimits& limits);

}  // namespace gibbsteel::internal
