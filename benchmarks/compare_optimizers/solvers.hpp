#pragma once
/// The solvers that are compared, each from the compiled phases to an answer. What they
/// do for themselves (coefficients at the temperature, setting up) is inside.

#include <functional>

#include "outcome.hpp"

namespace gibbsteel::contest {

/// minimize(): nothing known, certificate from many starts included.
Answer gibbsteel_cold(const Task& task);

/// Phases, amounts and compositions that the linear program of a cold soak has when
/// none lies more than 100 J/mol of atoms below its plane.
struct ProgramStart {
  Sets sets;
  std::vector<double> potentials;
};
ProgramStart program_start(const Task& task);

/// The two-level Newton scheme from a start, without looking for other phases: what a
/// general-purpose optimizer does from there.
/// @param potentials  of the elements at the start [J/mol]
Answer gibbsteel_newton(const Task& task, const Sets& start,
                        const std::vector<double>& potentials);

/// Two soaks that follow one another, 1 K higher and at the task: all known minima are
/// checked in each, the test from many starts is not in them. What comes back is timed;
/// the first soak, which is a cold one, is made before. The task has to stay.
std::function<Answer()> gibbsteel_there_and_back(const Task& task);

/// A whole line of soaks, each followed from the one before, with everything that
/// belongs to it: the first soak cold, phase changes, tests from many starts. Ends at
/// the task.
Answer gibbsteel_line(const Task& task);

/// Ipopt on the amounts with exact derivatives.
enum class Barrier {
  standard,  ///< its own settings, which move every start far from the bounds
  low,       ///< so low and so near the bounds that small amounts keep their place
  lowest,    ///< for starts that are nearly right
};
Answer ipopt(const Task& task, const Sets& start, Barrier barrier);
/// The lowest balanced answer of several random starts with a low barrier.
Answer ipopt_random(const Task& task, unsigned starts);
std::string ipopt_version();

/// NLopt's sequential quadratic programming on the logits with exact gradients.
Answer nlopt_slsqp(const Task& task, const Sets& start);
std::string nlopt_version_text();

}  // namespace gibbsteel::contest
