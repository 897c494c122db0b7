#pragma once
/// Tier 2 of the certificate: the tangent-plane test, Eq. (E2), proven for every phase.

#include <string>

#include "gibbsteel/minimizer.hpp"
#include "minimizer/certificate.hpp"

namespace gibbsteel::internal {

struct PlaneProof {
  bool complete = false;  ///< every phase is proven
  long boxes = 0;         ///< examined
  std::string progress;   ///< one phrase on how far it got
  /// Minima that the proof came across below the plane by more than the gap.
  std::vector<AbsentMinimum> violations;
};

/// Uses proof_gap, proof_boxes (per phase) and proof_seconds (in all) of the options.
PlaneProof prove_plane(ColumnGeneration& generation, std::span<const double> mu,
                       const SolveOptions& options);

}  // namespace gibbsteel::internal
