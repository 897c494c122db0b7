#include "internal/result_text.hpp"

#include <algorithm>
#include <cmath>

#include "internal/number_format.hpp"
#include "internal/text_table.hpp"
#include "short_soak/soak_time.hpp"

namespace gibbsteel::internal {

std::string analysis_text(const State& state) { return analysis_text(state.analysis); }

std::string analysis_text(const MillAnalysis& analysis) {
  constexpr std::size_t kWidth = 78;
  std::string text = wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2);
  std::string bound;
  for (const BoundCompound& compound : analysis.bound)
    bound += (bound.empty() ? "" : ", ") + compound.name + " " +
             significant(compound.weight_percent, 2);
  return bound.empty() ? text : text + "bound: " + bound + " wt%\n";
}

std::string basis_sentence(const State& state) {
  return state.basis == VolumeBasis::room ? "volumes at room temperature, austenite "
                                            "counted as untempered martensite"
                                          : "volumes at soak temperature";
}

std::string basis_text(const State& state) { return basis_sentence(state) + "\n"; }

std::string celsius_and_fahrenheit(Temperature t) {
  return fixed(t.in_celsius(), 0) + " C (" + fixed(t.in_fahrenheit(), 0) + " F)";
}

std::string heading(const State& state) {
  const std::string name = state.steel.empty() ? "steel" : state.steel;
  return name + " at " + celsius_and_fahrenheit(state.temperature);
}

std::string last_digits_sentence(bool warned) {
  const std::string text = "Last digits are for comparing heats, not accuracy";
  return text + (warned ? ": see the warnings." : ".");
}

std::string last_digits_text(bool warned) {
  return last_digits_sentence(warned) + "\n";
}

std::string condition(const State& state) {
  switch (state.solve_report.status) {
    case SolveStatus::measured:
      return "short soak with measured carbide";
    case SolveStatus::short_soak_limit:
      return "short-soak limit";
    case SolveStatus::timed_soak:
      return state.soak_time ? "timed soak of " + minutes_text(state.soak_time->minutes)
                             : "timed soak";
    default:
      return "long-hold limit";
  }
}

std::string conditions(const std::vector<const State*>& states) {
  std::vector<std::string> all;
  for (const State* state : states)
    if (const auto one = condition(*state);
        std::find(all.begin(), all.end(), one) == all.end())
      all.push_back(one);
  std::string text;
  for (const std::string& one : all) text += (text.empty() ? "" : " and ") + one;
  return text;
}

std::string limit_sentence(const State& state) {
  return state.solve_report.by_mass_balance()
             ? condition(state) + ", matrix by mass balance"
             : "long-hold limit (true equilibrium)";
}

std::string caution_of(const State& state) {
  switch (state.solve_report.status) {
    case SolveStatus::measured:
      return kMeasuredCaution;
    case SolveStatus::short_soak_limit:
      return kShortSoakCaution;
    case SolveStatus::timed_soak:
      return kTimedSoakCaution;
    default:
      return kCaution;
  }
}

std::vector<std::string> composition_row(const std::string& label,
                                         const NamedValues& weight_percent) {
  std::vector<std::string> row{label};
  for (const auto& [symbol, percent] : weight_percent)
    row.push_back(fixed(percent, symbol == "C" ? 3 : 2));
  return row;
}

std::string solution_sentence(const State& state) {
  if (state.solve_report.by_mass_balance())
    return "solution: " + state.solve_report.reason;
  const std::string* nearest = nullptr;
  double force = 0.0;
  for (const auto& entry : state.driving_force) {
    const bool present =
        std::any_of(state.occurrences.begin(), state.occurrences.end(),
                    [&](const Occurrence& o) { return o.kind == entry.first; });
    if (present || (nearest && entry.second <= force)) continue;
    nearest = &entry.first;
    force = entry.second;
  }
  const std::string text = "solution: converged, every absent phase checked; ";
  if (!nearest) return text + "no other phase can form";
  return text + "nearest: " + *nearest + ", " +
         fixed(std::abs(force), force > -10.0 ? 1 : 0) + " J/mol of atoms from forming";
}

}  // namespace gibbsteel::internal
