#include "designer/design_problem.hpp"

#include <algorithm>
#include <cmath>

#include "designer/design_checks.hpp"
#include "internal/slopes_of_soak.hpp"

namespace gibbsteel::internal {
namespace {

/// Stands for "none" while the slope to an element is wanted [wt%].
constexpr double kTrace = 1e-6;

double sign_of(const DesignTarget& target) {
  return target.sense == TargetSense::at_least ? -1.0 : 1.0;
}

}  // namespace

double DesignValues::misfit(const std::vector<DesignTarget>& targets) const {
  double sum = 0.0;
  for (std::size_t j = 0; j < targets.size(); ++j)
    if (targets[j].sense == TargetSense::equal) sum += deviations[j] * deviations[j];
  return sum;
}

double DesignValues::violation(const std::vector<DesignTarget>& targets) const {
  double sum = 0.0;
  for (std::size_t j = 0; j < targets.size(); ++j) {
    const double above = std::max(deviations[j], 0.0);
    if (targets[j].sense != TargetSense::equal) sum += above * above;
  }
  return sum;
}

DesignProblem::DesignProblem(const Steel& start,
                             const std::vector<DesignElement>& elements,
                             const std::vector<DesignTarget>& targets,
                             const DesignOptions& options)
    : start_(start), elements_(elements), targets_(targets), options_(options) {
  check_design(start, elements, targets, options);
  for (const DesignTarget& target : targets_) {
    const auto known =
        std::find(temperatures_.begin(), temperatures_.end(), target.temperature);
    state_of_.push_back(static_cast<std::size_t>(known - temperatures_.begin()));
    if (known == temperatures_.end()) temperatures_.push_back(target.temperature);
  }
}

std::vector<double> DesignProblem::start_point() const {
  std::vector<double> point;
  for (const DesignElement& e : elements_) {
    const double percent = start_.analysis().given[e.symbol];
    point.push_back(
        std::clamp((percent - e.range.low) / (e.range.high - e.range.low), 0.0, 1.0));
  }
  return point;
}

double DesignProblem::percent(const std::vector<double>& point, std::size_t i) const {
  return std::lerp(elements_[i].range.low, elements_[i].range.high, point[i]);
}

Steel DesignProblem::steel(const std::vector<double>& point) const {
  NamedValues percents;
  for (std::size_t i = 0; i < size(); ++i) {
    const double value = percent(point, i);
    percents.set(elements_[i].symbol, value <= 2.0 * kTrace ? 0.0 : value);
  }
  return start_.changed(percents, start_.name());
}

/// With a trace of every element, so that there is a slope to it.
Steel DesignProblem::inside(const std::vector<double>& point) const {
  NamedValues percents;
  for (std::size_t i = 0; i < size(); ++i)
    percents.set(elements_[i].symbol, std::max(percent(point, i), kTrace));
  return start_.changed(percents, start_.name());
}

DesignValues DesignProblem::evaluate(const std::vector<double>& point) {
  DesignValues values;
  values.usable = !stopped_;
  values.values.assign(targets_.size(), Occurrence::kUnknown);
  values.deviations = values.values;
  values.gradients.assign(targets_.size(), std::vector<double>(size(), 0.0));
  const Steel steel = inside(point);
  for (std::size_t k = 0; k < temperatures_.size() && values.usable; ++k) {
    fill(steel, k, values);
    stopped_ = options_.progress && !options_.progress(soaks_);
    if (stopped_ && k + 1 < temperatures_.size()) values.usable = false;
  }
  return values;
}

void DesignProblem::fill(const Steel& steel, std::size_t k, DesignValues& values) {
  const SoakProblem problem(steel, options_.soak);
  const Equilibrium result = problem.solve(temperatures_[k]);
  const State state = problem.state_of(result);
  ++soaks_;
  std::vector<std::string> symbols;
  for (const DesignElement& e : elements_) symbols.push_back(e.symbol);
  // The temperature comes first.
  const auto slopes = slopes_of_soak(problem, result, state, {symbols, {}, false});
  values.usable = values.usable && slopes.size() == size() + 1;
  for (std::size_t j = 0; j < targets_.size(); ++j) {
    if (state_of_[j] != k) continue;
    const DesignTarget& target = targets_[j];
    const double factor = sign_of(target) / target.scale();
    values.values[j] = target.quantity.value(state);
    values.deviations[j] = factor * (values.values[j] - target.wanted);
    values.usable = values.usable && std::isfinite(values.deviations[j]);
    for (std::size_t i = 0; i < size() && values.usable; ++i) {
      const double width = elements_[i].range.high - elements_[i].range.low;
      const double slope = target.quantity.slope(state, slopes[i + 1]);
      // Where the equilibrium is not unique there is none; the search goes by the
      // other ones.
      values.gradients[j][i] = std::isfinite(slope) ? factor * slope * width : 0.0;
    }
  }
}

DesignValues DesignProblem::judge(const Steel& steel) {
  DesignValues values;
  values.usable = true;
  const std::vector<State> states = soak(steel);
  for (std::size_t j = 0; j < targets_.size(); ++j) {
    const DesignTarget& target = targets_[j];
    values.values.push_back(target.quantity.value(states[state_of_[j]]));
    values.deviations.push_back(sign_of(target) / target.scale() *
                                (values.values[j] - target.wanted));
    values.usable = values.usable && std::isfinite(values.values[j]);
  }
  return values;
}

std::vector<State> DesignProblem::soak(const Steel& steel) {
  std::vector<State> states;
  for (const Temperature t : temperatures_) {
    states.push_back(steel.soak(t, options_.soak));
    ++soaks_;
  }
  return states;
}

}  // namespace gibbsteel::internal
