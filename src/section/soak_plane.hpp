#pragma once
/// The plane of a section map, filled by soaks.

#include "internal/soak_problem.hpp"
#include "scan/condition_line.hpp"
#include "section/field_oracle.hpp"

namespace gibbsteel::internal {

/// Conditions are linear in both axes: corner + x * along_x + y * along_y, where x and
/// y are counted in tolerances.
struct ConditionPlane {
  LineEnd corner;
  double kelvin_per_y = 0.0;
  std::vector<double> moles_per_x, moles_per_y;
};

class SoakPlane : public FieldOracle {
 public:
  SoakPlane(SoakProblem problem, ConditionPlane plane);

  FieldsOnLine along(PlanePoint from, PlanePoint to, double tolerance) const override;
  LineEnd conditions(PlanePoint at) const;
  const SoakProblem& problem() const noexcept { return problem_; }

 private:
  SoakProblem problem_;
  ConditionPlane plane_;
};

}  // namespace gibbsteel::internal
