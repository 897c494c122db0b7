/// Hexagonal MC (WC) that the file forms in low-alloy steels and stock does not hold:
/// what results say of it.

#include <doctest/doctest.h>

#include "bearing_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

/// The text of warning 310, if the soak has one.
std::string weak_spot(const NamedValues& steel, double at) {
  for (const Warning& warning : Steel(steel).soak(celsius(at)).warnings)
    if (warning.code == "gibbsteel.warning.310") return warning.text;
  return "";
}

}  // namespace

TEST_CASE("hexagonal MC that stands in the way can be left out, and it says so") {
  const Steel tungsten(
      {{"C", 1.2}, {"Cr", 0.2}, {"W", 2.0}, {"Mn", 0.3}, {"Si", 0.25}});
  CHECK(message([&] { short_soak_limit(tungsten.soak(celsius(800))); }) ==
        "[gibbsteel.input.284] short and timed soaks: are for steels whose annealed "
        "carbide is cementite (52100, O1, W1 types): annealing at 700 C leaves 0.13 "
        "of 1.20 wt% carbon, more than a tenth, in carbide that gives up carbon only "
        "with its metals: hexagonal MC; soak with suppressed=\"hexagonal MC\", which "
        "commercial stock hardly holds, or take the long-hold limit (after minutes "
        "less carbon is in the matrix in practice), or count the carbide and use "
        "with_measured_carbide");
  SoakOptions stock;
  stock.suppressed = {"hexagonal MC"};
  const State long_hold = tungsten.soak(celsius(800), stock);
  CHECK(carbon(short_soak_limit(long_hold)) <
        long_hold.matrix.weight_percent["C"] - 0.03);
}

TEST_CASE("310: hexagonal MC of low-alloy steels") {
  const std::string text =
      "Known weak spot: hexagonal MC of low-alloy steels (WC, MoC) is not expected in "
      "commercial stock: WC comes with long heating only, and molybdenum forms M2C or "
      "M23C6 (common practice, no source). Soak with suppressed=\"hexagonal MC\" and "
      "compare.";
  const NamedValues tungsten{{"C", 1.2}, {"Cr", 0.2}, {"W", 2.0}, {"Mn", 0.3}};
  CHECK(weak_spot(tungsten, 800) == text);
  CHECK(weak_spot(tungsten, 1200).empty());  // gone
  const NamedValues molybdenum{{"C", 0.4}, {"Mo", 0.5}, {"Mn", 0.7}};
  CHECK(weak_spot(molybdenum, 650) == text);
  CHECK(weak_spot({{"C", 0.4}, {"Mn", 0.7}}, 650).empty());
}
