/// Where phases appear and disappear on heating.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "first_edition.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/distinct_warnings.hpp"
#include "messages.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

using Names = std::vector<std::string>;

Temperature celsius(double value) { return Temperature::celsius(value); }

TemperatureRange range(double low, double high) {
  return {celsius(low), celsius(high)};
}

Steel plain(double carbon) { return Steel({{"C", carbon}}, {"plain", {}, false}); }

/// Of the first edition: M23C6 is never there, which the tests below need.
Steel punch_heat(const SharedParameters& set = first_edition()) {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", set, false});
}

Names kinds_at(const Steel& steel, Temperature t) {
  Names kinds;
  for (const Occurrence& o : steel.soak(t).occurrences) kinds.push_back(o.kind);
  std::sort(kinds.begin(), kinds.end());
  return kinds;
}

Names sorted(Names names) {
  std::sort(names.begin(), names.end());
  return names;
}

}  // namespace

TEST_CASE("plain carbon steel: the eutectoid reaction, Ae1 and Ae3") {
  const PhaseChanges found = phase_changes(plain(0.33), range(650, 900));
  REQUIRE(found.changes.size() == 2);
  const PhaseChange& eutectoid = found.changes[0];
  CHECK(eutectoid.invariant);
  CHECK(eutectoid.text == "727 C on heating: ferrite + M3C -> austenite (invariant)");
  // 727 +-2 C and 0.77 +-0.02 wt% C in austenite: Okamoto, J. Phase Equilib. 13 (1992)
  // 543; Chipman, Metall. Trans. 3 (1972) 55.
  CHECK(std::abs(eutectoid.temperature.in_celsius() - 727.0) < 2.0);
  CHECK(std::abs(eutectoid.above.at("austenite").weight_percent["C"] - 0.77) < 0.02);
  CHECK_FALSE(found.changes[1].invariant);
  CHECK(found.changes[1].disappears == Names{"ferrite"});
  REQUIRE(found.ae1.temperature);
  REQUIRE(found.ae3.temperature);
  CHECK(*found.ae1.temperature == eutectoid.temperature);
  // A3 of 0.33 +-0.03 wt% C is 800 C: derived from the activities of Ban-ya, Elliott &
  // Chipman, Metall. Trans. 1 (1970) 1313. 0.03 wt% are 6 K there.
  CHECK(std::abs(found.ae3.temperature->in_celsius() - 800.0) < 6.0);
  CHECK_FALSE(found.acm.temperature);
  CHECK(found.acm.text == "no M3C is left above Ae3");
}

TEST_CASE("Acm: where the cementite of a hypereutectoid steel is gone") {
  const PhaseChanges found = phase_changes(plain(1.109), range(700, 950));
  REQUIRE(found.acm.temperature);
  // 1.109 +-0.04 wt% C at 850 C, same source as A3 above. 0.04 wt% are 14 K.
  CHECK(std::abs(found.acm.temperature->in_celsius() - 850.0) < 14.0);
  CHECK(*found.ae1.temperature == *found.ae3.temperature);
}

TEST_CASE("graphite allowed: its eutectoid") {
  SoakOptions options;
  options.graphite = true;
  const PhaseChanges found = phase_changes(plain(0.5), range(700, 780), options);
  REQUIRE(found.changes.size() >= 1);
  // 738 +-3 C, 0.68 +-0.02 wt% C: Chipman, Metall. Trans. 3 (1972) 55.
  CHECK(std::abs(found.changes[0].temperature.in_celsius() - 738.0) < 3.0);
  CHECK(found.changes[0].text ==
        "738 C on heating: ferrite + graphite -> austenite (invariant)");
}

namespace {

/// The changes over the usual range, each checked by soaks.
Names checked_by_soaks(const Steel& steel, std::size_t count) {
  const PhaseChanges found = phase_changes(steel, usual_range(*steel.parameters()));
  CHECK(found.complete());
  REQUIRE(found.changes.size() == count);
  REQUIRE(found.fields.size() == count + 1);
  for (std::size_t i = 0; i < found.changes.size(); ++i) {
    const double t = found.changes[i].temperature.in_kelvin();
    CAPTURE(found.changes[i].text);
    CHECK(found.changes[i].bracket_width <= 0.01);
    CHECK(kinds_at(steel, Temperature::kelvin(t - 0.01)) ==
          sorted(found.fields[i].phases));
    CHECK(kinds_at(steel, Temperature::kelvin(t + 0.01)) ==
          sorted(found.fields[i + 1].phases));
    CHECK(found.fields[i].high == found.changes[i].temperature);
    CHECK(found.fields[i + 1].low == found.changes[i].temperature);
  }
  return found.kinds();
}

}  // namespace

TEST_CASE("single soaks on both sides of every change have its phases") {
  CHECK(checked_by_soaks(punch_heat(), 5) ==
        Names{"austenite", "MC", "ferrite", "M6C", "M7C3"});
  // The file that ships: M23C6 comes and goes, M7C3 within it.
  CHECK(checked_by_soaks(punch_heat(default_parameters()), 9) ==
        Names{"austenite", "MC", "ferrite", "M6C", "M7C3", "M23C6"});
}

TEST_CASE("dissolution: found, still there, never there, comes and goes") {
  const PhaseChanges found = phase_changes(punch_heat(), range(800, 1250));
  const Dissolution m6c = found.dissolution("M6C");
  CHECK(m6c.status == DissolutionStatus::found);
  REQUIRE(m6c.temperature);
  const std::string heading = "punch heat 7, 800 to 1250 C, long-hold limit: ";
  CHECK(m6c.brief() ==
        heading +
            "found: M6C is gone above 1150 C; M6C is present from 800 C (low end of "
            "the range) to 1150 C");
  CHECK(found.dissolution("austenite").brief() ==
        heading +
            "still present: austenite is still there at the high end of the range; "
            "austenite is present from 820 C to 1250 C (high end of the range)");
  CHECK(found.dissolution("M23C6").brief() ==
        heading + "never present: M23C6 is not present anywhere in the range");
  const Dissolution ferrite =
      dissolution_temperature(Steel({{"Cr", 11.0}}), "ferrite", range(850, 1250));
  CHECK(ferrite.status == DissolutionStatus::still_present);
  REQUIRE(ferrite.intervals.size() == 2);
  CHECK(ferrite.intervals[0].high_edge == Edge::change);
  CHECK(ferrite.intervals[1].low_edge == Edge::change);
  CHECK(ferrite.intervals[1].high_edge == Edge::range);
  CHECK_FALSE(ferrite.temperature);
}

TEST_CASE("dissolution: warnings of the answer, or of the ends of the range") {
  const PhaseChanges found =
      phase_changes(punch_heat(default_parameters()), range(800, 1250));
  const Dissolution gone = found.dissolution("M23C6");
  REQUIRE(gone.temperature);
  const auto change = std::find_if(
      found.changes.begin(), found.changes.end(),
      [&](const PhaseChange& c) { return c.temperature == *gone.temperature; });
  REQUIRE(change != found.changes.end());
  CHECK(gone.warnings == internal::distinct_warnings({&change->below, &change->above}));
  const Dissolution still = found.dissolution("austenite");
  CHECK(still.status == DissolutionStatus::still_present);
  CHECK(still.warnings == internal::distinct_warnings({&found.low, &found.high}));
  const std::vector<std::string> hot = codes(found.high);
  CHECK(std::count(hot.begin(), hot.end(), "303") == 1);
  const std::string page = still.full();
  CHECK(
      page.starts_with("punch heat 7, 800 to 1250 C, long-hold limit: still present: "
                       "austenite is\n  still there"));
  for (const char* part : {"analysis, wt%: 0.55C 4.5Cr 2.75Mo 2W 1V, balance Fe",
                           "parameters: Tool steels", "! [gibbsteel.warning.303] "}) {
    CAPTURE(part);
    CHECK(page.find(part) != std::string::npos);
  }
}

TEST_CASE("a search that is stopped knows nothing above") {
  SearchOptions search;
  search.progress = [](std::size_t done) { return done < 30; };
  const PhaseChanges part = phase_changes(punch_heat(), range(700, 1250), {}, search);
  CHECK_FALSE(part.complete());
  CHECK(part.stopped == "cancelled");
  CHECK(part.dissolution("M6C").status == DissolutionStatus::not_known);
  CHECK(part.dissolution("M6C").text.rfind("part of the range is not known", 0) == 0);
  CHECK(part.brief().find("NOT COMPLETE (cancelled)") != std::string::npos);
}

TEST_CASE("nothing usable: a gap with its reason, and no claim") {
  SoakOptions options;
  options.phases = {{"M3C"}};
  const PhaseChanges found = phase_changes(plain(0.4), range(700, 720), options);
  REQUIRE(found.gaps.size() == 1);
  CHECK(found.gaps[0].low == celsius(700));
  CHECK(found.gaps[0].high == celsius(720));
  CHECK(found.gaps[0].reason ==
        "no mixture of the allowed phases has this composition");
  CHECK(found.fields.empty());
  CHECK_FALSE(found.complete());
  CHECK(found.brief() ==
        "plain, 700 to 720 C, long-hold limit: 0 phase changes, 1 GAP");
  CHECK(found.full().find("NOT KNOWN from 700 to 720 C: no mixture of the allowed "
                          "phases has this\n  composition. Changes in there are not "
                          "listed.\n") != std::string::npos);
  CHECK(found.dissolution("M3C").status == DissolutionStatus::not_known);
  const auto target = temperature_for(plain(0.4), quantities::matrix("C"), 0.1,
                                      range(700, 720), options);
  CHECK(target.status == TargetStatus::not_known);
  CHECK(target.text == "nothing is known of the range");
  CHECK(target.gaps == found.gaps);
}

TEST_CASE("as text") {
  const PhaseChanges found = phase_changes(plain(0.4), range(700, 800));
  CHECK(found.brief() == "plain, 700 to 800 C, long-hold limit: 2 phase changes");
  CHECK(
      found.full() ==
      "plain, 700 to 800 C, long-hold limit: 2 phase changes\n"
      "analysis, wt%: 0.4C, balance Fe\n"
      "parameters: " +
          found.low.parameters +
          "\n"
          "\n"
          "phases present\n"
          "  ferrite + M3C        700 to 727 C\n"
          "  austenite + ferrite  727 to 787 C\n"
          "  austenite            787 to 800 C\n"
          "\n"
          "changes\n"
          "727 C on heating: ferrite + M3C -> austenite (invariant)\n"
          "787 C on heating: ferrite disappears\n"
          "\n"
          "Ae1: austenite first forms at 727 C\n"
          "Ae3: the last ferrite is gone at 787 C\n"
          "Acm: no M3C is left above Ae3\n"
          "\n"
          "Long-hold limit (true equilibrium): a shop soak of minutes leaves more "
          "carbide\n"
          "and less carbon in the matrix. Before hardening real parts try coupons and\n"
          "follow the steel maker's data. Hot salt, oil, cryogens and furnaces "
          "injure:\n"
          "local codes and licensed practice come first.\n");
}

TEST_CASE("wrong arguments are named before anything is computed") {
  SearchOptions search;
  search.node_spacing = 0.0;
  search.tolerance = 2.0;
  search.most_soaks = 1;
  CHECK_THROWS_WITH_AS(
      phase_changes(plain(0.4), range(900, 800), {}, search),
      "[gibbsteel.input.251] node_spacing: is 0; give 0.01 to 100 [K]\n"
      "[gibbsteel.input.251] tolerance: is 2; give 0.0001 to 1 [K]\n"
      "[gibbsteel.input.251] most_soaks: is 1; give 10 or more\n"
      "[gibbsteel.input.250] range: goes from 900.0 C to 800.0 C; give the lower "
      "temperature first",
      InputError);
  CHECK_THROWS_AS(phase_changes(plain(0.4), range(-100, 800)), InputError);
  CHECK_THROWS_AS(dissolution_temperature(plain(0.4), "M7C", range(700, 800)),
                  InputError);
}

TEST_CASE("what melts is no end of a transformation") {
  const auto limits = [](const NamedValues& steel) {
    return phase_changes(Steel(steel, {"heat", with_liquid(), false}),
                         {Temperature::celsius(600), Temperature::celsius(1550)});
  };
  const auto ferritic = limits({{"C", 0.01}, {"Si", 3.2}});
  CHECK_FALSE(ferritic.ae3.temperature);
  CHECK(ferritic.ae3.text == "ferrite melts before it is gone");
  CHECK(limits({{"C", 4.3}}).acm.text == "M3C melts before it is gone");
  const auto white = limits({{"C", 3.0}}).dissolution("M3C");
  CHECK(white.text.substr(white.text.size() - 13) == "; in the melt");
  CHECK(limits({{"C", 1.2}}).dissolution("M3C").text.find("melt") == std::string::npos);
  CHECK(limits({{"C", 0.6}}).ae3.temperature);
  CHECK(limits({{"C", 1.2}}).acm.temperature);
}
