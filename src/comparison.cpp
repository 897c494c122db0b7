#include "gibbsteel/comparison.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/family_borders.hpp"
#include "internal/other_kinds.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_warnings.hpp"

namespace gibbsteel {
namespace {

/// Distinct names over all states, in order of first appearance.
template <class Names>
std::vector<std::string> distinct(std::span<const State> states, Names names_of) {
  std::vector<std::string> all;
  for (const State& state : states)
    for (const std::string& name : names_of(state))
      if (std::find(all.begin(), all.end(), name) == all.end()) all.push_back(name);
  return all;
}

std::vector<std::string> carbide_kinds(const State& state) {
  std::vector<std::string> kinds;
  for (const Occurrence& o : state.carbides()) kinds.push_back(o.kind);
  return kinds;
}

/// Alloying elements of the matrix: iron is the balance.
std::vector<std::string> matrix_elements(const State& state) {
  std::vector<std::string> symbols;
  for (const auto& [symbol, percent] : state.matrix.weight_percent)
    if (symbol != "Fe") symbols.push_back(symbol);
  return symbols;
}

/// Unlike quantities::matrix(), no error but NaN for an element that a state left out.
Quantity matrix_of(const std::string& symbol) {
  const Quantity known = quantities::matrix(symbol);
  return {known.name(), known.unit(), [symbol, known](const State& state) {
            return state.analysis.not_modelled.contains(symbol) ? Occurrence::kUnknown
                                                                : known.value(state);
          }};
}

/// Unlike quantities::volume_percent(), 0 also for a kind that a state's parameter set
/// does not know: states of different sets may stand side by side.
Quantity volume_of(const std::string& kind) {
  return {kind, "vol%", [kind](const State& state) {
            double sum = 0.0;
            for (const Occurrence& o : state.occurrences)
              if (o.kind == kind) sum += o.volume_percent;
            return sum;
          }};
}

std::vector<Quantity> usual_rows(std::span<const State> states) {
  std::vector<Quantity> rows;
  for (const std::string& kind : distinct(states, carbide_kinds))
    rows.push_back(volume_of(kind));
  rows.push_back(quantities::carbide_volume_percent());
  std::vector<const State*> all;
  for (const State& state : states) all.push_back(&state);
  for (const std::string& kind : internal::other_kinds(all))
    rows.push_back(volume_of(kind));
  for (const std::string& symbol : distinct(states, matrix_elements))
    rows.push_back(matrix_of(symbol));
  rows.push_back(quantities::carbon_activity());
  return rows;
}

ComparisonRow row_of(const Quantity& quantity, std::span<const State> states) {
  ComparisonRow row{quantity.name(), quantity.unit(), {}, {}, {}};
  for (const State& state : states) {
    row.values.push_back(quantity.value(state));
    if (!quantity.has_band()) continue;
    const Quantity::Ends ends = quantity.band(state);
    row.low.push_back(ends.low);
    row.high.push_back(ends.high);
  }
  return row;
}

void require_some(bool some, const char* what, const char* remedy) {
  if (!some) throw InputError({{"gibbsteel.input.267", what, "is empty", remedy}});
}

}  // namespace

std::string ComparisonRow::label() const {
  return unit.empty() ? name : name + " [" + unit + "]";
}

const ComparisonRow& Comparison::row(std::string_view name) const {
  std::string present;
  for (const ComparisonRow& row : rows) {
    if (row.name == name) return row;
    present += (present.empty() ? "" : ", ") + row.name;
  }
  throw InputError(
      {{"gibbsteel.input.209", "comparison",
        "there is no '" + std::string(name) + "' in it", "present: " + present}});
}

std::vector<Warning> Comparison::warnings_of(std::size_t i) const {
  const State& state = states[i];
  std::vector<Warning> all = state.warnings;
  if (i < of_quantities.size())
    for (const Warning& warning : of_quantities[i])
      internal::add_distinct(warning, all);
  if (!by_family || !state.usable()) return all;
  internal::add_distinct(internal::near_border(state.analysis.modelled), all);
  std::vector<const NamedValues*> steels;
  for (const State& one : states)
    if (one.usable()) steels.push_back(&one.analysis.modelled);
  internal::add_distinct(internal::several_families(steels), all);
  return all;
}

std::vector<Warning> Comparison::warnings() const {
  std::vector<Warning> all;
  for (std::size_t i = 0; i < states.size(); ++i)
    for (const Warning& warning : warnings_of(i)) internal::add_distinct(warning, all);
  return all;
}

Comparison compare(std::span<const State> states, std::span<const Quantity> more) {
  require_some(!states.empty(), "states", "give at least one state");
  Comparison result;
  result.states.assign(states.begin(), states.end());
  std::vector<Quantity> rows = usual_rows(states);
  rows.insert(rows.end(), more.begin(), more.end());
  result.by_family = std::any_of(rows.begin(), rows.end(),
                                 [](const auto& q) { return q.by_family(); });
  for (const Quantity& quantity : rows) {
    result.rows.push_back(row_of(quantity, states));
  }
  for (const State& state : states) {
    result.of_quantities.emplace_back();
    for (const Quantity& quantity : rows)
      internal::add_warnings(quantity, state, result.of_quantities.back());
  }
  return result;
}

Comparison compare(std::span<const Steel> steels,
                   std::span<const Temperature> temperatures,
                   std::span<const Quantity> more, const SoakOptions& options) {
  require_some(!steels.empty(), "steels", "give at least one steel");
  require_some(!temperatures.empty(), "temperatures", "give at least one temperature");
  for (const Steel& steel : steels) internal::require_known(more, *steel.parameters());
  std::vector<State> states;
  for (const Steel& steel : steels)
    for (State& state : steel.sweep(temperatures, options).states)
      states.push_back(std::move(state));
  Comparison result = compare(states, more);
  result.temperature_unit = options.temperature_unit;
  return result;
}

}  // namespace gibbsteel
