#include <nlopt.h>

#include <limits>
#include <memory>

#include "logits_posing.hpp"
#include "solvers.hpp"

namespace gibbsteel::contest {
namespace {

constexpr int kMostEvaluations = 2000;
constexpr double kMostSeconds = 5.0;

struct Calls {
  const LogitsPosing& posing;
  int evaluations = 0;
};

double energy(unsigned, const double* x, double* gradient, void* data) {
  auto& calls = *static_cast<Calls*>(data);
  ++calls.evaluations;
  return calls.posing.value(x, gradient);
}

void balance(unsigned, double* out, unsigned, const double* x, double* gradient,
             void* data) {
  static_cast<Calls*>(data)->posing.balance(x, out, gradient);
}

std::string verdict(nlopt_result result) {
  switch (result) {
    case NLOPT_SUCCESS:
      return "success";
    case NLOPT_FTOL_REACHED:
      return "change of energy small";
    case NLOPT_XTOL_REACHED:
      return "step small";
    case NLOPT_MAXEVAL_REACHED:
      return "evaluation limit";
    case NLOPT_MAXTIME_REACHED:
      return "time limit";
    case NLOPT_ROUNDOFF_LIMITED:
      return "limited by rounding";
    default:
      return "failed (" + std::to_string(static_cast<int>(result)) + ")";
  }
}

}  // namespace

Answer nlopt_slsqp(const Task& task, const Sets& start) {
  const LogitsPosing posing(task, start);
  Calls calls{posing};
  using Optimizer = std::unique_ptr<nlopt_opt_s, decltype(&nlopt_destroy)>;
  const auto n = static_cast<unsigned>(posing.variables());
  const auto elements = static_cast<unsigned>(task.mole_fractions.size());
  const Optimizer optimizer(nlopt_create(NLOPT_LD_SLSQP, n), &nlopt_destroy);
  std::vector<double> lower(n, -std::numeric_limits<double>::infinity());
  for (const Slot& slot : posing.slots()) lower[slot.first] = 0.0;
  const std::vector<double> tolerances(elements, 1e-10);
  nlopt_set_lower_bounds(optimizer.get(), lower.data());
  nlopt_set_min_objective(optimizer.get(), &energy, &calls);
  nlopt_add_equality_mconstraint(optimizer.get(), elements, &balance, &calls,
                                 tolerances.data());
  nlopt_set_ftol_rel(optimizer.get(), 1e-12);
  nlopt_set_maxeval(optimizer.get(), kMostEvaluations);
  nlopt_set_maxtime(optimizer.get(), kMostSeconds);
  std::vector<double> x = posing.start();
  double lowest = 0.0;
  Answer answer;
  answer.said = verdict(nlopt_optimize(optimizer.get(), x.data(), &lowest));
  answer.iterations = calls.evaluations;
  answer.sets = posing.sets(x.data());
  return answer;
}

std::string nlopt_version_text() {
  int major = 0, minor = 0, bugfix = 0;
  nlopt_version(&major, &minor, &bugfix);
  return std::to_string(major) + "." + std::to_string(minor) + "." +
         std::to_string(bugfix);
}

}  // namespace gibbsteel::contest
