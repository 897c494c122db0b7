/// How long to soak until the matrix holds so much: the inverse of timed soaks.

#include "gibbsteel/minutes_for.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "bearing_steel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

TEST_CASE("minutes for a content, at once, or never") {
  const State long_hold = bearing().soak(celsius(870));
  const MinutesFor found = minutes_for(long_hold, "C", 0.75);
  CHECK(found.status == MinutesStatus::found);
  CHECK(carbon(timed_soak(long_hold, found.minutes)) ==
        doctest::Approx(0.75).epsilon(1e-5));
  CHECK(found.text ==
        "C in the matrix is 0.75 wt% after 23 min at temperature (size and diffusion "
        "known to a factor of three: 7.6 to 69 min)");
  CHECK(found.low_minutes == doctest::Approx(found.minutes / 3.0));
  CHECK(found.high_minutes == doctest::Approx(3.0 * found.minutes));
  const MinutesFor once = minutes_for(long_hold, "C", 0.6);
  CHECK(once.status == MinutesStatus::at_once);
  CHECK(once.minutes == 0.0);
  CHECK(once.high_minutes == 0.0);
  CHECK(
      once.text ==
      "C in the matrix is 0.6 wt% or beyond as soon as the section is at temperature: "
      "0.6908 wt% by the short-soak limit");
  const MinutesFor never = minutes_for(long_hold, "C", 0.99);
  CHECK(never.status == MinutesStatus::never_reached);
  CHECK(std::isnan(never.minutes));
  CHECK(std::isnan(never.low_minutes));
  CHECK(
      never.text ==
      "C in the matrix starts at 0.6908 wt%, approaches 0.947 and never reaches 0.99; "
      "the long-hold limit is 0.9497 wt%");
  const MinutesFor close = minutes_for(long_hold, "C", never.at_last + 1e-7);
  CHECK(close.text ==
        "C in the matrix starts at 0.6908 wt%, approaches 0.9470066 and never reaches "
        "0.9470067; the long-hold limit is 0.9497 wt%");
}

TEST_CASE("contents of a falling or absent element, and those that no matrix has") {
  const State long_hold = bearing().soak(celsius(870));
  CHECK(minutes_for(long_hold, "Cr", 1.2).status == MinutesStatus::found);
  CHECK(message([&] { minutes_for(long_hold, "V", 0.1); }) ==
        "[gibbsteel.input.209] matrix: there is no 'V' in it; name an element of the "
        "steel");
  CHECK(message([&] { minutes_for(long_hold, "C", std::nan("")); }) ==
        "[gibbsteel.input.252] weight_percent: is not a finite number; give weight "
        "percent of the matrix");
  CHECK(
      message([&] { minutes_for(long_hold, "C", -5.0); }) ==
      "[gibbsteel.input.340] weight_percent: is -5, which 'C in the matrix' can never "
      "be; give 0 to 100 wt%");
}

TEST_CASE("all of the carbon is reached in finite time, where all cementite goes") {
  const State hot = bearing().soak(celsius(920));
  const MinutesFor all = minutes_for(hot, "C", 1.0);
  CHECK(all.status == MinutesStatus::found);
  CHECK(all.minutes < 100.0);
  CHECK(all.minutes > minutes_for(hot, "C", 0.99).minutes);
  CHECK(timed_soak(hot, 1.01 * all.minutes).state.volume_percent_of("M3C") == 0.0);
  CHECK(minutes_for(hot, "Si", 0.25).status == MinutesStatus::found);
  // Gone at once: the content of the steel is there from the first.
  for (const auto& [symbol, given] : bearing().soak(celsius(1000)).analysis.modelled)
    if (symbol != "Fe")
      CHECK(minutes_for(bearing().soak(celsius(1000)), symbol, given).status !=
            MinutesStatus::never_reached);
}

TEST_CASE("minutes are those of a timed soak, or there are none") {
  const State cold =
      Steel({{"C", 0.6}, {"Cr", 0.7}, {"Mo", 0.25}, {"Ni", 1.5}, {"V", 0.1}})
          .soak(celsius(740));
  CHECK(message([&] { minutes_for(cold, "C", 0.495); }).find("would hold ferrite") !=
        std::string::npos);
  // What carbon alone would reach is no more there than later.
  CHECK(message([&] { minutes_for(cold, "C", 0.3); }) ==
        "[gibbsteel.input.284] state: is too cold: a matrix with 0.49 wt% carbon would "
        "hold ferrite; take a longer time or a higher temperature");
  TimedSoakOptions coarse;
  coarse.particle_micrometres = 50.0;
  const MinutesFor long_wait =
      minutes_for(bearing().soak(celsius(845)), "C", 0.8, coarse);
  CHECK(long_wait.status == MinutesStatus::too_long);
  CHECK(std::isnan(long_wait.minutes));
  CHECK(long_wait.text == "C in the matrix is 0.8 wt% only after more than 100000 min");
}
