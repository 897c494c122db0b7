/// How a Comparison prints; see comparison.hpp.

#include <algorithm>
#include <cmath>

#include "gibbsteel/comparison.hpp"
#include "internal/error_codes.hpp"
#include "internal/folded_traces.hpp"
#include "internal/hardening_warnings.hpp"
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
    const auto add = [&](const std::string& label, const std::vector<double>& values) {
      rows.push_back({label});
      for (std::size_t i = from; i < to; ++i)
        rows.back().push_back(number(row, values[i]));
    };
    add(row.label(), row.values);
    if (!row.has_band()) continue;
    add("  low", row.low);
    add("  high", row.high);
  }
  return internal::text_table(rows);
}

std::string bands_text(const Comparison& comparison) {
  internal::BandsShown shown;
  for (const ComparisonRow& row : comparison.rows) {
    if (!row.has_band()) continue;
    const bool is_grain_limit = row.unit == "um";
    shown.grain_limit |= is_grain_limit;
    shown.measured |= !is_grain_limit;
    shown.hardness |= row.unit == "HRC" || row.unit == "HV";
  }
  const std::string text = internal::bands_are(shown);
  return text.empty() ? "" : internal::wrapped(text + ".", kWidth, 2);
}

/// A parameter set, and the letters of the states that stand on it.
struct SetInUse {
  std::string title, hash, letters;
};

/// In order of first appearance.
std::vector<SetInUse> sets_in_use(const Comparison& comparison) {
  std::vector<SetInUse> all;
  for (std::size_t i = 0; i < comparison.states.size(); ++i) {
    const State& state = comparison.states[i];
    const auto known = std::find_if(all.begin(), all.end(), [&](const auto& set) {
      return set.title == state.parameters && set.hash == state.parameters_hash;
    });
    if (known == all.end())
      all.push_back({state.parameters, state.parameters_hash, letters(i)});
    else
      known->letters += ", " + letters(i);
  }
  return all;
}

/// With its hash where another set in use has the same title.
std::string title_of(const SetInUse& set, const std::vector<SetInUse>& all) {
  const auto same = std::count_if(all.begin(), all.end(), [&](const auto& other) {
    return other.title == set.title;
  });
  return same > 1 ? set.title + ", " + set.hash : set.title;
}

/// "parameters: ..."; where they differ, one line per set with its states.
std::string sets(const Comparison& comparison) {
  const std::vector<SetInUse> all = sets_in_use(comparison);
  std::string text;
  for (const SetInUse& set : all)
    text += internal::wrapped(
        "parameters" + (all.size() > 1 ? " of " + set.letters : std::string()) + ": " +
            title_of(set, all),
        kWidth, 2);
  return text;
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
  const std::size_t sets = sets_in_use(*this).size();
  if (sets > 1) text += ", " + std::to_string(sets) + " parameter sets";
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
  text += internal::last_digits_text(!warned.empty()) + bands_text(*this) + "\n";
  text += warned;
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
