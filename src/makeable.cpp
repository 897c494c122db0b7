#include "gibbsteel/makeable.hpp"

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel {
namespace {

constexpr double kLargestStep = 10.0;  ///< [wt%]; above is a slip of the decimal point

void check(const MakeableSteps& steps) {
  std::vector<Problem> problems;
  const auto require = [&](const std::string& place, double step) {
    if (!(step > 0.0 && step <= kLargestStep))
      problems.push_back({"gibbsteel.input.261", place,
                          "is " + internal::shortest(step),
                          "give a step above 0, at most 10 wt%"});
  };
  for (const auto& [symbol, step] : steps.steps) require("steps, " + symbol, step);
  require("steps, others", steps.others);
  if (!problems.empty()) throw InputError(std::move(problems));
}

/// The decimal number nearest to a multiple of the step: 0.55, not 0.55000000000000004.
double rounded(double value, double step) {
  constexpr double kDigits = 1e9;
  return std::round(std::round(value / step) * step * kDigits) / kDigits;
}

}  // namespace

MakeableSteps MakeableSteps::none() {
  MakeableSteps steps;
  steps.round = false;
  return steps;
}

NamedValues to_makeable(const NamedValues& weight_percent, const MakeableSteps& steps) {
  check(steps);
  NamedValues result;
  for (const auto& [symbol, percent] : weight_percent) {
    if (symbol == "Fe") continue;
    const double step =
        steps.steps.contains(symbol) ? steps.steps[symbol] : steps.others;
    const double value = steps.round ? rounded(percent, step) : percent;
    if (value > 0.0) result.set(symbol, value);
  }
  return result;
}

}  // namespace gibbsteel
