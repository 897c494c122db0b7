#include "designer/design_checks.hpp"

#include <cmath>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/soak_problem.hpp"

namespace gibbsteel::internal {
namespace {

using Problems = std::vector<Problem>;

const char* const kCode = "gibbsteel.input.269";

void check_symbol(const Steel& start, const std::string& symbol, Problems& out) {
  const auto bad = [&](const std::string& what) {
    out.push_back({kCode, "elements", what,
                   "choose elements that the parameter file models, other than Fe"});
  };
  if (!find_element(symbol))
    bad("'" + symbol + "' is not the symbol of an element");
  else if (symbol == "Fe")
    bad("Fe is the balance of all others");
  else if (!start.parameters()->find_element(symbol))
    bad(symbol + " is not modelled by the parameter file");
}

void check_elements(const Steel& start, const std::vector<DesignElement>& elements,
                    Problems& out) {
  if (elements.empty())
    out.push_back({kCode, "elements", "is empty", "give at least one with its bounds"});
  for (std::size_t i = 0; i < elements.size(); ++i) {
    const auto& [symbol, range] = elements[i];
    check_symbol(start, symbol, out);
    for (std::size_t j = 0; j < i; ++j)
      if (elements[j].symbol == symbol)
        out.push_back({kCode, "elements, " + symbol, "is given twice", "give it once"});
    if (!(range.low >= 0.0 && range.low < range.high && range.high <= 100.0))
      out.push_back(
          {kCode, "elements, " + symbol,
           "goes from " + shortest(range.low) + " to " + shortest(range.high) + " wt%",
           "give 0 to 100, the lower number first"});
  }
}

/// At the upper bounds something must be left for iron.
void check_sum(const Steel& start, const std::vector<DesignElement>& elements,
               Problems& out) {
  NamedValues most;
  for (const auto& [symbol, percent] : start.analysis().given)
    if (symbol != "Fe") most.set(symbol, percent);
  for (const DesignElement& e : elements) most.set(e.symbol, e.range.high);
  if (!(most.sum() < 100.0))
    out.push_back({kCode, "elements",
                   "reach " + fixed(most.sum(), 2) + " wt% at their upper bounds",
                   "leave something for Fe, the balance"});
}

/// Limits may be kept exactly; what shall be equal may not.
bool is_tolerance(const DesignTarget& target) {
  const bool some = target.sense == TargetSense::equal ? target.tolerance > 0.0
                                                       : target.tolerance >= 0.0;
  return some && std::isfinite(target.tolerance);
}

void check_targets(const std::vector<DesignTarget>& targets, const ParameterSet& set,
                   Problems& out) {
  if (targets.empty())
    out.push_back({kCode, "targets", "is empty", "give at least one"});
  for (const DesignTarget& target : targets) {
    const std::string place = "targets, " + target.quantity.name();
    for (Problem& problem : target.quantity.problems(set))
      out.push_back(std::move(problem));
    if (!std::isfinite(target.wanted))
      out.push_back({kCode, place, "wants " + shortest(target.wanted),
                     "give the number that it shall be"});
    else
      check_wish(target.quantity, target.wanted, place, out);
    if (!is_tolerance(target))
      out.push_back({kCode, place, "has a tolerance of " + shortest(target.tolerance),
                     target.sense == TargetSense::equal
                         ? "give a number above 0 in the unit of the quantity"
                         : "give 0 or a number above it in the unit of the quantity"});
  }
}

void check_options(const DesignOptions& options, Problems& out) {
  const auto require = [&](int value, int low, int high, const char* place) {
    if (value < low || value > high)
      out.push_back({kCode, place, "is " + std::to_string(value),
                     "give " + std::to_string(low) + " to " + std::to_string(high)});
  };
  require(options.starts, 0, 1000, "starts");
  require(options.candidates, 0, 100000, "candidates");
  require(options.most_steps, 5, 100000, "most_steps");
}

}  // namespace

void check_design(const Steel& start, const std::vector<DesignElement>& elements,
                  const std::vector<DesignTarget>& targets,
                  const DesignOptions& options) {
  Problems problems;
  check_elements(start, elements, problems);
  if (problems.empty()) check_sum(start, elements, problems);
  check_targets(targets, *start.parameters(), problems);
  check_options(options, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  std::vector<Temperature> temperatures;
  for (const DesignTarget& target : targets) temperatures.push_back(target.temperature);
  check_temperatures(temperatures);
}

}  // namespace gibbsteel::internal
