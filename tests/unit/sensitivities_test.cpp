/// Slopes of a state against differences of soaks, and what the facade refuses.
/// The wide comparison, over random steels, is robustness/random_slopes_test.cpp.

#include "gibbsteel/sensitivities.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "differences.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/quantity.hpp"
#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

using namespace gibbsteel;
using testing::Comparison;

namespace {

const auto kSoak = Temperature::celsius(1100.0);

const Steel& high_speed() {
  static const Steel steel({{"C", 0.85},
                            {"Cr", 4.1},
                            {"Mo", 5.0},
                            {"W", 6.2},
                            {"V", 1.9},
                            {"Mn", 0.3},
                            {"Si", 0.3}});
  return steel;
}

/// @param soak  State(double) at a step of the input
template <class Soak>
void check(const StateSlope& slope, const Soak& soak, double h) {
  CAPTURE(slope.input.name);
  const auto expected = testing::differences(soak, h);
  REQUIRE(expected.has_value());
  Comparison comparison;
  REQUIRE(testing::compare(slope, *expected, comparison));
  CHECK_FALSE(slope.one_sided);
  CHECK(slope.remark == "");
  CAPTURE(comparison.worst_name);
  CHECK(comparison.worst <= 1e-6);
  CAPTURE(comparison.not_converged);
  CHECK(comparison.compared > 3 * comparison.not_converged);
}

std::string message_of(const SensitivityOptions& chosen,
                       const Steel& steel = high_speed()) {
  try {
    sensitivities(steel, kSoak, {}, chosen);
  } catch (const InputError& error) {
    return error.what();
  }
  return "no error";
}

}  // namespace

TEST_CASE("slopes to the temperature agree with differences of soaks") {
  for (const VolumeBasis basis : {VolumeBasis::room, VolumeBasis::soak}) {
    SoakOptions options;
    options.basis = basis;
    const auto all = sensitivities(high_speed(), kSoak, options);
    REQUIRE(all.state.usable());
    const auto soak = [&](double h) {
      return high_speed().soak(Temperature::celsius(1100.0 + h), options);
    };
    check(all.at("temperature"), soak, 1.0);
    CHECK(all.at("temperature").input ==
          Input{Input::Kind::temperature, "temperature", "K"});
  }
}

TEST_CASE("slopes to every element, balance Fe, agree with differences of soaks") {
  const auto all = sensitivities(high_speed(), kSoak);
  REQUIRE(all.slopes.size() == 8);
  for (const auto& [symbol, percent] : high_speed().analysis().given) {
    const auto soak = [&, name = symbol, middle = percent](double h) {
      return high_speed().changed({{name, middle + h}}).soak(kSoak);
    };
    check(all.at(symbol), soak, 4e-3 * percent);
    CHECK(all.at(symbol).input == Input{Input::Kind::element, symbol, "wt%"});
  }
}

TEST_CASE("a certificate with elements that are not modelled, and bound ones") {
  const Steel steel({{"C", 1.0}, {"Cr", 5.2}, {"Mn", 0.8}, {"P", 0.02}, {"S", 0.2}},
                    {"", nullptr, true});
  const auto t = Temperature::celsius(900.0);
  const auto all = sensitivities(steel, t);
  for (const std::string symbol : {"C", "Mn"}) {
    const double middle = steel.analysis().given[symbol];
    const auto soak = [&](double h) {
      return steel.changed({{symbol, middle + h}}).soak(t);
    };
    check(all.at(symbol), soak, 4e-3 * middle);
  }
}

TEST_CASE("which inputs") {
  const auto names = [](const SensitivityOptions& chosen) {
    std::vector<std::string> list;
    for (const auto& slope : sensitivities(high_speed(), kSoak, {}, chosen).slopes)
      list.push_back(slope.input.name);
    return list;
  };
  using List = std::vector<std::string>;
  CHECK(names({}) == List{"temperature", "C", "Cr", "Mo", "W", "V", "Mn", "Si"});
  CHECK(names({List{}, {}, false}) == List{"temperature"});
  CHECK(names({List{"V", "C"}, {}, false}) == List{"temperature", "V", "C"});
  const Steel no_iron({{"C", 10.0}, {"Cr", 90.0}});
  const auto all = sensitivities(no_iron, kSoak);
  CHECK(all.state.usable());
  CHECK(all.slopes.size() == 1);
}

TEST_CASE("inputs that are none are refused, all at once") {
  CHECK(message_of({std::vector<std::string>{"Fe", "Co", "Cu", "Xx"}, {"/x"}, false}) ==
        "[gibbsteel.input.216] elements: Fe is the balance of all others; choose "
        "elements of the calculation other than Fe\n"
        "[gibbsteel.input.216] elements: there is no Co in the calculation; compare() "
        "the steel with one that has some, changed(Co=1), or choose elements of the "
        "calculation other than Fe\n"
        "[gibbsteel.input.216] elements: Cu is not modelled by the parameter file; "
        "choose elements of the calculation other than Fe\n"
        "[gibbsteel.input.216] elements: 'Xx' is not the symbol of an element; choose "
        "elements of the calculation other than Fe\n"
        "[gibbsteel.input.217] parameters: there is no number at '/x'; give places "
        "such as '" +
            parameter_inputs(*default_parameters()).back().name +
            "'; parameter_inputs of the parameter set lists them all");
  CHECK(message_of({std::vector<std::string>{"C"}, {}, false},
                   Steel({{"C", 10.0}, {"Cr", 90.0}})) ==
        "[gibbsteel.input.218] elements: the steel holds no iron to balance an element "
        "with; ask for temperature and parameters only: elements = []");
  const auto all = sensitivities(high_speed(), kSoak);
  CHECK_THROWS_WITH(all.at("Co"),
                    "[gibbsteel.input.209] sensitivities: the calculation holds no Co; "
                    "compare() the steel with one that has some, changed(Co=1), or "
                    "choose from: temperature, C, Cr, Mo, W, V, Mn, Si, and the places "
                    "of parameters asked for");
  CHECK_THROWS_WITH(all.at("/x"),
                    "[gibbsteel.input.209] sensitivities: there is no input '/x'; "
                    "choose from: temperature, C, Cr, Mo, W, V, Mn, Si, and the places "
                    "of parameters asked for");
}

TEST_CASE("a state that is not usable has no slopes") {
  SoakOptions options;
  options.phases = {"M3C"};
  const auto all = sensitivities(high_speed(), kSoak, options);
  CHECK_FALSE(all.state.usable());
  CHECK(all.slopes.empty());
  CHECK_THROWS_WITH(all.at("C"),
                    "[gibbsteel.input.209] sensitivities: there is no input 'C'; the "
                    "state is not usable and has no slopes");
}

TEST_CASE("a slope prints its main numbers") {
  StateSlope slope;
  slope.input = {Input::Kind::element, "C", "wt%"};
  Occurrence austenite, carbide;
  austenite.name = austenite.kind = "austenite";
  austenite.role = Role::matrix;
  carbide.name = carbide.kind = "M6C";
  carbide.role = Role::carbide;
  carbide.volume_percent = 12.34567;
  slope.occurrences = {austenite, carbide};
  slope.carbide_volume_percent = 12.34567;
  slope.matrix.weight_percent = {{"Fe", -0.5}, {"C", 0.0}};
  slope.one_sided = true;
  slope.remark = "MC is about to form";
  CHECK(slope_text(slope) ==
        "                        per wt% C\n"
        "M6C [vol%]                  12.35\n"
        "all carbides [vol%]         12.35\n"
        "Fe in the matrix [wt%]       -0.5\n"
        "C in the matrix [wt%]           0\n"
        "carbon activity               n/a\n"
        "! per wt% C: MC is about to form\n");
}

TEST_CASE("slopes print beside the numbers of the state") {
  const Steel steel({{"C", 1.0}, {"Cr", 1.5}}, {"bearing steel", {}, false});
  auto all = sensitivities(steel, Temperature::celsius(850.0));
  const auto number = [](double x) { return internal::rounded_or(x, 4, "n/a"); };
  const std::string text = all.full();
  CAPTURE(text);
  CHECK(text.starts_with(
      "bearing steel at 850 C (1562 F), long-hold limit, and exact slopes; balance Fe\n"
      "analysis, wt%: 1C 1.5Cr, balance Fe\n"
      "parameters: "));
  std::vector<std::vector<std::string>> rows{
      {"", "value", "per K", "per wt% C", "per wt% Cr"}};
  const auto add = [&](const std::string& label, double value, auto of_slope) {
    rows.push_back({label, number(value)});
    for (const StateSlope& slope : all.slopes)
      rows.back().push_back(number(of_slope(slope)));
  };
  REQUIRE(all.state.carbides().size() == 1);
  add("M3C [vol%]", all.state.carbide_volume_percent,
      [](const StateSlope& s) { return s.carbide_volume_percent; });
  add("all carbides [vol%]", all.state.carbide_volume_percent,
      [](const StateSlope& s) { return s.carbide_volume_percent; });
  for (const auto& entry : all.state.matrix.weight_percent)
    add(entry.first + " in the matrix [wt%]", entry.second,
        [&](const StateSlope& s) { return s.matrix.weight_percent[entry.first]; });
  add("carbon activity", all.state.carbon_activity,
      [](const StateSlope& s) { return s.carbon_activity; });
  CHECK(text.find("\n\n" + internal::text_table(rows) + "Last digits are") !=
        std::string::npos);
  all.slopes.push_back(all.slopes.back());
  all.slopes.back().input.kind = Input::Kind::parameter;
  CHECK(all.full().find("\n1 parameter more: see to_frame()\nLast digits") !=
        std::string::npos);
}

TEST_CASE("a compound alone leaves its potentials free: NaN with a remark") {
  // Cementite of exactly its own composition, and nothing else allowed.
  const double iron = 3.0 * 55.845, carbon = 12.011;
  const Steel steel({{"Fe", 100.0 * iron / (iron + carbon)},
                     {"C", 100.0 * carbon / (iron + carbon)}});
  SoakOptions options;
  options.phases = {"M3C"};
  const auto all = sensitivities(steel, kSoak, options);
  REQUIRE(all.state.usable());
  REQUIRE_FALSE(all.state.solve_report.unique);
  REQUIRE(all.slopes.size() == 2);
  for (const StateSlope& slope : all.slopes) {
    CHECK(slope.remark == "the equilibrium leaves amounts or potentials free");
    CHECK_FALSE(slope.one_sided);
    for (const auto& number : testing::numbers_of(slope)) {
      CAPTURE(number.first);
      CHECK(std::isnan(number.second));
    }
  }
}

TEST_CASE("next to a phase change slopes are flagged, on both sides of it") {
  const Steel bearing({{"C", 1.0}, {"Cr", 1.5}, {"Mn", 0.3}});
  const auto slope_at = [&](double celsius) {
    return sensitivities(bearing, Temperature::celsius(celsius)).at("temperature");
  };
  const auto has_cementite = [&](double celsius) {
    return bearing.soak(Temperature::celsius(celsius)).volume_percent_of("M3C") > 0.0;
  };
  double low = 850.0, high = 1100.0;
  REQUIRE(has_cementite(low));
  REQUIRE_FALSE(has_cementite(high));
  while (high - low > 0.01) {
    const double middle = 0.5 * (low + high);
    (has_cementite(middle) ? low : high) = middle;
  }
  const StateSlope below = slope_at(low - 0.02), above = slope_at(high + 0.02);
  CHECK(below.one_sided);
  CHECK(below.remark == "M3C vanishes within a step of 0.1 K");
  CHECK(below.carbide_volume_percent < above.carbide_volume_percent);
  CHECK(above.one_sided);
  CHECK(above.remark == "M3C appears within a step of 0.1 K");
  CHECK_FALSE(slope_at(low - 2.0).one_sided);
  CHECK_FALSE(slope_at(high + 2.0).one_sided);
}

TEST_CASE("a quantity without a slope of its own gets one from a difference") {
  SensitivityOptions chosen;
  chosen.parameters = {"/phases/M6C/energy/0/terms/1", "/phases/M6C/energy/0/terms/T"};
  const auto all = sensitivities(high_speed(), kSoak, {}, chosen);
  const auto own = quantities::matrix("C");
  const Quantity without("C in the matrix", "wt%", own.function());
  for (const StateSlope& slope : all.slopes) {
    CAPTURE(slope.input.name);
    CHECK(without.slope(all.state, slope) ==
          doctest::Approx(own.slope(all.state, slope)).epsilon(1e-8));
  }
}
