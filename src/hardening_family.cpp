#include "gibbsteel/hardening_family.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/family_mix.hpp"

namespace gibbsteel {
namespace {

/// With the published rate of Eq. (H13) and the error that it has there.
HardeningFamily named(const char* key, const char* name, const char* rule) {
  HardeningFamily family;
  family.key = key;
  family.name = name;
  family.rule = rule;
  family.transformation_rate = 0.011;
  family.retained_error = 0.05;
  family.start_error = 30.0;
  family.hardness_error = 40.0;
  return family;
}

// Offsets, rates and their errors: tests/reference/hardening_families.py prints how
// they follow from the records; tests hold this table against it. Where records are
// soaked, hardness follows from the parameter file too: again for every edition.
HardeningFamily high_speed_family() {
  HardeningFamily family = named("high-speed", "high-speed and matrix-type steel",
                                 "C 0.45 or more, Cr 3 to 6, Mo + W/2 2.6 or more");
  family.start_offset = -69.0;
  family.start_records = 1;
  family.transformation_rate = 0.0073;
  family.retained_error = 0.15;
  family.retained_records = 2;
  family.hardness_offset = 160.0;
  family.hardness_error = 43.0;
  family.hardness_records = 10;
  family.hardness_steels = 3;
  family.hardness_soaked = 9;
  family.fitted =
      "T1 (start), T1 and M2 (retained austenite), austenite measured after hardening; "
      "hardness: M2, M35 and M42, austenite measured in one record of M2, else "
      "computed with the shipped file";
  return family;
}

HardeningFamily cold_work_family() {
  HardeningFamily family =
      named("chromium-cold-work", "high-carbon high-chromium cold-work steel",
            "Cr 10.5 or more, Cr - 5 C below 7");
  family.start_offset = -39.0;
  family.start_scatter = 6.0;
  family.start_records = 2;
  family.hardness_offset = 43.0;
  family.hardness_records = 1;
  family.hardness_steels = 1;
  family.fitted = "D2 and D3 (hardness: D2), austenite measured on steels like them";
  return family;
}

HardeningFamily stainless_family() {
  HardeningFamily family = named("stainless", "martensitic stainless steel",
                                 "Cr 10.5 or more, Cr - 5 C 7 or more");
  family.start_offset = -24.0;
  family.start_scatter = 18.0;
  family.start_records = 3;
  family.hardness_offset = 68.0;
  family.hardness_records = 3;
  family.hardness_steels = 2;
  family.hardness_soaked = 3;
  family.fitted =
      "three 12 to 13Cr steels without carbide; hardness: two 0.3 to 0.4C-13Cr steels, "
      "austenite computed with the shipped file";
  return family;
}

HardeningFamily bearing_family() {
  HardeningFamily family =
      named("bearing", "bearing, oil- and water-hardening high-carbon steel",
            "C 0.75 to 1.3, Cr 2 or less, Mo + W/2 0.6 or less, V 0.6 or less");
  family.start_offset = -21.0;
  family.start_scatter = 12.0;
  family.start_records = 3;
  family.hardness_offset = 51.0;
  family.hardness_records = 1;
  family.hardness_steels = 1;
  family.fitted = "three 0.8 to 1C-1.4Cr steels without carbide; hardness: 52100";
  return family;
}

HardeningFamily general_family() {
  HardeningFamily family = named("general", "tool steel", "any other");
  family.fitted = "none: the equation as it stands";
  return family;
}

}  // namespace

const std::vector<HardeningFamily>& hardening_families() {
  static const std::vector<HardeningFamily> families{
      high_speed_family(), cold_work_family(), stainless_family(), bearing_family(),
      general_family()};
  return families;
}

const HardeningFamily& hardening_family(std::string_view key) {
  std::string known;
  for (const HardeningFamily& family : hardening_families()) {
    if (family.key == key) return family;
    known += (known.empty() ? "" : ", ") + family.key;
  }
  throw InputError(
      {{"gibbsteel.input.242", "family",
        "there is no family '" + std::string(key) + "'", "choose one of " + known}});
}

const HardeningFamily& hardening_family_of(const NamedValues& steel_weight_percent) {
  return *internal::family_shares(steel_weight_percent).front().family;
}

}  // namespace gibbsteel
