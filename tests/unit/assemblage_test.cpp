/// Occurrences of an equilibrium: names, amounts and compositions.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/assemblage.hpp"
#include "internal/occurrence_names.hpp"
#include "solve_helpers.hpp"

using namespace gibbsteel;
using namespace gibbsteel::testing;

namespace {

const Composition kHighSpeedSteel{{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0},
                                  {"W", 6.2},  {"V", 1.9},  {"Co", 5.0}};

std::vector<std::string> names_of(const std::vector<Occurrence>& all) {
  std::vector<std::string> names;
  for (const Occurrence& o : all) names.push_back(o.name);
  return names;
}

Occurrence of_kind(const char* kind, const NamedValues& atom_fraction) {
  Occurrence o;
  o.kind = kind;
  o.atom_fraction = atom_fraction;
  return o;
}

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE("amounts and compositions add up to the steel") {
  const auto s = solve_weight(kHighSpeedSteel, Temperature::celsius(1150));
  REQUIRE(s.result.report.usable());
  for (const VolumeBasis basis : {VolumeBasis::room, VolumeBasis::soak}) {
    const auto all = occurrences(s.system, s.result, basis);
    double moles = 0, mass = 0, volume = 0;
    for (const Occurrence& o : all) {
      moles += o.mole_percent;
      mass += o.mass_percent;
      volume += o.volume_percent;
      CHECK(o.weight_percent.sum() == doctest::Approx(100.0).epsilon(1e-12));
      CHECK(o.atom_fraction.sum() == doctest::Approx(1.0).epsilon(1e-12));
      CHECK(o.density == doctest::Approx(o.molar_mass / o.molar_volume).epsilon(1e-14));
      for (const auto& sublattice : o.site_fractions)
        CHECK(sublattice.fractions.sum() == doctest::Approx(1.0).epsilon(1e-12));
    }
    CHECK(moles == doctest::Approx(100.0).epsilon(1e-12));
    CHECK(mass == doctest::Approx(100.0).epsilon(1e-12));
    CHECK(volume == doctest::Approx(100.0).epsilon(1e-12));
    for (const auto& [symbol, percent] : kHighSpeedSteel) {
      double sum = 0;
      for (const Occurrence& o : all)
        sum += o.mass_percent * o.weight_percent[symbol] / 100.0;
      CHECK(sum == doctest::Approx(percent).epsilon(1e-10));
    }
  }
}

TEST_CASE("carbon-filled austenite is reported as MC, with its own role") {
  const auto s = solve_weight(kHighSpeedSteel, Temperature::celsius(1150));
  const auto all = occurrences(s.system, s.result, VolumeBasis::room);
  CHECK(names_of(all) == Names{"austenite", "M6C", "MC"});
  CHECK(all[0].role == Role::matrix);
  CHECK(all[2].role == Role::carbide);
  CHECK(all[2].phase == "austenite");
  CHECK(all[2].kind == "MC");
  CHECK(all[2].site_fractions[1].fractions["C"] > 0.5);
  CHECK(all[0].site_fractions[1].fractions["vacancy"] > 0.5);
  // M6C: one carbon in seven atoms, the formula itself.
  CHECK(all[1].atom_fraction["C"] == doctest::Approx(1.0 / 7.0).epsilon(1e-12));
  // Largest volume first.
  CHECK(all[0].volume_percent > all[1].volume_percent);
  CHECK(all[1].volume_percent > all[2].volume_percent);
}

TEST_CASE("cementite in an eutectoid steel: the lever rule") {
  // 6.69 wt% C in Fe3C, 0.8 % C in the steel, some 0.02 % in ferrite at 700 C: common
  // practice, no source. Hence (0.8 - 0.02) / (6.69 - 0.02) = 11.7 wt% cementite.
  const auto s = solve_weight({{"C", 0.8}}, Temperature::celsius(700));
  const auto all = occurrences(s.system, s.result, VolumeBasis::room);
  REQUIRE(names_of(all) == Names{"ferrite", "M3C"});
  CHECK(all[1].weight_percent["C"] == doctest::Approx(6.69).epsilon(0.002));
  CHECK(all[1].mass_percent == doctest::Approx(11.7).epsilon(0.01));
  // The same by volume: cementite 7.68, ferrite 7.87 g/cm3 (handbook, from memory).
  CHECK(all[1].volume_percent ==
        doctest::Approx(100 / (1 + (100 / 11.7 - 1) * 7.68 / 7.87)).epsilon(0.01));
  CHECK(all[1].brief() == "M3C: 12.02 vol%, 11.77 wt% of the steel");
}

TEST_CASE("two of one kind: the smaller one names the metal it is richer in") {
  const auto s = solve_weight({{"Cr", 30.0}}, Temperature::celsius(400), {"ferrite"});
  CHECK(names_of(occurrences(s.system, s.result, VolumeBasis::room)) ==
        Names{"ferrite", "ferrite, chromium-rich"});
}

TEST_CASE("names stay unique, in words") {
  std::vector<Occurrence> all{
      of_kind("MC", {{"V", 0.5}, {"W", 0.0}, {"Mo", 0.0}, {"C", 0.5}}),
      of_kind("MC", {{"V", 0.2}, {"W", 0.15}, {"Mo", 0.1}, {"C", 0.55}}),
      of_kind("MC", {{"V", 0.1}, {"W", 0.2}, {"Mo", 0.15}, {"C", 0.55}}),
      of_kind("M6C", {{"W", 0.3}})};
  internal::name_occurrences(all);
  CHECK(names_of(all) ==
        Names{"MC", "MC, tungsten-rich", "MC, tungsten- and molybdenum-rich", "M6C"});
}

TEST_CASE("carbon is no metal: it never tells two of a kind apart") {
  std::vector<Occurrence> all{of_kind("M2C", {{"Mo", 0.7}, {"V", 0.1}, {"C", 0.2}}),
                              of_kind("M2C", {{"Mo", 0.5}, {"V", 0.15}, {"C", 0.35}})};
  internal::name_occurrences(all);
  CHECK(all[1].name == "M2C, vanadium-rich");
}

TEST_CASE("driving forces: 0 when present, below 0 when absent") {
  const auto s = solve_weight(kHighSpeedSteel, Temperature::celsius(1150));
  const NamedValues forces = driving_forces(s.system, s.result);
  for (const char* kind : {"austenite", "MC", "M6C"}) {
    CHECK(forces.contains(kind));
    CHECK(forces[kind] == 0.0);
  }
  for (const char* kind : {"ferrite", "M7C3", "M23C6", "M2C", "hexagonal matrix"}) {
    CHECK(forces.contains(kind));
    CHECK(forces[kind] < -1.0);
  }
}

TEST_CASE("driving forces: the nearest absent minimum counts, a present kind stays 0") {
  auto s = solve_weight(kHighSpeedSteel, Temperature::celsius(1150));
  PhasePoint point;
  for (const PhasePoint& absent : s.result.absent)
    if (s.system.phases()[absent.phase].name() == "ferrite") point = absent;
  REQUIRE(point.driving_force < 0.0);
  PhasePoint again = s.result.present.front();  // austenite, now as an absent minimum
  again.driving_force = -3.0;
  PhasePoint below = point;  // below the plane, within the tolerance of the certificate
  point.driving_force = -5.0;
  s.result.absent.push_back(point);
  s.result.absent.push_back(again);
  CHECK(driving_forces(s.system, s.result)["ferrite"] == -5.0);
  CHECK(driving_forces(s.system, s.result)["austenite"] == 0.0);
  below.driving_force = 5e-4;
  s.result.absent.push_back(below);
  CHECK(driving_forces(s.system, s.result)["ferrite"] == 0.0);
}

TEST_CASE("a phase without volume data: no volume percent of any phase") {
  auto set = std::make_shared<ParameterSet>(*default_parameters());
  for (Phase& phase : set->phases)
    if (phase.name == "M3C") phase.room_volume.reset();
  const PhaseSystem system(set, {"Fe", "C"}, {"ferrite", "M3C"});
  const auto result =
      minimize(system, Temperature::celsius(700), std::vector<double>{0.9, 0.1});
  const auto all = occurrences(system, result, VolumeBasis::room);
  REQUIRE(names_of(all) == Names{"ferrite", "M3C"});
  for (const Occurrence& o : all) {
    CHECK(std::isnan(o.volume_percent));
    CHECK(o.mass_percent > 0.0);
  }
  CHECK(std::isnan(all[1].density));
  CHECK(all[0].density > 7.0);
  CHECK(all[1].brief().substr(0, 14) == "M3C: n/a vol%,");
  CHECK_FALSE(
      std::isnan(occurrences(system, result, VolumeBasis::soak)[0].volume_percent));
}
