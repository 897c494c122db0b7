#pragma once
/// Compositions as points of the unit cube, and what targets say about them.

#include <optional>
#include <vector>

#include "gibbsteel/design.hpp"

namespace gibbsteel::internal {

/// Deviations in units of the tolerances. Inequalities: above 0 when violated.
struct DesignValues {
  bool usable = false;  ///< every soak was
  std::vector<double> values;
  std::vector<double> deviations;              ///< one per target
  std::vector<std::vector<double>> gradients;  ///< of deviations, per unit of the cube

  /// Sum of squares of equalities.
  double misfit(const std::vector<DesignTarget>& targets) const;
  /// Sum of squares of the positive deviations of inequalities.
  double violation(const std::vector<DesignTarget>& targets) const;
};

class DesignProblem {
 public:
  /// @throws InputError gibbsteel.input.269, .210
  DesignProblem(const Steel& start, const std::vector<DesignElement>& elements,
                const std::vector<DesignTarget>& targets, const DesignOptions& options);

  std::size_t size() const noexcept { return elements_.size(); }
  const std::vector<DesignTarget>& targets() const noexcept { return targets_; }
  std::size_t soaks() const noexcept { return soaks_; }
  /// By the caller: from then on evaluate() soaks no more and nothing is usable.
  bool stopped() const noexcept { return stopped_; }

  std::vector<double> start_point() const;
  /// The steel at a point; amounts that only stand for "none" are left out.
  Steel steel(const std::vector<double>& point) const;
  double percent(const std::vector<double>& point, std::size_t i) const;
  DesignValues evaluate(const std::vector<double>& point);
  /// Values and deviations, without gradients.
  DesignValues judge(const Steel& steel);
  /// Soaks at every temperature of the targets, in their order.
  std::vector<State> soak(const Steel& steel);
  /// Index into the states of soak() for each target.
  std::size_t state_of(std::size_t target) const { return state_of_[target]; }

 private:
  void fill(const Steel& steel, std::size_t temperature, DesignValues& values);
  Steel inside(const std::vector<double>& point) const;

  Steel start_;
  std::vector<DesignElement> elements_;
  std::vector<DesignTarget> targets_;
  DesignOptions options_;
  std::vector<Temperature> temperatures_;
  std::vector<std::size_t> state_of_;
  std::size_t soaks_ = 0;
  bool stopped_ = false;
};

}  // namespace gibbsteel::internal
