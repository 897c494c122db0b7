/// Hands the same compiled phases to this library and to general-purpose optimizers and
/// writes what came out as JSON.
///
///   compare_optimizers OUT.json [NUMBER OF TASKS]
///
/// Ends with 1 when an answer of the library is not the lowest one by 1e-3 J/mol.

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iostream>

#include "json_out.hpp"
#include "measure.hpp"
#include "solvers.hpp"

namespace {

using namespace gibbsteel::contest;

constexpr unsigned kRandomStarts = 8;

class Runner {
 public:
  explicit Runner(const std::vector<Task>& tasks) : tasks_(tasks) {}

  void run() {
    for (std::size_t i = 0; i < tasks_.size(); ++i) {
      const Task& task = tasks_[i];
      ours(i, task);
      const Sets naive = naive_start(task);
      add(i, "Ipopt, its own settings", "naive",
          [&] { return ipopt(task, naive, Barrier::standard); });
      add(i, "Ipopt, low barrier", "naive",
          [&] { return ipopt(task, naive, Barrier::low); });
      add(i, "Ipopt, low barrier", "random", [&] { return ipopt_random(task, 1); });
      add(i, "Ipopt, low barrier, best of 8", "random",
          [&] { return ipopt_random(task, kRandomStarts); });
      add(i, "Ipopt, lowest barrier", "warm",
          [&] { return ipopt(task, warm_start(task), Barrier::lowest); });
      add(i, "NLopt SLSQP", "naive", [&] { return nlopt_slsqp(task, naive); });
      add(i, "NLopt SLSQP", "warm",
          [&] { return nlopt_slsqp(task, warm_start(task)); });
      from_line(i, task);
      from_program(i, task);
    }
  }

  const std::vector<Run>& runs() const noexcept { return runs_; }

  /// How many answers of the library lie above another balanced answer.
  int beaten() const {
    int count = 0;
    for (const Run& run : runs_)
      if (run.outcome.balance < 1e-6 && run.outcome.gap < -1e-3) {
        std::cerr << tasks_[run.task].name << ": " << run.solver << " is "
                  << -run.outcome.gap << " J/mol lower\n";
        ++count;
      }
    return count;
  }

 private:
  void ours(std::size_t i, const Task& task) {
    add(i, "gibbsteel", "cold", [&] { return gibbsteel_cold(task); });
    add(i, "gibbsteel", "warm", gibbsteel_there_and_back(task));
    runs_.back().outcome.seconds /= 2.0;
    add(i, "gibbsteel, Newton only", "warm", [&] {
      return gibbsteel_newton(task, warm_start(task), task.nearby.chemical_potential);
    });
  }

  /// Per soak of a line, and the optimizers from the soak before.
  void from_line(std::size_t i, const Task& task) {
    add(i, "gibbsteel, line of 2000", "line", [&] { return gibbsteel_line(task); });
    runs_.back().outcome.seconds /= kLineSoaks;
    add(i, "Ipopt, lowest barrier", "line",
        [&] { return ipopt(task, line_start(task), Barrier::lowest); });
    add(i, "NLopt SLSQP", "line", [&] { return nlopt_slsqp(task, line_start(task)); });
  }

  /// From phases and compositions of the linear program.
  void from_program(std::size_t i, const Task& task) {
    const ProgramStart start = program_start(task);
    add(i, "gibbsteel, Newton only", "program",
        [&] { return gibbsteel_newton(task, start.sets, start.potentials); });
    add(i, "Ipopt, low barrier", "program",
        [&] { return ipopt(task, start.sets, Barrier::low); });
    add(i, "Ipopt, lowest barrier", "program",
        [&] { return ipopt(task, start.sets, Barrier::lowest); });
    add(i, "NLopt SLSQP", "program", [&] { return nlopt_slsqp(task, start.sets); });
  }

  void add(std::size_t task, std::string solver, std::string start,
           const std::function<Answer()>& solve) {
    runs_.push_back(
        {std::move(solver), std::move(start), task, measure(tasks_[task], solve)});
  }

  const std::vector<Task>& tasks_;
  std::vector<Run> runs_;
};

}  // namespace

int main(int argc, char** argv) {
  if (argc < 2 || argc > 3) {
    std::cerr << "usage: compare_optimizers OUT.json [NUMBER OF TASKS]\n";
    return 2;
  }
  std::vector<Task> tasks = all_tasks();
  if (argc == 3) {
    const auto count = static_cast<std::size_t>(std::max(1, std::atoi(argv[2])));
    if (count < tasks.size())
      tasks.erase(tasks.begin() + static_cast<std::ptrdiff_t>(count), tasks.end());
  }
  Runner runner(tasks);
  runner.run();
  std::ofstream out(argv[1]);
  out << "{\"ipopt\": \"" << ipopt_version() << "\", \"nlopt\": \""
      << nlopt_version_text() << "\",\n \"tasks\": ";
  write_tasks(out, tasks);
  out << ",\n \"runs\": ";
  write_runs(out, runner.runs());
  out << "}\n";
  return runner.beaten() == 0 && out ? 0 : 1;
}
