#include "json_out.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace gibbsteel::contest {
namespace {

/// Names here hold no quotes and no control characters.
void write_text(std::ostream& out, const std::string& text) {
  out << '"' << text << '"';
}

/// Calls write(item) for all, with commas between, in square brackets.
template <class Items, class Write>
void write_list(std::ostream& out, const Items& items, Write write) {
  out << '[';
  bool first = true;
  for (const auto& item : items) {
    if (!first) out << ", ";
    first = false;
    write(item);
  }
  out << ']';
}

void write_numbers(std::ostream& out, const std::vector<double>& numbers) {
  write_list(out, numbers, [&](double number) { write_number(out, number); });
}

void write_texts(std::ostream& out, const std::vector<std::string>& texts) {
  write_list(out, texts, [&](const std::string& text) { write_text(out, text); });
}

void write_sets(std::ostream& out, const Sets& sets) {
  write_list(out, sets, [&](const PhasePoint& set) {
    out << "{\"phase\": " << set.phase << ", \"amount\": ";
    write_number(out, set.amount);
    out << ", \"y\": ";
    write_numbers(out, set.y);
    out << '}';
  });
}

void write_task(std::ostream& out, const Task& task) {
  out << "\n  {\"name\": ";
  write_text(out, task.name);
  out << ", \"elements\": ";
  write_texts(out, task.system->elements());
  out << ", \"mole_fractions\": ";
  write_numbers(out, task.mole_fractions);
  out << ", \"kelvin\": ";
  write_number(out, task.temperature.in_kelvin());
  std::vector<std::string> phases;
  for (const PhaseModel& model : task.system->phases()) phases.push_back(model.name());
  out << ", \"phases\": ";
  write_texts(out, phases);
  out << ", \"potentials\": ";
  write_numbers(out, task.reference.chemical_potential);
  out << ", \"gibbs_energy\": ";
  write_number(out, task.reference.gibbs_energy);
  out << ", \"proven_gap\": ";
  write_number(out, task.reference.report.proven_gap);
  out << ", \"naive\": ";
  write_sets(out, naive_start(task));
  out << ", \"warm\": ";
  write_sets(out, warm_start(task));
  out << '}';
}

void write_run(std::ostream& out, const Run& run) {
  out << "\n  {\"solver\": ";
  write_text(out, run.solver);
  out << ", \"start\": ";
  write_text(out, run.start);
  out << ", \"task\": " << run.task << ", \"seconds\": ";
  write_number(out, run.outcome.seconds);
  out << ", \"repetitions\": " << run.outcome.repetitions << ", \"gap\": ";
  write_number(out, run.outcome.gap);
  out << ", \"balance\": ";
  write_number(out, run.outcome.balance);
  out << ", \"iterations\": " << run.outcome.iterations << ", \"said\": ";
  write_text(out, run.outcome.said);
  out << '}';
}

}  // namespace

void write_number(std::ostream& out, double value) {
  if (!std::isfinite(value)) {
    out << "null";
    return;
  }
  std::array<char, 32> text{};
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value);
  out.write(text.data(), end.ptr - text.data());
}

void write_tasks(std::ostream& out, const std::vector<Task>& tasks) {
  write_list(out, tasks, [&](const Task& task) { write_task(out, task); });
}

void write_runs(std::ostream& out, const std::vector<Run>& runs) {
  write_list(out, runs, [&](const Run& run) { write_run(out, run); });
}

}  // namespace gibbsteel::contest
