/// How a Comparison prints; see comparison.hpp.

#include <algorithm>
#include <cmath>

#include "gibbsteel/comparison.hpp"
#include "internal/error_codes.hpp"
#include "internal/folded_traces.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::degrees;
using internal::fixed;

constexpr std::size_t kWidth = 78;
constexpr std::size_t kColumnsAcross = 7;  ///< states in one table

/// A, B, ..., Z, AA, AB, ...
std::string letters(std::size_t i) {
  const std::string last(1, static_cast<char>('A' + i % 26));
  return i < 26 ? last : letters(i / 26 - 1) + last;
}

std::string name_of(const State& state) {
  return state.steel.empty() ? "steel" : state.steel;
}

/// "A: heat 7 at 1120 C, long-hold limit; 0.55C 4.5Cr, balance Fe"
std::string legend(const Comparison& comparison) {
  std::string text;
  for (std::size_t i = 0; i < comparison.states.size(); ++i) {
    const State& state = comparison.states[i];
    std::string line = letters(i) + ": " + name_of(state) + " at " +
                       degrees(state.temperature, comparison.temperature_unit) + ", ";
    line += !state.usable() ? state.solve_report.brief() : internal::condition(state);
    text += internal::wrapped(line + "; " + state.analysis.brief(), kWidth, 3);
  }
  return text;
}

std::string number(const ComparisonRow& row, double value) {
  if (std::isnan(value)) return "n/a";
  if (row.unit == "vol%" && value == 0.0) return "-";
  const bool fine = row.unit.empty() || row.name == "C in the matrix";
  const bool coarse = row.unit == "C" || row.unit == "HV";
  return fixed(value, coarse ? 0 : (fine ? 3 : 2));
}

std::string table(const Comparison& comparison, std::size_t from) {
  const std::size_t to = std::min(from + kColumnsAcross, comparison.states.size());
  std::vector<std::vector<std::string>> rows{{""}};
  for (std::size_t i = from; i < to; ++i) rows[0].push_back(letters(i));
  for (const ComparisonRow& row : comparison.rows) {
    rows.push_back({row.label()});
    for (std::size_t i = from; i < to; ++i)
      rows.back().push_back(number(row, row.values[i]));
  }
  return internal::text_table(rows);
}

/// Parameter sets of the states, each once.
std::string sets(const Comparison& comparison) {
  std::string text;
  for (const State& state : comparison.states)
    if (text.find(state.parameters) == std::string::npos)
      text += (text.empty() ? "parameters: " : "; ") + state.parameters;
  return internal::wrapped(text, kWidth, 2);
}

/// A warning and the states that carry it.
using Carried = std::pair<Warning, std::vector<std::size_t>>;

std::vector<Carried> carried_warnings(const Comparison& comparison) {
  std::vector<Carried> all;
  for (std::size_t i = 0; i < comparison.states.size(); ++i)
    for (const Warning& warning : comparison.warnings_of(i)) {
      const auto known = std::find_if(all.begin(), all.end(), [&](const auto& entry) {
        return entry.first == warning;
      });
      if (known == all.end())
        all.emplace_back(warning, std::vector{i});
      else
        known->second.push_back(i);
    }
  return all;
}

bool tells_of_traces(const Carried& carried) {
  return carried.first.code == codes::kLeftOut;
}

/// Traces differ from heat to heat: one line at the end stands for all of them.
void fold_traces(const Comparison& comparison, std::vector<Carried>& all) {
  if (std::count_if(all.begin(), all.end(), tells_of_traces) < 2) return;
  std::vector<std::size_t> who;
  for (const Carried& carried : all)
    if (tells_of_traces(carried))
      who.insert(who.end(), carried.second.begin(), carried.second.end());
  std::sort(who.begin(), who.end());
  std::vector<const MillAnalysis*> analyses;
  for (const std::size_t i : who) analyses.push_back(&comparison.states[i].analysis);
  std::erase_if(all, tells_of_traces);
  all.emplace_back(internal::folded_traces(analyses), std::move(who));
}

/// Every distinct warning with the letters of the states that carry it.
std::string warnings_text(const Comparison& comparison) {
  std::vector<Carried> all = carried_warnings(comparison);
  fold_traces(comparison, all);
  std::string text;
  for (const auto& [warning, states] : all) {
    std::string who;
    for (const std::size_t i : states) who += (who.empty() ? "" : ", ") + letters(i);
    text += internal::wrapped("! " + who + ": [" + warning.code + "] " + warning.text,
                              kWidth, 2);
  }
  return text;
}

}  // namespace

std::string Comparison::brief() const {
  const bool one_condition =
      std::all_of(states.begin(), states.end(), [&](const State& state) {
        return internal::condition(state) == internal::condition(states.front());
      });
  std::string text = "comparison of " + std::to_string(states.size()) + " states";
  if (one_condition && !states.empty())
    text += ", " + internal::condition(states.front());
  for (std::size_t i = 0; i < states.size(); ++i) {
    text += (i == 0 ? ": " : ", ") + name_of(states[i]) + " at " +
            degrees(states[i].temperature, temperature_unit);
    if (!one_condition) text += " (" + internal::condition(states[i]) + ")";
  }
  return text;
}

std::string Comparison::full() const {
  std::string text = legend(*this) + sets(*this);
  if (!states.empty()) text += internal::basis_text(states.front());
  for (std::size_t from = 0; from < states.size(); from += kColumnsAcross)
    text += "\n" + table(*this, from);
  const std::string warned = warnings_text(*this);
  text += internal::last_digits_text(!warned.empty()) + "\n" + warned;
  std::vector<std::string> told;
  for (const State& state : states) {
    const std::string caution = internal::caution_of(state);
    if (std::find(told.begin(), told.end(), caution) != told.end()) continue;
    told.push_back(caution);
    text += internal::wrapped(caution, kWidth, 0);
  }
  return text;
}

}  // namespace gibbsteel
