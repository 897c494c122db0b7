#include <memory>

#include "continuation/line_solver.hpp"
#include "minimizer/two_level_newton.hpp"
#include "posing.hpp"
#include "solvers.hpp"

namespace gibbsteel::contest {
namespace {

Sets points_of(const std::vector<internal::PhaseSet>& sets) {
  Sets points;
  for (const auto& set : sets) points.push_back({set.phase, set.amount, set.y, 0.0});
  return points;
}

Answer last_of(const internal::LineSolver& line) {
  Answer answer;
  answer.iterations = line.report().newton_steps;
  answer.said = std::string(to_string(line.report().status)) + ", " +
                std::string(to_string(line.report().certificate));
  if (line.report().usable()) answer.sets = points_of(line.sets());
  return answer;
}

}  // namespace

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

ProgramStart program_start(const Task& task) {
  constexpr double kDepth = 100.0;  // [J/mol of atoms]
  constexpr int kMostRounds = 15;
  auto conditions = conditions_of(task);
  internal::ColumnGeneration generation(conditions);
  generation.run(kDepth, kMostRounds);
  const auto mu = generation.program().potentials();
  return {points_of(internal::sets_from_basis(generation)), {mu.begin(), mu.end()}};
}

Answer gibbsteel_newton(const Task& task, const Sets& start,
                        const std::vector<double>& potentials) {
  constexpr int kMostSteps = 200;
  constexpr double kBalance = 1e-11;  // as SolveOptions
  auto conditions = conditions_of(task);
  std::vector<internal::PhaseSet> sets;
  for (const PhasePoint& point : start) {
    internal::PhaseSet set;
    set.phase = point.phase;
    set.amount = point.amount;
    set.y = point.y;
    sets.push_back(std::move(set));
  }
  std::vector<double> mu = potentials;
  const auto refined = internal::refine(conditions, kMostSteps, kBalance, sets, mu);
  Answer answer;
  answer.iterations = refined.steps;
  answer.said = refined.converged ? "converged" : "not converged";
  if (refined.converged) answer.sets = points_of(sets);
  return answer;
}

Answer gibbsteel_line(const Task& task) {
  internal::LineSolver line(*task.system, SolveOptions{});
  int certified = kLineSoaks;  // the last soak that is, counted back from the task
  for (int before = kLineSoaks - 1; before >= 0; --before) {
    line.next(on_line(task, before), task.mole_fractions);
    if (line.distance() < 1.0 && before > 0) continue;
    if (!line.certify()) {  // in doubt: solved again, cold
      for (int again = certified - 1; again > before; --again)
        minimize(*task.system, on_line(task, again), task.mole_fractions);
      line.next(on_line(task, before), task.mole_fractions);
    }
    certified = before;
  }
  return last_of(line);
}

std::function<Answer()> gibbsteel_there_and_back(const Task& task) {
  const auto line =
      std::make_shared<internal::LineSolver>(*task.system, SolveOptions{});
  const auto higher = Temperature::kelvin(task.temperature.in_kelvin() + 1.0);
  line->next(higher, task.mole_fractions);
  return [line, higher, &task] {
    line->next(higher, task.mole_fractions);
    line->next(task.temperature, task.mole_fractions);
    return last_of(*line);
  };
}

}  // namespace gibbsteel::contest
