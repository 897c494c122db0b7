#include <IpIpoptApplication.hpp>
#include <IpSolveStatistics.hpp>
#include <IpTNLP.hpp>
#include <algorithm>
#include <limits>

#include "amounts_posing.hpp"
#include "solvers.hpp"

namespace gibbsteel::contest {
namespace {

using Ipopt::Index;
using Ipopt::Number;

std::size_t unsigned_of(Index i) { return static_cast<std::size_t>(i); }
Index index_of(std::size_t i) { return static_cast<Index>(i); }

/// Posing A in the words of Ipopt.
class AmountsProgram : public Ipopt::TNLP {
 public:
  explicit AmountsProgram(const AmountsPosing& posing)
      : posing_(posing), places_(posing.hessian_places()) {}

  const std::vector<double>& solution() const noexcept { return solution_; }

  bool get_nlp_info(Index& n, Index& m, Index& jacobian, Index& hessian,
                    IndexStyleEnum& style) override {
    n = index_of(posing_.variables());
    m = index_of(posing_.right_hand_sides().size());
    jacobian = index_of(posing_.constraints().size());
    hessian = index_of(places_.size());
    style = C_STYLE;
    return true;
  }

  bool get_bounds_info(Index n, Number* lower, Number* upper, Index m, Number* least,
                       Number* most) override {
    std::fill_n(lower, n, 0.0);
    std::fill_n(upper, n, 1e20);  // none
    std::copy_n(posing_.right_hand_sides().begin(), m, least);
    std::copy_n(posing_.right_hand_sides().begin(), m, most);
    return true;
  }

  bool get_starting_point(Index, bool, Number* x, bool, Number*, Number*, Index, bool,
                          Number*) override {
    const std::vector<double> start = posing_.start();
    std::copy(start.begin(), start.end(), x);
    return true;
  }

  bool eval_f(Index, const Number* x, bool, Number& value) override {
    value = posing_.value(x);
    return true;
  }

  bool eval_grad_f(Index, const Number* x, bool, Number* gradient) override {
    posing_.gradient(x, gradient);
    return true;
  }

  bool eval_g(Index, const Number* x, bool, Index m, Number* out) override {
    std::fill_n(out, m, 0.0);
    for (const Entry& entry : posing_.constraints())
      out[entry.row] += entry.value * x[entry.column];
    return true;
  }

  bool eval_jac_g(Index, const Number*, bool, Index, Index, Index* rows, Index* columns,
                  Number* values) override {
    for (const Entry& entry : posing_.constraints()) {
      if (values != nullptr) {
        *values++ = entry.value;
      } else {
        *rows++ = index_of(entry.row);
        *columns++ = index_of(entry.column);
      }
    }
    return true;
  }

  bool eval_h(Index, const Number* x, bool, Number factor, Index, const Number*, bool,
              Index count, Index* rows, Index* columns, Number* values) override {
    if (values == nullptr) {
      for (const Entry& place : places_) {
        *rows++ = index_of(place.row);
        *columns++ = index_of(place.column);
      }
      return true;
    }
    posing_.hessian(x, values);
    for (std::size_t i = 0; i < unsigned_of(count); ++i) values[i] *= factor;
    return true;
  }

  void finalize_solution(Ipopt::SolverReturn, Index n, const Number* x, const Number*,
                         const Number*, Index, const Number*, const Number*, Number,
                         const Ipopt::IpoptData*,
                         Ipopt::IpoptCalculatedQuantities*) override {
    solution_.assign(x, x + n);
  }

 private:
  const AmountsPosing& posing_;
  std::vector<Entry> places_;
  std::vector<double> solution_;
};

using Settings = std::vector<std::pair<std::string, double>>;

std::string verdict(Ipopt::ApplicationReturnStatus status) {
  switch (status) {
    case Ipopt::Solve_Succeeded:
      return "optimal";
    case Ipopt::Solved_To_Acceptable_Level:
      return "acceptable";
    case Ipopt::Infeasible_Problem_Detected:
      return "infeasible";
    case Ipopt::Search_Direction_Becomes_Too_Small:
      return "step too small";
    case Ipopt::Maximum_Iterations_Exceeded:
      return "iteration limit";
    case Ipopt::Restoration_Failed:
      return "restoration failed";
    default:
      return "failed (" + std::to_string(static_cast<int>(status)) + ")";
  }
}

Answer run(const Task& task, const Sets& start, const Settings& settings) {
  const AmountsPosing posing(task, start);
  Ipopt::SmartPtr<AmountsProgram> program = new AmountsProgram(posing);
  Ipopt::SmartPtr<Ipopt::IpoptApplication> ipopt = IpoptApplicationFactory();
  ipopt->Options()->SetIntegerValue("print_level", 0);
  ipopt->Options()->SetStringValue("sb", "yes");
  ipopt->Options()->SetIntegerValue("max_iter", 500);
  ipopt->Options()->SetStringValue("jac_c_constant", "yes");
  ipopt->Options()->SetNumericValue("bound_relax_factor", 0.0);
  // Energies are in units of RT: 1e-10 is 1e-6 J/mol for each of 100 variables.
  ipopt->Options()->SetNumericValue("tol", 1e-10);
  for (const auto& [name, number] : settings)
    ipopt->Options()->SetNumericValue(name, number);
  Answer answer;
  if (ipopt->Initialize("") != Ipopt::Solve_Succeeded) {
    answer.said = "does not start";
    return answer;
  }
  const auto status = ipopt->OptimizeTNLP(Ipopt::GetRawPtr(program));
  answer.said = verdict(status);
  if (Ipopt::IsValid(ipopt->Statistics()))
    answer.iterations = ipopt->Statistics()->IterationCount();
  if (!program->solution().empty())
    answer.sets = posing.sets(program->solution().data());
  return answer;
}

}  // namespace

Answer ipopt(const Task& task, const Sets& start, Barrier barrier) {
  switch (barrier) {
    case Barrier::low:
      return run(task, start,
                 {{"mu_init", 1e-5}, {"bound_push", 1e-8}, {"bound_frac", 1e-8}});
    case Barrier::lowest:
      return run(task, start,
                 {{"mu_init", 1e-9}, {"bound_push", 1e-14}, {"bound_frac", 1e-14}});
    case Barrier::standard:
      break;
  }
  return run(task, start, {});
}

Answer ipopt_random(const Task& task, unsigned starts) {
  Answer best;
  double lowest = std::numeric_limits<double>::infinity();
  int iterations = 0;
  for (unsigned seed = 1; seed <= starts; ++seed) {
    Answer answer = ipopt(task, random_start(task, seed), Barrier::low);
    iterations += answer.iterations;
    const Outcome outcome = judge(task, answer);
    if (outcome.balance > 1e-6 || !(outcome.gap < lowest)) continue;
    lowest = outcome.gap;
    best = std::move(answer);
  }
  best.iterations = iterations;
  return best;
}

std::string ipopt_version() { return IPOPT_VERSION; }

}  // namespace gibbsteel::contest
