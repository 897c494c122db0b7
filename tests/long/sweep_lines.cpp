#include "long/sweep_lines.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

#include "continuation/solve_line.hpp"
#include "gibbsteel/phase_changes.hpp"
#include "gibbsteel/soak_grid.hpp"
#include "internal/number_format.hpp"
#include "internal/soak_problem.hpp"
#include "long/checks.hpp"
#include "state_numbers.hpp"

namespace gibbsteel::long_run {
namespace {

constexpr std::size_t kNeighbours = 10;  ///< on either side, whose phases are tried

std::vector<std::string> sorted(std::vector<std::string> kinds) {
  std::sort(kinds.begin(), kinds.end());
  return kinds;
}

std::vector<std::string> kinds_of(const State& state) {
  std::vector<std::string> kinds;
  for (const Occurrence& o : state.occurrences) kinds.push_back(o.kind);
  return sorted(std::move(kinds));
}

bool same_bits(const State& a, const State& b) {
  const auto one = testing::numbers_of(a), other = testing::numbers_of(b);
  if (a.solve_report.status != b.solve_report.status || one.size() != other.size())
    return false;
  for (std::size_t i = 0; i < one.size(); ++i)
    if (one[i].first != other[i].first ||
        std::bit_cast<std::uint64_t>(one[i].second) !=
            std::bit_cast<std::uint64_t>(other[i].second))
      return false;
  return true;
}

/// The fields of a search against single points.
struct Fields {
  PhaseChanges found;

  bool border_at(Temperature t) const {
    for (const PhaseChange& change : found.changes)
      if (std::abs(change.temperature.in_kelvin() - t.in_kelvin()) <= found.tolerance)
        return true;
    for (const PhaseGap& gap : found.gaps)
      if (gap.low <= t && t <= gap.high) return true;
    return false;
  }
  std::vector<std::string> phases_at(Temperature t) const {
    for (const PhaseField& field : found.fields)
      if (field.low <= t && t <= field.high) return sorted(field.phases);
    return {};
  }
};

class SweptLine {
 public:
  SweptLine(const SharedParameters& set, std::size_t number)
      : number_(number), line_(line(*set, number)) {}

  Outcome run(bool search_changes) {
    const auto swept = sweep();
    for (std::size_t k = 0; k < line_.values.size(); ++k) solve(k, swept[k]);
    for (std::size_t k = 1; k < states_.size(); ++k)
      if (states_[k].usable() && states_[k - 1].usable() &&
          kinds_of(states_[k]) != kinds_of(states_[k - 1]))
        ++outcome_.phase_changes;
    if (line_.element.empty())
      judge_neighbours();
    else
      judge_convexity();
    if (!line_.element.empty()) judge_followed();
    if (search_changes && line_.element.empty()) judge_by_fields();
    return std::move(outcome_);
  }

 private:
  Temperature temperature(std::size_t k) const {
    return Temperature::celsius(line_.element.empty() ? line_.values[k]
                                                      : line_.celsius);
  }

  std::vector<State> sweep() const {
    if (line_.element.empty()) {
      std::vector<Temperature> temperatures;
      for (std::size_t k = 0; k < line_.values.size(); ++k)
        temperatures.push_back(temperature(k));
      return line_.steel.sweep(temperatures).states;
    }
    const auto grid =
        soak_grid(line_.steel, SweptVariable::temperature({temperature(0)}),
                  SweptVariable::element(line_.element, line_.values), {}, {}, {}, 1);
    std::vector<State> states;
    for (const auto& state : grid.states) states.push_back(*state);
    return states;
  }

  void wrong(std::size_t k, std::string what, double depth) {
    outcome_.wrong.push_back({number_, k, std::move(what), depth});
  }

  /// A cold soak in objects of its own.
  void solve(std::size_t k, const State& swept) {
    const Steel steel = line_.element.empty()
                            ? line_.steel
                            : line_.steel.changed({{line_.element, line_.values[k]}});
    problems_.emplace_back(steel, SoakOptions{});
    const internal::SoakProblem& problem = problems_.back();
    const double begin = thread_seconds();
    results_.push_back(problem.solve(temperature(k)));
    const double seconds = thread_seconds() - begin;
    states_.push_back(problem.state_of(results_.back()));
    const bool usable = count(results_.back(), number_, k, Draw::soaks,
                              steel.elements().size(), seconds, outcome_);
    compare(k, swept, states_.back());
    if (!usable) return;
    const double balance =
        balance_error(problem.system, results_.back(), problem.mole_fractions);
    outcome_.worst_balance = std::max(outcome_.worst_balance, balance);
    if (!(balance <= 1e-10)) wrong(k, "element balance", balance);
    const double gap = std::abs(results_.back().gibbs_energy -
                                plane(results_.back(), problem.mole_fractions));
    if (gap > outcome_.worst_gap) outcome_.worst_gap = gap;
  }

  /// A point of the sweep against the cold soak.
  void compare(std::size_t k, const State& swept, const State& cold) {
    if (same_bits(swept, cold)) ++outcome_.same_bits;
    if (!swept.usable() && cold.usable())
      outcome_.flagged.push_back(
          {number_, k, "swept: " + swept.solve_report.reason, 0.0});
    if (!swept.usable() || !cold.usable()) return;
    const double off = std::abs(swept.gibbs_energy - cold.gibbs_energy);
    outcome_.judges["cold soak"].hear(-off);
    if (!(off <= kTolerance)) wrong(k, "another energy than a cold soak", off);
  }

  /// What is stable at one temperature is possible at the next.
  void judge_neighbours() {
    for (std::size_t i = 0; i < results_.size(); ++i) {
      if (!states_[i].usable()) continue;
      const std::size_t first = i > kNeighbours ? i - kNeighbours : 0;
      const std::size_t last = std::min(results_.size() - 1, i + kNeighbours);
      for (std::size_t j = first; j <= last; ++j) {
        if (j == i || !states_[j].usable()) continue;
        const double margin =
            energy_carried_over(problems_[i].system, results_[i], temperature(j)) -
            results_[j].gibbs_energy;
        outcome_.judges["phases of neighbours"].hear(margin);
        if (!(margin >= -kTolerance))
          wrong(j, "a neighbour's phases lie lower", margin);
      }
    }
  }

  /// G_j >= mu_i . x_j for every pair.
  void judge_convexity() {
    for (std::size_t i = 0; i < results_.size(); ++i) {
      if (!states_[i].usable() || !std::isfinite(results_[i].chemical_potential[0]))
        continue;
      for (std::size_t j = 0; j < results_.size(); ++j) {
        if (j == i || !states_[j].usable() ||
            problems_[i].system.elements() != problems_[j].system.elements())
          continue;
        const double margin =
            results_[j].gibbs_energy - plane(results_[i], problems_[j].mole_fractions);
        outcome_.judges["convexity"].hear(margin);
        if (!(margin >= -kTolerance))
          wrong(i, "point " + std::to_string(j) + " lies below its plane", margin);
      }
    }
  }

  /// Compositions, each from the one before instead of cold; sweeps do that themselves.
  void judge_followed() {
    const PhaseSystem& system = problems_[0].system;
    std::vector<internal::LinePoint> points;
    for (std::size_t k = 0; k < problems_.size(); ++k) {
      if (problems_[k].system.elements() != system.elements()) return;
      points.push_back({temperature(k), problems_[k].mole_fractions});
    }
    internal::solve_line(system, {}, points,
                         [&](std::size_t k, const Equilibrium& followed) {
                           judge_followed(k, followed, points[k].mole_fractions);
                           return true;
                         });
  }

  void judge_followed(std::size_t k, const Equilibrium& followed,
                      const std::vector<double>& x) {
    if (!states_[k].usable()) return;
    if (!followed.report.usable()) {
      outcome_.flagged.push_back(
          {number_, k, "followed: " + followed.report.reason, 0.0});
      return;
    }
    const double off = std::abs(followed.gibbs_energy - results_[k].gibbs_energy);
    outcome_.judges["followed line"].hear(-off);
    if (!(off <= kTolerance)) wrong(k, "followed: another energy", off);
    const double balance = balance_error(problems_[k].system, followed, x);
    if (!(balance <= 1e-10)) wrong(k, "followed: element balance", balance);
  }

  void judge_by_fields() {
    const Fields fields{phase_changes(
        line_.steel, {temperature(0), temperature(line_.values.size() - 1)})};
    for (std::size_t k = 0; k < states_.size(); ++k) {
      if (!states_[k].usable() || fields.border_at(temperature(k))) continue;
      outcome_.judges["field of the search"].hear(0.0);
      if (fields.phases_at(temperature(k)) != kinds_of(states_[k]))
        wrong(k, "other phases than its field", 0.0);
    }
  }

  std::size_t number_;
  Line line_;
  std::vector<internal::SoakProblem> problems_;
  std::vector<Equilibrium> results_;
  std::vector<State> states_;
  Outcome outcome_;
};

}  // namespace

Outcome sweep_line(const SharedParameters& set, std::size_t number,
                   bool search_changes) {
  return SweptLine(set, number).run(search_changes);
}

std::string text(const Line& line, std::size_t point) {
  const double value = line.values[point];
  if (line.element.empty())
    return line.steel.brief() + " at " + internal::fixed(value, 3) + " C";
  return line.steel.changed({{line.element, value}}).brief() + " at " +
         internal::fixed(line.celsius, 3) + " C, line of " + line.element;
}

}  // namespace gibbsteel::long_run
