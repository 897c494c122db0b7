#pragma once
/// What printed states, sweeps and reports share. A ..._text ends with a line break, a
/// ..._sentence does not.

#include <string>
#include <vector>

#include "gibbsteel/state.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel::internal {

/// The analysis as given and, when there are any, the bound compounds.
std::string analysis_text(const MillAnalysis& analysis);
std::string analysis_text(const State& state);

/// What the volumes refer to.
std::string basis_sentence(const State& state);
std::string basis_text(const State& state);

/// "1120 C (2048 F)"
std::string celsius_and_fahrenheit(Temperature t);

/// "punch heat 7 at 1120 C (2048 F)"
std::string heading(const State& state);

/// What the numbers are: "long-hold limit", "short soak with measured carbide" or
/// "short-soak limit", "timed soak of 30 min".
std::string condition(const State& state);

/// Those of several states, each once: "long-hold limit and timed soak of 30 min".
std::string conditions(const std::vector<const State*>& states);

/// "long-hold limit (true equilibrium)"; where there is none, how the matrix follows.
std::string limit_sentence(const State& state);

/// The caution that fits, see text_table.hpp.
std::string caution_of(const State& state);

/// A label and weight percents, carbon with one digit more.
std::vector<std::string> composition_row(const std::string& label,
                                         const NamedValues& weight_percent);

/// That the solution was checked, and the absent kind that is nearest to forming.
std::string solution_sentence(const State& state);

/// Stands under the tables; points to the warnings when there are any.
std::string last_digits_sentence(bool warned);
std::string last_digits_text(bool warned);

}  // namespace gibbsteel::internal
