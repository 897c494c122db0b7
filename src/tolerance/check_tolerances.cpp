#include "tolerance/check_tolerances.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"
#include "internal/soak_problem.hpp"
#include "tolerance/input_distribution.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kFurnaceLimit = 200.0;     // [C]
constexpr double kSegregationLimit = 90.0;  // [percent]
constexpr double kRounding = 1e-9;          // [weight percent]
// Fewer say nothing about a spread.
constexpr std::size_t kFewestSamples = 8, kMostSamples = 1'000'000;

using Problems = std::vector<Problem>;

bool check_symbol(const std::string& symbol, const std::string& place,
                  std::set<std::string>& seen, Problems& problems) {
  if (!find_element(symbol)) {
    const auto meant = suggest_element(symbol);
    problems.push_back({"gibbsteel.input.201", place,
                        "'" + symbol + "' is not the symbol of an element",
                        meant.empty() ? "give symbols such as C, Cr, Mo"
                                      : "did you mean '" + std::string(meant) + "'?"});
  } else if (symbol == "Fe") {
    problems.push_back({"gibbsteel.input.273", place, "Fe is the balance",
                        "give the tolerances of the other elements only"});
  } else if (!seen.insert(symbol).second) {
    problems.push_back({"gibbsteel.input.271", place, symbol + " is given twice",
                        "give it one range or one standard deviation"});
  } else {
    return true;
  }
  return false;
}

void check_range(const ElementLimits& limits, double nominal, Problems& problems) {
  const auto& [symbol, low, high] = limits;
  const std::string place = "ranges, " + symbol;
  const std::string text = shortest(low) + " to " + shortest(high) + " wt%";
  if (!(low >= 0.0 && low <= high && high <= 100.0))
    problems.push_back({"gibbsteel.input.270", place, "is " + text,
                        "give (lowest, highest) within 0 to 100 weight percent"});
  else if (nominal < low || nominal > high)
    problems.push_back({"gibbsteel.input.272", place,
                        "is " + text + ", and the steel has " + shortest(nominal),
                        "give a range that holds the steel, or a steel that is within "
                        "the range"});
}

void check_elements(const NamedValues& given, const HeatTolerances& tolerances,
                    Problems& problems) {
  std::set<std::string> seen;
  for (const ElementLimits& limits : tolerances.ranges)
    if (check_symbol(limits.symbol, "ranges", seen, problems))
      check_range(limits, given[limits.symbol], problems);
  for (const auto& [symbol, deviation] : tolerances.standard_deviations)
    if (check_symbol(symbol, "standard_deviations", seen, problems) &&
        !(deviation > 0.0 && deviation <= 100.0))
      problems.push_back({"gibbsteel.input.274", "standard_deviations, " + symbol,
                          "is " + shortest(deviation),
                          "give weight percent above 0, at most 100"});
}

void check_bound(const char* place, double value, double limit, const char* unit,
                 Problems& problems) {
  if (value >= 0.0 && value <= limit) return;
  problems.push_back({"gibbsteel.input.275", place, "is " + shortest(value),
                      "give 0 to " + shortest(limit) + " " + unit});
}

/// Nothing may push the sum above 100 weight percent in any sample.
void check_sum(const Steel& steel, Temperature t, const HeatTolerances& tolerances,
               Problems& problems) {
  NamedValues highest;
  for (const auto& [symbol, percent] : steel.analysis().given)
    if (symbol != "Fe") highest.set(symbol, percent);
  for (const TolerancedInput& input : inputs_of(steel, t, tolerances))
    if (input.unit == "wt%") highest.set(input.name, quantile_of(input, 1.0));
  const double sum = highest.sum() * (1.0 + tolerances.segregation_percent / 100.0);
  if (sum > 100.0 + kRounding)
    problems.push_back({"gibbsteel.input.278", "tolerances",
                        "let the elements sum to " + fixed(sum, 2) + " weight percent",
                        "narrow them: the sum with every element at its highest cannot "
                        "be above 100"});
}

}  // namespace

void check_sampling(std::size_t samples, const std::vector<double>& percentiles,
                    Problems& problems) {
  if (samples > kMostSamples || (samples > 0 && samples < kFewestSamples))
    problems.push_back({"gibbsteel.input.276", "samples",
                        "is " + std::to_string(samples),
                        "give 0 for none, or " + std::to_string(kFewestSamples) +
                            " to " + std::to_string(kMostSamples)});
  double below = 0.0;
  for (const double percent : percentiles) {
    if (!(percent > below && percent < 100.0)) {
      problems.push_back({"gibbsteel.input.276", "percentiles",
                          "holds " + shortest(percent),
                          "give ascending numbers between 0 and 100"});
      return;
    }
    below = percent;
  }
}

void check_tolerances(const Steel& steel, Temperature t,
                      const HeatTolerances& tolerances,
                      const ToleranceOptions& options) {
  Problems problems;
  check_elements(steel.analysis().given, tolerances, problems);
  check_bound("furnace error", tolerances.furnace_error, kFurnaceLimit, "C", problems);
  check_bound("segregation", tolerances.segregation_percent, kSegregationLimit,
              "percent of the alloy content", problems);
  check_sampling(options.samples, options.percentiles, problems);
  if (problems.empty() && inputs_of(steel, t, tolerances).empty())
    problems.push_back({"gibbsteel.input.277", "tolerances", "nothing scatters",
                        "give a range, a standard deviation, a furnace error or a "
                        "segregation"});
  if (problems.empty()) check_sum(steel, t, tolerances, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  const double kelvin = t.in_kelvin(), error = tolerances.furnace_error;
  const Temperature ends[] = {Temperature::kelvin(kelvin - error),
                              Temperature::kelvin(kelvin + error)};
  check_temperatures(std::span(ends).first(error == 0.0 ? 1 : 2));
}

}  // namespace gibbsteel::internal
