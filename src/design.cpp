#include "gibbsteel/design.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "designer/design_search.hpp"
#include "designer/rounded_design.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/design_text.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/family_borders.hpp"
#include "internal/quantity_warnings.hpp"

namespace gibbsteel {
namespace {

using internal::DesignAim;
using internal::DesignPoint;
using internal::DesignProblem;

using Point = std::vector<double>;

/// Evenly spread points of the unit cube: the radical inverse of the index in a prime
/// base per coordinate (Halton, Numer. Math. 2 (1960) 84, from memory).
Point spread_point(std::size_t index, std::size_t size) {
  static constexpr std::array<unsigned, 16> kPrimes{2,  3,  5,  7,  11, 13, 17, 19,
                                                    23, 29, 31, 37, 41, 43, 47, 53};
  Point point;
  for (std::size_t d = 0; d < size; ++d) {
    const unsigned base = kPrimes[d % kPrimes.size()];
    double value = 0.0, place = 1.0 / base;
    for (std::size_t rest = index; rest > 0; rest /= base, place /= base)
      value += place * static_cast<double>(rest % base);
    point.push_back(value);
  }
  return point;
}

/// The most promising of evenly spread points.
std::vector<Point> promising(DesignProblem& problem, const DesignOptions& options) {
  std::vector<DesignPoint> points;
  for (int i = 0; i < options.candidates && !problem.stopped(); ++i)
    points.push_back(internal::point_of(
        problem, spread_point(static_cast<std::size_t>(i) + 1, problem.size())));
  std::stable_sort(points.begin(), points.end(),
                   [](const DesignPoint& a, const DesignPoint& b) {
                     if (!a.usable() || !b.usable()) return a.usable() && !b.usable();
                     return a.misfit + a.violation < b.misfit + b.violation;
                   });
  std::vector<Point> best;
  for (const DesignPoint& p : points)
    if (p.usable() && best.size() < static_cast<std::size_t>(options.starts))
      best.push_back(p.point);
  return best;
}

/// Every target exactly, as far as an optimizer can tell.
bool is_exact(const DesignPoint& point, bool has_equalities) {
  constexpr double kExact = 1e-8;
  return point.usable() && point.violation <= DesignPoint::kHolds &&
         (!has_equalities || point.misfit <= kExact);
}

/// Among compositions that are as good the one of the earlier start is kept: the first
/// start is the steel itself.
bool improves(const DesignPoint& point, const DesignPoint& best) {
  constexpr double kClearly = 0.999;
  if (!point.better_than(best)) return false;
  if (!best.usable()) return true;
  return best.violation > DesignPoint::kHolds || point.misfit < kClearly * best.misfit;
}

struct Found {
  DesignPoint best;
  int starts = 0;
  bool stopped = false;  ///< by the caller, before the search was through
};

Found search(DesignProblem& problem, const DesignOptions& options) {
  const auto& targets = problem.targets();
  const bool equalities = std::any_of(
      targets.begin(), targets.end(),
      [](const DesignTarget& target) { return target.sense == TargetSense::equal; });
  Found found;
  const auto try_from = [&](const Point& start, DesignAim aim) {
    ++found.starts;
    const DesignPoint point =
        internal::descend(problem, start, aim, options.most_steps);
    if (improves(point, found.best)) found.best = point;
    const bool exact = is_exact(found.best, equalities);
    // Limits alone: any composition that keeps to them is exact, not only the nearest.
    found.stopped = problem.stopped() && !(exact && equalities);
    return exact || found.stopped;
  };
  if (try_from(problem.start_point(), DesignAim::constrained)) return found;
  for (const Point& start : promising(problem, options))
    if (try_from(start, DesignAim::constrained)) return found;
  found.stopped = problem.stopped();
  if (found.stopped) return found;
  if (found.best.usable() && found.best.violation <= DesignPoint::kHolds) return found;
  // No composition satisfies the inequalities: the nearest one.
  const Point from = found.best.usable() ? found.best.point : problem.start_point();
  const DesignPoint nearest =
      internal::descend(problem, from, DesignAim::all_squares, options.most_steps);
  if (nearest.usable()) found.best = nearest;
  found.stopped = problem.stopped();
  return found;
}

/// How far off counts as met: limits are kept as well as the search resolves them.
double slack_of(const DesignTarget& target) {
  constexpr double kResolved = 1e-3;  // squared, DesignPoint::kHolds
  return target.sense == TargetSense::equal
             ? target.tolerance
             : std::max(target.tolerance,
                        kResolved * DesignTarget::usual_tolerance(target.wanted));
}

TargetOutcome outcome_of(const DesignTarget& target, const State& state) {
  TargetOutcome outcome{target.quantity.name(), target.quantity.unit(),
                        target.temperature,     target.sense,
                        target.wanted,          target.tolerance};
  outcome.temperature_unit = target.temperature_unit;
  outcome.value = target.quantity.value(state);
  outcome.miss = outcome.value - target.wanted;
  if (target.sense == TargetSense::at_least) outcome.miss = std::min(outcome.miss, 0.0);
  if (target.sense == TargetSense::at_most) outcome.miss = std::max(outcome.miss, 0.0);
  // min() and max() lose a NaN.
  if (std::isnan(outcome.value)) outcome.miss = Occurrence::kUnknown;
  outcome.met = std::abs(outcome.miss) <= slack_of(target);
  return outcome;
}

DesignStatus status_of(const Design& design) {
  bool all = true, inequalities = true;
  for (const TargetOutcome& target : design.targets) {
    if (std::isnan(target.value)) return DesignStatus::not_converged;
    all = all && target.met;
    inequalities = inequalities && (target.met || target.sense == TargetSense::equal);
  }
  if (all) return DesignStatus::met;
  return inequalities ? DesignStatus::compromise : DesignStatus::infeasible;
}

/// Composition, final soaks and what they say of the targets.
Design concluded(DesignProblem& problem, const Point& point, const Steel& start,
                 const std::vector<DesignElement>& elements,
                 const DesignOptions& options) {
  constexpr double kAtBound = 1e-6;  // of the cube
  NamedValues percents;
  const NamedValues exact = problem.steel(point).analysis().given;
  std::vector<double> chosen;
  for (const DesignElement& element : elements) chosen.push_back(exact[element.symbol]);
  chosen = internal::rounded_design(problem, start, elements, std::move(chosen),
                                    options.makeable);
  std::vector<DesignedElement> designed;
  for (std::size_t i = 0; i < elements.size(); ++i) {
    const std::string& symbol = elements[i].symbol;
    percents.set(symbol, chosen[i]);
    const bool at_bound = point[i] < kAtBound || point[i] > 1.0 - kAtBound;
    designed.push_back({symbol, elements[i].range, chosen[i], at_bound});
  }
  const std::string name =
      start.name().empty() ? "design" : "design from " + start.name();
  Design design{DesignStatus::not_converged,
                start.changed(percents, name),
                std::move(designed),
                {},
                {},
                0,
                0,
                {},
                std::any_of(problem.targets().begin(), problem.targets().end(),
                            [](const auto& t) { return t.quantity.by_family(); }),
                {}};
  design.states = problem.soak(design.steel);
  for (std::size_t j = 0; j < problem.targets().size(); ++j) {
    const DesignTarget& target = problem.targets()[j];
    const State& state = design.states[problem.state_of(j)];
    design.targets.push_back(outcome_of(target, state));
    internal::add_warnings(target.quantity, state, design.of_targets);
  }
  design.status = status_of(design);
  return design;
}

}  // namespace

double DesignTarget::usual_tolerance(double wanted) noexcept {
  constexpr double kShare = 0.01, kLeast = 0.005;
  return std::max(kShare * std::abs(wanted), kLeast);
}

double DesignTarget::scale() const noexcept {
  return tolerance > 0.0 ? tolerance : usual_tolerance(wanted);
}

std::vector<DesignTarget> matrix_targets(const State& state,
                                         const std::vector<std::string>& elements) {
  if (!state.usable() || state.matrix_phases().empty())
    throw InputError({{"gibbsteel.input.260", "state", "has no usable matrix",
                       "take another temperature or composition"}});
  const NamedValues& matrix = state.matrix.weight_percent;
  std::vector<Problem> problems;
  for (const std::string& symbol : elements)
    if (!matrix.contains(symbol))
      problems.push_back({"gibbsteel.input.269", "elements",
                          "there is no '" + symbol + "' in the matrix",
                          "choose elements of the calculation"});
  if (!problems.empty()) throw InputError(std::move(problems));
  std::vector<DesignTarget> targets;
  for (const auto& [symbol, percent] : matrix) {
    const bool listed =
        std::find(elements.begin(), elements.end(), symbol) != elements.end();
    if (elements.empty() ? symbol != "Fe" : listed)
      targets.push_back({quantities::matrix(symbol), state.temperature,
                         TargetSense::equal, percent,
                         DesignTarget::usual_tolerance(percent)});
  }
  return targets;
}

Design design(const Steel& start, const std::vector<DesignElement>& elements,
              const std::vector<DesignTarget>& targets, const DesignOptions& options) {
  to_makeable({}, options.makeable);  // refuses steps that cannot be
  DesignProblem problem(start, elements, targets, options);
  const Found found = search(problem, options);
  const Point point = found.best.usable() ? found.best.point : problem.start_point();
  Design result = concluded(problem, point, start, elements, options);
  result.soaks = problem.soaks();
  result.starts = found.starts;
  if (found.stopped) result.status = DesignStatus::stopped;
  result.text = internal::sentence_of(result);
  return result;
}

std::vector<Warning> Design::warnings() const {
  std::vector<const State*> all;
  for (const State& state : states) all.push_back(&state);
  std::vector<Warning> found = internal::distinct_warnings(all);
  for (const Warning& warning : of_targets) internal::add_distinct(warning, found);
  if (!by_family) return found;
  const NamedValues& result = steel.analysis().modelled;
  internal::add_distinct(internal::near_border(result), found);
  for (const auto& [symbol, range, percent, at_bound] : elements)
    internal::add_distinct(
        internal::border_within(result, symbol, range.low, range.high), found);
  return found;
}

}  // namespace gibbsteel
