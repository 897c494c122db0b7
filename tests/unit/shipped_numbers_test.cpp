/// Hardness offsets that rest on soaks with the shipped file, under another set.

#include "internal/shipped_numbers.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "first_edition.hpp"
#include "gibbsteel/hardening.hpp"
#include "gibbsteel/hardening_quantities.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/steel.hpp"

using namespace gibbsteel;

namespace {

constexpr const char* kCode = "gibbsteel.warning.338";

SharedParameters with_layer(const std::string& name) {
  return load_parameters(
      std::string(GIBBSTEEL_SOURCE_DIR) + "/thermo_data/layers/" + name + ".json",
      default_parameters());
}

State m2(const SharedParameters& set) {
  const NamedValues percents{
      {"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};
  return Steel(percents, {"M2", set, false}).soak(Temperature::celsius(1200));
}

std::string told(const std::vector<Warning>& warnings) {
  for (const Warning& warning : warnings)
    if (warning.code == kCode) return warning.text;
  return "";
}

}  // namespace

TEST_CASE("layers that only add leave the shipped numbers, others do not") {
  const auto has = [](const SharedParameters& set, const std::string& more = "") {
    return internal::has_shipped_numbers(set->title() + more, content_hash(*set));
  };
  CHECK(has(default_parameters()));
  CHECK(has(with_layer("liquid")));
  CHECK(has(with_layer("niobium_titanium_nitrogen")));
  CHECK(has(with_layer("niobium_titanium_nitrogen"),
            " + Liquid: where tool steels melt (edition 3)"));
  CHECK_FALSE(has(with_layer("iron_as_measured")));
  CHECK_FALSE(has(first_edition()));
  CHECK_FALSE(has(default_parameters(), " + Calibrated numbers (edition 1)"));
  CHECK_FALSE(internal::has_shipped_numbers("Another file (edition 1)", ""));
}

TEST_CASE("a file that was edited under the title that ships has other numbers") {
  std::string text = write_parameters(*default_parameters());
  const std::string energy = "-130337.5";  // of M6C, in J/mol
  const auto at = text.find(energy);
  REQUIRE(at != std::string::npos);
  text.replace(at, energy.size(), "-90337.5");
  const SharedParameters edited = parse_parameters(text, "edited.json");
  REQUIRE(edited->title() == default_parameters()->title());
  CHECK(told(hardening(m2(edited)).warnings) != "");
}

TEST_CASE("338: the offset of hardness was fitted with other numbers") {
  const std::string text =
      "The hardness offset of the family was fitted with the austenite that the "
      "shipped "
      "file computes; this parameter set has other numbers, and how well the offset "
      "fits with them is not known. Compare with hardness that you measured.";
  const State other = m2(with_layer("iron_as_measured"));
  CHECK(told(hardening(other).warnings) == text);
  CHECK(told(hardening(m2(default_parameters())).warnings) == "");
  CHECK(told(hardening(m2(with_layer("liquid"))).warnings) == "");
  SUBCASE("not where no such offset is used") {
    HardeningOptions options;
    options.martensite_hardness = "just";
    CHECK(told(hardening(other, options).warnings) == "");
    options = {};
    options.family = "chromium-cold-work";
    CHECK(told(hardening(other, options).warnings) == "");
  }
  SUBCASE("on quantities that are hardness, not on the others") {
    CHECK(told(quantities::hardness_hrc().warnings(other)) == text);
    CHECK(told(quantities::hardness_hv().warnings(other)) == text);
    CHECK(told(quantities::martensite_start().warnings(other)) == "");
    CHECK(told(quantities::retained_austenite().warnings(other)) == "");
  }
}
