/// The estimates of a quench as a section of a report; see report.hpp.

#include <algorithm>

#include "internal/family_mix.hpp"
#include "internal/hardening_warnings.hpp"
#include "internal/number_format.hpp"
#include "internal/report_sections.hpp"
#include "internal/result_text.hpp"

namespace gibbsteel::internal {
namespace {

std::vector<std::string> row_of(const Estimate& e) {
  const int digits = e.unit == "C" || e.unit == "HV" ? 0 : 1;
  return {e.name, fixed(e.value, digits), fixed_or(e.low, digits, "n/a"),
          fixed_or(e.high, digits, "n/a"), e.unit};
}

/// Equation and source of one estimate.
std::string source_of(const Estimate& e) {
  return e.name + ": " + e.equation + "; " + e.source + ".";
}

/// The same with its remarks.
std::string origin_of(const Estimate& e) {
  std::string text = source_of(e);
  for (const std::string& remark : e.remarks) text += " " + remark + ".";
  return text;
}

std::string missing(const Estimate& e) {
  std::string text = "no " + e.name;
  for (const std::string& remark : e.remarks) text += ": " + remark;
  return text;
}

std::string family_text(const HardeningEstimates& e) {
  if (is_between(e.family_shares))
    return "between " + shares_text(e.family_shares) + ", by composition";
  return e.family.name + (e.family_chosen ? ", as asked for" : ", by composition");
}

/// Family, what the bands are, and where every estimate comes from.
template <typename Origin>
std::vector<std::string> lines_of(const HardeningEstimates& e, const Origin& origin) {
  std::vector<std::string> lines{
      "family: " + family_text(e),
      bands_are({true, true, e.grain_diameter.known()}) +
          "; the error of the composition of the austenite comes on top",
      origin(e.martensite_start),
      origin(e.retained_austenite),
      origin(e.hardness_hrc),
      kFullyMartensitic};
  if (e.grain_diameter.known()) lines.push_back(origin(e.grain_diameter));
  return lines;
}

std::string title_of(const HardeningEstimates& e) {
  return "Estimates after a quench to " + celsius_and_fahrenheit(e.coldest);
}

/// A code of several soaks; the texts may differ by a number.
struct SharedWarning {
  Warning first;
  Temperature at;         ///< of the first
  Temperature low, high;  ///< of all
  std::size_t count;
  bool same;
};

void add(const Warning& warning, Temperature soak, std::vector<SharedWarning>& all) {
  const auto known = std::find_if(all.begin(), all.end(), [&](const SharedWarning& s) {
    return s.first.code == warning.code;
  });
  if (known == all.end()) {
    all.push_back({warning, soak, soak, soak, 1, true});
    return;
  }
  known->low = std::min(known->low, soak);
  known->high = std::max(known->high, soak);
  ++known->count;
  known->same = known->same && known->first.text == warning.text;
}

/// "816 to 899 C", "816 to 899 C (3 of these 4 soaks)"
std::string where(const SharedWarning& warning, const std::vector<const State*>& states,
                  TemperatureUnit unit) {
  if (warning.low == warning.high) return degrees(warning.at, unit);
  const auto between = std::count_if(states.begin(), states.end(), [&](const State* s) {
    return s->temperature >= warning.low && s->temperature <= warning.high;
  });
  std::string text = degrees(TemperatureRange{warning.low, warning.high}, unit);
  if (warning.count != static_cast<std::size_t>(between))
    text += " (" + std::to_string(warning.count) + " of these " +
            std::to_string(between) + " soaks)";
  return text;
}

/// Remarks of several soaks differ by the numbers in them.
std::string without_digits(std::string text) {
  std::erase_if(text, [](char c) { return c >= '0' && c <= '9'; });
  return text;
}

/// Warning 331 says it as well.
bool is_about_range(const std::string& remark) {
  return remark.find(" is outside its range") != std::string::npos;
}

bool holds(const State& state, const Warning& warning) {
  return std::find(state.warnings.begin(), state.warnings.end(), warning) !=
         state.warnings.end();
}

}  // namespace

ReportSection estimates_section(const HardeningEstimates& estimates) {
  ReportSection section{title_of(estimates), {}, {}};
  if (!estimates.martensite_start.known()) {
    section.lines.push_back(missing(estimates.martensite_start));
    return section;
  }
  section.lines = lines_of(estimates, origin_of);
  section.table = {{"", "value", "low", "high", "unit"}};
  for (const Estimate* each :
       {&estimates.martensite_start, &estimates.retained_austenite,
        &estimates.hardness_hv, &estimates.hardness_hrc, &estimates.grain_diameter})
    if (each->known()) section.table.push_back(row_of(*each));
  return section;
}

std::vector<std::string> estimate_remark_lines(
    const std::vector<const State*>& states,
    const std::vector<HardeningEstimates>& estimates, TemperatureUnit unit) {
  std::vector<SharedWarning> all;
  for (std::size_t i = 0; i < states.size(); ++i)
    for (const Estimate* each :
         {&estimates[i].martensite_start, &estimates[i].retained_austenite,
          &estimates[i].hardness_hrc})
      for (const std::string& remark : each->remarks)
        if (each->known() && !is_about_range(remark))
          add({without_digits(each->name + remark), each->name + ": " + remark + "."},
              states[i]->temperature, all);
  std::vector<std::string> lines;
  for (const SharedWarning& each : all)
    lines.push_back(where(each, states, unit) + ": " + each.first.text);
  return lines;
}

ReportSection estimates_heading(const std::vector<HardeningEstimates>& estimates) {
  const auto first = std::find_if(
      estimates.begin(), estimates.end(),
      [](const HardeningEstimates& e) { return e.martensite_start.known(); });
  if (first != estimates.end())
    return {title_of(*first), lines_of(*first, source_of), {}};
  const HardeningEstimates& none = estimates.front();
  return {title_of(none), {missing(none.martensite_start)}, {}};
}

std::vector<std::string> estimate_warning_lines(
    const std::vector<const State*>& states,
    const std::vector<HardeningEstimates>& estimates, TemperatureUnit unit) {
  std::vector<SharedWarning> all;
  for (std::size_t i = 0; i < states.size(); ++i)
    for (const Warning& warning : estimates[i].warnings)
      if (!holds(*states[i], warning)) add(warning, states[i]->temperature, all);
  std::vector<std::string> lines;
  for (const SharedWarning& each : all) {
    const std::string at = each.same ? "" : "at " + degrees(each.at, unit) + ": ";
    lines.push_back(where(each, states, unit) + ": [" + each.first.code + "] " + at +
                    each.first.text);
  }
  return lines;
}

}  // namespace gibbsteel::internal
