#pragma once
/// Tier 2 of the certificate: the tangent-plane test, Eq. (E2), proven for every
/// allowed phase.

#include <string>

#include "gibbsteel/minimizer.hpp"
#include "minimizer/certificate.hpp"

namespace gibbsteel::internal {

struct PlaneProof {
  bool complete = false;  ///< every allowed phase is proven
  long boxes = 0;         ///< examined
  double seconds = 0.0;   ///< that it took, wall time
  std::string progress;   ///< one phrase on how far it got
  /// Minima that the proof came across below the plane by more than the gap.
  std::vector<AbsentMinimum> violations;
};

/// Uses proof_gap, proof_boxes (per phase) and proof_seconds (in all) of the options.
PlaneProof prove_plane(ColumnGeneration& generation, std::span<const double> mu,
                       const SolveOptions& options);

}  // namespace gibbsteel::internal
