#include "internal/report_sections.hpp"

#include "gibbsteel/version.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

std::string listed(const NamedValues& weight_percent) {
  std::string text;
  for (const auto& [symbol, percent] : weight_percent)
    if (percent > 0.0)
      text += (text.empty() ? "" : " ") + significant(percent, 4) + symbol;
  return text.empty() ? "nothing" : text;
}

std::string bound_text(const MillAnalysis& analysis) {
  if (analysis.not_modelled.empty()) return "";
  if (analysis.bound.empty()) return "bound by tramp elements: nothing taken out";
  std::string text;
  for (const BoundCompound& compound : analysis.bound)
    text += (text.empty() ? "" : ", ") + compound.name + " " +
            significant(compound.weight_percent, 2);
  return "bound by tramp elements and taken out: " + text;
}

}  // namespace

ReportSection certificate_section(const State& state) {
  const MillAnalysis& analysis = state.analysis;
  ReportSection section{"Certificate as given, weight percent", {}, {}};
  section.lines.push_back(analysis.brief());
  section.lines.push_back("not modelled, left out: " + listed(analysis.not_modelled));
  if (const std::string bound = bound_text(analysis); !bound.empty())
    section.lines.push_back(bound);
  section.lines.push_back("in the calculation: " + listed(analysis.modelled));
  return section;
}

ReportSection origin_section(const State& state) {
  return {
      "Origin of the numbers",
      {"parameters: " + state.parameters, "parameters hash: " + state.parameters_hash,
       "library: gibbsteel " + std::string(kVersion)},
      {}};
}

std::string suppressed_sentence(const State& state) {
  std::string text;
  for (const auto& name : state.suppressed) text += (text.empty() ? "" : ", ") + name;
  return "phases not allowed to form: " + (text.empty() ? "none" : text);
}

}  // namespace gibbsteel::internal
