#include "gibbsteel/report.hpp"

#include <algorithm>

#include "gibbsteel/version.hpp"
#include "internal/error_codes.hpp"
#include "internal/hardening_warnings.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;
constexpr const char* kLongHold = "long-hold limit";  ///< as internal::condition()

std::string section_text(const ReportSection& section) {
  std::string text = "\n" + section.title + "\n" + std::string(kWidth, '-') + "\n";
  for (const auto& line : section.lines) text += internal::wrapped(line, kWidth, 2);
  if (!section.table.empty()) text += internal::text_table(section.table);
  return text;
}

bool is_outside(const Warning& warning) {
  return warning.code == codes::kTemperatureOutside ||
         warning.code == codes::kCompositionOutside;
}

bool is_outside(const State& state) {
  return std::any_of(state.warnings.begin(), state.warnings.end(),
                     [](const Warning& w) { return is_outside(w); });
}

/// "2 of 5 soaks <what>: 900, 1000 C"; at most six temperatures are named.
std::string count_of(const Sweep& sweep, const char* what,
                     bool (*counts)(const State&)) {
  constexpr std::size_t kNamed = 6;
  std::size_t count = 0;
  std::string named;
  for (const State& state : sweep.states) {
    if (!counts(state)) continue;
    if (++count <= kNamed)
      named +=
          (count == 1 ? "" : ", ") + internal::fixed(state.temperature.in_celsius(), 0);
  }
  if (count == 0) return "";
  if (count > kNamed) named += ", ...";
  return std::to_string(count) + " of " + std::to_string(sweep.states.size()) +
         " soaks " + what + ": " + named + " C";
}

}  // namespace

std::string Report::brief() const {
  return "Report: " + title + (flag.empty() ? "" : ", " + flag);
}

std::string Report::text() const {
  std::string text =
      internal::wrapped(title, kWidth, 2) + std::string(kWidth, '=') + "\n";
  if (!flag.empty()) text += internal::wrapped("!! " + flag, kWidth, 3);
  for (const auto& section : sections) text += section_text(section);
  if (!warnings.empty()) text += "\nWarnings\n" + std::string(kWidth, '-') + "\n";
  for (const auto& warning : warnings)
    text += internal::wrapped("! " + warning, kWidth, 2);
  return text + "\n" + internal::wrapped(caution, kWidth, 0);
}

std::string result_title(const State& state) {
  return internal::heading(state) + ", " + internal::condition(state);
}

std::string result_flag(const State& state) {
  if (!state.usable()) return state.solve_report.brief();
  std::string what;
  for (const Warning& warning : state.warnings)
    if (is_outside(warning)) what += (what.empty() ? "" : " ") + warning.text;
  return what.empty() ? "" : "OUTSIDE VALIDITY of the parameter file: " + what;
}

std::string result_flag(const Sweep& sweep) {
  const std::string bad =
      count_of(sweep, "NOT USABLE", [](const State& state) { return !state.usable(); });
  const std::string outside =
      count_of(sweep, "OUTSIDE VALIDITY of the parameter file",
               [](const State& state) { return state.usable() && is_outside(state); });
  std::string text = bad + (bad.empty() || outside.empty() ? "" : "; ") + outside;
  if (sweep.cancelled)
    text += (text.empty() ? "" : "; ") + std::string("CANCELLED early");
  return text;
}

std::vector<std::pair<std::string, std::string>> provenance(const State& state) {
  return {{"library", "gibbsteel " + std::string(kVersion)},
          {"parameters", state.parameters},
          {"parameters_hash", state.parameters_hash},
          {"limit", internal::limit_sentence(state)},
          {"basis", internal::basis_sentence(state)},
          {"caution", internal::caution_of(state)}};
}

std::vector<std::pair<std::string, std::string>> provenance(
    const std::string& parameters, const std::string& parameters_hash,
    std::optional<VolumeBasis> basis) {
  State blank;
  blank.parameters = parameters;
  blank.parameters_hash = parameters_hash;
  blank.basis = basis.value_or(VolumeBasis::room);
  auto told = provenance(blank);
  if (!basis)
    std::erase_if(told, [](const auto& entry) { return entry.first == "basis"; });
  return told;
}

std::vector<std::pair<std::string, std::string>> provenance(
    const HardeningEstimates& estimates) {
  auto told = provenance(estimates.parameters, estimates.parameters_hash);
  for (auto& [label, text] : told) {
    if (label == "limit" && estimates.condition != kLongHold)
      text = estimates.condition + ", matrix by mass balance";
    if (label == "caution") text = internal::caution_of(estimates);
  }
  return told;
}

}  // namespace gibbsteel
