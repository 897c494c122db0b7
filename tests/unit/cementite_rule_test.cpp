/// The rule for warning 336 against what it stands for: the short-soak limit beside the
/// long hold, over steels that it was not fitted to, and grades.
///
/// tests/reference/cementite_rule.py fits it: 2040 soaks of 1200 random steels,
/// hexagonal MC suppressed, 1.2 % on the wrong side.

#include "internal/cementite_rule.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <random>

#include "bearing_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

/// Carbon that the limit leaves in cementite and the long hold does not [wt%]; nothing
/// where there is no limit.
std::optional<double> undissolved(const NamedValues& steel, double at) {
  SoakOptions stock;
  stock.suppressed = {"hexagonal MC"};
  const State long_hold = Steel(steel).soak(celsius(at), stock);
  std::optional<double> found;
  message([&] {
    const ShortSoak soak = short_soak_limit(long_hold);
    const bool left = soak.state.volume_percent_of("M3C") > 0.0;
    found = left ? long_hold.matrix.weight_percent["C"] - carbon(soak) : 0.0;
  });
  return found;
}

class RandomSteels {
 public:
  NamedValues next() {
    NamedValues steel{{"C", within(0.3, 1.5)},
                      {"Mn", within(0.2, half() ? 0.6 : 2.2)},
                      {"Si", within(0.1, half() ? 0.5 : 2.0)}};
    if (!half() || half()) steel.set("Cr", within(0.1, 2.5));
    if (half()) steel.set("Ni", within(0.2, 3.0));
    if (half()) steel.set("V", within(0.05, 0.2));
    if (half())
      steel.set("Mo", within(0.05, 0.4));
    else if (half())
      steel.set("W", within(0.2, 2.0));
    return steel;
  }
  double within(double low, double high) {
    return low + (high - low) * static_cast<double>(random_()) / 4294967295.0;
  }

 private:
  bool half() { return random_() % 2 == 0; }
  std::mt19937 random_{20261127};
};

}  // namespace

TEST_CASE("warning 336 stands where the limit leaves more carbon than the long hold") {
  RandomSteels steels;
  int counted = 0, missed = 0, idle = 0;
  for (int i = 0; i < 150; ++i) {
    const NamedValues steel = steels.next();
    for (int j = 0; j < 3; ++j) {
      const double at = steels.within(760.0, 960.0);
      const auto carbon = undissolved(steel, at);
      if (!carbon) continue;
      ++counted;
      const bool warned = internal::may_keep_cementite(steel, celsius(at));
      if (*carbon > 0.01 && !warned) ++missed;
      if (*carbon <= 0.01 && warned) ++idle;
      CHECK((*carbon < 0.06 || warned));
      // Far above, it says nothing.
      const double above = internal::all_dissolved_at(steel).in_celsius() - at;
      CHECK((*carbon > 0.01 || above < 40.0));
    }
  }
  CHECK(counted > 200);
  CHECK(missed <= counted / 50);
  CHECK(idle <= counted / 25);
}

TEST_CASE("warning 336 of grades in the middle of their range") {
  const auto check = [](const NamedValues& steel, double at, bool expected) {
    CAPTURE(steel["C"]);
    CAPTURE(steel["Cr"]);
    CAPTURE(at);
    CHECK((undissolved(steel, at).value() > 0.01) == expected);
    CHECK(internal::may_keep_cementite(steel, celsius(at)) == expected);
  };
  check({{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}}, 845, true);
  check({{"C", 1.0}, {"Cr", 2.1}, {"Mn", 0.35}, {"Si", 0.25}}, 845, true);
  check({{"C", 1.2}, {"Cr", 0.2}, {"W", 1.4}, {"Mn", 0.3}, {"Si", 0.25}}, 800, true);
  check({{"C", 1.15}, {"W", 2.0}, {"Cr", 0.2}, {"Mn", 0.3}, {"Si", 0.25}}, 820, true);
  check({{"C", 0.58}, {"Cr", 1.1}, {"Mo", 0.3}, {"V", 0.1}, {"Mn", 0.9}}, 850, true);
  check({{"C", 0.5}, {"Cr", 1.1}, {"Ni", 3.2}, {"Mn", 0.5}, {"Si", 0.25}}, 860, true);
  check({{"C", 0.9}, {"Mn", 1.6}, {"Si", 0.25}}, 790, true);
  check({{"C", 0.75}, {"Cr", 0.75}, {"Ni", 1.5}, {"Mo", 0.3}, {"Mn", 0.7}}, 830, true);
  check({{"C", 0.75}, {"Mn", 0.6}, {"Si", 0.25}}, 815, false);
  check({{"C", 0.84}, {"Mn", 0.75}, {"Si", 0.25}}, 815, false);
  check({{"C", 0.6}, {"Cr", 0.8}, {"Mn", 0.88}, {"Si", 0.25}}, 845, false);
  check({{"C", 0.6}, {"Mn", 0.88}, {"Si", 2.0}}, 870, false);
  check({{"C", 0.75}, {"Ni", 2.0}, {"Mn", 0.4}, {"Si", 0.25}}, 815, false);
  check({{"C", 0.7}, {"Cr", 0.5}, {"Ni", 0.85}, {"Mo", 0.1}, {"Mn", 0.5}}, 845, false);
  check({{"C", 0.4}, {"Cr", 1.0}, {"Mo", 0.2}, {"Mn", 0.8}, {"Si", 0.25}}, 850, false);
  // Carbide rich in alloy is no cementite.
  CHECK_FALSE(internal::may_keep_cementite({{"C", 1.55}, {"Cr", 11.8}}, celsius(800)));
}

TEST_CASE("warning 336 looks at what the soak allows") {
  const Steel silicon({{"C", 1.45}, {"Si", 1.0}, {"Mn", 0.8}, {"Mo", 0.25}});
  const auto warned = [](const State& state) {
    for (const Warning& warning : hardening(state).warnings)
      if (warning.code == "gibbsteel.warning.336") return true;
    return false;
  };
  CHECK(warned(silicon.soak(celsius(800))));
  SoakOptions soak;
  soak.graphite = true;
  CHECK_FALSE(warned(silicon.soak(celsius(800), soak)));
  soak.graphite = false;
  soak.suppressed = {"M3C"};
  CHECK_FALSE(warned(silicon.soak(celsius(800), soak)));
  // 0.35C-1.7Cr steel: annealed it holds M7C3; a molybdenum steel with little chromium.
  CHECK_FALSE(internal::may_keep_cementite({{"C", 0.35}, {"Cr", 1.7}, {"Mo", 0.4}},
                                           celsius(800)));
  CHECK(internal::may_keep_cementite(
      {{"C", 1.35}, {"Mn", 1.8}, {"Si", 1.25}, {"Mo", 1.5}, {"Ni", 1.85}},
      celsius(800)));
}
