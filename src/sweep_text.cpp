#include "internal/sweep_text.hpp"

#include <algorithm>

#include "internal/distinct_warnings.hpp"
#include "internal/liquid_share.hpp"
#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel::internal {
namespace {

/// True when the matrix holds something besides austenite.
bool has_ferrite(const State* state) {
  for (const Occurrence& o : state->matrix_phases())
    if (o.kind != "austenite") return true;
  return false;
}

bool holds_liquid(const State* state) { return liquid_share(*state).percent > 0.0; }

}  // namespace

std::vector<std::string> matrix_elements(const Sweep& sweep) {
  for (const State& state : sweep.states) {
    // A molten steel has no matrix.
    if (!state.usable() || state.matrix.weight_percent.empty()) continue;
    std::vector<std::string> symbols;
    for (const auto& [symbol, percent] : state.matrix.weight_percent)
      if (symbol != "Fe") symbols.push_back(symbol);
    return symbols;
  }
  return {};
}

States states_of(const Sweep& sweep) {
  States states;
  for (const State& state : sweep.states) states.push_back(&state);
  return states;
}

std::vector<std::string> matrix_cells(const State& state,
                                      const std::vector<std::string>& symbols) {
  const NamedValues& percents = state.matrix.weight_percent;
  std::vector<std::string> cells;
  for (const auto& symbol : symbols)
    cells.push_back(percents.empty() ? "-"
                                     : fixed(percents[symbol], symbol == "C" ? 3 : 2));
  cells.push_back(std::string(has_ferrite(&state) ? "f" : "") +
                  (holds_liquid(&state) ? "l" : ""));
  return cells;
}

std::vector<std::string> legend_of_marks(const States& states) {
  std::vector<std::string> lines;
  if (std::any_of(states.begin(), states.end(), has_ferrite))
    lines.push_back("f: the matrix is not austenite alone");
  if (std::any_of(states.begin(), states.end(), holds_liquid))
    lines.push_back("l: partly or wholly molten");
  return lines;
}

std::vector<std::string> temperature_cells(Temperature t, TemperatureUnit unit) {
  std::vector<std::string> cells{fixed(t.in_celsius(), 0)};
  if (unit != TemperatureUnit::celsius)
    cells.insert(cells.begin(), fixed(in_unit(t, unit), 0));
  return cells;
}

std::string temperatures_of(const Sweep& sweep, std::size_t first, std::size_t last) {
  const Temperature low = sweep.states[first].temperature;
  const Temperature high = sweep.states[last].temperature;
  return first == last ? degrees(low, sweep.temperature_unit)
                       : degrees({low, high}, sweep.temperature_unit);
}

std::vector<std::string> warning_lines(const Sweep& sweep) {
  std::vector<std::string> lines;
  for (const SeenWarning& seen : seen_warnings(states_of(sweep))) {
    std::string range = temperatures_of(sweep, seen.first, seen.last);
    const std::size_t span = seen.last - seen.first + 1;
    if (seen.count != span)
      range += " (" + std::to_string(seen.count) + " of these " + std::to_string(span) +
               " soaks)";
    lines.push_back(range + ": [" + seen.warning.code + "] " + seen.warning.text);
  }
  return lines;
}

}  // namespace gibbsteel::internal
