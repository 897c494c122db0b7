#include "gibbsteel/sweep.hpp"

#include <algorithm>

#include "internal/distinct_warnings.hpp"
#include "internal/number_format.hpp"
#include "internal/other_kinds.hpp"
#include "internal/result_text.hpp"
#include "internal/sweep_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;

std::vector<std::string> row_of(const State& state,
                                const std::vector<std::string>& kinds,
                                const std::vector<std::string>& symbols,
                                TemperatureUnit unit) {
  auto row = internal::temperature_cells(state.temperature, unit);
  if (!state.usable()) {
    row.push_back("NOT USABLE");
    return row;
  }
  row.push_back(internal::fixed_or(state.carbide_volume_percent, 2, "n/a"));
  for (const auto& kind : kinds) {
    const double percent = state.volume_percent_of(kind);
    row.push_back(percent == 0.0 ? "-" : internal::fixed_or(percent, 2, "n/a"));
  }
  const auto matrix = internal::matrix_cells(state, symbols);
  row.insert(row.end(), matrix.begin(), matrix.end());
  return row;
}

std::string table_of(const Sweep& sweep) {
  const auto carbides = sweep.carbide_kinds();
  const auto kinds = internal::with_other_kinds(carbides, internal::states_of(sweep));
  const auto symbols = internal::matrix_elements(sweep);
  const TemperatureUnit unit = sweep.temperature_unit;
  std::vector<std::string> top{"soak", "carbide", "vol%"}, head{"C", "all"};
  if (unit != TemperatureUnit::celsius) {
    top.insert(top.begin() + 1, "");
    head.insert(head.begin(), internal::symbol_of(unit));
  }
  top.resize(head.size() + carbides.size());
  top.resize(head.size() + kinds.size(), "vol%");
  top.push_back("matrix");
  top.push_back("wt%");
  for (const auto& kind : kinds) head.push_back(kind);
  for (const auto& symbol : symbols) head.push_back(symbol);
  if (top.size() > head.size()) top.resize(head.size());
  std::vector<std::vector<std::string>> rows{top, head};
  for (const State& state : sweep.states)
    rows.push_back(row_of(state, kinds, symbols, unit));
  return internal::text_table(rows);
}

std::string warnings_of(const Sweep& sweep) {
  std::string text;
  for (const auto& line : internal::warning_lines(sweep))
    text += internal::wrapped("! " + line, kWidth, 2);
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

std::vector<Warning> Sweep::warnings() const {
  return internal::distinct_warnings(internal::states_of(*this));
}

std::size_t Sweep::failures() const noexcept {
  return static_cast<std::size_t>(
      std::count_if(states.begin(), states.end(),
                    [](const State& state) { return !state.usable(); }));
}

std::string Sweep::brief() const {
  const std::string name = (steel.empty() ? "steel" : steel) + ", ";
  if (states.empty()) return name + (cancelled ? "CANCELLED" : "no temperatures given");
  std::string text = name + std::to_string(states.size()) +
                     (states.size() == 1 ? " soak at " : " soaks from ") +
                     internal::temperatures_of(*this, 0, states.size() - 1);
  if (failures() > 0) text += ", " + std::to_string(failures()) + " NOT USABLE";
  if (cancelled) text += ", CANCELLED";
  return text + ", " + internal::conditions(internal::states_of(*this));
}

std::string Sweep::full() const {
  if (states.empty()) return brief() + "\n";
  std::string text = brief() + "\n" + internal::analysis_text(states.front()) +
                     "parameters: " + states.front().parameters + "\n" +
                     internal::basis_text(states.front()) + "\n" + table_of(*this);
  for (const auto& line : internal::legend_of_marks(internal::states_of(*this)))
    text += line + "\n";
  return text + internal::last_digits_text(!warnings().empty()) + "\n" +
         warnings_of(*this) + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
