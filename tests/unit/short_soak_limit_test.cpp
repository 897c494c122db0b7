/// The limit of short soaks: Eq. (B3) against soaks of austenite alone, and its edges.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "bearing_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/cementite_stop.hpp"
#include "messages.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

/// Austenite alone of these atoms, in mole fractions.
State austenite_of(const NamedValues& atoms, Temperature t) {
  const ParameterSet& set = *default_parameters();
  double mass = 0.0;
  for (const auto& [symbol, x] : atoms)
    mass += x * set.find_element(symbol)->molar_mass;
  NamedValues percent;
  for (const auto& [symbol, x] : atoms)
    if (x > 0.0 && symbol != "Fe")
      percent.set(symbol, 100.0 * x * set.find_element(symbol)->molar_mass / mass);
  SoakOptions alone;
  alone.phases = {"austenite"};
  return Steel(percent).soak(t, alone);
}

const Occurrence& cementite_of(const State& state) { return state.at("M3C"); }

}  // namespace

TEST_CASE("cementite stops where austenite with its metals has the same energy") {
  const State long_hold = bearing().soak(celsius(845));
  const ShortSoak soak = short_soak_limit(long_hold);
  const Occurrence annealed = cementite_of(bearing().soak(celsius(700)));
  const Occurrence& left = cementite_of(soak.state);
  CHECK(left.weight_percent["Cr"] == doctest::Approx(annealed.weight_percent["Cr"]));

  // Eq. (B3) with potentials of soaks, which know nothing of the limit: the carbon
  // of the austenite is searched until its activity is that of the limit.
  double low = 0.0, high = 0.2;
  NamedValues atoms;
  for (int i = 0; i < 60; ++i) {
    const double carbon = 0.5 * (low + high);
    atoms = annealed.atom_fraction;
    for (const auto& [symbol, x] : annealed.atom_fraction)
      atoms.set(symbol, symbol == "C" ? carbon : x / 0.75 * (1.0 - carbon));
    const double activity = austenite_of(atoms, celsius(845)).carbon_activity;
    (activity < soak.state.carbon_activity ? low : high) = carbon;
  }
  const State same_metals = austenite_of(atoms, celsius(845));
  double austenite = same_metals.chemical_potential["C"];
  for (const auto& [symbol, x] : annealed.atom_fraction)
    if (symbol != "C") austenite += 4.0 * x * same_metals.chemical_potential[symbol];
  const Steel steel = bearing();
  const ParameterSet& set = *default_parameters();
  const PhaseModel model(set, *set.find_phase("M3C"), steel.elements());
  std::vector<double> y;
  for (const Constituent& c : model.constituents())
    y.push_back(annealed.site_fractions[c.sublattice].fractions[c.name]);
  CHECK(model.evaluate(celsius(845), y).value ==
        doctest::Approx(austenite).epsilon(1e-7));

  // The matrix has that activity as well.
  const NamedValues& matrix = soak.state.matrix.atom_fraction;
  CHECK(austenite_of(matrix, celsius(845)).carbon_activity ==
        doctest::Approx(soak.state.carbon_activity).epsilon(1e-6));
}

TEST_CASE("the state is a balance, says so, and its bands reach the long hold") {
  const State long_hold = bearing().soak(celsius(845));
  const ShortSoak soak = short_soak_limit(long_hold);
  const State& state = soak.state;
  CHECK(state.usable());
  CHECK(state.solve_report.status == SolveStatus::short_soak_limit);
  CHECK(state.solve_report.by_mass_balance());
  CHECK(to_string(state.solve_report.status) == "short-soak limit");
  CHECK(codes(state).front() == "349");
  CHECK(std::isnan(state.gibbs_energy));
  CHECK(state.volume_percent_of("M3C") > long_hold.volume_percent_of("M3C"));
  const MatrixBand& carbon = soak.band("C");
  CHECK(carbon.low == state.matrix.weight_percent["C"]);
  CHECK(carbon.high == long_hold.matrix.weight_percent["C"]);
  CHECK(soak.band("Si").low == long_hold.matrix.weight_percent["Si"]);
  for (const auto& [symbol, given] : state.analysis.modelled) {
    double held = 0.0;
    for (const Occurrence& o : state.occurrences)
      held += 0.01 * o.mass_percent * o.weight_percent[symbol];
    CHECK(held == doctest::Approx(given));
  }
}

TEST_CASE("cementite richer in chromium stops sooner, whatever the annealing") {
  const State long_hold = bearing().soak(celsius(845));
  std::vector<std::pair<double, double>> found;  // Cr [wt%], carbon activity
  for (const double annealed : {600.0, 650.0, 700.0, 735.0}) {
    ShortSoakLimitOptions options;
    options.annealed_at = celsius(annealed);
    const ShortSoak soak = short_soak_limit(long_hold, options);
    CHECK(soak.annealed_at == celsius(annealed));
    found.emplace_back(cementite_of(soak.state).weight_percent["Cr"],
                       soak.state.carbon_activity);
  }
  std::sort(found.begin(), found.end());
  CHECK(found.back().first > found.front().first + 0.5);
  for (std::size_t i = 1; i < found.size(); ++i)
    CHECK(found[i].second < found[i - 1].second);
}

TEST_CASE("unalloyed cementite stops where it is in equilibrium") {
  const State long_hold = Steel({{"C", 1.0}}).soak(celsius(800));
  const ShortSoak soak = short_soak_limit(long_hold);
  CHECK(soak.state.volume_percent_of("M3C") ==
        doctest::Approx(long_hold.volume_percent_of("M3C")).epsilon(1e-6));
  CHECK(soak.state.carbon_activity ==
        doctest::Approx(long_hold.carbon_activity).epsilon(1e-8));
  CHECK(soak.state.matrix.weight_percent["C"] ==
        doctest::Approx(long_hold.matrix.weight_percent["C"]).epsilon(1e-6));
}

TEST_CASE("lean steel dissolves all of it, and other carbide stays as annealed") {
  const Steel lean({{"C", 0.4}, {"Cr", 1.0}, {"Mo", 0.2}, {"Mn", 0.8}});
  const ShortSoak all = short_soak_limit(lean.soak(celsius(850)));
  CHECK(all.state.carbides().empty());
  CHECK(all.state.matrix.weight_percent["C"] == doctest::Approx(0.4));
  const std::string all_of_it =
      "A short-soak limit, not an equilibrium: M3C has given "
      "up all of its carbon, though its metals were left in "
      "place;";
  CHECK(all.state.warnings.front().text.substr(0, all_of_it.size()) == all_of_it);

  const Steel oil({{"C", 0.95}, {"Cr", 0.5}, {"Mn", 1.2}, {"W", 0.5}, {"V", 0.1}});
  const State annealed = oil.soak(celsius(700));
  const State state = short_soak_limit(oil.soak(celsius(800))).state;
  CHECK(state.volume_percent_of("MC") > 0.0);
  CHECK(state.volume_percent_of("M3C") < annealed.volume_percent_of("M3C"));
}

TEST_CASE("steels with a low A1 are taken as annealed 10 C below it") {
  const Steel nickel({{"C", 0.72}, {"Ni", 1.5}, {"Cr", 0.9}, {"Mn", 0.6}});
  CHECK(nickel.soak(celsius(700)).volume_percent_of("austenite") > 10.0);
  const ShortSoak soak = short_soak_limit(nickel.soak(celsius(830)));
  const double annealed = soak.annealed_at.in_celsius();
  CHECK(annealed < 690.0);
  CHECK(nickel.soak(celsius(annealed + 9.99)).volume_percent_of("austenite") == 0.0);
  CHECK(nickel.soak(celsius(annealed + 10.01)).volume_percent_of("austenite") > 0.0);
}

TEST_CASE("the default annealing has no step where A1 comes near 700 C") {
  // From 700 C down; 25 C at once gave 0.016 wt% from one to the next.
  double annealed = 700.0, matrix = 0.0;
  for (double manganese = 1.1; manganese <= 2.2; manganese += 0.02) {
    const Steel oil({{"C", 0.9}, {"Mn", manganese}, {"Si", 0.25}});
    const ShortSoak soak = short_soak_limit(oil.soak(celsius(790)));
    CHECK(soak.annealed_at.in_celsius() <= annealed + 1e-6);
    CHECK(soak.annealed_at.in_celsius() > annealed - 1.0);
    if (matrix > 0.0) CHECK(std::abs(carbon(soak) - matrix) < 0.004);
    annealed = soak.annealed_at.in_celsius();
    matrix = carbon(soak);
  }
  CHECK(annealed < 690.0);
}

TEST_CASE("other carbide keeps its moles while cementite leaves") {
  const Steel oil({{"C", 0.95}, {"Cr", 0.5}, {"Mn", 1.2}, {"W", 0.5}, {"V", 0.1}});
  const State annealed = oil.soak(celsius(700));
  const State state = short_soak_limit(oil.soak(celsius(800))).state;
  for (const char* kind : {"MC", "hexagonal MC"})
    CHECK(state.at(kind).mole_percent ==
          doctest::Approx(annealed.at(kind).mole_percent).epsilon(1e-9));
}

TEST_CASE("phases that the soak leaves out are left out when annealed as well") {
  const Steel oil({{"C", 0.95}, {"Cr", 0.5}, {"Mn", 1.2}, {"W", 0.5}, {"V", 0.1}});
  SoakOptions options;
  options.suppressed = {"hexagonal MC"};
  const State state = short_soak_limit(oil.soak(celsius(800), options)).state;
  CHECK(state.volume_percent_of("hexagonal MC") == 0.0);
  CHECK(state.volume_percent_of("M3C") > 0.0);
}

TEST_CASE("what matches a short soak says that it does, and that it holds long") {
  const ShortSoak soak = short_soak_limit(bearing().soak(celsius(845)));
  const auto match = matching_temperature(
      soak.state, bearing(), quantities::matrix("C"), {celsius(700), celsius(900)});
  const std::string first = "reference: AISI 52100 at 845 C, short-soak limit (";
  CHECK(match.full().substr(0, first.size()) == first);
  const std::string second =
      "\nThe reference is a short soak, the temperature found is for a long hold: a\n"
      "soak of minutes needs a hotter one. quantities.short_soak_matrix compares like\n"
      "with like.\n";
  CHECK(match.full().find(second) != std::string::npos);
}

TEST_CASE("like is matched with like by the quantity of the limit") {
  const State reference = bearing().soak(celsius(845));
  const Quantity carbon = quantities::short_soak_matrix("C");
  CHECK(carbon.label() == "C in the matrix, short soak [wt%]");
  const double limit = short_soak_limit(reference).state.matrix.weight_percent["C"];
  CHECK(carbon.value(reference) == limit);
  CHECK(carbon.value(short_soak_limit(reference).state) == limit);
  CHECK(std::isnan(carbon.value(bearing().soak(celsius(700)))));
  const double hotter = carbon.value(bearing().soak(celsius(847)));
  const double colder = carbon.value(bearing().soak(celsius(843)));
  StateSlope slope;
  slope.input = {Input::Kind::temperature, "temperature", "K"};
  CHECK(carbon.slope(reference, slope) ==
        doctest::Approx((hotter - colder) / 4.0).epsilon(1e-3));
  slope.input = {Input::Kind::element, "Cr", "wt%"};
  CHECK(carbon.slope(reference, slope) < 0.0);
  slope.input.kind = Input::Kind::parameter;
  CHECK(std::isnan(carbon.slope(reference, slope)));
  const auto match =
      matching_temperature(reference, bearing(), carbon, {celsius(780), celsius(900)});
  REQUIRE(match.search.crossings.size() == 1);
  CHECK(match.search.crossings.front().temperature.in_celsius() ==
        doctest::Approx(845.0).epsilon(1e-4));
  const auto of_limit =
      matching_temperature(short_soak_limit(reference).state, bearing(), carbon,
                           {celsius(780), celsius(900)});
  CHECK(of_limit.full().find("hotter one") == std::string::npos);
  const Steel own({{"C", 1.0}, {"Cr", 1.45}}, {"", with_liquid(), false});
  CHECK(message([&] {
          carbon.value(own.soak(celsius(845)));
        }).starts_with("[gibbsteel.input.266]"));
}

TEST_CASE("hardening goes on from it, without the advice to count carbide") {
  const State long_hold = bearing().soak(celsius(845));
  const auto advised = [](const HardeningEstimates& estimates) {
    return std::any_of(
        estimates.warnings.begin(), estimates.warnings.end(),
        [](const Warning& w) { return w.code == "gibbsteel.warning.336"; });
  };
  const HardeningEstimates early = hardening(short_soak_limit(long_hold).state);
  const HardeningEstimates late = hardening(long_hold);
  CHECK(advised(late));
  CHECK_FALSE(advised(early));
  CHECK(early.martensite_start.value > late.martensite_start.value + 50.0);
  CHECK(early.full().find("Short-soak limit: carbon has moved, metals have not;") !=
        std::string::npos);
  CHECK(early.full().find("Long-hold limit (true") == std::string::npos);
  CHECK(early.warnings.front().code == "gibbsteel.warning.349");
}

TEST_CASE("it prints what it is") {
  const ShortSoak soak = short_soak_limit(bearing().soak(celsius(845)));
  CHECK(soak.brief() ==
        "AISI 52100 at 845 C (1553 F), short-soak limit: 6.1 vol% carbide (M3C 6.1), "
        "matrix 0.63 wt% C (long-hold limit 0.88)");
  const std::string text = soak.full();
  const std::string tables = text.substr(text.find("\ncarbide, vol%"));
  CHECK(tables == R"(
carbide, vol%  short soak  long hold
M3C                  6.15       2.04

matrix, wt%  value    low   high  long hold
C            0.630  0.630  0.882      0.882
Cr            1.00   1.00   1.25       1.25
Mn            0.27   0.27   0.34       0.34
Si            0.27   0.26   0.27       0.26
low, high: this limit and the long-hold limit
)");
  CHECK(soak.state.warnings.front().text ==
        "A short-soak limit, not an equilibrium: M3C has given up what carbon it can "
        "with its metals left in place; other carbide is as annealed at 700 C. As a "
        "rule a soak of minutes lies between this and the long-hold limit, nearer to "
        "the latter the hotter and longer it is: timed_soak takes the minutes.");
}

TEST_CASE("without cementite, or without austenite, there is no such limit") {
  const Steel d2({{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}});
  CHECK(message([&] { short_soak_limit(d2.soak(celsius(1030))); }) ==
        "[gibbsteel.input.284] short and timed soaks: are for steels whose annealed "
        "carbide is cementite (52100, O1, W1 types): annealing at 700 C leaves no "
        "M3C, but carbide that gives up carbon only with its metals: M7C3, MC; take "
        "the long-hold limit (after minutes less carbon is in the matrix in "
        "practice), or count the carbide and use with_measured_carbide");
  const Steel s1({{"C", 0.5}, {"Cr", 1.4}, {"W", 2.2}, {"V", 0.2}, {"Si", 0.8}});
  CHECK(message([&] { short_soak_limit(s1.soak(celsius(955))); }) ==
        "[gibbsteel.input.284] short and timed soaks: are for steels whose annealed "
        "carbide is cementite (52100, O1, W1 types): annealing at 700 C leaves 0.34 "
        "of 0.50 wt% carbon, more than a tenth, in carbide that gives up carbon only "
        "with its metals: M23C6, hexagonal MC, MC; take the long-hold limit (after "
        "minutes less carbon is in the matrix in practice), or count the carbide and "
        "use with_measured_carbide");
}

TEST_CASE("annealing above A1 or far below it is refused") {
  ShortSoakLimitOptions hot_annealing;
  hot_annealing.annealed_at = celsius(742);
  const State long_hold = bearing().soak(celsius(845));
  CHECK(message([&] { short_soak_limit(long_hold, hot_annealing); }) ==
        "[gibbsteel.input.284] annealing at 742 C: is above A1: 76 vol% austenite; "
        "give where the slow cool stops changing the cementite, below A1, not the "
        "furnace setting");
  ShortSoakLimitOptions cold_annealing;
  cold_annealing.annealed_at = celsius(500);
  CHECK(message([&] { short_soak_limit(long_hold, cold_annealing); }) ==
        "[gibbsteel.input.284] annealing at 500 C: is outside the validity of the "
        "parameter file; give a temperature from 600 C to A1; where A1 is lower there "
        "is no "
        "estimate");
}

TEST_CASE("where A1 is below 600 C there is no estimate, and no advice to go there") {
  const Steel nickel({{"C", 0.45},
                      {"Cr", 1.35},
                      {"Ni", 4.0},
                      {"Mo", 0.25},
                      {"Mn", 0.3},
                      {"Si", 0.25}});
  const State long_hold = nickel.soak(celsius(855));
  ShortSoakLimitOptions coldest;
  coldest.annealed_at = celsius(600);
  for (const auto& options : {ShortSoakLimitOptions{}, coldest})
    CHECK(message([&] { short_soak_limit(long_hold, options); }) ==
          "[gibbsteel.input.284] annealing at 600 C: is above A1: 4.4 vol% austenite, "
          "and the parameter file ends there: no estimate; take the long-hold limit, "
          "or count the carbide and use with_measured_carbide");
}

TEST_CASE("carbide of a limit is computed, not measured") {
  const ShortSoak soak = short_soak_limit(bearing().soak(celsius(845)));
  CHECK(soak.measured.empty());
  REQUIRE(soak.carbides.size() == 1);
  CHECK_FALSE(soak.carbides.front().measured);
}

TEST_CASE("states that are no long hold of austenite are refused") {
  const State long_hold = bearing().soak(celsius(845));
  CHECK(message([&] { short_soak_limit(short_soak_limit(long_hold).state); }) ==
        "[gibbsteel.input.260] state: is a mass balance, not the long-hold limit; give "
        "what steel.soak returns");
  const Steel iron({{"C", 0.005}});
  CHECK(message([&] { short_soak_limit(iron.soak(celsius(950))); }) ==
        "[gibbsteel.input.284] annealing at 700 C: leaves no carbide; take the "
        "long-hold limit, or count the carbide and use with_measured_carbide");
  CHECK(message([&] { short_soak_limit(bearing().soak(celsius(700))); }) ==
        "[gibbsteel.input.284] state: has a matrix of ferrite; take a temperature at "
        "which it is austenite");
  CHECK(message([&] { short_soak_limit(bearing().soak(celsius(746))); }) ==
        "[gibbsteel.input.284] state: is too cold: a matrix with 0.42 wt% carbon would "
        "hold ferrite; take a higher temperature");
  SoakOptions hot;
  hot.basis = VolumeBasis::soak;
  CHECK(message([&] { short_soak_limit(bearing().soak(celsius(845), hot)); }) ==
        "[gibbsteel.input.266] state: counts volumes at the soak temperature; soak "
        "again with volumes at room temperature, which the microscope sees");
}

TEST_CASE("partly molten steel has no such limit") {
  const SharedParameters liquid = with_liquid();
  const Steel steel({{"C", 1.0}, {"Cr", 1.45}}, {"", liquid, false});
  ShortSoakLimitOptions options;
  options.parameters = liquid;
  CHECK(message([&] { short_soak_limit(steel.soak(celsius(1400)), options); }) ==
        "[gibbsteel.input.284] state: is partly molten; take a temperature below the "
        "solidus");
}

TEST_CASE("a soak that holds graphite has none: cementite is what is left of it") {
  SoakOptions options;
  options.graphite = true;
  const Steel steel({{"C", 1.45}, {"Si", 1.0}, {"Mn", 0.8}, {"Mo", 0.25}});
  const State state = steel.soak(celsius(800), options);
  REQUIRE(state.volume_percent_of("graphite") > 1.0);
  for (const auto& call : {+[](const State& s) { short_soak_limit(s); },
                           +[](const State& s) { timed_soak(s, 30); }})
    CHECK(message([&] { call(state); }) ==
          "[gibbsteel.input.284] state: holds graphite, and soaks of minutes are about "
          "cementite; soak without graphite (graphite=True)");
}

TEST_CASE("up to a tenth of the carbon may be in other carbide") {
  const auto refused = [](double tungsten) {
    const Steel steel({{"C", 1.3}, {"W", tungsten}});
    const State annealed = steel.soak(celsius(700));
    double held = 0.0;
    for (const Occurrence& o : annealed.carbides())
      if (o.kind != "M3C") held += 0.01 * o.mass_percent * o.weight_percent["C"];
    const bool much = held > 0.13;
    return std::pair{
        much, !message([&] { short_soak_limit(steel.soak(celsius(850))); }).empty()};
  };
  bool some = false, none = false;
  for (const double tungsten : {1.0, 1.5, 2.0, 2.1, 2.2, 2.3, 2.4, 2.5, 3.0}) {
    const auto [much, is_refused] = refused(tungsten);
    CHECK(much == is_refused);
    (much ? some : none) = true;
  }
  CHECK(some);
  CHECK(none);
}

TEST_CASE("other carbide may hold nearly all of a metal") {
  const Steel steel({{"C", 1.492}, {"Si", 0.798}, {"Mo", 0.143}, {"W", 1.284}});
  ShortSoakLimitOptions options;
  options.annealed_at = celsius(600);
  const State annealed = steel.soak(celsius(600));
  const State state = short_soak_limit(steel.soak(celsius(789)), options).state;
  CHECK(state.at("hexagonal MC").mole_percent ==
        doctest::Approx(annealed.at("hexagonal MC").mole_percent));
}

TEST_CASE("less M3C than the long hold leaves is no warning about a count") {
  const State long_hold =
      Steel({{"C", 1.32}, {"Mo", 0.4}, {"W", 1.0}}).soak(celsius(855));
  const State state = short_soak_limit(long_hold).state;
  CHECK(state.volume_percent_of("M3C") < long_hold.volume_percent_of("M3C") - 0.2);
  CHECK(codes(state) == std::vector<std::string>{"349", "310"});
}

TEST_CASE("volumes are those at room temperature, however the annealing counts them") {
  const State long_hold = bearing().soak(celsius(845));
  ShortSoakLimitOptions hot;
  hot.annealing.basis = VolumeBasis::soak;
  CHECK(short_soak_limit(long_hold, hot).state.volume_percent_of("M3C") ==
        short_soak_limit(long_hold).state.volume_percent_of("M3C"));
}

TEST_CASE("very stable cementite gives up nothing, very unstable one all") {
  const auto stop = [](double energy) {
    const std::string layer = R"({
      "format": {"name": "gibbsteel parameter file", "version": 1},
      "title": "trial", "edition": "1", "licence": "CC0-1.0",
      "sources": {"trial": {"citation": "own trial, to see both ends of the search"}},
      "phases": {"M3C": {"energy": [{"on": ["Fe", "C"], "terms": {"1": )" +
                              std::to_string(energy) +
                              R"(}, "source": "trial", "kind": "estimated"}]}}})";
    const SharedParameters set = parse_parameters(layer, "trial", default_parameters());
    const std::vector<std::string> active{"Fe", "C"};
    const PhaseModel cementite(*set, *set->find_phase("M3C"), active);
    const PhaseModel austenite(*set, *set->find_phase("austenite"), active);
    const std::vector<double> y(cementite.constituents().size(), 1.0);
    return internal::cementite_stop(cementite, y, austenite, celsius(800));
  };
  const auto stable = stop(-1e6), nearly = stop(-2.5e5);
  REQUIRE(stable);
  REQUIRE(nearly);
  CHECK(*stable < *nearly - 50000.0);
  CHECK(*stop(-9e5) == *stable);  // the end of the search
  CHECK_FALSE(stop(1e6));
}
