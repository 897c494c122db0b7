#pragma once
/// Loss and weight of one residual, Eq. (K2) and (K3).

#include "gibbsteel/calibrate.hpp"

namespace gibbsteel::internal {

struct RobustLoss {
  Loss kind = Loss::squares;
  double scale = 0.0;  ///< c

  double value(double residual) const;   ///< rho
  double weight(double residual) const;  ///< rho' / (2 r), in (0, 1]
};

/// The given scale, or the usual one of this loss where it is 0.
RobustLoss robust_loss(Loss kind, double scale);

}  // namespace gibbsteel::internal
