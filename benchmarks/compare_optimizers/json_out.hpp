#pragma once
/// Results as JSON, for the table and for the solvers in Python.

#include <ostream>

#include "outcome.hpp"

namespace gibbsteel::contest {

struct Run {
  std::string solver, start;
  std::size_t task = 0;
  Outcome outcome;
};

void write_runs(std::ostream& out, const std::vector<Run>& runs);
void write_tasks(std::ostream& out, const std::vector<Task>& tasks);
/// 17 digits; null for what is not finite.
void write_number(std::ostream& out, double value);

}  // namespace gibbsteel::contest
