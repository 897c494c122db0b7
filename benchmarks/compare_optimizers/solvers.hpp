#pragma once
/// The solvers that are compared, each from the compiled phases to an answer. What they
/// do for themselves (coefficients at the temperature, setting up) is inside.

#include <functional>
#include <optional>

#include "outcome.hpp"

namespace gibbsteel::contest {

/// minimize(): nothing known, certificate from many starts included.
Answer gibbsteel_cold(const Task& task);

/// The two-level Newton scheme from the warm start, without looking for other phases:
/// what a general-purpose optimizer does from there.
Answer gibbsteel_newton(const Task& task);

/// A soak with all checks from what is known 1 K higher. Whatever has to be prepared
/// there is prepared by the first call and not timed; the solver that comes back is.
using PreparedSolver = std::function<Answer()>;
std::optional<PreparedSolver> gibbsteel_warm(const Task& task);

/// Ipopt on the amounts with exact derivatives, default barrier settings.
Answer ipopt_cold(const Task& task, const Sets& start);
/// The same with the barrier so low and the bounds so close that it keeps the start.
Answer ipopt_warm(const Task& task);
/// The lowest balanced answer of several random starts.
Answer ipopt_random(const Task& task, unsigned starts);
std::string ipopt_version();

/// NLopt's sequential quadratic programming on the logits with exact gradients.
Answer nlopt_slsqp(const Task& task, const Sets& start);
std::string nlopt_version_text();

}  // namespace gibbsteel::contest
