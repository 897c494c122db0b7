/// A mill certificate: what is refused, word for word, and what enters the calculation.

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/mill_analysis.hpp"
#include "gibbsteel/parameter_file.hpp"

using namespace gibbsteel;

namespace {

std::string refusal(const NamedValues& weight_percent) {
  try {
    read_analysis(weight_percent, *default_parameters());
  } catch (const InputError& error) {
    return error.what();
  }
  return "accepted";
}

MillAnalysis read(const NamedValues& weight_percent, bool bind = false) {
  return read_analysis(weight_percent, *default_parameters(), bind);
}

// IUPAC 2021 abridged standard atomic weights (from memory).
constexpr double kManganese = 54.938, kSulfur = 32.06, kTitanium = 47.867;
constexpr double kNiobium = 92.906, kVanadium = 50.942, kNitrogen = 14.007;

}  // namespace

TEST_CASE("every problem of a composition is named at once") {
  constexpr double kInfinity = std::numeric_limits<double>::infinity();
  CHECK(refusal({{"cr", 4.0},
                 {"Qq", 1.0},
                 {"C", std::nan("")},
                 {"Mo", kInfinity},
                 {"W", -0.1},
                 {"V", 120.0},
                 {"Heat", 7411.0}}) ==
        "[gibbsteel.input.201] composition: 'cr' is not the symbol of an element; "
        "did you mean 'Cr'?\n"
        "[gibbsteel.input.201] composition: 'Qq' is not the symbol of an element; "
        "give symbols such as C, Cr, Mo\n"
        "[gibbsteel.input.202] composition, C: is nan, not a number; give weight "
        "percent, or leave the element out where it was not measured\n"
        "[gibbsteel.input.202] composition, Mo: is inf, not a finite number; "
        "give weight percent, from 0 to 100\n"
        "[gibbsteel.input.203] composition, W: is negative: -0.1; "
        "give weight percent, from 0 to 100\n"
        "[gibbsteel.input.204] composition, V: is above 100: 120; "
        "give weight percent, from 0 to 100\n"
        "[gibbsteel.input.201] composition: 'Heat' is not the symbol of an element; "
        "give symbols such as C, Cr, Mo");
}

TEST_CASE("an empty composition is no steel") {
  CHECK(
      refusal({}) ==
      "[gibbsteel.input.208] composition: is empty; give weight percent by symbol, for "
      "instance 0.55 C; pure iron is 100 Fe");
  CHECK(refusal({{"Fe", 100.0}}) == "accepted");
}

TEST_CASE("brief: as given, with four significant digits") {
  CHECK(read({{"C", 0.55}, {"Cr", 4.12345}, {"S", 0.02}, {"Cu", 0.0}}).brief() ==
        "0.55C 4.123Cr 0.02S, balance Fe");
  CHECK(read({{"Fe", 99.2}, {"C", 0.8}}).brief() == "0.8C, balance Fe");
  CHECK(read({{"Fe", 100.0}}).brief() == "Fe");
  CHECK(read({{"Cr", 90.0}, {"C", 10.0}}).brief() == "90Cr 10C");
}

TEST_CASE("sums that cannot be") {
  CHECK(refusal({{"Cr", 60.0}, {"Co", 40.5}}) ==
        "[gibbsteel.input.204] composition: sums to 100.50; "
        "the sum cannot be above 100 weight percent");
  CHECK(refusal({{"Fe", 95.0}, {"C", 1.0}}) ==
        "[gibbsteel.input.207] composition: sums to 96.00 with Fe; "
        "make it 100, or leave Fe out: it is the balance");
  CHECK(refusal({{"Cu", 60.0}, {"Sn", 40.0}}) ==
        "[gibbsteel.input.208] composition: holds no element that the parameter file "
        "models; give at least one of its elements");
}

TEST_CASE(
    "Fe may be given when the sum is 100 within 0.05, and is then taken as given") {
  const MillAnalysis analysis = read({{"Fe", 98.96}, {"C", 1.0}});
  CHECK(analysis.modelled["Fe"] == 98.96);
  CHECK(refusal({{"Fe", 98.94}, {"C", 1.0}}) != "accepted");
}

TEST_CASE("Fe is what everything else leaves, the elements not modelled included") {
  const MillAnalysis analysis =
      read({{"C", 1.0}, {"Cu", 0.5}, {"Cr", 1.5}, {"S", 0.03}, {"Mo", 0.0}});
  CHECK(analysis.modelled["Fe"] == doctest::Approx(96.97).epsilon(1e-12));
  CHECK(analysis.modelled.begin()->first == "Fe");
  CHECK(analysis.modelled["Cr"] == 1.5);
  CHECK(analysis.not_modelled == NamedValues{{"Cu", 0.5}, {"S", 0.03}});
  CHECK(analysis.bound.empty());
}

TEST_CASE("a composition without iron is allowed, whatever the rounding of its sum") {
  CHECK(read({{"Cr", 90.0}, {"C", 10.0}}).modelled["Fe"] == 0.0);
  // 33.4 + 33.3 + 33.3 is above 100 in double precision for some orders of addition.
  const MillAnalysis analysis = read({{"Cr", 33.3}, {"W", 33.3}, {"Mo", 33.4}});
  CHECK(analysis.modelled["Fe"] >= 0.0);
  CHECK(analysis.modelled["Fe"] < 1e-12);
}

TEST_CASE("iron that the parameter file does not model is kept as not modelled") {
  auto set = *default_parameters();
  std::erase_if(set.elements, [](const Element& e) { return e.symbol == "Fe"; });
  const MillAnalysis analysis = read_analysis({{"Cr", 30.0}, {"C", 1.0}}, set);
  CHECK_FALSE(analysis.modelled.contains("Fe"));
  CHECK(analysis.not_modelled["Fe"] == doctest::Approx(69.0).epsilon(1e-12));
}

TEST_CASE("mole fractions: 0.80 wt% C is 3.61 at%, by the atomic weights") {
  const auto fractions = read({{"C", 0.80}}).mole_fractions(*default_parameters());
  const double carbon = 0.80 / 12.011, iron = 99.20 / 55.845;
  CHECK(fractions["C"] == doctest::Approx(carbon / (carbon + iron)).epsilon(1e-4));
  CHECK(fractions["C"] == doctest::Approx(0.0361).epsilon(2e-3));
  CHECK(fractions.sum() == doctest::Approx(1.0).epsilon(1e-15));
}

TEST_CASE("elements at zero, or below a mole fraction of 1e-15, count as absent") {
  const auto fractions = read({{"C", 0.5}, {"Cr", 0.0}, {"Mo", 1e-14}, {"W", 1e-9}})
                             .mole_fractions(*default_parameters());
  CHECK_FALSE(fractions.contains("Cr"));
  CHECK_FALSE(fractions.contains("Mo"));
  CHECK(fractions["W"] > 0.0);
}

TEST_CASE("mole fractions need the set that the analysis was read with") {
  const MillAnalysis analysis = read({{"C", 0.5}, {"Cr", 1.0}, {"Mo", 0.0}});
  auto set = *default_parameters();
  std::erase_if(set.elements, [](const Element& e) { return e.symbol.size() == 2; });
  CHECK_THROWS_WITH_AS(analysis.mole_fractions(set),
                       "[gibbsteel.input.206] composition, Fe: is not modelled by this "
                       "parameter set; use the set that the analysis was read with\n"
                       "[gibbsteel.input.206] composition, Cr: is not modelled by this "
                       "parameter set; use the set that the analysis was read with",
                       InputError);
}

TEST_CASE("nothing is bound unless asked for") {
  const MillAnalysis analysis = read({{"Mn", 0.3}, {"S", 0.1}, {"N", 0.02}});
  CHECK(analysis.modelled["Mn"] == 0.3);
  CHECK(analysis.bound.empty());
}

TEST_CASE("S ties up Mn atom for atom until one of the two is used up") {
  const MillAnalysis enough = read({{"Mn", 0.5}, {"S", 0.1}}, true);
  const double tied = 0.1 * kManganese / kSulfur;
  CHECK(enough.modelled["Mn"] == doctest::Approx(0.5 - tied).epsilon(1e-4));
  CHECK(enough.not_modelled["S"] == doctest::Approx(0.0));
  REQUIRE(enough.bound.size() == 1);
  CHECK(enough.bound[0].name == "MnS");
  CHECK(enough.bound[0].weight_percent == doctest::Approx(0.1 + tied).epsilon(1e-4));
  CHECK(enough.modelled["Fe"] == doctest::Approx(99.4).epsilon(1e-12));

  const MillAnalysis scarce = read({{"Mn", 0.1}, {"S", 0.1}}, true);
  CHECK(scarce.modelled["Mn"] == doctest::Approx(0.0));
  const double left = 0.1 - 0.1 * kSulfur / kManganese;
  CHECK(scarce.not_modelled["S"] == doctest::Approx(left).epsilon(1e-4));
}

TEST_CASE("N ties up Ti first, then Nb, then V") {
  // 0.05 Ti takes 0.01463 N, 0.05 Nb 0.00754 N; the rest of 0.03 N goes to V.
  const MillAnalysis analysis =
      read({{"V", 1.0}, {"Nb", 0.05}, {"Ti", 0.05}, {"N", 0.03}}, true);
  const double by_titanium = 0.05 * kNitrogen / kTitanium;
  const double by_niobium = 0.05 * kNitrogen / kNiobium;
  const double rest = 0.03 - by_titanium - by_niobium;
  REQUIRE(analysis.bound.size() == 3);
  CHECK(analysis.bound[0].name == "TiN");
  CHECK(analysis.bound[1].name == "NbN");
  CHECK(analysis.bound[2].name == "VN");
  CHECK(analysis.bound[0].weight_percent ==
        doctest::Approx(0.05 + by_titanium).epsilon(1e-4));
  CHECK(analysis.not_modelled["Nb"] == doctest::Approx(0.0));
  CHECK(analysis.modelled["V"] ==
        doctest::Approx(1.0 - rest * kVanadium / kNitrogen).epsilon(1e-4));
}

TEST_CASE("S and N tie up nothing where the parameter set models them") {
  const auto set = load_parameters(GIBBSTEEL_SOURCE_DIR
                                   "/thermo_data/layers/niobium_titanium_nitrogen.json",
                                   default_parameters());
  const NamedValues given{{"C", 1.05}, {"V", 2.0},  {"Nb", 0.3}, {"Ti", 0.02},
                          {"Mn", 0.3}, {"N", 0.12}, {"S", 0.02}};
  const MillAnalysis off = read_analysis(given, *set);
  const MillAnalysis on = read_analysis(given, *set, true);
  NamedValues without_sulfide = off.modelled;
  without_sulfide.set("Mn", on.modelled["Mn"]);
  CHECK(on.modelled == without_sulfide);
  CHECK(on.modelled["N"] == 0.12);
  REQUIRE(on.bound.size() == 1);
  CHECK(on.bound[0].name == "MnS");
}
