#include <Eigen/Eigenvalues>
#include <algorithm>
#include <string>

#include "../internal/error_codes.hpp"
#include "../internal/number_format.hpp"
#include "checks.hpp"
#include "expression_text.hpp"
#include "uncertain_numbers.hpp"

namespace gibbsteel::parameter_file {

namespace {

/// Whether this file has the term with a slip in it, which was reported there.
bool has_slip(const Draft& draft, const CoefficientName& name) {
  for (const DraftPhase& phase : draft.phases) {
    if (phase.name != name.phase) continue;
    for (const auto* terms :
         {&phase.energy, &phase.curie_temperature, &phase.magnetic_moment})
      for (const auto& [term, place, sound] : *terms)
        if (!sound && term.on == name.on) return true;
  }
  return false;
}

/// Whether the coefficient is there and has a standard deviation; else reports it.
bool check_name(const Check& check, const CoefficientName& name,
                const std::string& place) {
  if (has_slip(check.draft, name)) return false;
  const TemperatureTerm* found = check.set.find_coefficient(name);
  if (found == nullptr) {
    check.problems.add(codes::kCorrelationUnknown, place,
                       "there is no coefficient " + coefficient_text(name),
                       "write phase, on, order and power as in the term itself");
  } else if (found->standard_deviation == 0.0) {
    check.problems.add(
        codes::kCorrelationWithoutDeviation, place,
        "the coefficient " + coefficient_text(name) + " has no standard deviation",
        "add \"standard_deviations\" to the term");
  }
  return found != nullptr && found->standard_deviation > 0.0;
}

bool check_pairs(const Check& check) {
  const std::size_t before = check.problems.count();
  const auto& added = check.draft.correlations;
  for (std::size_t i = 0; i < added.size() && !check.problems.full(); ++i) {
    const auto& [correlation, place, sound] = added[i];
    if (!sound) continue;
    const bool first = check_name(check, correlation.first, place + "/between/0");
    const bool second = check_name(check, correlation.second, place + "/between/1");
    check_source(check, correlation.provenance, place);
    if (!first || !second) continue;
    const bool itself = correlation.first == correlation.second;
    const bool twice =
        std::any_of(added.begin(), added.begin() + static_cast<std::ptrdiff_t>(i),
                    [&](const Placed<Correlation>& other) {
                      return same_pair(other.value, added[i].value);
                    });
    if (itself || twice)
      check.problems.add(
          codes::kCorrelationTwice, place + "/between",
          itself ? "correlates a coefficient with itself"
                 : "this pair of coefficients is given twice",
          itself ? "give two different coefficients" : "keep one of the two");
  }
  return check.problems.count() == before &&
         std::all_of(added.begin(), added.end(),
                     [](const Placed<Correlation>& placed) { return placed.sound; });
}

/// Every coefficient that a correlation names, once.
std::vector<UncertainNumber> correlated(const ParameterSet& set) {
  std::vector<UncertainNumber> numbers;
  for (const Correlation& correlation : set.correlations)
    for (const CoefficientName* name : {&correlation.first, &correlation.second})
      if (std::none_of(numbers.begin(), numbers.end(),
                       [&](const auto& known) { return known.name == *name; }))
        numbers.push_back({"", 0.0, 1.0, *name});
  return numbers;
}

}  // namespace

void check_correlations(const Check& check) {
  if (check.draft.correlations.empty() || !check.draft.phases_sound) return;
  if (!check_pairs(check)) return;
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(
      correlations_of(check.set, correlated(check.set)), Eigen::EigenvaluesOnly);
  const double smallest = solver.eigenvalues().minCoeff();
  constexpr double kRounding = 1e-9;
  if (smallest >= -kRounding) return;
  check.problems.add(
      codes::kCorrelationsImpossible, "/correlations",
      "no numbers can be correlated like this together (smallest eigenvalue of the "
      "matrix: " +
          internal::significant(smallest, 3) + ")",
      "give the correlations that one fit had; smaller coefficients are safe");
}

}  // namespace gibbsteel::parameter_file
