/// The equations of the trade: published worked examples, gradients, the registry.

#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/hardness_scale.hpp"
#include "gibbsteel/property_equations.hpp"
#include "gibbsteel/trade_indices.hpp"

using namespace gibbsteel;

namespace {

// Worked examples: computed by hand, from the same sources, for three matrices before
// this code was written. The numbers are rounded to the last digit shown.
const NamedValues kX{{"C", 0.60}, {"Mn", 0.35}, {"Si", 0.30},
                     {"Cr", 6.0}, {"Mo", 0.7},  {"V", 0.3}};  // 1.5C-12Cr at 1040 C
const NamedValues kY{{"C", 0.50}, {"Mn", 0.50}, {"Si", 0.40}, {"Cr", 12.5}};
const NamedValues kZ{
    {"C", 0.62}, {"Mn", 0.33}, {"Si", 0.25}, {"Cr", 1.05}, {"Ni", 0.1}};

double start(const char* key, const NamedValues& matrix) {
  PropertyInput input;
  input.weight_percent = matrix;
  return PropertyEquations().at(PropertyKind::martensite_start, key).value(input);
}

double retained(const char* key, const NamedValues& matrix) {
  PropertyInput input;
  input.weight_percent = matrix;
  input.martensite_start = start("van-bohemen", matrix);
  return PropertyEquations().at(PropertyKind::retained_austenite, key).value(input);
}

double martensite(const char* key, double carbon) {
  PropertyInput input;
  input.weight_percent = {{"C", carbon}};
  return PropertyEquations().at(PropertyKind::martensite_hardness, key).value(input);
}

double grain(const char* key) {
  PropertyInput input;
  input.particle_diameter = 0.5;
  input.carbide_fraction = 0.05;
  return PropertyEquations().at(PropertyKind::grain_pinning, key).value(input);
}

/// A composition that a hardened tool steel can have in its austenite, and a start.
PropertyInput random_input(std::mt19937& generator) {
  const auto up_to = [&](double most) {
    return std::uniform_real_distribution(0.02, most)(generator);
  };
  PropertyInput input;
  input.weight_percent = {
      {"C", 0.1 + up_to(0.45)}, {"Mn", up_to(1.5)}, {"Si", up_to(1.5)},
      {"Cr", up_to(13.0)},      {"Ni", up_to(2.0)}, {"Mo", up_to(5.0)},
      {"W", up_to(8.0)},        {"V", up_to(2.0)},  {"Co", up_to(8.0)},
      {"Cu", up_to(0.3)},       {"N", up_to(0.1)},  {"Nb", up_to(0.05)}};
  input.martensite_start = 120.0 + up_to(200.0);
  input.particle_diameter = 0.2 + up_to(1.0);
  input.carbide_fraction = 0.01 + up_to(0.1);
  return input;
}

}  // namespace

TEST_CASE("martensite start: worked examples") {
  struct Row {
    const char* key;
    double x, y, z;
  };
  for (const Row& row :
       {Row{"steven-haynes", 148, 95, 237}, Row{"andrews-linear", 197, 161, 252},
        Row{"andrews-product", 143, 87, 270}, Row{"stuhlmann", 188, 105, 297},
        Row{"capdevila", 243, 207, 279}, Row{"van-bohemen", 219, 191, 270},
        Row{"barbier", 222, 196, 269}, Row{"ingber-kunert", 177, 76, 280},
        Row{"finkler-schirra", 211, 169, 311}}) {
    CAPTURE(row.key);
    CHECK(std::abs(start(row.key, kX) - row.x) <= 0.51);
    CHECK(std::abs(start(row.key, kY) - row.y) <= 0.51);
    CHECK(std::abs(start(row.key, kZ) - row.z) <= 0.51);
  }
}

TEST_CASE("martensite start: what other forms of the same equations give") {
  // Capdevila's paper has kelvin: 764.2 - 302.6 C - ...
  CHECK(start("capdevila", {}) + 273.15 == doctest::Approx(764.2).epsilon(1e-9));
  // Payson & Savage by hand for 1 % C: 930 - 570 = 360 F.
  CHECK(start("payson-savage", {{"C", 1.0}}) ==
        doctest::Approx((360.0 - 32.0) / 1.8).epsilon(1e-12));
  // Kung & Rayment: 10 C up per % Co, 7.5 C down per % Si.
  const NamedValues richer{{"C", 0.5}, {"Co", 8.0}, {"Si", 2.0}};
  for (const std::string key : {"steven-haynes", "andrews-linear", "andrews-product"})
    CHECK(start((key + "-co-si").c_str(), richer) ==
          doctest::Approx(start(key.c_str(), richer) + 65.0).epsilon(1e-12));
  CHECK(start("exponential-mean", kX) ==
        doctest::Approx(0.5 * (start("van-bohemen", kX) + start("barbier", kX))));
}

TEST_CASE("retained austenite: worked examples, 20 C") {
  struct Row {
    const char* key;
    double x, y, z;
  };
  for (const Row& row : {Row{"koistinen-marburger", 0.112, 0.153, 0.064},
                         Row{"van-bohemen-sietsma", 0.079, 0.139, 0.022},
                         Row{"van-bohemen-rate", 0.057, 0.078, 0.025}}) {
    CAPTURE(row.key);
    CHECK(std::abs(retained(row.key, kX) - row.x) <= 0.00051);
    CHECK(std::abs(retained(row.key, kY) - row.y) <= 0.00051);
    CHECK(std::abs(retained(row.key, kZ) - row.z) <= 0.00051);
  }
}

TEST_CASE("retained austenite: all of it when the quench ends above the start") {
  PropertyInput input;
  input.martensite_start = 15.0;
  const PropertyEquations equations;
  const auto& equation =
      equations.at(PropertyKind::retained_austenite, "koistinen-marburger");
  CHECK(equation.value(input) == 1.0);
  CHECK(equation.slope(input).martensite_start == 0.0);
  input.martensite_start = PropertyInput::kUnknown;
  CHECK(std::isnan(equation.value(input)));
}

TEST_CASE("martensite hardness: published values") {
  // ASTM A255 polynomial, worked for six carbon contents.
  const std::pair<double, double> a255[]{{0.2, 44.4}, {0.3, 50.5}, {0.4, 56.3},
                                         {0.5, 61.2}, {0.6, 64.6}, {0.7, 65.8}};
  for (const auto& [carbon, hrc] : a255)
    CHECK(std::abs(hrc_from_hv(martensite("hodge-orehoski", carbon)) - hrc) <= 0.051);
  CHECK(martensite("hodge-orehoski", 1.0) == martensite("hodge-orehoski", 0.7));
  CHECK(std::abs(hrc_from_hv(martensite("just", 0.4)) - 57.9) <= 0.051);
  CHECK(std::abs(hrc_from_hv(martensite("just", 0.6)) - 66.5) <= 0.051);
  const std::pair<double, double> quadratic[]{
      {0.2, 446}, {0.4, 669}, {0.5, 752}, {0.6, 817}, {0.8, 891}};
  for (const auto& [carbon, hv] : quadratic)
    CHECK(std::abs(martensite("carbon-quadratic", carbon) - hv) <= 0.51);
  // Krauss: without austenite martensite does not get softer above 0.9 % carbon.
  CHECK(martensite("carbon-quadratic", 1.3) == martensite("carbon-quadratic", 0.9));
  // Maynier by hand: 127 + 949 * 0.4 + 21 * 4 at 10 000 C/h.
  PropertyInput input;
  input.weight_percent = {{"C", 0.4}};
  input.cooling_rate = 1e4;
  CHECK(PropertyEquations()
            .at(PropertyKind::martensite_hardness, "maynier")
            .value(input) == doctest::Approx(590.6).epsilon(1e-12));
}

TEST_CASE("hardness of a mixture: worked example") {
  // Matrix X: 817 HV martensite, 12 % austenite, 14 % M7C3.
  const double bare = mixture_hardness(817.0, 0.12, 0.0, 1500.0);
  const double counted = mixture_hardness(817.0, 0.12, 0.14, 1500.0);
  CHECK(std::abs(bare - 749.0) <= 0.51);
  CHECK(std::abs(counted - 854.0) <= 0.51);
  CHECK(quenched_hardness(817.0, 0.12, 0.12, 1500.0) ==
        doctest::Approx(0.5 * (bare + 0.88 * bare + 0.12 * 1500.0)));
  CHECK(carbide_hardness("M7C3") == 1500.0);
  CHECK(carbide_hardness("M3C") == 1100.0);
  CHECK(carbide_hardness("MC") == 2600.0);
}

TEST_CASE("grain pinning: worked example, 0.5 um cementite, 5 %") {
  CHECK(std::abs(grain("zener") / 2.0 - 6.7) <= 0.051);    // radius
  CHECK(std::abs(grain("hillert") / 2.0 - 2.2) <= 0.051);  // radius
  CHECK(std::abs(grain("hillert") - 4.4) <= 0.051);
  CHECK(std::abs(grain("manohar") - 1.7) <= 0.051);
  // Gladman's critical particle radius, put back in: r = (6 R0 f/pi) / (3/2 - 2/Z).
  const double radius = 0.5 * grain("gladman");
  CHECK(6.0 * radius * 0.05 / std::acos(-1.0) / (1.5 - 2.0 / 1.7) ==
        doctest::Approx(0.25).epsilon(1e-12));
}

TEST_CASE("trade indices by hand") {
  // 0.5C 4.5Cr 3Mo 2W 1V 0.02N.
  const TradeIndices indices = trade_indices(
      {{"C", 0.5}, {"Cr", 4.5}, {"Mo", 3.0}, {"W", 2.0}, {"V", 1.0}, {"N", 0.02}});
  CHECK(indices.molybdenum_equivalent == doctest::Approx(4.0));
  CHECK(indices.carbon_balance == doctest::Approx(0.5 - 0.066 - 0.189 - 0.27 - 0.2));
  CHECK(indices.pitting_index == doctest::Approx(4.5 + 13.2 + 0.32));
}

TEST_CASE("gradients by hand agree with central differences") {
  std::mt19937 generator(7);
  const PropertyEquations equations;
  for (int trial = 0; trial < 40; ++trial) {
    const PropertyInput input = random_input(generator);
    for (PropertyEquation equation : equations.all()) {
      CAPTURE(equation.key);
      const PropertySlope exact = equation.slope_at(input);
      equation.slope = {};
      const PropertySlope numeric = equation.slope_at(input);
      const double scale = std::abs(equation.value(input));
      for (const auto& entry : input.weight_percent) {
        CAPTURE(entry.first);
        CHECK(exact.weight_percent[entry.first] ==
              doctest::Approx(numeric.weight_percent[entry.first])
                  .epsilon(1e-6)
                  .scale(1e-3 * scale));
      }
      CHECK(
          exact.martensite_start ==
          doctest::Approx(numeric.martensite_start).epsilon(1e-6).scale(1e-3 * scale));
      CHECK(
          exact.carbide_fraction ==
          doctest::Approx(numeric.carbide_fraction).epsilon(1e-6).scale(1e-3 * scale));
    }
  }
}

TEST_CASE("every built-in equation says what it is") {
  const PropertyEquations equations;
  CHECK(equations.all().size() == PropertyEquations::built_in());
  for (const PropertyEquation& equation : equations.all()) {
    CAPTURE(equation.key);
    CHECK(equation.label.front() == 'H');
    CHECK(!equation.formula.empty());
    CHECK(!equation.source.empty());
    CHECK(static_cast<bool>(equation.slope));
    CHECK((equation.error > 0.0 || equation.kind == PropertyKind::grain_pinning));
    CHECK(&equations.at(equation.kind, equation.key) == &equation);
  }
  CHECK(equations.at(PropertyKind::martensite_start, "steven-haynes").brief() ==
        "martensite start, steven-haynes (H1) [C]: 561 - 474 C - 33 Mn - 17 Cr - 17 Ni "
        "- 21 Mo");
}

TEST_CASE("remarks: outside the range, and elements without a term") {
  const PropertyEquations equations;
  const auto& equation = equations.at(PropertyKind::martensite_start, "steven-haynes");
  using Remarks = std::vector<std::string>;
  CHECK(equation.range_remarks({{"C", 0.4}, {"Mn", 0.5}}) == Remarks{});
  CHECK(equation.range_remarks({{"C", 0.8}, {"Mn", 0.5}}) ==
        Remarks{"steven-haynes: 0.80 wt% C is outside its range, 0.1 to 0.55"});
  CHECK(equation.term_remarks({{"Fe", 90.0}, {"W", 2.0}, {"V", 0.4}}) ==
        Remarks{"steven-haynes: no term for W, 2.00 wt%"});
}

TEST_CASE("an equation of one's own is added, replaced, and leaves the others alone") {
  PropertyEquation own;
  own.key = "shop";
  own.formula = "500 - 350 C";
  own.value = [](const PropertyInput& in) {
    return 500.0 - 350.0 * in.weight_percent["C"];
  };
  const PropertyEquations first;
  const PropertyEquations second = first.with_equation(own);
  CHECK(first.all().size() + 1 == second.all().size());
  CHECK(second.keys(PropertyKind::martensite_start).back() == "shop");
  PropertyInput input;
  input.weight_percent = {{"C", 0.4}};
  const auto& used = second.at(PropertyKind::martensite_start, "shop");
  CHECK(used.value(input) == doctest::Approx(360.0));
  CHECK(used.slope_at(input).weight_percent["C"] == doctest::Approx(-350.0));
  own.formula = "501 - 350 C";
  const PropertyEquations third = second.with_equation(own);
  CHECK(third.all().size() == second.all().size());
  CHECK(third.at(PropertyKind::martensite_start, "shop").formula == "501 - 350 C");
}

TEST_CASE("an equation that cannot be used is refused with every reason") {
  PropertyEquation bad;
  bad.error = -1.0;
  bad.ranges = {{"Xx", 0.0, 1.0}, {"C", 0.8, 0.2}};
  CHECK_THROWS_WITH_AS(
      PropertyEquations().with_equation(bad),
      "[gibbsteel.input.241] equation '': has no key; give the name to choose it by\n"
      "[gibbsteel.input.241] equation '': has no function; give a function that "
      "computes it\n"
      "[gibbsteel.input.241] equation '': has the error -1; give one standard "
      "deviation, 0 or more\n"
      "[gibbsteel.input.241] equation '': has a range for 'Xx', which is no element; "
      "give symbols such as C, Cr, Mo\n"
      "[gibbsteel.input.241] equation '': has a range for C from 0.8 to 0.2; give the "
      "low end first",
      InputError);
  PropertyEquation again =
      PropertyEquations().at(PropertyKind::martensite_start, "barbier");
  CHECK_THROWS_WITH_AS(PropertyEquations().with_equation(again),
                       "[gibbsteel.input.241] equation 'barbier': is built in; choose "
                       "another key: what is built in stays as it is",
                       InputError);
  CHECK_THROWS_WITH_AS(
      PropertyEquations().at(PropertyKind::grain_pinning, "Zener"),
      "[gibbsteel.input.240] grain pinning: there is no equation 'Zener'; choose one "
      "of hillert, zener, gladman, manohar",
      InputError);
}
