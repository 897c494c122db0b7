#include "internal/sweep_text.hpp"

#include <algorithm>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

struct Seen {
  Warning warning;
  std::size_t first, last, count;  ///< states that carry it
};

std::vector<Seen> seen_warnings(const Sweep& sweep) {
  std::vector<Seen> all;
  for (std::size_t i = 0; i < sweep.states.size(); ++i)
    for (const Warning& warning : sweep.states[i].warnings) {
      const auto known = std::find_if(all.begin(), all.end(), [&](const Seen& seen) {
        return seen.warning == warning;
      });
      if (known == all.end()) {
        all.push_back({warning, i, i, 1});
      } else {
        known->last = i;
        ++known->count;
      }
    }
  return all;
}

}  // namespace

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

std::vector<Warning> distinct_warnings(const Sweep& sweep) {
  std::vector<Warning> all;
  for (const Seen& seen : seen_warnings(sweep)) all.push_back(seen.warning);
  return all;
}

std::vector<std::string> warning_lines(const Sweep& sweep) {
  const auto celsius = [&](std::size_t i) {
    return fixed(sweep.states[i].temperature.in_celsius(), 0);
  };
  std::vector<std::string> lines;
  for (const Seen& seen : seen_warnings(sweep)) {
    std::string range = celsius(seen.first);
    if (seen.last != seen.first) range += " to " + celsius(seen.last);
    range += " C";
    const std::size_t span = seen.last - seen.first + 1;
    if (seen.count != span)
      range += " (" + std::to_string(seen.count) + " of these " + std::to_string(span) +
               " soaks)";
    lines.push_back(range + ": [" + seen.warning.code + "] " + seen.warning.text);
  }
  return lines;
}

}  // namespace gibbsteel::internal
