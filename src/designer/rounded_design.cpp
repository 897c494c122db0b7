#include "designer/rounded_design.hpp"

#include <limits>

#include "designer/design_search.hpp"

namespace gibbsteel::internal {
namespace {

/// Rounded, but not over a bound.
double makeable(const DesignElement& element, double percent,
                const MakeableSteps& steps) {
  const double value = to_makeable({{element.symbol, percent}}, steps)[element.symbol];
  const bool inside = value >= element.range.low && value <= element.range.high;
  return inside ? value : percent;
}

struct Candidate {
  std::vector<double> percents;
  double violation = std::numeric_limits<double>::infinity();
  double misfit = std::numeric_limits<double>::infinity();

  bool holds() const noexcept { return violation <= DesignPoint::kHolds; }
  bool better_than(const Candidate& other) const noexcept {
    if (holds() && other.holds()) return misfit < other.misfit;
    return violation < other.violation;
  }
};

class Rounding {
 public:
  Rounding(DesignProblem& problem, const Steel& start,
           const std::vector<DesignElement>& elements, const MakeableSteps& steps)
      : problem_(problem), start_(start), elements_(elements), steps_(steps) {}

  Candidate judged(std::vector<double> percents) {
    NamedValues given;
    for (std::size_t i = 0; i < elements_.size(); ++i)
      given.set(elements_[i].symbol, percents[i]);
    const DesignValues values = problem_.judge(start_.changed(given));
    Candidate candidate{std::move(percents)};
    if (!values.usable) return candidate;
    candidate.violation = values.violation(problem_.targets());
    candidate.misfit = values.misfit(problem_.targets());
    return candidate;
  }

  Candidate nearest(std::vector<double> percents) {
    for (std::size_t i = 0; i < elements_.size(); ++i)
      percents[i] = makeable(elements_[i], percents[i], steps_);
    return judged(std::move(percents));
  }

  /// The best of those that differ by a step of one element, or of two.
  Candidate neighbour(const Candidate& from) {
    Candidate best = from;
    for (std::size_t i = 0; i < elements_.size(); ++i)
      for (const double up : {-1.0, 1.0}) {
        std::vector<double> one = from.percents;
        if (!move(i, up, one)) continue;
        consider(one, best);
        for (std::size_t j = i + 1; j < elements_.size(); ++j)
          for (const double along : {-1.0, 1.0}) {
            std::vector<double> two = one;
            if (move(j, along, two)) consider(two, best);
          }
      }
    return best;
  }

 private:
  void consider(const std::vector<double>& percents, Candidate& best) {
    Candidate candidate = judged(percents);
    if (candidate.better_than(best)) best = std::move(candidate);
  }

  bool move(std::size_t i, double direction, std::vector<double>& percents) const {
    const std::string& symbol = elements_[i].symbol;
    const double step =
        steps_.steps.contains(symbol) ? steps_.steps[symbol] : steps_.others;
    const double wanted = percents[i] + direction * step;
    const WeightPercentRange& range = elements_[i].range;
    if (wanted < range.low || wanted > range.high) return false;
    percents[i] = makeable(elements_[i], wanted, steps_);
    return true;
  }

  DesignProblem& problem_;
  const Steel& start_;
  const std::vector<DesignElement>& elements_;
  const MakeableSteps& steps_;
};

}  // namespace

std::vector<double> rounded_design(DesignProblem& problem, const Steel& start,
                                   const std::vector<DesignElement>& elements,
                                   std::vector<double> percents,
                                   const MakeableSteps& steps) {
  constexpr int kMostMoves = 5;
  if (!steps.round) return percents;
  Rounding rounding(problem, start, elements, steps);
  Candidate best = rounding.nearest(percents);
  if (best.holds() || !rounding.judged(percents).holds()) return best.percents;
  for (int moves = 0; moves < kMostMoves && !best.holds(); ++moves) {
    Candidate next = rounding.neighbour(best);
    if (!next.better_than(best)) break;
    best = std::move(next);
  }
  return best.percents;
}

}  // namespace gibbsteel::internal
