#include "designer/design_search.hpp"

#include <nlopt.h>

#include <algorithm>
#include <exception>
#include <memory>

#include "designer/damped_least_squares.hpp"

namespace gibbsteel::internal {
namespace {

/// What the optimizer calls back: values at the point it asks for, kept because
/// objective and constraints ask for the same one in turn.
class Descent {
 public:
  Descent(DesignProblem& problem, std::vector<double> start, DesignAim aim)
      : problem_(problem), start_(std::move(start)), aim_(aim) {
    for (std::size_t j = 0; j < problem.targets().size(); ++j) {
      const bool equal = problem.targets()[j].sense == TargetSense::equal;
      (equal ? equalities_ : inequalities_).push_back(j);
    }
  }

  DesignPoint run(int most_steps);
  /// Without slopes, close around the start: past bends, where slopes mislead.
  DesignPoint polish(int most_steps);

 private:
  using Optimizer = std::unique_ptr<nlopt_opt_s, decltype(&nlopt_destroy)>;

  static double objective_call(unsigned n, const double* x, double* gradient,
                               void* self) noexcept {
    return static_cast<Descent*>(self)->objective(n, x, gradient);
  }
  static void constraints_call(unsigned m, double* values, unsigned n, const double* x,
                               double* gradient, void* self) noexcept {
    static_cast<Descent*>(self)->constraints(m, values, n, x, gradient);
  }

  double objective(unsigned n, const double* x, double* gradient) noexcept;
  void constraints(unsigned m, double* values, unsigned n, const double* x,
                   double* gradient) noexcept;
  bool look_at(unsigned n, const double* x) noexcept;
  double squares(const std::vector<std::size_t>& which, bool positive_only,
                 double* gradient) const;
  double distance(unsigned n, const double* x, double* gradient) const;
  DesignPoint search(nlopt_algorithm algorithm, int most_steps, double first_step);

  DesignProblem& problem_;
  std::vector<double> start_;
  DesignAim aim_;
  std::vector<std::size_t> equalities_, inequalities_;
  std::vector<double> at_;
  DesignValues values_;  ///< at `at_`; the last usable ones
  double last_ = 0.0;    ///< objective there
  DesignPoint best_;
  std::exception_ptr thrown_;
  nlopt_opt optimizer_ = nullptr;
};

DesignPoint ranked(const DesignProblem& problem, const std::vector<double>& point,
                   const DesignValues& values) {
  DesignPoint result;
  result.point = point;
  if (!values.usable) return result;
  result.misfit = values.misfit(problem.targets());
  result.violation = values.violation(problem.targets());
  return result;
}

/// Brings values_ to x. @return false when there is nothing usable there
bool Descent::look_at(unsigned n, const double* x) noexcept {
  std::vector<double> point(x, x + n);
  for (double& u : point) u = std::clamp(u, 0.0, 1.0);
  if (point == at_) return values_.usable;
  try {
    DesignValues values = problem_.evaluate(point);
    if (problem_.stopped()) nlopt_force_stop(optimizer_);
    at_ = std::move(point);
    if (!values.usable) return values_.usable = false;
    values_ = std::move(values);
    DesignPoint here = ranked(problem_, at_, values_);
    if (aim_ == DesignAim::all_squares) {
      here.misfit += here.violation;
      here.violation = 0.0;
    } else if (equalities_.empty()) {
      here.misfit = distance(n, at_.data(), nullptr);
    }
    if (here.better_than(best_)) best_ = std::move(here);
    return true;
  } catch (...) {
    thrown_ = std::current_exception();
    nlopt_force_stop(optimizer_);
    return values_.usable = false;
  }
}

double Descent::squares(const std::vector<std::size_t>& which, bool positive_only,
                        double* gradient) const {
  double sum = 0.0;
  for (const std::size_t j : which) {
    const double deviation = values_.deviations[j];
    if (positive_only && deviation <= 0.0) continue;
    sum += deviation * deviation;
    for (std::size_t i = 0; gradient && i < at_.size(); ++i)
      gradient[i] += 2.0 * deviation * values_.gradients[j][i];
  }
  return sum;
}

double Descent::distance(unsigned n, const double* x, double* gradient) const {
  double sum = 0.0;
  for (unsigned i = 0; i < n; ++i) {
    const double step = x[i] - start_[i];
    sum += step * step;
    if (gradient) gradient[i] = 2.0 * step;
  }
  return sum;
}

double Descent::objective(unsigned n, const double* x, double* gradient) noexcept {
  constexpr double kWall = 10.0;  // turns the search back from where nothing is usable
  if (gradient) std::fill(gradient, gradient + n, 0.0);
  if (!look_at(n, x)) return kWall * (1.0 + last_);
  if (aim_ == DesignAim::all_squares)
    last_ =
        squares(equalities_, false, gradient) + squares(inequalities_, true, gradient);
  else if (equalities_.empty())
    last_ = distance(n, x, gradient);
  else
    last_ = squares(equalities_, false, gradient);
  return last_;
}

void Descent::constraints(unsigned m, double* values, unsigned n, const double* x,
                          double* gradient) noexcept {
  constexpr double kNotUsable = 1.0;  // a broken constraint: never taken as feasible
  const bool usable = look_at(n, x);
  for (unsigned k = 0; k < m; ++k) {
    const std::size_t j = inequalities_[k];
    values[k] = usable ? values_.deviations[j] : kNotUsable;
    for (unsigned i = 0; gradient && i < n; ++i)
      gradient[k * n + i] = usable ? values_.gradients[j][i] : 0.0;
  }
}

DesignPoint Descent::run(int most_steps) {
  return search(NLOPT_LD_SLSQP, most_steps, 0.0);
}

DesignPoint Descent::polish(int most_steps) {
  constexpr double kClose = 0.005;  // of the cube
  return search(NLOPT_LN_COBYLA, most_steps, kClose);
}

DesignPoint Descent::search(nlopt_algorithm algorithm, int most_steps,
                            double first_step) {
  constexpr double kStep = 1e-8;        // of the cube
  constexpr double kGoodEnough = 1e-9;  // misfit
  const auto n = static_cast<unsigned>(problem_.size());
  const Optimizer optimizer(nlopt_create(algorithm, n), &nlopt_destroy);
  if (!optimizer) throw std::bad_alloc();
  optimizer_ = optimizer.get();
  nlopt_set_lower_bounds1(optimizer_, 0.0);
  nlopt_set_upper_bounds1(optimizer_, 1.0);
  nlopt_set_min_objective(optimizer_, &Descent::objective_call, this);
  nlopt_set_maxeval(optimizer_, most_steps);
  nlopt_set_xtol_abs1(optimizer_, kStep);
  if (first_step > 0.0) nlopt_set_initial_step1(optimizer_, first_step);
  if (!equalities_.empty()) nlopt_set_stopval(optimizer_, kGoodEnough);
  if (aim_ == DesignAim::constrained && !inequalities_.empty()) {
    const std::vector<double> tolerances(inequalities_.size(), 1e-4);
    nlopt_add_inequality_mconstraint(
        optimizer_, static_cast<unsigned>(inequalities_.size()),
        &Descent::constraints_call, this, tolerances.data());
  }
  std::vector<double> x = start_;
  double reached = 0.0;
  // Whether it stopped at an optimum or at a bend does not matter: the best point seen
  // is kept and soaked again.
  nlopt_optimize(optimizer_, x.data(), &reached);
  if (thrown_) std::rethrow_exception(thrown_);
  return best_;
}

}  // namespace

bool DesignPoint::better_than(const DesignPoint& other) const noexcept {
  if (!usable() || !other.usable()) return usable();
  const double mine = violation > kHolds ? violation : 0.0;
  const double theirs = other.violation > kHolds ? other.violation : 0.0;
  return mine != theirs ? mine < theirs : misfit < other.misfit;
}

DesignPoint point_of(DesignProblem& problem, const std::vector<double>& point) {
  return ranked(problem, point, problem.evaluate(point));
}

DesignPoint descend(DesignProblem& problem, const std::vector<double>& start,
                    DesignAim aim, int most_steps) {
  // At a bend the curvature that was learned so far misleads: begin anew from there as
  // long as it helps.
  constexpr int kAgain = 8;
  constexpr int kPolish = 150;
  constexpr double kHelps = 0.999, kDone = 1e-8;
  DesignPoint best;
  const auto& targets = problem.targets();
  const bool equal = std::any_of(
      targets.begin(), targets.end(),
      [](const DesignTarget& target) { return target.sense == TargetSense::equal; });
  if (equal) {
    best = damped_least_squares(problem, start, most_steps);
    if (!best.usable()) return best;
    if (best.violation <= DesignPoint::kHolds && best.misfit <= kDone) return best;
  }
  const DesignPoint searched =
      Descent(problem, best.usable() ? best.point : start, aim).run(most_steps);
  if (!best.usable() || searched.better_than(best)) best = searched;
  for (int i = 0; i < kAgain && best.usable(); ++i) {
    if (best.violation <= DesignPoint::kHolds && best.misfit <= kDone) break;
    const DesignPoint next = Descent(problem, best.point, aim).run(most_steps);
    const bool helps =
        next.better_than(best) &&
        next.misfit + next.violation < kHelps * (best.misfit + best.violation);
    if (next.better_than(best)) best = next;
    if (!helps) break;
  }
  if (equal && best.usable() && best.misfit > kDone) {
    const int steps = std::min(kPolish, most_steps);
    const DesignPoint polished = Descent(problem, best.point, aim).polish(steps);
    if (polished.better_than(best)) best = polished;
  }
  return best;
}

}  // namespace gibbsteel::internal
