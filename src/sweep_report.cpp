/// The report of a sweep; see report.hpp.

#include <algorithm>
#include <iterator>

#include "internal/number_format.hpp"
#include "internal/other_kinds.hpp"
#include "internal/report_sections.hpp"
#include "internal/result_text.hpp"
#include "internal/sweep_text.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;
using internal::fixed_or;

constexpr std::size_t kMostRows = 13;
constexpr const char* kNotKnown = "n/a";

using Picked = std::vector<const State*>;

/// First, last and evenly between; all when there are at most kMostRows.
Picked picked_states(const Sweep& sweep) {
  const std::size_t all = sweep.states.size(), count = std::min(all, kMostRows);
  Picked picked;
  for (std::size_t i = 0; i < count; ++i)
    picked.push_back(&sweep.states[count == 1 ? 0 : i * (all - 1) / (count - 1)]);
  return picked;
}

ReportSection basis_section(const Sweep& sweep, std::size_t picked) {
  const State& first = sweep.states.front();
  ReportSection section{"Basis", {}, {}};
  section.lines = {
      "long-hold limit (true equilibrium) at each temperature, not the state after "
      "minutes",
      internal::basis_sentence(first), internal::suppressed_sentence(first)};
  if (picked < sweep.states.size())
    section.lines.push_back("shown: " + std::to_string(picked) + " of " +
                            std::to_string(sweep.states.size()) +
                            " soaks, evenly picked");
  return section;
}

/// A table with one row per soak; `cells` are those behind the temperatures.
template <typename Cells>
ReportSection by_temperature(std::string title, const Picked& states,
                             const std::vector<std::string>& columns,
                             const Cells& cells) {
  ReportSection section{std::move(title), {}, {{"deg C", "deg F"}}};
  auto& headings = section.table.front();
  headings.insert(headings.end(), columns.begin(), columns.end());
  std::vector<Temperature> series;
  for (const State* state : states) series.push_back(state->temperature);
  const auto celsius = internal::degree_numbers(series, TemperatureUnit::celsius);
  const auto fahrenheit = internal::degree_numbers(series, TemperatureUnit::fahrenheit);
  for (std::size_t i = 0; i < states.size(); ++i) {
    const State* state = states[i];
    std::vector<std::string> row{celsius[i], fahrenheit[i]};
    if (state->usable())
      for (auto& cell : cells(*state)) row.push_back(std::move(cell));
    else
      row.push_back("NOT USABLE");
    section.table.push_back(std::move(row));
  }
  return section;
}

std::string amount(double percent) {
  return percent == 0.0 ? "-" : fixed_or(percent, 2, kNotKnown);
}

/// Mass percent of all occurrences of a kind.
double mass_percent_of(const State& state, const std::string& kind) {
  double sum = 0.0;
  for (const Occurrence& o : state.occurrences)
    if (o.kind == kind) sum += o.mass_percent;
  return sum;
}

/// "Carbides", "Carbides and graphite", "Carbides, graphite and liquid"
std::string carbides_and(const std::vector<std::string>& others) {
  std::string text = "Carbides";
  for (const auto& kind : others)
    text += (&kind == &others.back() ? " and " : ", ") + kind;
  return text;
}

void add_carbides(const Sweep& sweep, const Picked& states,
                  std::vector<ReportSection>& sections) {
  const auto others = internal::other_kinds(internal::states_of(sweep));
  auto kinds = sweep.carbide_kinds();
  kinds.insert(kinds.end(), others.begin(), others.end());
  std::vector<std::string> columns{others.empty() ? "all" : "all carbides"};
  columns.insert(columns.end(), kinds.begin(), kinds.end());
  sections.push_back(by_temperature(
      carbides_and(others) + ", volume percent", states, columns,
      [&](const State& state) {
        std::vector<std::string> cells{amount(state.carbide_volume_percent)};
        for (const auto& kind : kinds)
          cells.push_back(amount(state.volume_percent_of(kind)));
        return cells;
      }));
  sections.push_back(by_temperature(
      carbides_and(others) + ", mass percent", states, columns,
      [&](const State& state) {
        std::vector<std::string> cells{amount(state.carbide_mass_percent)};
        for (const auto& kind : kinds)
          cells.push_back(amount(mass_percent_of(state, kind)));
        return cells;
      }));
}

void add_matrix(const Sweep& sweep, const Picked& states,
                std::vector<ReportSection>& sections) {
  const auto symbols = internal::matrix_elements(sweep);
  auto columns = symbols;
  columns.emplace_back();  // for the marks of a matrix with ferrite, and of liquid
  ReportSection section = by_temperature(
      "Matrix, weight percent", states, columns,
      [&](const State& state) { return internal::matrix_cells(state, symbols); });
  section.lines = internal::legend_of_marks(states);
  sections.push_back(std::move(section));
}

Picked usable(const Picked& states) {
  Picked some;
  std::copy_if(states.begin(), states.end(), std::back_inserter(some),
               [](const State* state) { return state->usable(); });
  return some;
}

struct EstimateColumns {
  const char* heading;
  int digits;
  Estimate HardeningEstimates::*estimate;
};

/// Those that are known for some soak.
std::vector<EstimateColumns> columns_of(const std::vector<HardeningEstimates>& all) {
  std::vector<EstimateColumns> known;
  for (const EstimateColumns& each :
       {EstimateColumns{"Ms, C", 0, &HardeningEstimates::martensite_start},
        EstimateColumns{"RA, vol%", 1, &HardeningEstimates::retained_austenite},
        EstimateColumns{"HRC", 1, &HardeningEstimates::hardness_hrc},
        EstimateColumns{"grain, um", 1, &HardeningEstimates::grain_diameter}})
    if (std::any_of(all.begin(), all.end(),
                    [&](const auto& e) { return (e.*each.estimate).known(); }))
      known.push_back(each);
  return known;
}

/// @param all  of the usable ones among `states`, in their order
void add_estimates(const Picked& states, const std::vector<HardeningEstimates>& all,
                   TemperatureUnit unit, std::vector<ReportSection>& sections) {
  if (all.empty()) return;
  ReportSection section = internal::estimates_heading(all);
  const auto columns = columns_of(all);
  for (auto& line : internal::estimate_remark_lines(usable(states), all, unit))
    section.lines.push_back(std::move(line));
  if (!columns.empty()) {
    section.lines.push_back(
        "Ms: martensite start; RA: retained austenite; HRC: as-quenched hardness");
    std::vector<std::string> headings;
    for (const EstimateColumns& column : columns)
      headings.insert(headings.end(), {column.heading, "low", "high"});
    auto estimates = all.begin();
    section.table = by_temperature("", states, headings, [&](const State&) {
                      std::vector<std::string> cells;
                      for (const EstimateColumns& column : columns) {
                        const Estimate& e = *estimates.*column.estimate;
                        for (const double value : {e.value, e.low, e.high})
                          cells.push_back(fixed_or(value, column.digits, "-"));
                      }
                      ++estimates;
                      return cells;
                    }).table;
  }
  sections.push_back(std::move(section));
}

}  // namespace

Report report(const Sweep& sweep, const HardeningOptions& quench) {
  Report page;
  page.title = sweep.brief();
  page.caution = internal::kCaution;
  if (sweep.states.empty()) return page;
  page.flag = result_flag(sweep);
  const Picked states = picked_states(sweep);
  page.sections.push_back(internal::certificate_section(sweep.states.front()));
  page.sections.push_back(basis_section(sweep, states.size()));
  add_carbides(sweep, states, page.sections);
  add_matrix(sweep, states, page.sections);
  const Picked solved = usable(states);
  std::vector<HardeningEstimates> estimates;
  for (const State* state : solved) estimates.push_back(hardening(*state, quench));
  add_estimates(states, estimates, sweep.temperature_unit, page.sections);
  page.sections.push_back(internal::solution_section(sweep));
  page.sections.push_back(internal::origin_section(sweep.states.front()));
  page.warnings = internal::warning_lines(sweep);
  for (auto& line :
       internal::estimate_warning_lines(solved, estimates, sweep.temperature_unit))
    page.warnings.push_back(std::move(line));
  return page;
}

}  // namespace gibbsteel
