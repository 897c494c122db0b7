#include "calibrate/least_slope.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

constexpr int kMostExchanges = 20000;
constexpr double kSame = 1e-12;  ///< of the largest square

struct Exchange {
  Eigen::Index to = 0, from = 0;
  double gain = 0.0;  ///< difference of the slopes of |A w|^2 / 2
};

/// From the weighted column that lies farthest along A w to the one that lies least.
Exchange best_exchange(const Eigen::VectorXd& along, const Eigen::VectorXd& weights) {
  Exchange best;
  along.minCoeff(&best.to);
  for (Eigen::Index i = 0; i < along.size(); ++i)
    if (weights[i] > 0.0 && (weights[best.from] == 0.0 || along[i] > along[best.from]))
      best.from = i;
  best.gain = along[best.from] - along[best.to];
  return best;
}

}  // namespace

Eigen::VectorXd least_slope_weights(const Eigen::MatrixXd& columns) {
  const Eigen::MatrixXd products = columns.transpose() * columns;
  const double enough = kSame * products.diagonal().maxCoeff();
  Eigen::VectorXd weights = Eigen::VectorXd::Zero(columns.cols());
  Eigen::Index shortest = 0;
  products.diagonal().minCoeff(&shortest);
  weights[shortest] = 1.0;
  for (int i = 0; i < kMostExchanges; ++i) {
    const Exchange move = best_exchange(products * weights, weights);
    if (!(move.gain > enough)) break;
    const double bend = products(move.to, move.to) -
                        2.0 * products(move.to, move.from) +
                        products(move.from, move.from);
    const double step = std::min(weights[move.from], move.gain / bend);
    weights[move.to] += step;
    weights[move.from] = step < weights[move.from] ? weights[move.from] - step : 0.0;
  }
  return weights;
}

}  // namespace gibbsteel::internal
