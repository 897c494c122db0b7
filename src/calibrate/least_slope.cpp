#include "calibrate/least_slope.hpp"

#include <Eigen/QR>
#include <algorithm>
#include <vector>

namespace gibbsteel::internal {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr int kMostSteps = 1000;
constexpr double kSame = 1e-10;      ///< of the shortest square so far
constexpr double kSmallest = 1e-14;  ///< weight that counts

/// Weights with sum 1, of any sign, for which |A w| is least.
VectorXd least_of_plane(const MatrixXd& columns, const std::vector<Index>& active) {
  const auto count = static_cast<Index>(active.size());
  const VectorXd first = columns.col(active[0]);
  VectorXd weights = VectorXd::Ones(1);
  if (count == 1) return weights;
  MatrixXd apart(columns.rows(), count - 1);
  for (Index i = 1; i < count; ++i)
    apart.col(i - 1) = columns.col(active[static_cast<std::size_t>(i)]) - first;
  const VectorXd others = apart.colPivHouseholderQr().solve(-first);
  weights.resize(count);
  weights << 1.0 - others.sum(), others;
  return weights;
}

/// From the weights of the active columns towards wanted ones, as far as none becomes
/// negative; what reached zero leaves. True when all of the way was gone.
bool step_towards(const VectorXd& wanted, std::vector<Index>& active,
                  VectorXd& weights) {
  double part = 1.0;
  for (std::size_t i = 0; i < active.size(); ++i) {
    const double now = weights[active[i]], then = wanted[static_cast<Index>(i)];
    if (then <= kSmallest && now > then) part = std::min(part, now / (now - then));
  }
  std::vector<Index> left;
  for (std::size_t i = 0; i < active.size(); ++i) {
    double& weight = weights[active[i]];
    weight += part * (wanted[static_cast<Index>(i)] - weight);
    if (weight > kSmallest)
      left.push_back(active[i]);
    else
      weight = 0.0;
  }
  const bool all = part == 1.0 || left.size() == active.size();
  active = std::move(left);
  weights /= weights.sum();
  return all;
}

}  // namespace

VectorXd least_slope_weights(const MatrixXd& columns) {
  VectorXd weights = VectorXd::Zero(columns.cols());
  Index shortest = 0;
  columns.colwise().squaredNorm().minCoeff(&shortest);
  weights[shortest] = 1.0;
  std::vector<Index> active{shortest};
  for (int i = 0; i < kMostSteps; ++i) {
    const VectorXd mixed = columns * weights;
    Index least = 0;
    const double along = (columns.transpose() * mixed).minCoeff(&least);
    if (mixed.squaredNorm() - along <= kSame * mixed.squaredNorm()) break;
    if (std::find(active.begin(), active.end(), least) != active.end()) break;
    active.push_back(least);
    while (!step_towards(least_of_plane(columns, active), active, weights)) {
    }
  }
  return weights;
}

}  // namespace gibbsteel::internal
