#include "internal/window_remarks.hpp"

#include "gibbsteel/hardening_quantities.hpp"
#include "internal/hardening_warnings.hpp"
#include "internal/layer_remedy.hpp"
#include "internal/left_out.hpp"
#include "internal/liquid_share.hpp"
#include "internal/temperature_text.hpp"
#include "internal/window_rules.hpp"

namespace gibbsteel::internal {
namespace {

using Remarks = std::vector<std::string>;

void tell_unknown(const HardeningWindow& window, const std::string& stopped,
                  Temperature reached, Remarks& remarks) {
  std::string text;
  for (const PhaseGap& gap : window.gaps)
    text += (text.empty() ? "" : "; ") +
            degrees(TemperatureRange{gap.low, gap.high}, window.temperature_unit) +
            " (" + gap.reason + ")";
  if (!stopped.empty())
    text += (text.empty() ? "" : "; ") + std::string("above ") +
            degrees(reached, window.temperature_unit) + " (" + stopped + ")";
  if (!text.empty()) remarks.push_back("Not known and left out: " + text + ".");
}

void tell_left_out(const MillAnalysis& analysis, Remarks& remarks) {
  const std::string missing = left_out_text(analysis);
  if (!missing.empty())
    remarks.push_back("Hardening and melting were judged without " + missing +
                      ", not modelled: they are not those of this steel.");
}

void tell_grain_growth(const WindowRules& rules, Remarks& remarks) {
  remarks.push_back(
      rules.least_pinning_volume_percent
          ? "Grain growth is considered by the least volume of carbide alone, which is "
            "a choice: steels that hold little carbide are hardened with less."
          : "Grain growth is not considered, and in practice it often sets the "
            "ceiling: least_pinning_volume_percent asks for carbide that keeps the "
            "grains small, pinning_kind for one kind of it.");
}

/// Hardness [HRC] or [HV] from the estimates of a quench.
bool is_as_quenched(const Quantity& quantity) {
  return quantity.name() == quantities::hardness_hrc().name();
}

void tell_hardness(const HardeningWindow& window, const WindowRules& rules,
                   Remarks& remarks) {
  if (has_hardness_rule(rules)) {
    if (is_as_quenched(hardness_of(rules))) remarks.push_back(kFullyMartensitic);
    return;
  }
  std::string text =
      "Hardness is not considered: least_hardness asks for as-quenched hardness "
      "[HRC], with hardness for another quantity.";
  if (window.floor_rule == WindowRule::ferrite)
    text +=
        " The floor is only where the last ferrite is gone; the matrix may hold too "
        "little carbon there to become hard.";
  remarks.push_back(std::move(text));
}

}  // namespace

std::string no_melting_known(const ParameterSet& set) {
  std::string text =
      "No start of melting is known of a steel like this: no rule keeps the ceiling "
      "away from it.";
  if (!set.find_phase(kLiquid))
    text += " With a liquid in the parameter file it is computed." +
            layer_remedy(set, kLiquid);
  return text;
}

std::vector<std::string> window_remarks(const HardeningWindow& window,
                                        const WindowRules& rules,
                                        const std::string& melting,
                                        const std::string& stopped,
                                        Temperature reached) {
  Remarks remarks;
  tell_unknown(window, stopped, reached, remarks);
  tell_left_out(window.analysis, remarks);
  if (!melting.empty()) remarks.push_back(melting);
  tell_grain_growth(rules, remarks);
  tell_hardness(window, rules, remarks);
  remarks.push_back(
      "Retained austenite, soak time, section and distortion are not considered.");
  return remarks;
}

}  // namespace gibbsteel::internal
