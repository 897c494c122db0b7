#include "gibbsteel/matching_temperature.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/family_borders.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/result_text.hpp"
#include "internal/temperature_search.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;

/// Of a reference whose counterpart in the search is a long hold.
bool is_short_soak(const MatchingTemperature& match) {
  return match.reference.solve_report.by_mass_balance() &&
         internal::long_hold_mark(match.search.quantity).empty();
}

/// "heat 7 at 1120 C (C in the matrix 0.4605 wt%)"; names the parameters of the
/// reference when the search has others, and what a mass balance is.
std::string reference_text(const MatchingTemperature& match) {
  const State& state = match.reference;
  const std::string unit = match.search.unit.empty() ? "" : " " + match.search.unit;
  return (state.steel.empty() ? "steel" : state.steel) + " at " +
         internal::degrees(state.temperature, match.search.temperature_unit) +
         (is_short_soak(match) ? ", " + internal::condition(state) : "") + " (" +
         match.search.quantity + " " + internal::significant(match.value, 4) + unit +
         (state.parameters == match.search.parameters
              ? ""
              : "; made with " + state.parameters) +
         ")";
}

std::optional<Warning> two_families(const MatchingTemperature& match) {
  if (!match.search.by_family) return {};
  return internal::several_families(
      {&match.reference.analysis.modelled, &match.search.analysis.modelled});
}

/// The same numbers move the reference. Not known unless its soak, made again with the
/// numbers of the other steel, has its value.
Eigen::VectorXd scatter_of(const State& reference, const Steel& other,
                           const Quantity& quantity, const SoakOptions& soak,
                           const internal::FileScatter& scatter) {
  constexpr double kSame = 1e-6;  // relative
  const bool by_the_file = reference.parameters_hash == other.parameters_hash() &&
                           !reference.solve_report.by_mass_balance();
  if (!by_the_file) return scatter.unknown();
  const Steel steel(reference.analysis.given, {reference.steel, other.parameters(),
                                               other.binds_tramp_elements()});
  SoakOptions options = soak;
  options.basis = reference.basis;
  const internal::SoakProblem problem(steel, options);
  const Equilibrium result = problem.solve_unproven(reference.temperature);
  const State again = problem.state_of(result);
  const double value = quantity.value(reference);
  const bool same = std::abs(quantity.value(again) - value) <= kSame * std::abs(value);
  return same ? scatter.slopes(problem, result, again, quantity).scatters
              : scatter.unknown();
}

}  // namespace

MatchingTemperature matching_temperature(const State& reference, const Steel& other,
                                         const Quantity& quantity,
                                         const TemperatureRange& range,
                                         const SoakOptions& soak,
                                         const SearchOptions& search) {
  internal::require_known({&quantity, 1}, *other.parameters());
  const double value = quantity.value(reference);
  if (!std::isfinite(value))
    throw InputError(
        {{"gibbsteel.input.253", "reference",
          reference.usable()
              ? "the quantity '" + quantity.name() + "' has no value there"
              : "the state is not usable: " + reference.solve_report.reason,
          reference.usable()
              ? "choose a soak that has it, or another quantity"
              : "choose a soak with a usable result, or another quantity"}});
  const auto target = [&](const internal::FileScatter& scatter) {
    return scatter_of(reference, other, quantity, soak, scatter);
  };
  return {reference, value,
          internal::search_temperatures(other, quantity, value, range, soak, search,
                                        target)};
}

std::vector<Warning> MatchingTemperature::warnings() const {
  std::vector<Warning> all = reference.warnings;
  for (const Warning& warning : search.warnings()) internal::add_distinct(warning, all);
  internal::add_distinct(two_families(*this), all);
  return all;
}

std::string MatchingTemperature::brief() const {
  return "as " + reference_text(*this) + ": " + search.brief();
}

std::string MatchingTemperature::full() const {
  std::string text = "reference: " + reference_text(*this) + "\n";
  if (is_short_soak(*this)) {
    const bool timed = reference.solve_report.status == SolveStatus::timed_soak;
    text += internal::wrapped(
        "The reference is a short soak, the temperature found is for a long hold: a "
        "soak of minutes needs a hotter one. quantities." +
            std::string(timed ? "timed" : "short") +
            "_soak_matrix compares like with like.",
        kWidth, 0);
  }
  for (const Warning& warning : reference.warnings)
    text += internal::wrapped("! reference: [" + warning.code + "] " + warning.text,
                              kWidth, 2);
  if (const auto warning = two_families(*this))
    text += internal::wrapped("! [" + warning->code + "] " + warning->text, kWidth, 2);
  return text + search.full();
}

}  // namespace gibbsteel
