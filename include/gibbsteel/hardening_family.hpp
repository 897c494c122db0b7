#pragma once
/// Families of steel: one martensite start equation does not fit all. What is added to
/// the general equation, from how many published records, and how they scatter.

#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/named_values.hpp"

namespace gibbsteel {

/// Offsets and rate are this library's own estimates from the few records named in
/// `fitted`. For start and rate the composition of the austenite is known (measured, or
/// no carbide left). For hardness it was computed where it is not known, by a soak with
/// the parameter file that ships: such an offset also takes up what that file has wrong
/// in the carbon of the austenite, and with another file, or with counted carbide, it
/// fits less well. All records of a steel are fitted to, or none; tests/reference
/// compares the others.
struct HardeningFamily {
  std::string key;             ///< "high-speed"
  std::string name;            ///< "high-speed and matrix-type steel"
  std::string rule;            ///< composition by which it is chosen [wt% of the steel]
  double start_offset = 0.0;   ///< added to Eq. (H12) [C]
  double start_error = 0.0;    ///< standard deviation [C]
  double start_scatter = 0.0;  ///< of the records about the offset [C]
  int start_records = 0;       ///< number of records behind the offset
  double transformation_rate = 0.0;  ///< in Eq. (H13) [1/C]
  double retained_error = 0.0;       ///< standard deviation of the fraction
  int retained_records = 0;          ///< number of records behind the rate
  /// Added to the as-quenched hardness [HV]; fades to 0 where less than half of the
  /// matrix transforms. Mean over the records of a steel, then over the steels.
  double hardness_offset = 0.0;
  /// Standard deviation [HV]: that of the steels held back, and not less than that of
  /// the equation itself.
  double hardness_error = 0.0;
  int hardness_records = 0;  ///< number of records behind the offset
  int hardness_steels = 0;   ///< number of steels that they are of
  int hardness_soaked = 0;   ///< of them: austenite computed with the shipped file
  std::string fitted;        ///< which records
  bool operator==(const HardeningFamily&) const = default;
};

/// All families: high-speed, chromium-cold-work, stainless, bearing, general.
const std::vector<HardeningFamily>& hardening_families();
/// By key. @throws InputError gibbsteel.input.242
const HardeningFamily& hardening_family(std::string_view key);
/// By composition of the steel [wt%], "general" when no other rule holds; near a border
/// the family with the largest share (HardeningEstimates::family_shares).
const HardeningFamily& hardening_family_of(const NamedValues& steel_weight_percent);

}  // namespace gibbsteel
