#include "screening/solve_block.hpp"

#include "continuation/solve_line.hpp"

namespace gibbsteel::internal {
namespace {

using Deliver = std::function<void(std::size_t, const Equilibrium&)>;

/// The same elements, if not the same object: systems are made anew when the cache of a
/// screen was cleared, at a moment that depends on the threads.
bool same_line(const RowProblem& a, const RowProblem& b) {
  return a.system == b.system || a.system->elements() == b.system->elements();
}

/// Rows of one set of elements, each from the row before.
void follow(std::span<const RowProblem> problems, std::size_t first,
            const SolveOptions& options, const Deliver& deliver,
            ConditionNumbers numbers) {
  std::vector<LinePoint> points;
  for (const RowProblem& p : problems)
    points.push_back({p.temperature, p.mole_fractions});
  solve_line(
      *problems.front().system, options, points,
      [&](std::size_t i, Equilibrium&& result) {
        deliver(first + i, result);
        return true;
      },
      numbers);
}

void solve_each(std::span<const RowProblem> problems, const SolveOptions& options,
                const Deliver& deliver) {
  for (std::size_t i = 0; i < problems.size(); ++i) {
    const RowProblem& p = problems[i];
    deliver(i, minimize(*p.system, p.temperature, p.mole_fractions, options));
  }
}

}  // namespace

void solve_block(std::span<const RowProblem> problems, const SolveOptions& options,
                 const Deliver& deliver, ConditionNumbers numbers) {
  if (options.certify == Certificate::proof)
    return solve_each(problems, options, deliver);
  for (std::size_t begin = 0; begin < problems.size();) {
    std::size_t end = begin;
    while (end < problems.size() && same_line(problems[begin], problems[end])) ++end;
    follow(problems.subspan(begin, end - begin), begin, options, deliver, numbers);
    begin = end;
  }
}

}  // namespace gibbsteel::internal
