#include <memory>

#include "continuation/line_solver.hpp"
#include "minimizer/two_level_newton.hpp"
#include "posing.hpp"
#include "solvers.hpp"

namespace gibbsteel::contest {

Answer gibbsteel_cold(const Task& task) {
  const Equilibrium result =
      minimize(*task.system, task.temperature, task.mole_fractions);
  Answer answer;
  if (result.report.usable()) answer.sets = result.present;
  answer.iterations = result.report.newton_steps;
  answer.said = std::string(to_string(result.report.status)) + ", " +
                std::string(to_string(result.report.certificate));
  return answer;
}

Answer gibbsteel_newton(const Task& task) {
  constexpr int kMostSteps = 200;
  constexpr double kBalance = 1e-11;  // as SolveOptions
  auto conditions = conditions_of(task);
  std::vector<internal::PhaseSet> sets;
  for (const PhasePoint& point : warm_start(task)) {
    internal::PhaseSet set;
    set.phase = point.phase;
    set.amount = point.amount;
    set.y = point.y;
    sets.push_back(std::move(set));
  }
  std::vector<double> mu = task.nearby.chemical_potential;
  const auto refined = internal::refine(conditions, kMostSteps, kBalance, sets, mu);
  Answer answer;
  answer.iterations = refined.steps;
  answer.said = refined.converged ? "converged" : "not converged";
  if (refined.converged)
    for (const auto& set : sets)
      answer.sets.push_back({set.phase, set.amount, set.y, 0.0});
  return answer;
}

std::function<Answer()> gibbsteel_there_and_back(const Task& task) {
  const auto line =
      std::make_shared<internal::LineSolver>(*task.system, SolveOptions{});
  const auto higher = Temperature::kelvin(task.temperature.in_kelvin() + 1.0);
  line->next(higher, task.mole_fractions);
  return [line, higher, &task] {
    line->next(higher, task.mole_fractions);
    line->next(task.temperature, task.mole_fractions);
    Answer answer;
    answer.iterations = line->report().newton_steps;
    answer.said = std::string(to_string(line->report().status)) + ", " +
                  std::string(to_string(line->report().certificate));
    if (line->report().usable())
      for (const auto& set : line->sets())
        answer.sets.push_back({set.phase, set.amount, set.y, 0.0});
    return answer;
  };
}

}  // namespace gibbsteel::contest
