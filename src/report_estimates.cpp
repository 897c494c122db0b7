/// The estimates of a quench as a section of a report; see report.hpp.

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

/// Equation, source and remarks of one estimate.
std::string origin_of(const Estimate& e) {
  std::string text = e.name + ": " + e.equation + "; " + e.source + ".";
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

}  // namespace

ReportSection estimates_section(const HardeningEstimates& estimates) {
  ReportSection section{
      "Estimates after a quench to " + celsius_and_fahrenheit(estimates.coldest),
      {},
      {}};
  if (!estimates.martensite_start.known()) {
    section.lines.push_back(missing(estimates.martensite_start));
    return section;
  }
  section.lines = {"family: " + family_text(estimates),
                   std::string(kBandsAre) +
                       "; the error of the composition of the austenite comes on top",
                   origin_of(estimates.martensite_start),
                   origin_of(estimates.retained_austenite),
                   origin_of(estimates.hardness_hrc),
                   kFullyMartensitic};
  section.table = {{"", "value", "low", "high", "unit"}};
  for (const Estimate* each :
       {&estimates.martensite_start, &estimates.retained_austenite,
        &estimates.hardness_hv, &estimates.hardness_hrc, &estimates.grain_diameter})
    if (each->known()) section.table.push_back(row_of(*each));
  if (estimates.grain_diameter.known())
    section.lines.push_back(origin_of(estimates.grain_diameter));
  return section;
}

}  // namespace gibbsteel::internal
