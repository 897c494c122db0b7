#pragma once
/// The scan of one steel along the weight percent of one element, balance Fe.

#include "gibbsteel/composition_for.hpp"
#include "internal/soak_problem.hpp"
#include "scan/value_line.hpp"

namespace gibbsteel::internal {

class CompositionScan {
 public:
  /// @throws InputError gibbsteel.input.268, .210 and those of SoakProblem
  CompositionScan(const Steel& steel, const std::string& element,
                  const WeightPercentRange& range, Temperature t,
                  const SoakOptions& soak, const CompositionSearchOptions& search);

  double percent(double s) const;
  /// Keep this object alive and in place.
  ValueLine line();
  const State& blank() const noexcept { return problem_.blank; }

 private:
  MillAnalysis analysis(double percent) const;
  /// The problem at this composition; elements that are absent there stay in it.
  const SoakProblem& at(double s);
  std::vector<double> moles(double percent) const;
  void require_straight() const;

  Steel steel_;
  std::string element_;
  WeightPercentRange range_;
  CompositionSearchOptions search_;
  SoakProblem problem_;
  ConditionLine line_;
  LineScan scan_;
};

}  // namespace gibbsteel::internal
