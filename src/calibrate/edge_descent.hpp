#pragma once
/// A step down from an edge of the misfit, where its slope jumps, as where a phase
/// appears or vanishes: Eq. (K6) with half slopes h = J^T W r + x and H = J^T W J + 1
/// in shifts. Slopes are gathered from both sides until their shortest mixture leads
/// down.

#include <Eigen/Core>

#include "calibrate/remembered_model.hpp"
#include "calibrate/robust_loss.hpp"

namespace gibbsteel::internal {

enum class EdgeOutcome {
  moved,   ///< x is lower now
  bottom,  ///< nothing to gain on any side that was seen
  stuck,   ///< the misfit jumps, or the evaluations are used up
};

/// @param x  where the optimizer stands; moved down when that works
EdgeOutcome descend_from_edge(RememberedModel& model, const RobustLoss& loss,
                              Eigen::VectorXd& x);

}  // namespace gibbsteel::internal
