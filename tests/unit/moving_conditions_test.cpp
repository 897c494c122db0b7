/// Conditions that move: after a refresh the coefficients of a phase are those of
/// conditions made anew, to the bit, wherever they were before.

#include "continuation/moving_conditions.hpp"

#include <doctest/doctest.h>

#include "../../benchmarks/high_speed_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

PhaseSystem all_phases() {
  return {default_parameters(), benchmarks::high_speed_steel().elements(),
          benchmarks::all_phases()};
}

void check_same(const Candidate& moved, const Candidate& made) {
  CAPTURE(made.phase->name);
  CHECK(moved.phase == made.phase);
  CHECK(moved.at.kelvin == made.at.kelvin);
  CHECK(moved.at.value == made.at.value);
  CHECK(moved.at.dt == made.at.dt);
  CHECK(moved.at.dt2 == made.at.dt2);
}

}  // namespace

TEST_CASE("moved there and back: coefficients are those of conditions made anew") {
  const PhaseSystem system = all_phases();
  const auto x = benchmarks::high_speed_steel().mole_fractions();
  MovingConditions moving(system);
  for (const double kelvin : {1000.0, 1400.0, 900.0, 1400.0, 1000.0, 1000.0}) {
    CAPTURE(kelvin);
    const auto t = Temperature::kelvin(kelvin);
    const Conditions made = conditions_of(system, t, x);
    moving.move_to(t, made.overall);
    CHECK(moving.conditions().kelvin == made.kelvin);
    CHECK(moving.conditions().rt == made.rt);
    CHECK(moving.conditions().overall == made.overall);
    moving.refresh(3);
    check_same(moving.conditions().phases[3], made.phases[3]);
    moving.refresh_all();
    for (std::size_t f = 0; f < made.phases.size(); ++f)
      check_same(moving.conditions().phases[f], made.phases[f]);
  }
}

TEST_CASE("only what is asked for is brought to the temperature") {
  const PhaseSystem system = all_phases();
  MovingConditions moving(system);
  moving.move_to(Temperature::kelvin(1300.0), moving.conditions().overall);
  moving.refresh(0);
  CHECK(moving.conditions().phases[0].at.kelvin == 1300.0);
  CHECK(moving.conditions().phases[1].at.kelvin == 1000.0);
}

TEST_CASE("a table of powers holds what each power is by itself") {
  for (const double kelvin : {298.15, 1000.0, 2500.0}) {
    const TemperaturePowers powers(kelvin);
    const auto check = [&](TemperaturePower power) {
      CAPTURE(power.exponent);
      const TemperatureValue table = powers[power], alone = power_value(power, kelvin);
      CHECK(table.value == alone.value);
      CHECK(table.dt == alone.dt);
      CHECK(table.dt2 == alone.dt2);
    };
    for (int n = -12; n <= 12; ++n) check({n, false});  // the file has -9 to 9
    check({1, true});
    CHECK(powers.kelvin() == kelvin);
  }
}
