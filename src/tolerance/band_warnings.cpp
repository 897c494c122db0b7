#include "tolerance/band_warnings.hpp"

#include <algorithm>
#include <cmath>

#include "internal/error_codes.hpp"
#include "internal/family_borders.hpp"
#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel::internal {
namespace {

using Warnings = std::vector<Warning>;

void add(std::string_view code, const std::string& text, Warnings& warnings) {
  warnings.push_back({std::string(code), text});
}

void append(std::string& list, const std::string& item) {
  list += (list.empty() ? "" : ", ") + item;
}

/// Each distinct remark once.
void first_order(const Band& band, Warnings& warnings) {
  std::vector<std::string> seen;
  for (const QuantityBand& q : band.quantities) {
    const std::string& remark = q.first_order.remark;
    if (remark.empty() || std::find(seen.begin(), seen.end(), remark) != seen.end())
      continue;
    seen.push_back(remark);
    add(codes::kFirstOrderDoubtful,
        (q.first_order.one_sided
             ? "The first-order bands hold on one side of a phase change only: "
             : "There is no first-order band: ") +
            remark + ". Read the sampled bands.",
        warnings);
  }
}

void left_out(const std::string& what, std::size_t all,
              const std::vector<UnusableSample>& unusable, Warnings& warnings) {
  if (unusable.empty()) return;
  add(codes::kSamplesLeftOut,
      std::to_string(unusable.size()) + " of " + std::to_string(all) + " " + what +
          " gave no usable result and are left out of the bands; the first: " +
          unusable.front().reason + ".",
      warnings);
}

/// Quantities that some samples have and others lack: the matrix of molten ones.
void without_number(const Band& band, Warnings& warnings) {
  const std::size_t usable = band.samples - band.unusable.size();
  std::size_t most = 0;
  std::string list;
  for (const QuantityBand& q : band.quantities) {
    if (q.sampled.count == 0 || q.sampled.count >= usable) continue;
    most = std::max(most, usable - q.sampled.count);
    append(list, q.name);
  }
  if (!list.empty())
    add(codes::kSamplesLeftOut,
        "Up to " + std::to_string(most) + " of " + std::to_string(usable) +
            " samples have no number for " + list +
            ": their bands are those of the others.",
        warnings);
}

void beyond_corners(const ToleranceBand& band, Warnings& warnings) {
  std::string list;
  for (const QuantityBand& q : band.quantities) {
    const double allowed = 1e-9 * (1.0 + std::abs(q.nominal));
    if (q.sampled.lowest < q.lowest_corner.value - allowed ||
        q.sampled.highest > q.highest_corner.value + allowed)
      append(list, q.name);
  }
  if (!list.empty())
    add(codes::kBeyondCorners,
        "Some samples lie beyond the worst corners found: " + list +
            ". Either the extreme is not at a corner, or a standard deviation reaches "
            "beyond the box.",
        warnings);
}

void outside_validity(const ParameterSet& set, const ToleranceBand& band,
                      Warnings& warnings) {
  std::string list;
  for (const TolerancedInput& input : band.inputs) {
    const ElementRange* range = set.find_range(input.name);
    if (range && (input.low < range->low || input.high > range->high))
      append(list, input.name + " (" + significant(range->low, 4) + " to " +
                       significant(range->high, 4) + " wt%)");
    const double offset = Temperature::celsius(0.0).in_kelvin();
    if (input.name == "temperature" && (input.low + offset < set.lowest_temperature ||
                                        input.high + offset > set.highest_temperature))
      append(list, "temperature (" +
                       degrees({Temperature::kelvin(set.lowest_temperature),
                                Temperature::kelvin(set.highest_temperature)},
                               band.temperature_unit) +
                       ")");
  }
  if (!list.empty())
    add(codes::kToleranceOutside,
        "The tolerances reach outside the validity of the parameter file: " + list +
            ".",
        warnings);
}

void phase_changes(const Band& band, Warnings& warnings) {
  std::string list;
  for (const PhaseShare& phase : band.phases)
    if (phase.share != (phase.nominal ? 1.0 : 0.0) && !std::isnan(phase.share))
      append(list, phase.kind + " in " + fixed(100.0 * phase.share, 1) +
                       " % of the samples (nominal state: " +
                       (phase.nominal ? "present" : "absent") + ")");
  if (!list.empty())
    add(codes::kPhasesChange,
        "Phases come and go within the tolerances: " + list +
            ". First-order bands do not see this.",
        warnings);
}

/// Phases that are present and of whose energy the band takes all numbers as exact.
void exact_phases(const std::vector<parameter_file::UncertainNumber>& numbers,
                  const State& state, Warnings& warnings) {
  std::string list;
  for (const Occurrence& o : state.occurrences) {
    const bool covered =
        std::any_of(numbers.begin(), numbers.end(), [&](const auto& number) {
          return parameter_file::acts_on(number, o.phase, state.analysis.modelled);
        });
    if (!covered) append(list, o.name);
  }
  if (!list.empty())
    add(codes::kExactPhases,
        "In this steel no energy of these phases has a standard deviation: " + list +
            ". The band leaves out how uncertain they are; a narrow one says nothing.",
        warnings);
}

}  // namespace

std::vector<Warning> band_warnings(const Band& band) {
  Warnings warnings;
  first_order(band, warnings);
  left_out("samples", band.samples, band.unusable, warnings);
  without_number(band, warnings);
  phase_changes(band, warnings);
  return warnings;
}

std::vector<Warning> border_warnings(const ToleranceBand& band) {
  const NamedValues& steel = band.nominal.analysis.modelled;
  Warnings warnings;
  add_distinct(near_border(steel), warnings);
  for (const TolerancedInput& input : band.inputs)
    if (input.name != "temperature")
      add_distinct(border_within(steel, input.name, input.low, input.high), warnings);
  return warnings;
}

std::vector<Warning> tolerance_warnings(const ParameterSet& set,
                                        const ToleranceBand& band) {
  Warnings warnings = band_warnings(band);
  left_out("corners", band.corners, band.unusable_corners, warnings);
  beyond_corners(band, warnings);
  outside_validity(set, band, warnings);
  return warnings;
}

std::vector<Warning> parameter_warnings(
    const std::vector<parameter_file::UncertainNumber>& numbers, const Band& band) {
  Warnings warnings;
  exact_phases(numbers, band.nominal, warnings);
  const Warnings others = band_warnings(band);
  warnings.insert(warnings.end(), others.begin(), others.end());
  return warnings;
}

}  // namespace gibbsteel::internal
