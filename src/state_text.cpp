/// How a State prints; see state.hpp.

#include <algorithm>
#include <cmath>

#include "gibbsteel/state.hpp"
#include "internal/liquid_share.hpp"
#include "internal/number_format.hpp"
#include "internal/other_kinds.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;
using internal::fixed_or;

constexpr std::size_t kWidth = 78;
constexpr const char* kNotKnown = "n/a";

/// "austenite + ferrite" when the matrix is not austenite alone; empty otherwise.
std::string unusual_matrix(const State& state) {
  std::string text;
  const auto phases = state.matrix_phases();
  for (const Occurrence& o : phases) text += (text.empty() ? "" : " + ") + o.name;
  return phases.size() == 1 && phases[0].name == "austenite" ? "" : text;
}

std::string amounts_table(const State& state) {
  std::vector<std::vector<std::string>> rows{{"", "vol%", "mass%"}};
  for (const Occurrence& o : state.occurrences)
    rows.push_back(
        {o.name, fixed_or(o.volume_percent, 2, kNotKnown), fixed(o.mass_percent, 2)});
  rows.push_back({"all carbides", fixed_or(state.carbide_volume_percent, 2, kNotKnown),
                  fixed(state.carbide_mass_percent, 2)});
  return internal::text_table(rows);
}

std::string composition_table(const State& state) {
  std::vector<std::vector<std::string>> rows{{"weight percent in"}};
  for (const auto& [symbol, percent] : state.occurrences.front().weight_percent)
    rows[0].push_back(symbol);
  if (!state.matrix_phases().empty())
    rows.push_back(internal::composition_row("matrix", state.matrix.weight_percent));
  if (state.matrix_phases().size() > 1)
    for (const Occurrence& o : state.matrix_phases())
      rows.push_back(internal::composition_row("  " + o.name, o.weight_percent));
  for (const Occurrence& o : state.carbides())
    rows.push_back(internal::composition_row(o.name, o.weight_percent));
  for (const Occurrence& o : state.occurrences)
    if (o.role == Role::other)
      rows.push_back(internal::composition_row(o.name, o.weight_percent));
  return internal::text_table(rows);
}

std::string warnings_text(const State& state) {
  std::string text;
  for (const Warning& warning : state.warnings)
    text += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text;
}

}  // namespace

std::string State::brief() const {
  if (!usable()) return internal::heading(*this) + ": " + solve_report.brief();
  if (internal::liquid_share(*this).nothing_else)
    return internal::heading(*this) + ", " + internal::condition(*this) + ": molten";
  const bool by_mass = std::isnan(carbide_volume_percent);
  std::string text = internal::heading(*this) + ", " + internal::condition(*this) +
                     ": " +
                     (by_mass ? fixed(carbide_mass_percent, 1) + " wt%"
                              : fixed(carbide_volume_percent, 1) + " vol%") +
                     " carbide";
  std::string amounts;
  for (const Occurrence& o : carbides())
    amounts += (amounts.empty() ? "" : ", ") + o.name + " " +
               fixed(by_mass ? o.mass_percent : o.volume_percent, 1);
  if (!amounts.empty()) text += " (" + amounts + ")";
  text += internal::others_text(*this);
  if (matrix_phases().empty()) return text + ", no matrix phase";
  text += ", matrix " + fixed(matrix.weight_percent["C"], 2) + " wt% C";
  const std::string unusual = unusual_matrix(*this);
  return unusual.empty() ? text : text + "; matrix is " + unusual;
}

std::string State::full() const {
  const std::string top =
      internal::heading(*this) + ", " + internal::condition(*this) + "\n" +
      internal::analysis_text(*this) +
      internal::wrapped("parameters: " + parameters + ", " + parameters_hash, kWidth,
                        2);
  const std::string end =
      warnings_text(*this) + internal::wrapped(internal::caution_of(*this), kWidth, 0);
  if (!usable()) return solve_report.brief() + "\n" + top + end;
  std::string text =
      top + internal::wrapped(internal::solution_sentence(*this), kWidth, 2) +
      internal::basis_text(*this) + "\n" + amounts_table(*this) + "\n" +
      composition_table(*this) + internal::last_digits_text(!warnings.empty()) + "\n";
  if (!std::isnan(carbon_activity))
    text += "carbon activity (graphite = 1): " + fixed(carbon_activity, 3) + "\n";
  if (!std::isnan(density)) text += "density: " + fixed(density, 3) + " g/cm3\n";
  return text + "\n" + end;
}

}  // namespace gibbsteel
