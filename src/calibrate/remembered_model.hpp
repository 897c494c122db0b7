#pragma once
/// The model of a fit with the base of a step and the last trial remembered, and the
/// evaluations counted.

#include <Eigen/Core>
#include <functional>
#include <utility>

namespace gibbsteel::internal {

struct FitPoint {
  Eigen::VectorXd residuals;  ///< NaN: not usable at this point
  Eigen::MatrixXd slopes;     ///< of the residuals, in x; 0 where not usable
  bool stopped = false;       ///< by the caller: the rest counts for nothing
};

using FitModel = std::function<FitPoint(const Eigen::VectorXd& x)>;

class RememberedModel {
 public:
  /// @param most  evaluations
  RememberedModel(const FitModel& model, std::size_t most)
      : model_(model), most_(most) {}

  const FitPoint& at(const Eigen::VectorXd& x);
  /// The base from now on.
  const FitPoint& base_at(const Eigen::VectorXd& x);
  std::size_t evaluations() const noexcept { return evaluations_; }
  bool used_up() const noexcept { return evaluations_ >= most_; }
  /// Whether the model may still be asked at x.
  bool may_be_at(const Eigen::VectorXd& x) const {
    return !used_up() || known_at(x) != nullptr;
  }

 private:
  using Known = std::pair<Eigen::VectorXd, FitPoint>;

  const FitPoint* known_at(const Eigen::VectorXd& x) const;

  const FitModel& model_;
  std::size_t most_, evaluations_ = 0;
  Known base_, trial_;
};

}  // namespace gibbsteel::internal
