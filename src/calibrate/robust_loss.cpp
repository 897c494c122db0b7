#include "calibrate/robust_loss.hpp"

#include <cmath>

namespace gibbsteel::internal {

double RobustLoss::value(double residual) const {
  const double r = std::abs(residual);
  if (kind == Loss::huber) return r <= scale ? r * r : scale * (2.0 * r - scale);
  if (kind == Loss::cauchy) return scale * scale * std::log1p(r * r / (scale * scale));
  return r * r;
}

double RobustLoss::weight(double residual) const {
  const double r = std::abs(residual);
  if (kind == Loss::huber) return r <= scale ? 1.0 : scale / r;
  if (kind == Loss::cauchy) return 1.0 / (1.0 + r * r / (scale * scale));
  return 1.0;
}

RobustLoss robust_loss(Loss kind, double scale) {
  constexpr double kHuber = 1.345, kCauchy = 2.385;  // Holland & Welsch 1977
  if (scale > 0.0 || kind == Loss::squares) return {kind, scale};
  return {kind, kind == Loss::huber ? kHuber : kCauchy};
}

}  // namespace gibbsteel::internal
