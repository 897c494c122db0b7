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
