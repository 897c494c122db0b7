#include "gibbsteel/hardening.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "gibbsteel/hardness_scale.hpp"
#include "internal/hardening_chain.hpp"
#include "internal/hardening_warnings.hpp"
#include "internal/mixed_estimate.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/rockwell_scale.hpp"

namespace gibbsteel {
namespace {

using internal::Along;
using internal::HardeningBasis;
using internal::HardeningChoice;
using internal::HardnessPair;

Estimate blank(const char* name, const char* unit) {
  Estimate estimate;
  estimate.name = name;
  estimate.unit = unit;
  return estimate;
}

std::string key_and_label(const PropertyEquation& equation) {
  return equation.label.empty() ? equation.key
                                : equation.key + " (" + equation.label + ")";
}

/// " - 58" or " + 200".
std::string signed_text(double offset) {
  return (offset < 0.0 ? " - " : " + ") + internal::fixed(std::abs(offset), 0);
}

/// "1 record", "3 records".
std::string counted(int records) {
  return std::to_string(records) + (records == 1 ? " record" : " records");
}

/// "10 records of 3 steels, austenite of 9 computed with the shipped file".
std::string hardness_origin(const HardeningFamily& family) {
  std::string text = counted(family.hardness_records);
  if (family.hardness_steels > 1)
    text += " of " + std::to_string(family.hardness_steels) + " steels";
  if (family.hardness_soaked == 0) return text;
  const bool all = family.hardness_soaked == family.hardness_records;
  return text + ", austenite" +
         (all ? "" : " of " + std::to_string(family.hardness_soaked)) + " " +
         internal::kByShippedFile;
}

void append(std::vector<std::string>& to, const std::vector<std::string>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

/// Key, source, range and missing terms of an equation.
void describe(const PropertyEquation& equation, const NamedValues& weight_percent,
              Estimate& estimate) {
  estimate.equation = key_and_label(equation);
  estimate.source = equation.source;
  const auto outside = equation.range_remarks(weight_percent);
  estimate.in_range = outside.empty();
  append(estimate.remarks, outside);
  append(estimate.remarks, equation.term_remarks(weight_percent));
  if (!std::isnan(estimate.value)) return;
  estimate.remarks.push_back(equation.key + ": gives no number here");
}

/// Value with a band of `down` below and `up` above it, kept between two bounds.
void set_band(Estimate& estimate, double down, double up, double least, double most) {
  estimate.low = std::clamp(estimate.value - down, least, most);
  estimate.high = std::clamp(estimate.value + up, least, most);
}

Estimate start_estimate(const HardeningBasis& basis, const HardeningChoice& choice) {
  Estimate estimate = blank("martensite start", "C");
  estimate.value = internal::martensite_start(basis, choice).value;
  describe(choice.start, basis.weight_percent, estimate);
  if (!estimate.known()) return estimate;
  estimate.low = estimate.value - choice.start_error;
  estimate.high = estimate.value + choice.start_error;
  if (choice.offset == 0.0) return estimate;
  estimate.equation += signed_text(choice.offset) + " C";
  estimate.source += "; offset of the family: own estimate from " +
                     counted(choice.family.start_records);
  if (choice.family.start_records > 1)
    estimate.source +=
        ", scatter " + internal::fixed(choice.family.start_scatter, 0) + " C";
  return estimate;
}

/// Records are of quenches to room temperature [C].
constexpr double kRecordsFrom = 20.0;

void tell_cold(const HardeningChoice& choice, const std::string& compared,
               Estimate& estimate) {
  if (choice.coldest_celsius >= kRecordsFrom || !estimate.known()) return;
  estimate.remarks.push_back("below " + internal::fixed(kRecordsFrom, 0) + " C " +
                             compared);
}

/// Fraction of the austenite that stays, with its band.
Estimate fraction_estimate(const HardeningBasis& basis, const HardeningChoice& choice,
                           const Estimate& start) {
  constexpr double kErrorHoldsBelow = 0.25;
  Estimate estimate = blank("retained austenite", "");
  const auto fraction_at = [&](double celsius) {
    return internal::retained_fraction(basis, choice, {celsius, 0.0}).value;
  };
  estimate.value = fraction_at(start.value);
  describe(choice.austenite, basis.weight_percent, estimate);
  if (!estimate.known()) return estimate;
  tell_cold(choice, "no measurement was compared", estimate);
  const double error = choice.austenite_error;
  set_band(estimate, std::hypot(error, estimate.value - fraction_at(start.high)),
           std::hypot(error, fraction_at(start.low) - estimate.value), 0.0, 1.0);
  if (estimate.value > kErrorHoldsBelow)
    estimate.remarks.push_back(choice.austenite.key +
                               ": above 25 % the error is larger than the band says");
  return estimate;
}

/// The same in percent of what `share` of the whole was austenite.
Estimate in_percent(const Estimate& fraction, double share, const char* name) {
  Estimate estimate = fraction;
  estimate.name = name;
  estimate.unit = "vol%";
  for (double Estimate::*number : {&Estimate::value, &Estimate::low, &Estimate::high})
    estimate.*number *= 100.0 * share;
  return estimate;
}

Estimate vickers_estimate(const HardeningBasis& basis, const HardeningChoice& choice,
                          const Estimate& fraction) {
  Estimate estimate = blank("as-quenched hardness", "HV");
  const Along martensite = internal::martensite_hardness(basis, choice);
  const auto at = [&](double retained) {
    return internal::hardness(basis, choice, {martensite.value, 0.0}, {retained, 0.0});
  };
  const HardnessPair pair = at(fraction.value);
  const double hv = estimate.value = pair.mean().value;
  describe(choice.hardness, basis.weight_percent, estimate);
  estimate.equation += ", mixed by (H20)";
  estimate.source += "; mixture: own estimate";
  if (choice.hardness_offset != 0.0) {
    estimate.equation += signed_text(choice.hardness_offset) + " HV";
    estimate.source +=
        "; offset of the family: own estimate from " + hardness_origin(choice.family);
  }
  if (!estimate.known()) return estimate;
  tell_cold(choice,
            "one measurement was compared, a 0.65C-13Cr steel at -75 C" +
                std::string(choice.hardness_offset == 0.0
                                ? ""
                                : "; the offset of the family was found at room "
                                  "temperature and may be too much where less "
                                  "austenite stays"),
            estimate);
  const double fixed_part = std::hypot(
      choice.hardness_error, 0.5 * std::abs(pair.counted.value - pair.bare.value));
  set_band(estimate, std::hypot(fixed_part, hv - at(fraction.high).mean().value),
           std::hypot(fixed_part, at(fraction.low).mean().value - hv), 0.0,
           std::numeric_limits<double>::max());
  return estimate;
}

Estimate rockwell_estimate(const Estimate& vickers) {
  Estimate estimate = vickers;
  estimate.unit = "HRC";
  estimate.equation += ", HRC by (H21)";
  for (double Estimate::*number : {&Estimate::value, &Estimate::low, &Estimate::high})
    estimate.*number = internal::rockwell({vickers.*number, 0.0}).value;
  if (vickers.known() && !estimate.known())
    estimate.remarks.push_back("below 20 HRC, where the scale ends");
  else if (vickers.value > internal::kRockwellToHv) {
    estimate.in_range = false;
    estimate.remarks.push_back("(H21) is for 238 to 940 HV");
  }
  if (std::isnan(estimate.low) && estimate.known()) estimate.low = 20.0;
  return estimate;
}

Estimate grain_estimate(const HardeningBasis& basis, const HardeningChoice& choice,
                        const HardeningOptions& options) {
  Estimate estimate = blank("austenite grain limit", "um");
  if (!options.particle_diameter) {
    estimate.remarks.push_back("give the mean diameter of the carbide to get it");
    return estimate;
  }
  PropertyInput input;
  input.weight_percent = basis.weight_percent;
  input.particle_diameter = *options.particle_diameter;
  input.carbide_fraction = basis.carbide.value;
  if (!(input.carbide_fraction > 0.0)) {
    estimate.remarks.push_back("no carbide is left that pins the grains");
    return estimate;
  }
  const auto limit = [&](const char* key) {
    return options.equations.at(PropertyKind::grain_pinning, key).value(input);
  };
  estimate.value = internal::grain_limit(basis, choice).value;
  describe(choice.pinning, basis.weight_percent, estimate);
  if (!estimate.known()) return estimate;
  estimate.low = std::min(estimate.value, limit("hillert"));
  estimate.high = std::max(estimate.value, limit("zener"));
  estimate.remarks.push_back("band: from hillert (H22) to zener (H23)");
  return estimate;
}

void no_austenite(const char* reason, HardeningEstimates& result) {
  result.martensite_start = blank("martensite start", "C");
  result.retained_austenite = blank("retained austenite", "vol%");
  result.retained_austenite_of_matrix =
      blank("retained austenite of the matrix", "vol%");
  result.hardness_hv = blank("as-quenched hardness", "HV");
  result.hardness_hrc = blank("as-quenched hardness", "HRC");
  result.grain_diameter = blank("austenite grain limit", "um");
  for (Estimate* estimate : {&result.martensite_start, &result.retained_austenite,
                             &result.retained_austenite_of_matrix, &result.hardness_hv,
                             &result.hardness_hrc, &result.grain_diameter})
    estimate->remarks = {reason};
}

/// The numbers of one family.
void estimate_one(const HardeningBasis& basis, const HardeningChoice& choice,
                  HardeningEstimates& result) {
  const double share = basis.austenite.value / basis.matrix.value;
  result.martensite_start = start_estimate(basis, choice);
  const Estimate fraction = fraction_estimate(basis, choice, result.martensite_start);
  result.retained_austenite =
      in_percent(fraction, basis.austenite.value, "retained austenite");
  result.retained_austenite_of_matrix =
      in_percent(fraction, share, "retained austenite of the matrix");
  result.hardness_hv = vickers_estimate(basis, choice, fraction);
}

void estimate_all(const HardeningBasis& basis,
                  const std::vector<internal::SharedChoice>& choices,
                  const HardeningOptions& options, HardeningEstimates& result) {
  result.austenite = basis.weight_percent;
  result.austenite_percent = 100.0 * basis.austenite.value / basis.matrix.value;
  std::vector<HardeningEstimates> ones;
  for (const auto& each : choices) {
    ones.emplace_back();
    estimate_one(basis, each.choice, ones.back());
  }
  for (Estimate HardeningEstimates::*estimate :
       {&HardeningEstimates::martensite_start, &HardeningEstimates::retained_austenite,
        &HardeningEstimates::retained_austenite_of_matrix,
        &HardeningEstimates::hardness_hv})
    result.*estimate = internal::mixed_estimate(ones, estimate, result.family_shares);
  result.hardness_hrc = rockwell_estimate(result.hardness_hv);
  result.grain_diameter = grain_estimate(basis, choices.front().choice, options);
}

/// NaN where there is no matrix (molten).
TradeIndices indices_of_matrix(const State& state) {
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  if (state.matrix_phases().empty()) return {kNone, kNone, kNone};
  return trade_indices(state.matrix.weight_percent);
}

}  // namespace

HardeningEstimates hardening(const State& state, const HardeningOptions& options) {
  const auto choices = internal::choose(state, options);
  HardeningEstimates result;
  result.steel = state.steel;
  result.analysis = state.analysis;
  result.parameters = state.parameters;
  result.parameters_hash = state.parameters_hash;
  result.condition = internal::condition(state);
  result.soak = state.temperature;
  result.coldest = options.coldest;
  result.family = choices.front().choice.family;
  result.family_chosen = options.family.has_value();
  for (const auto& [share, choice] : choices)
    result.family_shares.set(choice.family.key, share.value);
  result.matrix_indices = indices_of_matrix(state);
  result.steel_indices = trade_indices(state.analysis.given);
  const HardeningBasis basis = internal::hardening_basis(state, nullptr);
  if (!state.usable())
    no_austenite("the state is not usable", result);
  else if (!basis.austenite_present)
    no_austenite("there is no austenite: nothing hardens", result);
  else
    estimate_all(basis, choices, options, result);
  internal::check_hardening(state, basis.by_mass, result);
  return result;
}

}  // namespace gibbsteel
