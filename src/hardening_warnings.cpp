#include "internal/hardening_warnings.hpp"

#include <algorithm>

#include "internal/cementite_rule.hpp"
#include "internal/family_borders.hpp"
#include "internal/liquid_share.hpp"
#include "internal/number_format.hpp"
#include "internal/shipped_numbers.hpp"
#include "internal/text_table.hpp"
#include "internal/warning_codes.hpp"

namespace gibbsteel::internal {
namespace {

using Warnings = std::vector<Warning>;

void check_matrix(const State& state, const HardeningEstimates& result, Warnings& out) {
  const auto phases = state.matrix_phases();
  if (phases.size() == 1 && phases[0].kind == "austenite") return;
  std::string names;
  for (const Occurrence& o : phases) names += (names.empty() ? "" : " + ") + o.name;
  if (result.austenite.empty())
    out.push_back({"gibbsteel.warning.330",
                   phases.empty() ? "There is no matrix phase: nothing hardens."
                                  : "The matrix is " + names + ": nothing hardens."});
  else
    out.push_back({"gibbsteel.warning.330",
                   "The matrix is " + names + ": only the austenite, " +
                       fixed(result.austenite_percent, 0) +
                       " % of it, hardens; the rest counts with 200 HV."});
}

void check_liquid(const State& state, const HardeningEstimates& result, Warnings& out) {
  const KindShare liquid = liquid_share(state);
  if (!liquid.partly() || result.austenite.empty()) return;
  out.push_back({"gibbsteel.warning.337",
                 "Estimates are those of the solid part: what is liquid, " +
                     percent_text(liquid) +
                     ", freezes as something else. A steel that has begun to melt is "
                     "spoilt for hardening."});
}

void check_ranges(const HardeningEstimates& result, Warnings& out) {
  std::string text;
  for (const Estimate* estimate : {&result.martensite_start, &result.retained_austenite,
                                   &result.hardness_hrc, &result.grain_diameter}) {
    if (estimate->in_range) continue;
    for (const std::string& remark : estimate->remarks)
      if (remark.find("is outside its range") != std::string::npos ||
          remark.find("(H21) is for") == 0)
        text += (text.empty() ? "" : "; ") + remark;
  }
  if (!text.empty())
    out.push_back({"gibbsteel.warning.331", "Extrapolated: " + text + "."});
}

void check_start(const HardeningEstimates& result, Warnings& out) {
  const Estimate& start = result.martensite_start;
  const double coldest = result.coldest.in_celsius();
  if (start.known() && start.value <= coldest)
    out.push_back({"gibbsteel.warning.332",
                   "Martensite start, " + fixed(start.value, 0) +
                       " C, is not above the coldest temperature, " +
                       fixed(coldest, 0) + " C: the steel stays austenite."});
}

/// [weight percent] Less moves no estimate by more than its band.
constexpr double kDissolvedNitrogen = 0.01;

void check_nitrogen(const State& state, Warnings& out) {
  const double nitrogen = state.analysis.not_modelled["N"];
  if (nitrogen > 0.0)
    out.push_back(
        {"gibbsteel.warning.333",
         "N " + significant(nitrogen, 3) +
             " wt% is not modelled: estimates and indices of the matrix leave "
             "it out. In solution it counts like about as much carbon."});
  const double dissolved = state.matrix.weight_percent["N"];
  if (dissolved > kDissolvedNitrogen)
    out.push_back({"gibbsteel.warning.333",
                   "N " + significant(dissolved, 2) +
                       " wt% is dissolved in the matrix: estimates leave it out. It "
                       "counts like about as much carbon."});
}

void check_family(const State& state, const HardeningEstimates& result, Warnings& out) {
  if (result.family_chosen || result.austenite.empty()) return;
  add_distinct(near_border(state.analysis.modelled), out);
}

/// Where the estimate of hardness takes an offset that rests on soaks.
void check_offset(const State& state, const HardeningEstimates& result, Warnings& out) {
  const Estimate& hardness = result.hardness_hv;
  if (!hardness.known() || hardness.source.find(kByShippedFile) == std::string::npos ||
      state.parameters.empty() ||
      has_shipped_numbers(state.parameters, state.parameters_hash))
    return;
  out.push_back(
      {std::string(codes::kOffsetOfShipped),
       "The hardness offset of the family was fitted with the austenite that the "
       "shipped file computes; this parameter set has other numbers, and how well the "
       "offset fits with them is not known. Compare with hardness that you measured."});
}

void check_short_soak(const State& state, const HardeningEstimates& result,
                      Warnings& out) {
  const bool cementite = state.driving_force.contains("M3C");  // it may form
  const bool graphite = state.driving_force.contains("graphite");
  if (cementite && !graphite && !result.austenite.empty() &&
      may_keep_cementite(state.analysis.modelled, state.temperature) &&
      !state.solve_report.by_mass_balance())
    out.push_back({"gibbsteel.warning.336",
                   "A soak of minutes can leave carbide of such a steel undissolved: "
                   "less carbon in the matrix than in the long-hold limit. Take "
                   "timed_soak, compare short_soak_limit, or count the carbide and use "
                   "with_measured_carbide."});
}

/// The state's own warnings that bear on the austenite; the others stay with the state.
void check_state(const State& state, Warnings& out) {
  for (const Warning& warning : state.warnings)
    for (const char* code :
         {"301", "302", "303", "304", "308", "310", "311", "312", "315", "318", "319",
          "345", "346", "347", "348", "349", "358", "360"})
      if (warning.code == std::string("gibbsteel.warning.") + code)
        out.push_back(warning);
}

bool has(const HardeningEstimates& result, std::string_view code) {
  return std::any_of(result.warnings.begin(), result.warnings.end(),
                     [&](const Warning& warning) { return warning.code == code; });
}

}  // namespace

std::string caution_of(const HardeningEstimates& result) {
  if (has(result, "gibbsteel.warning.345")) return kMeasuredCaution;
  if (has(result, codes::kShortSoakLimit)) return kShortSoakCaution;
  if (has(result, codes::kTimedSoak)) return kTimedSoakCaution;
  return kCaution;
}

std::vector<Warning> estimate_warnings(const State& state, bool by_mass,
                                       const HardeningEstimates& result) {
  Warnings out;
  check_matrix(state, result, out);
  check_liquid(state, result, out);
  check_ranges(result, out);
  check_start(result, out);
  check_nitrogen(state, out);
  check_family(state, result, out);
  check_offset(state, result, out);
  check_short_soak(state, result, out);
  if (by_mass)
    out.push_back(
        {"gibbsteel.warning.334",
         "A phase has no volume data: mass fractions stand for volume fractions."});
  return out;
}

void check_hardening(const State& state, bool by_mass, HardeningEstimates& result) {
  if (state.usable()) result.warnings = estimate_warnings(state, by_mass, result);
  check_state(state, result.warnings);
}

}  // namespace gibbsteel::internal
