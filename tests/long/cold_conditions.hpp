#pragma once
/// Random cold conditions, and their judges: the proof, convexity, random starts.

#include "long/outcome.hpp"

namespace gibbsteel::long_run {

struct ColdOptions {
  std::size_t proof_every = 20;  ///< conditions; 0: none
  std::size_t deep_every = 50;   ///< conditions; 0: none
  int deep_starts = 300;         ///< per phase
  long proof_boxes = 100000;     ///< per phase
  double proof_seconds = 20.0;   ///< wall time
};

/// Solves one group and hears the judges.
Outcome cold_group(const SharedParameters& set, std::size_t number,
                   const ColdOptions& options);

}  // namespace gibbsteel::long_run
