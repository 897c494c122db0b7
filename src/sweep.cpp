#include "gibbsteel/sweep.hpp"

#include <algorithm>

#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;

constexpr std::size_t kWidth = 78;

/// Elements of the matrix in any state, in the order of the first usable one.
std::vector<std::string> matrix_elements(const Sweep& sweep) {
  for (const State& state : sweep.states) {
    if (!state.usable()) continue;
    std::vector<std::string> symbols;
    for (const auto& [symbol, percent] : state.matrix.weight_percent)
      if (symbol != "Fe") symbols.push_back(symbol);
    return symbols;
  }
  return {};
}

bool has_ferrite(const State& state) {
  for (const Occurrence& o : state.matrix_phases())
    if (o.kind != "austenite") return true;
  return false;
}

std::vector<std::string> row_of(const State& state,
                                const std::vector<std::string>& kinds,
                                const std::vector<std::string>& symbols) {
  std::vector<std::string> row{fixed(state.temperature.in_celsius(), 0)};
  if (!state.usable()) {
    row.push_back("NOT USABLE");
    return row;
  }
  row.push_back(fixed(state.carbide_volume_percent, 2));
  for (const auto& kind : kinds) {
    const double percent = state.volume_percent_of(kind);
    row.push_back(percent > 0.0 ? fixed(percent, 2) : "-");
  }
  for (const auto& symbol : symbols)
    row.push_back(fixed(state.matrix.weight_percent[symbol], symbol == "C" ? 3 : 2));
  row.push_back(has_ferrite(state) ? "f" : "");
  return row;
}

/// The distinct warnings of all states, with the temperatures they hold for.
std::string warnings_of(const Sweep& sweep) {
  struct Seen {
    Warning warning;
    Temperature first, last;
  };
  std::vector<Seen> all;
  for (const State& state : sweep.states)
    for (const Warning& warning : state.warnings) {
      const auto known = std::find_if(all.begin(), all.end(), [&](const Seen& seen) {
        return seen.warning.code == warning.code;
      });
      if (known == all.end())
        all.push_back({warning, state.temperature, state.temperature});
      else
        known->last = state.temperature;
    }
  std::string text;
  for (const Seen& seen : all) {
    std::string range = fixed(seen.first.in_celsius(), 0);
    if (seen.last != seen.first) range += " to " + fixed(seen.last.in_celsius(), 0);
    text += internal::wrapped("! " + range + " C: [" + seen.warning.code + "] " +
                                  seen.warning.text,
                              kWidth, 2);
  }
  return text;
}

}  // namespace

std::vector<std::string> Sweep::carbide_kinds() const {
  std::vector<std::string> kinds;
  for (const State& state : states)
    for (const Occurrence& o : state.carbides())
      if (std::find(kinds.begin(), kinds.end(), o.kind) == kinds.end())
        kinds.push_back(o.kind);
  return kinds;
}

std::size_t Sweep::failures() const noexcept {
  return static_cast<std::size_t>(
      std::count_if(states.begin(), states.end(),
                    [](const State& state) { return !state.usable(); }));
}

std::string Sweep::brief() const {
  std::string text = (steel.empty() ? "steel" : steel) + ", " +
                     std::to_string(states.size()) + " soaks";
  if (!states.empty())
    text += " from " + fixed(states.front().temperature.in_celsius(), 0) + " to " +
            fixed(states.back().temperature.in_celsius(), 0) + " C";
  if (failures() > 0) text += ", " + std::to_string(failures()) + " NOT USABLE";
  return cancelled ? text + ", CANCELLED" : text;
}

std::string Sweep::full() const {
  const auto kinds = carbide_kinds();
  const auto symbols = matrix_elements(*this);
  std::vector<std::string> top{"", "carbide", "vol%"}, head{"C", "all"};
  top.resize(2 + kinds.size());
  top.push_back("matrix");
  top.push_back("wt%");
  for (const auto& kind : kinds) head.push_back(kind);
  for (const auto& symbol : symbols) head.push_back(symbol);
  if (top.size() > head.size()) top.resize(head.size());
  std::vector<std::vector<std::string>> rows{top, head};
  for (const State& state : states) rows.push_back(row_of(state, kinds, symbols));
  std::string text = brief() + ", long-hold limit\n";
  if (!states.empty()) text += "parameters: " + states.front().parameters + "\n";
  text += "\n" + internal::text_table(rows);
  const bool ferrite = std::any_of(states.begin(), states.end(), has_ferrite);
  if (ferrite) text += "f: the matrix is not austenite alone\n";
  return text + "\n" + warnings_of(*this) +
         internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
