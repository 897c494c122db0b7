/// The report of one soak, long or short; see report.hpp.

#include <algorithm>
#include <cmath>

#include "internal/number_format.hpp"
#include "internal/report_sections.hpp"
#include "internal/result_text.hpp"
#include "internal/short_soak_tables.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;
using internal::fixed_or;

constexpr const char* kNotKnown = "n/a";

/// A state of a short soak does not hold its own band: the page of the ShortSoak does.
constexpr const char* kBandElsewhere =
    "how sure the matrix is: not on this page, see the report of the ShortSoak that "
    "this state is part of";

/// @param soak  that the state is part of; nullptr on a page of the state alone
ReportSection basis_section(const State& state, const ShortSoak* soak) {
  ReportSection section{"Basis", {}, {}};
  section.lines = {
      "holding temperature: " + internal::celsius_and_fahrenheit(state.temperature),
      internal::limit_sentence(state), internal::basis_sentence(state),
      internal::suppressed_sentence(state)};
  if (!soak && state.solve_report.by_mass_balance())
    section.lines.push_back(kBandElsewhere);
  return section;
}

/// "size limit of the count: M3C 0.2 micrometre"
std::string size_limits(const ShortSoak& soak) {
  std::string text;
  for (const MeasuredCarbide& m : soak.measured)
    text += (text.empty() ? "" : ", ") + m.kind +
            (m.smallest_counted
                 ? " " + internal::shortest(*m.smallest_counted) + " micrometre"
                 : std::string(" not given"));
  return "size limit of the count: " + text;
}

/// What was counted or computed: where the balance starts from.
ReportSection balance_section(const ShortSoak& soak) {
  if (internal::is_computed(soak))
    return {"Carbide as computed", {}, internal::carbide_rows(soak)};
  return {"Carbide as counted",
          {"+-: standard deviation of the count", size_limits(soak)},
          internal::carbide_rows(soak)};
}

std::vector<std::string> amounts_row(const Occurrence& o) {
  return {o.name, fixed_or(o.volume_percent, 2, kNotKnown), fixed(o.mass_percent, 2)};
}

std::vector<std::string> symbols_row(const State& state, std::string label) {
  std::vector<std::string> row{std::move(label)};
  for (const auto& [symbol, percent] : state.occurrences.front().weight_percent)
    row.push_back(symbol);
  return row;
}

ReportSection carbides_section(const State& state) {
  ReportSection section{"Carbides", {}, {}};
  const auto carbides = state.carbides();
  if (carbides.empty()) {
    section.lines.push_back("none");
    return section;
  }
  section.table.push_back({"", "volume %", "mass %"});
  for (const Occurrence& o : carbides) section.table.push_back(amounts_row(o));
  section.table.push_back({"all carbides",
                           fixed_or(state.carbide_volume_percent, 2, kNotKnown),
                           fixed(state.carbide_mass_percent, 2)});
  return section;
}

ReportSection compositions_section(const State& state) {
  ReportSection section{"Composition of the carbides", {}, {}};
  section.table.push_back(symbols_row(state, "weight percent in"));
  for (const Occurrence& o : state.carbides())
    section.table.push_back(internal::composition_row(o.name, o.weight_percent));
  return section;
}

ReportSection matrix_section(const State& state) {
  ReportSection section{"Matrix", {}, {}};
  const auto phases = state.matrix_phases();
  if (phases.empty()) {
    section.lines.push_back("none");
    return section;
  }
  std::string amounts;
  for (const Occurrence& o : phases)
    amounts += (amounts.empty() ? "" : "; ") + o.name + ": " +
               fixed_or(o.volume_percent, 2, kNotKnown) + " volume %, " +
               fixed(o.mass_percent, 2) + " mass %";
  section.lines.push_back(amounts);
  if (!std::isnan(state.carbon_activity))
    section.lines.push_back("carbon activity (graphite = 1): " +
                            fixed(state.carbon_activity, 3));
  if (!std::isnan(state.density))
    section.lines.push_back("density of the steel: " + fixed(state.density, 3) +
                            " g/cm3");
  section.table.push_back(symbols_row(state, "weight percent in"));
  section.table.push_back(
      internal::composition_row("matrix", state.matrix.weight_percent));
  if (phases.size() > 1)
    for (const Occurrence& o : phases)
      section.table.push_back(
          internal::composition_row("  " + o.name, o.weight_percent));
  return section;
}

/// Phases that are neither matrix nor carbide, such as graphite.
ReportSection others_section(const State& state) {
  ReportSection section{"Other phases", {}, {{"", "volume %", "mass %"}}};
  for (const Occurrence& o : state.occurrences)
    if (o.role == Role::other) section.table.push_back(amounts_row(o));
  return section;
}

void add_results(const State& state, const ShortSoak* soak,
                 const HardeningEstimates& estimates,
                 std::vector<ReportSection>& sections) {
  if (soak) sections.push_back(balance_section(*soak));
  sections.push_back(carbides_section(state));
  if (!state.carbides().empty()) sections.push_back(compositions_section(state));
  sections.push_back(matrix_section(state));
  if (soak)
    sections.push_back({"Band of the matrix",
                        {internal::band_sentence(*soak)},
                        internal::band_rows(*soak)});
  if (ReportSection others = others_section(state); others.table.size() > 1)
    sections.push_back(std::move(others));
  sections.push_back(internal::estimates_section(estimates));
  sections.push_back(internal::solution_section(
      state, !state.warnings.empty() || !estimates.warnings.empty()));
}

Report page_of(const State& state, const ShortSoak* soak,
               const HardeningOptions& quench) {
  Report page;
  page.title = result_title(state);
  page.flag = result_flag(state);
  page.sections.push_back(internal::certificate_section(state));
  page.sections.push_back(basis_section(state, soak));
  std::vector<Warning> warnings = state.warnings;
  if (state.usable()) {
    const HardeningEstimates estimates = hardening(state, quench);
    add_results(state, soak, estimates, page.sections);
    for (const Warning& warning : estimates.warnings)
      if (std::find(warnings.begin(), warnings.end(), warning) == warnings.end())
        warnings.push_back(warning);
  }
  page.sections.push_back(internal::origin_section(state));
  for (const Warning& warning : warnings)
    page.warnings.push_back("[" + warning.code + "] " + warning.text);
  page.caution = internal::caution_of(state);
  return page;
}

}  // namespace

Report report(const State& state, const HardeningOptions& quench) {
  return page_of(state, nullptr, quench);
}

Report report(const ShortSoak& soak, const HardeningOptions& quench) {
  return page_of(soak.state, &soak, quench);
}

}  // namespace gibbsteel
