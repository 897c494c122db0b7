/// Parameter files at the edge of what the format allows: many elements, a thousand
/// terms, phases out of reach.

#include <doctest/doctest.h>

#include <chrono>
#include <numeric>

#include "fuzz/solve_checks.hpp"
#include "hostile_sets.hpp"

using namespace gibbsteel;

namespace {

/// Generous, for sanitizers and a busy machine; a release build needs a part of it.
constexpr double kMostSeconds = 30.0;

Equilibrium solved(const SharedParameters& set, const std::vector<std::string>& symbols,
                   double kelvin, const std::vector<double>& moles) {
  const PhaseSystem system(set, symbols, hostile::names_of(*set));
  std::vector<double> x(moles);
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  for (double& value : x) value /= sum;
  const auto start = std::chrono::steady_clock::now();
  auto result = minimize(system, Temperature::kelvin(kelvin), x);
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
  MESSAGE(symbols.size() << " elements, " << system.phases().size() << " phases: "
                         << result.report.brief() << ", " << took.count() << " s");
  CHECK(took.count() < kMostSeconds);
  fuzz::check_result(system, x, result);
  return result;
}

}  // namespace

TEST_CASE("thirty elements, all of them in two solutions, one of a thousand terms") {
  const auto& symbols = hostile::thirty_elements();
  auto one = hostile::solution("one", symbols, 3000.0, 8000.0);  // 30 + 435 terms
  hostile::add_order(one, symbols, 1, 500.0);                    // 435
  hostile::add_order(one, {symbols.begin(), symbols.begin() + 15}, 2, -400.0);  // 105
  REQUIRE(one.terms.size() == 1005);
  const auto set = parse_parameters(
      hostile::file_of(symbols,
                       {one, hostile::solution("two", symbols, 4000.0, 6000.0)}),
      "thirty.json");
  std::vector<double> moles;
  for (std::size_t e = 0; e < symbols.size(); ++e)
    moles.push_back(1.0 / static_cast<double>(1 + e * e));
  const auto result = solved(set, symbols, 1400.0, moles);
  CHECK(result.report.usable());
}

TEST_CASE("thirty elements that all want to be apart") {
  const auto& symbols = hostile::thirty_elements();
  auto phase = hostile::solution("one", symbols, 100.0, 0.0);
  phase.terms.erase(phase.terms.begin() + 30, phase.terms.end());
  hostile::add_order(phase, symbols, 0, 40000.0);  // consolute at 2405 K, each pair
  const auto set = parse_parameters(hostile::file_of(symbols, {phase}), "apart.json");
  // k of them in one phase have 20000 (1 - 1/k) - R T ln k: lowest for all thirty.
  const auto result =
      solved(set, symbols, 1000.0, std::vector<double>(symbols.size(), 1.0));
  REQUIRE(result.report.usable());
  CHECK(result.present.size() == 1);
}

TEST_CASE("two hundred phases") {
  const std::vector<std::string> symbols{"Fe", "Cr", "C", "Mo"};
  std::vector<hostile::PhaseText> phases;
  for (int f = 0; f < 200; ++f)
    phases.push_back(hostile::solution("phase " + std::to_string(f), symbols,
                                       100.0 + 40.0 * f, 9000.0 - 40.0 * f));
  const auto set = parse_parameters(hostile::file_of(symbols, phases), "many.json");
  const auto result = solved(set, symbols, 1300.0, {70.0, 20.0, 5.0, 5.0});
  CHECK(result.report.usable());
}

TEST_CASE("phases whose elements are absent are no candidates") {
  const auto compound = [](const std::string& name, const std::string& a,
                           const std::string& b) {
    const std::string sites = "[{\"sites\": 3, \"constituents\": [\"" + a +
                              "\"]}, {\"sites\": 1, \"constituents\": [\"" + b +
                              "\"]}]";
    return hostile::PhaseText{
        name, sites, {hostile::term("[\"" + a + "\", \"" + b + "\"]", -5e5)}};
  };
  const std::vector<std::string> all{"Fe", "Cr", "C", "W", "V"};
  const auto set = parse_parameters(
      hostile::file_of(all,
                       {hostile::solution("solution", {"Fe", "Cr", "C"}, 1e3, 5e3),
                        compound("needs W", "W", "C"), compound("needs V", "V", "V"),
                        compound("Cr3C", "Cr", "C")}),
      "unreachable.json");
  const PhaseSystem system(set, {"Fe", "Cr"}, hostile::names_of(*set));
  REQUIRE(system.phases().size() == 1);  // all compounds lack an element
  const auto result = solved(set, {"Fe", "Cr"}, 1200.0, {0.7, 0.3});
  CHECK(result.report.usable());

  // With carbon the compound is there, and takes what it can.
  const auto with_carbon = solved(set, {"Fe", "Cr", "C"}, 1200.0, {0.6, 0.3, 0.1});
  REQUIRE(with_carbon.report.usable());
  CHECK(with_carbon.present.size() == 2);

  // Only phases that cannot be made: no number, and a reason.
  const PhaseSystem none(set, {"Fe", "Cr"}, {"needs W", "needs V"});
  const auto nothing =
      minimize(none, Temperature::kelvin(1200.0), std::vector{0.7, 0.3});
  CHECK(nothing.report.status == SolveStatus::infeasible);
  CHECK(nothing.report.reason ==
        "none of the allowed phases can be made of these elements");
}

TEST_CASE("compounds on one side of the composition hold it never") {
  const std::vector<std::string> symbols{"Fe", "C"};
  const auto compound = [](const std::string& name, int iron) {
    return hostile::PhaseText{name,
                              "[{\"sites\": " + std::to_string(iron) +
                                  ", \"constituents\": [\"Fe\"]}, {\"sites\": 1, "
                                  "\"constituents\": [\"C\"]}]",
                              {hostile::term(R"(["Fe", "C"])", -1000.0 * iron)}};
  };
  const auto set = parse_parameters(
      hostile::file_of(symbols, {compound("Fe3C", 3), compound("Fe2C", 2)}),
      "compounds.json");
  for (const double carbon : {0.2, 0.34, 0.9}) {  // outside of 1/4 to 1/3
    CAPTURE(carbon);
    const auto result = solved(set, symbols, 1000.0, {1.0 - carbon, carbon});
    CHECK(result.report.status == SolveStatus::infeasible);
    CHECK(result.report.reason ==
          "no mixture of the allowed phases has this composition");
  }
  const auto between = solved(set, symbols, 1000.0, {0.7, 0.3});
  REQUIRE(between.report.usable());
  CHECK(between.present.size() == 2);
  // Energies per mole of atoms at 1/4 and 1/3 carbon: -750 and -2000 / 3 J/mol.
  const double share = (0.3 - 0.25) / (1.0 / 3.0 - 0.25);
  CHECK(between.gibbs_energy ==
        doctest::Approx(-750.0 + share * (750.0 - 2000.0 / 3.0)).epsilon(1e-12));
}

TEST_CASE("energies a thousand times those of any phase") {
  const std::vector<std::string> symbols{"Fe", "Cr"};
  for (const double level : {4e6, 6e6, 1e8}) {
    CAPTURE(level);
    hostile::PhaseText phase{
        "one",
        R"([{"sites": 1, "constituents": ["Fe", "Cr"]}])",
        {hostile::term(R"(["Fe"])", level), hostile::term(R"(["Cr"])", level)}};
    const auto set =
        parse_parameters(hostile::file_of(symbols, {phase}), "megajoules.json");
    const auto result = solved(set, symbols, 1000.0, {0.75, 0.25});
    CHECK(result.report.status != SolveStatus::infeasible);
    if (!result.report.usable()) continue;
    const double mixing =
        kGasConstant * 1000.0 * (0.75 * std::log(0.75) + 0.25 * std::log(0.25));
    CHECK(result.gibbs_energy - level == doctest::Approx(mixing).epsilon(1e-9));
  }
}
