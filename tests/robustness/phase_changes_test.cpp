/// Searches of random steels against plain scans of single soaks: no field that a scan
/// meets is missing, and no root of a quantity that it finds.
///
/// GIBBSTEEL_SEARCH_CASES in the environment sets the number of steels (200 take ten
/// minutes of processor time), GIBBSTEEL_SEARCH_FIRST the first of them; the usual
/// number fits into a test run.

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <iostream>
#include <string>

#include "gibbsteel/gibbsteel.hpp"
#include "random_steels.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr int kUsualCases = 1;
#else
constexpr int kUsualCases = 4;
#endif

int from_environment(const char* name, int otherwise) {
  const char* text = std::getenv(name);
  return text ? std::atoi(text) : otherwise;
}

using testing::Band;

constexpr Band kSoaks{750.0, 1200.0}, kMelting{1200.0, 1540.0};
constexpr double kStep = 0.5;  // [C]

Steel random_steel(int k, const Band& band, const SharedParameters& set) {
  std::mt19937_64 random(20261125u + static_cast<unsigned>(k));
  const auto drawn = testing::draw(*set, band, random);
  NamedValues weight_percent;
  for (std::size_t e = 1; e < drawn.elements.size(); ++e)  // Fe is the balance
    weight_percent.set(drawn.elements[e], drawn.weight_percent[e]);
  return Steel(weight_percent, {"", set, false});
}

std::vector<State> plain_scan(const Steel& steel, const Band& band) {
  std::vector<Temperature> temperatures;
  for (double t = band.low; t <= band.high; t += kStep)
    temperatures.push_back(Temperature::celsius(t));
  return steel.sweep(temperatures).states;
}

TemperatureRange range(const Band& band) {
  return {Temperature::celsius(band.low), Temperature::celsius(band.high)};
}

std::vector<std::string> kinds_of(const State& state) {
  std::vector<std::string> kinds;
  for (const Occurrence& o : state.occurrences) kinds.push_back(o.kind);
  std::sort(kinds.begin(), kinds.end());
  return kinds;
}

/// True when the temperature is within a bracket of a change, or not known.
bool at_a_border(const PhaseChanges& found, Temperature t) {
  for (const PhaseChange& change : found.changes)
    if (std::abs(change.temperature.in_kelvin() - t.in_kelvin()) <= found.tolerance)
      return true;
  for (const PhaseGap& gap : found.gaps)
    if (gap.low <= t && t <= gap.high) return true;
  return false;
}

const PhaseField* field_at(const PhaseChanges& found, Temperature t) {
  for (const PhaseField& field : found.fields)
    if (field.low <= t && t <= field.high) return &field;
  return nullptr;
}

struct Counts {
  std::size_t changes = 0, soaks = 0, scanned = 0, unusable = 0, gaps = 0, wrong = 0;
  std::size_t roots = 0, crossings = 0, jumps = 0, missed = 0, extra = 0;
};

void compare_fields(const Steel& steel, const std::vector<State>& scan,
                    const Band& band, Counts& n) {
  const PhaseChanges found = phase_changes(steel, range(band));
  n.changes += found.changes.size();
  n.soaks += found.soaks;
  n.gaps += found.gaps.size();
  for (const State& state : scan) {
    ++n.scanned;
    if (!state.usable()) ++n.unusable;
    if (!state.usable() || at_a_border(found, state.temperature)) continue;
    const PhaseField* field = field_at(found, state.temperature);
    auto phases = field ? field->phases : std::vector<std::string>{};
    std::sort(phases.begin(), phases.end());
    if (phases == kinds_of(state)) continue;
    ++n.wrong;
    MESSAGE(steel.brief() << " at " << state.temperature.in_celsius() << " C");
  }
  CHECK(found.stopped.empty());
}

/// Every sign change of the scan must have a crossing in its interval.
void compare_roots(const Steel& steel, const std::vector<State>& scan,
                   const Quantity& quantity, double target, Counts& n) {
  const auto found = temperature_for(steel, quantity, target, range(kSoaks));
  n.crossings += found.crossings.size();
  for (const Crossing& crossing : found.crossings) {
    if (crossing.kind == CrossingKind::jump) {
      ++n.jumps;
      continue;
    }
    const double value = quantity.value(steel.soak(crossing.temperature));
    CHECK(std::abs(value - target) <= 1e-3 * (1.0 + std::abs(target)));
  }
  std::vector<bool> used(found.crossings.size(), false);
  for (std::size_t i = 1; i < scan.size(); ++i) {
    const double a = quantity.value(scan[i - 1]) - target;
    const double b = quantity.value(scan[i]) - target;
    if (!(a * b < 0.0)) continue;
    ++n.roots;
    bool known = false;
    for (std::size_t k = 0; k < used.size(); ++k) {
      const Temperature t = found.crossings[k].temperature;
      // A jump is placed at the lower end of its bracket.
      const double below = scan[i - 1].temperature.in_kelvin() - 0.02;
      if (t.in_kelvin() < below || t > scan[i].temperature) continue;
      used[k] = known = true;
    }
    if (known) continue;
    ++n.missed;
    MESSAGE(steel.brief() << ": " << quantity.name() << " = " << target << " near "
                          << scan[i].temperature.in_celsius() << " C");
  }
  // Crossings between two soaks of the scan that it cannot see.
  n.extra += static_cast<std::size_t>(std::count(used.begin(), used.end(), false));
}

}  // namespace

TEST_CASE("random steels: every field and every root that a plain scan finds") {
  Counts n;
  const int first = from_environment("GIBBSTEEL_SEARCH_FIRST", 0);
  const int cases = from_environment("GIBBSTEEL_SEARCH_CASES", kUsualCases);
  for (int k = first; k < first + cases; ++k) {
    CAPTURE(k);
    const Steel steel = random_steel(k, kSoaks, default_parameters());
    const auto scan = plain_scan(steel, kSoaks);
    compare_fields(steel, scan, kSoaks, n);
    // Targets that occur: the value of a soak, moved a little.
    const State& at = scan[static_cast<std::size_t>(137 * k) % scan.size()];
    if (!at.usable()) continue;
    for (const Quantity& quantity :
         {quantities::matrix("C"), quantities::carbide_volume_percent(),
          quantities::carbon_activity(), quantities::volume_percent("austenite")}) {
      const double target = quantity.value(at) * 1.001 + 1e-5;
      // More than all of a steel is no wish.
      if (!(target > quantity.scope().most))
        compare_roots(steel, scan, quantity, target, n);
    }
  }
  MESSAGE(cases << " steels: " << n.changes << " changes, " << n.soaks
                << " soaks of the searches, " << n.scanned << " of the scans ("
                << n.unusable << " not usable), " << n.gaps << " gaps, " << n.wrong
                << " soaks with other phases than their field");
  MESSAGE(n.roots << " roots of the scans, " << n.crossings << " crossings (" << n.jumps
                  << " jumps), " << n.missed << " missed, " << n.extra
                  << " that the scans cannot see");
  CHECK(n.wrong == 0);
  CHECK(n.missed == 0);
}

TEST_CASE("random steels that melt: every field that a plain scan finds") {
  Counts n;
  const int cases = from_environment("GIBBSTEEL_SEARCH_CASES", kUsualCases);
  for (int k = 0; k < cases; ++k) {
    CAPTURE(k);
    const Steel steel = random_steel(k, kMelting, with_liquid());
    compare_fields(steel, plain_scan(steel, kMelting), kMelting, n);
  }
  MESSAGE(cases << " steels: " << n.changes << " changes, " << n.scanned
                << " soaks of the scans (" << n.unusable << " not usable), " << n.gaps
                << " gaps, " << n.wrong << " soaks with other phases than their field");
  CHECK(n.wrong == 0);
  CHECK(n.gaps == 0);
}
