/// A State as data and as text.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

State not_usable() {
  SoakOptions options;
  options.phases = {{"M3C"}};
  return Steel({{"C", 0.4}}, {"punch heat 3", {}, false})
      .soak(Temperature::celsius(900), options);
}

const std::string kCautions =
    "Long-hold limit (true equilibrium): a shop soak of minutes leaves more carbide\n"
    "and less carbon in the matrix. Before hardening real parts try coupons and\n"
    "follow the steel maker's data. Hot salt, oil, cryogens and furnaces injure:\n"
    "local codes and licensed practice come first.\n";

}  // namespace

TEST_CASE("carbon activity: 1 in equilibrium with graphite") {
  SoakOptions options;
  options.graphite = true;
  const State with = Steel({{"C", 2.5}}).soak(Temperature::celsius(1000), options);
  CHECK(with.at("graphite").role == Role::other);
  CHECK(with.carbon_activity == doctest::Approx(1.0).epsilon(1e-9));
  // Cementite is metastable to graphite: carbon is then above unit activity. 1.04 at
  // 1000 C: from memory of the difference between Acm (1.60 %) and graphite (1.55 %).
  const State without = Steel({{"C", 2.5}}).soak(Temperature::celsius(1000));
  CHECK(without.at("M3C").volume_percent > 5.0);
  CHECK(without.carbon_activity > 1.0);
  CHECK(without.carbon_activity < 1.1);
  CHECK(std::isnan(
      Steel({{"Cr", 1.0}}).soak(Temperature::celsius(1000)).carbon_activity));
}

TEST_CASE("density: that of plain carbon steel, and rising with tungsten") {
  // 7.85 g/cm3 for annealed carbon steel; 8.67 for 18W-4Cr-1V: common practice, no
  // source.
  const auto t = Temperature::celsius(700);
  CHECK(Steel({{"C", 0.4}, {"Mn", 0.7}}).soak(t).density ==
        doctest::Approx(7.85).epsilon(0.005));
  CHECK(Steel({{"C", 0.75}, {"Cr", 4.1}, {"W", 18}, {"V", 1.05}}).soak(t).density ==
        doctest::Approx(8.67).epsilon(0.01));
}

TEST_CASE("the Gibbs energy is the chemical potentials weighted by the composition") {
  const Steel steel({{"C", 0.9}, {"Cr", 4.0}, {"Mo", 5.0}});
  const State state = steel.soak(Temperature::celsius(1050));
  double sum = 0.0;
  for (const auto& [symbol, x] : steel.analysis().mole_fractions(*default_parameters()))
    sum += x * state.chemical_potential[symbol];
  CHECK(state.gibbs_energy == doctest::Approx(sum).epsilon(1e-10));
}

TEST_CASE("at(): by name, or a list of what is there") {
  const State state = Steel({{"C", 1.2}}).soak(Temperature::celsius(800));
  CHECK(state.at("M3C").kind == "M3C");
  CHECK_THROWS_WITH_AS(state.at("M6C"),
                       "[gibbsteel.input.209] state: 'M6C' is absent; "
                       "volume_percent_of() gives 0 for it; present: austenite, M3C",
                       InputError);
  CHECK_THROWS_WITH_AS(not_usable().at("M3C"),
                       "[gibbsteel.input.209] state: 'M3C' is absent; "
                       "the state is not usable and holds nothing",
                       InputError);
  CHECK_THROWS_WITH_AS(state.at("ferrite, chromium-rich"),
                       "[gibbsteel.input.209] state: 'ferrite, chromium-rich' is "
                       "absent; volume_percent_of() gives 0 for it; present: "
                       "austenite, M3C",
                       InputError);
  std::string known;
  for (const std::string& kind : state.kinds)
    known += (known.empty() ? "" : ", ") + kind;
  CHECK(message([&] { state.at("Fe3C"); }) ==
        "[gibbsteel.input.205] state: there is no phase 'Fe3C'; did you mean 'M3C'? "
        "choose from: " +
            known);
}

TEST_CASE("a kind that the parameter set does not know is refused, usable or not") {
  const State state = Steel({{"C", 1.2}}).soak(Temperature::celsius(800));
  CHECK(state.volume_percent_of("M23C6") == 0.0);
  CHECK(state.volume_percent_of("M3C") == state.at("M3C").volume_percent);
  std::string known;
  for (const std::string& kind : state.kinds)
    known += (known.empty() ? "" : ", ") + kind;
  const std::string choice = "choose from: " + known;
  const std::string cementite =
      "[gibbsteel.input.205] kind: there is no phase 'cementite'; did you mean "
      "'M3C'? " +
      choice;
  CHECK_THROWS_WITH_AS(state.volume_percent_of("cementite"), cementite.c_str(),
                       InputError);
  CHECK_THROWS_WITH_AS(not_usable().volume_percent_of("cementite"), cementite.c_str(),
                       InputError);
  const std::string bainite =
      "[gibbsteel.input.205] kind: there is no phase 'bainite'; " + choice;
  CHECK_THROWS_WITH_AS(state.volume_percent_of("bainite"), bainite.c_str(), InputError);
}

TEST_CASE("full: bound compounds stand under the analysis") {
  const Steel steel({{"C", 0.8}, {"Mn", 0.3}, {"S", 0.03}, {"V", 1.0}, {"N", 0.04}},
                    {"plain", {}, true});
  // 0.03 S binds 0.0514 Mn, 0.04 N binds 0.1455 V (atomic weights: IUPAC).
  CHECK(steel.soak(Temperature::celsius(1000))
            .full()
            .find("\nanalysis, wt%: 0.8C 0.3Mn 0.03S 1V 0.04N, balance Fe\n"
                  "bound: MnS 0.081, VN 0.19 wt%\nparameters: ") != std::string::npos);
}

TEST_CASE("not usable: no number can be mistaken for a result") {
  const State state = not_usable();
  REQUIRE_FALSE(state.usable());
  CHECK(state.occurrences.empty());
  CHECK(state.chemical_potential.empty());
  CHECK(state.driving_force.empty());
  CHECK(state.matrix.weight_percent.empty());
  for (const double number :
       {state.matrix.mass_percent, state.matrix.volume_percent,
        state.carbide_volume_percent, state.carbide_mass_percent, state.carbon_activity,
        state.gibbs_energy, state.density, state.volume_percent_of("M3C")})
    CHECK(std::isnan(number));
}

TEST_CASE("text of a state that is not usable") {
  const State state = not_usable();
  const std::string reason =
      "NOT USABLE: infeasible (no mixture of the allowed phases has this composition)";
  CHECK(state.brief() == "punch heat 3 at 900 C (1652 F): " + reason);
  CHECK(state.full().find(reason + "\npunch heat 3 at 900 C (1652 F), long-hold") == 0);
  CHECK(state.full().find("vol%") == std::string::npos);
  CHECK(state.full().find("mass%") == std::string::npos);
  CHECK(state.full().find("\nanalysis, wt%: 0.4C, balance Fe\n") != std::string::npos);
  CHECK(state.full().find("nan") == std::string::npos);
}

TEST_CASE("brief: carbides, matrix carbon, and a matrix that is not austenite") {
  const State state =
      Steel({{"C", 0.8}}, {"plain", {}, false}).soak(Temperature::celsius(700));
  CHECK(state.brief() ==
        "plain at 700 C (1292 F), long-hold limit: 12.0 vol% carbide (M3C 12.0), "
        "matrix 0.01 wt% C; matrix is ferrite");
  const State carbide = Steel({{"Cr", 90}, {"C", 10}}).soak(Temperature::celsius(1000));
  CHECK(carbide.brief().find(" vol% carbide (M7C3 ") != std::string::npos);
  CHECK(carbide.brief().substr(carbide.brief().size() - 18) == "), no matrix phase");
  CHECK(carbide.full().find("weight percent in     Cr       C\n") != std::string::npos);
  CHECK(carbide.full().find("\nmatrix ") == std::string::npos);
}

TEST_CASE("full: everything on one screen") {
  const State state = Steel({{"C", 0.8}, {"S", 0.01}}, {"plain", {}, false})
                          .soak(Temperature::celsius(700));
  std::string expected =
      "plain at 700 C (1292 F), long-hold limit\n"
      "analysis, wt%: 0.8C 0.01S, balance Fe\n"
      "parameters: " +
      state.parameters + ",\n  " + state.parameters_hash + "\n";
  expected +=
      "solution: converged, every absent phase checked; nearest: austenite, 120 J/mol\n"
      "  of atoms from forming\n"
      "volumes at room temperature, austenite counted as untempered martensite\n"
      "\n"
      "               vol%  mass%\n"
      "ferrite       87.98  88.23\n"
      "M3C           12.02  11.77\n"
      "all carbides  12.02  11.77\n"
      "\n"
      "weight percent in     Fe      C\n"
      "matrix             99.99  0.015\n"
      "M3C                93.31  6.690\n"
      "Last digits are for comparing heats, not accuracy: see the warnings.\n"
      "\n"
      "carbon activity (graphite = 1): 1.334\n"
      "density: 7.850 g/cm3\n"
      "\n"
      "! [gibbsteel.warning.307] Not modelled, and left out of the calculation: S\n"
      "  0.01 wt%.\n"
      "! [gibbsteel.warning.305] The matrix is ferrite: below the hardening range\n"
      "  (annealed condition).\n";
  CHECK(state.full() == expected + kCautions);
}

TEST_CASE("volumes not known are printed as such") {
  auto set = std::make_shared<ParameterSet>(*default_parameters());
  for (Phase& phase : set->phases) phase.room_volume.reset();
  const State state =
      Steel({{"C", 1.2}}, {"plain", set, false}).soak(Temperature::celsius(800));
  CHECK(state.brief().find(" wt% carbide (M3C ") != std::string::npos);
  CHECK(state.full().find("M3C            n/a") != std::string::npos);
  CHECK(state.full().find("nan") == std::string::npos);
  CHECK(state.full().find("density") == std::string::npos);
}
