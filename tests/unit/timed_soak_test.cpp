/// Soaks of minutes: the limits, and what is refused. Numbers against published soaks:
/// tests/reference, records with `minutes`; Eqs. (B4) to (B7):
/// particle_surface_test.cpp, shrinking_spheres_test.cpp.

#include "gibbsteel/timed_soak.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "bearing_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"
#include "short_soak/below_a1.hpp"

using namespace gibbsteel;

TEST_CASE(
    "cementite that is in equilibrium stands still; iron and carbon need no time") {
  const State plain = Steel({{"C", 1.0}}).soak(celsius(800));
  for (const double minutes : {0.01, 1000.0})
    CHECK(timed_soak(plain, minutes).state.volume_percent_of("M3C") ==
          doctest::Approx(plain.volume_percent_of("M3C")).epsilon(1e-6));
}

TEST_CASE("it starts at the short-soak limit and ends near the long hold") {
  for (const double t : {820.0, 845.0, 870.0}) {
    const State long_hold = bearing().soak(celsius(t));
    const double limit = carbon(short_soak_limit(long_hold));
    const auto soaks = timed_soaks(long_hold, {0.1, 10.0, 40.0, 160.0, 640.0, 1e5});
    CHECK(carbon(soaks.front()) == doctest::Approx(limit).epsilon(1e-9));
    for (std::size_t i = 1; i < soaks.size(); ++i)
      CHECK(carbon(soaks[i]) >= carbon(soaks[i - 1]));
    CHECK(std::abs(carbon(soaks.back()) - long_hold.matrix.weight_percent["C"]) <
          0.015);
  }
}

TEST_CASE("hotter, finer and longer dissolve more") {
  const State cold = bearing().soak(celsius(845)), hot = bearing().soak(celsius(865));
  CHECK(carbon(timed_soak(hot, 30)) > carbon(timed_soak(cold, 30)) + 0.05);
  TimedSoakOptions fine;
  fine.particle_micrometres = 0.3;
  // A quarter of the time for half the diameter.
  CHECK(carbon(timed_soak(cold, 30, fine)) ==
        doctest::Approx(carbon(timed_soak(cold, 120))).epsilon(1e-9));
}

TEST_CASE("several times at once are the same as one by one, in the order given") {
  const State long_hold = bearing().soak(celsius(850));
  const std::vector<double> minutes{60.0, 20.0, 240.0};
  const auto together = timed_soaks(long_hold, minutes);
  REQUIRE(together.size() == 3);
  for (std::size_t i = 0; i < 3; ++i) {
    const ShortSoak alone = timed_soak(long_hold, minutes[i]);
    CHECK(together[i].state.occurrences == alone.state.occurrences);
    CHECK(together[i].bands == alone.bands);
  }
  CHECK(timed_soaks(long_hold, {}).empty());
}

TEST_CASE(
    "the state is a balance, says so, and its bands are about three times the time") {
  const State long_hold = bearing().soak(celsius(860));
  const ShortSoak soak = timed_soak(long_hold, 40);
  const State& state = soak.state;
  CHECK(state.usable());
  CHECK(state.solve_report.status == SolveStatus::timed_soak);
  CHECK(state.solve_report.by_mass_balance());
  CHECK(to_string(state.solve_report.status) == "timed soak");
  CHECK(codes(state).front() == "360");
  CHECK(std::isnan(state.gibbs_energy));
  CHECK(state.carbon_activity < long_hold.carbon_activity);
  CHECK(state.soak_time == SoakTime{40.0, 0.6, celsius(700)});
  TimedSoakOptions colder, hotter;
  colder.annealed.annealed_at = celsius(650);
  hotter.annealed.annealed_at = celsius(730);
  CHECK(soak.band("C").low ==
        doctest::Approx(carbon(timed_soak(long_hold, 40.0 / 3.0, colder))));
  CHECK(soak.band("C").high ==
        doctest::Approx(carbon(timed_soak(long_hold, 120, hotter))));
  CHECK(soak.band("C").long_hold == long_hold.matrix.weight_percent["C"]);
  for (const auto& [symbol, given] : state.analysis.modelled) {
    double held = 0.0;
    for (const Occurrence& o : state.occurrences)
      held += 0.01 * o.mass_percent * o.weight_percent[symbol];
    CHECK(held == doctest::Approx(given));
  }
}

TEST_CASE("elements that are there in no amount change nothing") {
  const Steel with({{"C", 1.0}, {"Cr", 1.45}, {"Mo", 0.0}, {"V", 0.0}});
  const Steel without({{"C", 1.0}, {"Cr", 1.45}});
  CHECK(carbon(timed_soak(with.soak(celsius(850)), 60)) ==
        doctest::Approx(carbon(timed_soak(without.soak(celsius(850)), 60))));
}

TEST_CASE("like is matched with like by the quantity of so many minutes") {
  const State reference = bearing().soak(celsius(860));
  const Quantity quantity = quantities::timed_soak_matrix("C", 40);
  CHECK(quantity.label() == "C in the matrix, timed soak of 40 min [wt%]");
  const ShortSoak soak = timed_soak(reference, 40);
  CHECK(quantity.value(reference) == doctest::Approx(carbon(soak)).epsilon(1e-12));
  CHECK(quantity.value(soak.state) == carbon(soak));
  // Other minutes, or another diameter, are another soak.
  CHECK(std::isnan(quantities::timed_soak_matrix("C", 20).value(soak.state)));
  TimedSoakOptions coarse;
  coarse.particle_micrometres = 1.0;
  CHECK(std::isnan(quantities::timed_soak_matrix("C", 40, coarse).value(soak.state)));
  TimedSoakOptions colder;
  colder.annealed.annealed_at = celsius(620);
  CHECK(std::isnan(quantity.value(timed_soak(reference, 40, colder).state)));
  // From an element that is not there a slope goes upwards only.
  StateSlope slope;
  slope.input = {Input::Kind::element, "Ni", "wt%"};
  CHECK(std::isfinite(quantity.slope(reference, slope)));
  CHECK(std::isnan(quantity.value(bearing().soak(celsius(700)))));
  const auto match = matching_temperature(reference, bearing(), quantity,
                                          {celsius(820), celsius(900)});
  REQUIRE(match.search.crossings.size() == 1);
  CHECK(match.search.crossings.front().temperature.in_celsius() ==
        doctest::Approx(860.0).epsilon(1e-4));
  const auto of_long_hold = matching_temperature(
      soak.state, bearing(), quantities::matrix("C"), {celsius(760), celsius(900)});
  CHECK(of_long_hold.full().find("quantities.timed_soak_matrix compares like\nwith") !=
        std::string::npos);
}

TEST_CASE("it prints what it is") {
  const ShortSoak late = timed_soak(bearing().soak(celsius(845)), 60);
  CHECK(
      late.brief() ==
      "AISI 52100 at 845 C (1553 F), timed soak of 60 min: 4.4 vol% carbide (M3C 4.4), "
      "matrix 0.74 wt% C (0.61 to 0.84; long-hold limit 0.88)");
  const std::string text = late.full();
  CHECK(text.substr(text.find("\ncarbide, vol%")) == R"(
carbide, vol%  timed soak  long hold
M3C                  4.44       2.04

matrix, wt%  value    low   high  long hold
C            0.737  0.609  0.843      0.882
Cr            1.13   0.96   1.27       1.25
Mn            0.29   0.25   0.32       0.34
Si            0.26   0.26   0.27       0.26
low, high: a third of the minutes, annealed up to 50 C colder, and three
times, up to 30 C hotter
)");
  CHECK(hardening(late.state).full().find("Estimate of a soak of minutes, counted") !=
        std::string::npos);
}

TEST_CASE("its warning says how far it has come, and from what") {
  const ShortSoak late = timed_soak(bearing().soak(celsius(845)), 60);
  CHECK(late.state.warnings.front().text ==
        "An estimate of a soak of 60 min, whole section at temperature, not an "
        "equilibrium: M3C has given up what metals diffusing away from it allow. "
        "Spheroidized stock, M3C of 0.6 micrometre annealed at 700 C; pearlite and "
        "hardened stock dissolve sooner. Size and diffusion are known to a factor of "
        "three in time: see the band of the ShortSoak.");
  const ShortSoak early = timed_soak(bearing().soak(celsius(845)), 2);
  CHECK(
      early.state.warnings.front().text ==
      "An estimate of a soak of 2 min, whole section at temperature, not an "
      "equilibrium: M3C has given up what carbon it can with its metals left in "
      "place, and these have not got further by then (short-soak limit). Spheroidized "
      "stock, M3C of 0.6 micrometre annealed at 700 C; pearlite and hardened stock "
      "dissolve sooner. So short a time is about heating through. Size and diffusion "
      "are known to a factor of three in time: see the band of the ShortSoak.");
  const Steel oil({{"C", 0.92}, {"Cr", 0.5}, {"Mn", 1.2}, {"W", 0.5}, {"V", 0.1}});
  const ShortSoak all = timed_soak(oil.soak(celsius(950)), 3000);
  CHECK(all.state.volume_percent_of("M3C") == 0.0);
  CHECK(all.state.warnings.front().text ==
        "An estimate of a soak of 3000 min, whole section at temperature, not an "
        "equilibrium: all M3C has dissolved. Spheroidized stock, M3C of 0.6 micrometre "
        "annealed at 700 C; pearlite and hardened stock dissolve sooner. Other carbide "
        "(hexagonal MC, MC) is kept as annealed. Size and diffusion are known to a "
        "factor of three in time: see the band of the ShortSoak.");
}

TEST_CASE("bands have a width upwards while metals have still to catch up") {
  const Steel nickel(
      {{"C", 0.75}, {"Cr", 0.75}, {"Ni", 1.5}, {"Mo", 0.3}, {"Mn", 0.7}, {"Si", 0.25}});
  const auto soaks = timed_soaks(nickel.soak(celsius(820)), {1.0, 5.0, 10.0, 20.0});
  double high = 0.0;
  for (const ShortSoak& soak : soaks) {
    const MatrixBand& band = soak.band("C");
    CHECK(band.value == carbon(soaks.front()));  // still the first stage
    CHECK(band.high > std::max(band.value + 0.005, high));
    high = band.high;
  }
}

TEST_CASE("it says when no hotter annealing could be taken for the band") {
  const State long_hold = bearing().soak(celsius(845));
  TimedSoakOptions options;
  options.annealed.annealed_at =
      internal::hottest_without_austenite(bearing(), celsius(700), celsius(760), {});
  const ShortSoak soak = timed_soak(long_hold, 60, options);
  const std::string end =
      "see the band of the ShortSoak. No hotter annealing could be taken for its upper "
      "end.";
  CHECK(soak.state.warnings.front().text.ends_with(end));
  options.annealed.annealed_at =
      celsius(options.annealed.annealed_at->in_celsius() - 5);
  CHECK(timed_soak(long_hold, 60, options)
            .state.warnings.front()
            .text.ends_with("factor of three in time: see the band of the "
                            "ShortSoak."));
}

TEST_CASE("it says when a steel is beyond those it was compared with") {
  const auto text = [](double chromium, double t) {
    const Steel steel({{"C", 0.6}, {"Cr", chromium}, {"Mn", 0.4}, {"Si", 0.25}});
    return timed_soak(steel.soak(celsius(t)), 20).state.warnings.front().text;
  };
  const std::string beyond =
      "dissolve sooner. Beyond the steels it was compared with, bearing and "
      "oil-hardening ones: annealed M3C with 13 wt% Cr. Size and diffusion";
  CHECK(text(1.5, 860).find(beyond) != std::string::npos);
  CHECK(text(0.5, 860).find("Beyond") == std::string::npos);
}

TEST_CASE("searches over timed soaks hand on why there is none") {
  const Steel steel({{"C", 0.5}, {"Cr", 1.0}, {"Mn", 0.3}, {"Si", 0.25}});
  const auto found = composition_for(steel, "W", quantities::timed_soak_matrix("C", 10),
                                     0.45, {0.0, 2.5}, celsius(890));
  REQUIRE(found.gaps.size() == 1);
  const PercentGap& gap = found.gaps.front();
  CHECK(gap.high == 2.5);
  const Steel first({{"C", 0.5}, {"Cr", 1.0}, {"Mn", 0.3}, {"Si", 0.25}, {"W", 1.0}});
  const std::string alone = message([&] { timed_soak(first.soak(celsius(890)), 10); });
  CHECK(
      gap.reason.starts_with("short and timed soaks are for steels whose annealed "
                             "carbide is cementite (52100, "
                             "O1, W1 types): annealing at 700 C leaves 0."));
  // The same words as those of one soak, with the numbers of the low end.
  const std::string tail = gap.reason.substr(gap.reason.find("more than a tenth"));
  CHECK(alone.ends_with(tail));
}

TEST_CASE(
    "where all carbon has dissolved it has the carbon of the steel, all the way") {
  const Steel steel({{"C", 0.5}, {"Cr", 1.0}, {"Mn", 0.3}, {"Si", 0.25}});
  for (const Quantity& quantity :
       {quantities::matrix("C"), quantities::timed_soak_matrix("C", 10)}) {
    const auto hot =
        temperature_for(steel, quantity, 0.5, {celsius(870), celsius(950)});
    CHECK(hot.status == TargetStatus::always_equal);
    CHECK(hot.crossings.empty());
    const auto tungsten =
        composition_for(steel, "W", quantity, 0.5, {0.0, 0.05}, celsius(890));
    CHECK(tungsten.crossings.empty());
    REQUIRE(tungsten.equal.size() == 1);
    CHECK(tungsten.equal.front().low == 0.0);
  }
}

TEST_CASE("any quantity can be that of so many minutes") {
  const State long_hold = bearing().soak(celsius(845));
  HardeningOptions quench;
  quench.coldest = celsius(20);
  const Quantity start = quantities::martensite_start(quench);
  const Quantity early = quantities::after_minutes(start, 60);
  CHECK(early.label() == "martensite start, timed soak of 60 min [C]");
  CHECK(early.by_family());
  const ShortSoak soak = timed_soak(long_hold, 60);
  CHECK(early.value(long_hold) == hardening(soak.state, quench).martensite_start.value);
  CHECK(early.value(soak.state) == early.value(long_hold));
  CHECK(std::isnan(early.value(timed_soak(long_hold, 30).state)));
  CHECK(early.value(long_hold) > start.value(long_hold) + 10.0);
  const Quantity activity =
      quantities::after_minutes(quantities::carbon_activity(), 60);
  CHECK(activity.value(long_hold) == soak.state.carbon_activity);
  StateSlope slope;
  slope.input = {Input::Kind::temperature, "temperature", "K"};
  const double rise = early.value(bearing().soak(celsius(846))) -
                      early.value(bearing().soak(celsius(844)));
  CHECK(early.slope(long_hold, slope) == doctest::Approx(0.5 * rise).epsilon(0.02));
  const auto match =
      temperature_for(bearing(), early, 190.0, {celsius(800), celsius(900)});
  REQUIRE(match.crossings.size() == 1);
  CHECK(match.full().find("Estimate of a soak of minutes") != std::string::npos);
  CHECK(message([&] {
          quantities::after_minutes(start, 0.0);
        }).starts_with("[gibbsteel.input.287] minutes: is 0;"));
}

TEST_CASE("times and sizes out of range are refused, all at once") {
  const State long_hold = bearing().soak(celsius(845));
  TimedSoakOptions coarse;
  coarse.particle_micrometres = 80.0;
  CHECK(message([&] {
          timed_soaks(long_hold, {30.0, 0.0}, coarse);
        }) ==
        "[gibbsteel.input.287] minutes: is 0; give minutes at temperature, above 0 and "
        "at most 100000\n"
        "[gibbsteel.input.287] particle_micrometres: is 80; give the diameter of "
        "annealed cementite in micrometres, 0.05 to 50; 0.5 to 1 is common");
  for (const double minutes : {-5.0, std::nan(""), 1e6})
    CHECK(message([&] {
            timed_soak(long_hold, minutes);
          }).starts_with("[gibbsteel.input.287] minutes: is "));
  CHECK(message([&] {
          quantities::timed_soak_matrix("C", 0.0);
        }).starts_with("[gibbsteel.input.287]"));
}

TEST_CASE("steels and states of which the limit says nothing have no timed soak") {
  const Steel d2({{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}});
  CHECK(message([&] { timed_soak(d2.soak(celsius(1030)), 30); }) ==
        "[gibbsteel.input.284] short and timed soaks: are for steels whose annealed "
        "carbide is cementite (52100, O1, W1 types): annealing at 700 C leaves no "
        "M3C, but carbide that gives up carbon only with its metals: M7C3, MC; take "
        "the long-hold limit (after minutes less carbon is in the matrix in "
        "practice), or count the carbide and use with_measured_carbide");
  CHECK(message([&] { timed_soak(bearing().soak(celsius(746)), 1); }) ==
        "[gibbsteel.input.284] state after 1 min: is too cold: a matrix with 0.42 wt% "
        "carbon would hold ferrite; take a longer time or a higher temperature");
  const ShortSoak soak = timed_soak(bearing().soak(celsius(845)), 30);
  CHECK(message([&] {
          timed_soak(soak.state, 30);
        }).starts_with("[gibbsteel.input.260]"));
}

TEST_CASE("the carbon activity is that of the matrix") {
  const ShortSoak soak = timed_soak(bearing().soak(celsius(850)), 60);
  SoakOptions alone;
  alone.phases = {"austenite"};
  const Steel matrix(soak.state.matrix.weight_percent);
  CHECK(matrix.soak(celsius(850), alone).carbon_activity ==
        doctest::Approx(soak.state.carbon_activity).epsilon(1e-9));
}

TEST_CASE("layers: nearly all of the titanium is in MC") {
  const SharedParameters layered = load_parameters(
      GIBBSTEEL_SOURCE_DIR "/thermo_data/layers/niobium_titanium_nitrogen.json",
      default_parameters());
  const Steel steel(
      {{"C", 1.27}, {"Cr", 0.04}, {"Mn", 0.56}, {"N", 0.0055}, {"Ti", 0.018}},
      {"", layered, false});
  TimedSoakOptions options;
  options.annealed.parameters = layered;
  for (double t = 800.0; t <= 890.0; t += 15.0) {
    const State long_hold = steel.soak(celsius(t));
    const ShortSoak soak = timed_soak(long_hold, 30, options);
    CHECK(carbon(soak) > 0.5);
    CHECK(soak.state.volume_percent_of("MC") > 0.0);
  }
}

TEST_CASE("a soak with phases of its own is annealed with these and ferrite") {
  SoakOptions few;
  few.phases = {"austenite", "M3C"};
  const State state = bearing().soak(celsius(845), few);
  CHECK(carbon(timed_soak(state, 30)) ==
        doctest::Approx(carbon(timed_soak(bearing().soak(celsius(845)), 30))));
}
