/// Many soaks of one steel.

#include <doctest/doctest.h>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

std::vector<Temperature> celsius(std::initializer_list<double> values) {
  std::vector<Temperature> temperatures;
  for (const double value : values) temperatures.push_back(Temperature::celsius(value));
  return temperatures;
}

Steel plain() { return Steel({{"C", 0.4}, {"S", 0.02}}, {"plain", {}, false}); }

}  // namespace

TEST_CASE("a sweep is that many single soaks, in the order given") {
  const Steel steel({{"C", 0.9}, {"Cr", 4.0}, {"Mo", 5.0}, {"V", 2.0}});
  const auto temperatures = celsius({1150, 1000, 1075});
  const Sweep sweep = steel.sweep(temperatures);
  REQUIRE(sweep.states.size() == 3);
  for (std::size_t i = 0; i < 3; ++i) {
    const State single = steel.soak(temperatures[i]);
    CHECK(sweep.states[i].temperature == temperatures[i]);
    CHECK(sweep.states[i].gibbs_energy == single.gibbs_energy);
    CHECK(sweep.states[i].occurrences == single.occurrences);
    CHECK(sweep.states[i].matrix == single.matrix);
    CHECK(sweep.states[i].warnings == single.warnings);
  }
}

TEST_CASE("kinds of carbide over the whole sweep, in order of first appearance") {
  const Steel steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}});
  const Sweep sweep = steel.sweep(celsius({1175, 1000}));
  CHECK(sweep.carbide_kinds() == std::vector<std::string>{"MC", "M6C"});
  CHECK(sweep.failures() == 0);
}

TEST_CASE("the caller may stop it: what is done is kept and marked") {
  std::vector<std::size_t> counts;
  const auto stop_after_two = [&](std::size_t done) {
    counts.push_back(done);
    return done < 2;
  };
  const Sweep part = plain().sweep(celsius({900, 950, 1000}), {}, stop_after_two);
  CHECK(counts == std::vector<std::size_t>{1, 2});
  CHECK(part.states.size() == 2);
  CHECK(part.cancelled);
  CHECK(part.brief() == "plain, 2 soaks from 900 to 950 C, CANCELLED, long-hold limit");
  // Stopped when nothing is left to do: complete.
  CHECK_FALSE(plain().sweep(celsius({900, 950}), {}, stop_after_two).cancelled);
}

TEST_CASE("every temperature that cannot be is named before anything is computed") {
  CHECK_THROWS_WITH_AS(
      plain().sweep(celsius({900, 20, 2300})),
      "[gibbsteel.input.210] temperature: is 293.1 K = 20.0 C; give 300 K to 2500 K "
      "(27 C to 2227 C, 80 F to 4040 F) and check the unit\n"
      "[gibbsteel.input.210] temperature: is 2573.2 K = 2300.0 C; did you mean "
      "2300 F (1260 C)? give 300 K to 2500 K (27 C to 2227 C, 80 F to 4040 F) and "
      "check the unit",
      InputError);
}

TEST_CASE("no temperatures: an empty sweep that prints") {
  const Sweep sweep = plain().sweep({});
  CHECK(sweep.states.empty());
  CHECK_FALSE(sweep.cancelled);
  CHECK(sweep.warnings().empty());
  CHECK(sweep.brief() == "plain, no temperatures given");
  CHECK(sweep.full() == "plain, no temperatures given\n");
}

TEST_CASE("full: one row per soak, each distinct warning once with its temperatures") {
  // Fe-C: A1 727 C, A3 of 0.4 % C about 790 C (common practice, no source), hence
  // ferrite and cementite, then ferrite and austenite, then austenite alone.
  const Sweep sweep = plain().sweep(celsius({700, 750, 850}));
  const std::string expected =
      "plain, 3 soaks from 700 to 850 C, long-hold limit\n"
      "analysis, wt%: 0.4C 0.02S, balance Fe\n"
      "parameters: " +
      sweep.states[0].parameters +
      "\n"
      "volumes at room temperature, austenite counted as untempered martensite\n"
      "\n"
      "soak  carbide  vol%  matrix\n"
      "C         all   M3C       C\n"
      "700      5.91  5.91   0.015  f\n"
      "750      0.00     -   0.400  f\n"
      "850      0.00     -   0.400\n"
      "f: the matrix is not austenite alone\n"
      "Last digits are for comparing heats, not accuracy: see the warnings.\n"
      "\n"
      "! 700 to 850 C: [gibbsteel.warning.307] Not modelled, and left out of the\n"
      "  calculation: S 0.02 wt%.\n"
      "! 700 C: [gibbsteel.warning.305] The matrix is ferrite: below the hardening\n"
      "  range (annealed condition).\n"
      "! 750 C: [gibbsteel.warning.305] The matrix is not austenite alone: austenite\n"
      "  and ferrite.\n";
  CHECK(sweep.full().substr(0, expected.size()) == expected);
  REQUIRE(sweep.warnings().size() == 3);
  CHECK(sweep.warnings()[0].code == "gibbsteel.warning.307");
  CHECK(sweep.warnings()[2] == sweep.states[1].warnings[1]);
}

TEST_CASE("full: warnings of several elements are all kept, gaps are counted") {
  const Steel steel({{"C", 3.2}, {"Cr", 21.0}});
  const std::string text = steel.sweep(celsius({1100, 1000, 1150})).full();
  CHECK(text.find("3.2 wt% C is outside") != std::string::npos);
  CHECK(text.find("21 wt% Cr is outside") != std::string::npos);
  const std::string gap = plain().sweep(celsius({1200, 1000, 1190})).full();
  CHECK(gap.find("! 1200 to 1190 C (2 of these 3 soaks): [gibbsteel.warning.303]") !=
        std::string::npos);
}

TEST_CASE("a soak that is not usable is a row without numbers") {
  SoakOptions options;
  options.phases = {{"M3C"}};
  const Sweep sweep = plain().sweep(celsius({900}), options);
  CHECK(sweep.failures() == 1);
  CHECK(sweep.brief() == "plain, 1 soak at 900 C, 1 NOT USABLE, long-hold limit");
  CHECK(sweep.full().find("\n900   NOT USABLE\n") != std::string::npos);
}
