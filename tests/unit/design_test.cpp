/// Designs over several elements.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1120);

Steel punch() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

DesignTarget target(Quantity quantity, TargetSense sense, double wanted,
                    Temperature t = kSoak) {
  const double tolerance =
      sense == TargetSense::equal ? DesignTarget::usual_tolerance(wanted) : 0.0;
  return {std::move(quantity), t, sense, wanted, tolerance};
}

/// The values of a design are those of soaks of its steel.
void check_certified(const Design& design, const std::vector<DesignTarget>& targets) {
  for (std::size_t j = 0; j < targets.size(); ++j) {
    const State state = design.steel.soak(targets[j].temperature);
    CHECK(targets[j].quantity.value(state) == design.targets[j].value);
  }
  for (const DesignedElement& e : design.elements) {
    CHECK(e.weight_percent >= e.range.low);
    CHECK(e.weight_percent <= e.range.high);
  }
}

/// Eq. (D1) from a soak of its own; infinite where a limit is broken.
/// The largest limit that is broken, in its tolerance; at least 0.
double broken_by(const Steel& steel, const std::vector<DesignTarget>& targets) {
  double most = 0.0;
  const State state = steel.soak(targets.front().temperature);
  for (const DesignTarget& t : targets) {
    const double off = (t.quantity.value(state) - t.wanted) / t.scale();
    if (t.sense == TargetSense::at_most) most = std::max(most, off);
    if (t.sense == TargetSense::at_least) most = std::max(most, -off);
  }
  return most;
}

/// Infinite where a limit is broken by more than the slack, in its tolerance.
double misfit_of(const Steel& steel, const std::vector<DesignTarget>& targets,
                 double slack = 1e-3) {
  double sum = 0.0;
  const State state = steel.soak(targets.front().temperature);
  for (const DesignTarget& t : targets) {
    const double off = (t.quantity.value(state) - t.wanted) / t.scale();
    if (t.sense == TargetSense::equal) sum += off * off;
    const bool broken = (t.sense == TargetSense::at_most && off > slack) ||
                        (t.sense == TargetSense::at_least && off < -slack);
    if (broken) return std::numeric_limits<double>::infinity();
  }
  return sum;
}

void check_nothing_near_is_closer(const Design& found,
                                  const std::vector<DesignTarget>& targets) {
  // The limits bind here: others may break them by no more than the steel found does.
  const double best = misfit_of(found.steel, targets);
  const double slack = broken_by(found.steel, targets);
  CHECK(slack < 1e-3);
  unsigned seed = 1;
  for (int i = 0; i < 60; ++i) {
    NamedValues nearby;
    for (const DesignedElement& e : found.elements) {
      seed = seed * 1664525u + 1013904223u;
      const double step = 0.02 * (double(seed >> 8) / double(1u << 24) - 0.5);
      nearby.set(e.symbol,
                 std::clamp(e.weight_percent + step * (e.range.high - e.range.low),
                            e.range.low, e.range.high));
    }
    CHECK(misfit_of(found.steel.changed(nearby), targets, slack) > 0.9999 * best);
  }
}

}  // namespace

TEST_CASE("design: a known steel is recovered from its matrix") {
  // As many numbers as elements, and the map from composition to matrix is one to one
  // where the matrix is not saturated with a carbide of fixed composition.
  const State known = punch().soak(kSoak);
  const auto targets = [&] {
    auto list = matrix_targets(known, {"Cr", "W"});
    list.push_back(target(quantities::volume_percent("MC"), TargetSense::equal,
                          known.volume_percent_of("MC")));
    list.push_back(target(quantities::volume_percent("M6C"), TargetSense::equal,
                          known.volume_percent_of("M6C")));
    list.push_back(target(quantities::matrix("C"), TargetSense::equal,
                          known.matrix.weight_percent["C"]));
    return list;
  }();
  const Steel start = punch().changed(
      {{"C", 0.7}, {"Cr", 3.0}, {"Mo", 4.0}, {"W", 1.0}, {"V", 1.6}}, "start");
  const Design found = design(start,
                              {{"C", {0.3, 1.2}},
                               {"Cr", {2.0, 8.0}},
                               {"Mo", {0.5, 6.0}},
                               {"W", {0.5, 6.0}},
                               {"V", {0.2, 3.0}}},
                              targets);
  CHECK(found.status == DesignStatus::met);
  const NamedValues given = punch().analysis().given;
  for (const auto& entry : given) {
    const std::string symbol = entry.first;
    const double percent = entry.second;
    CAPTURE(symbol);
    CHECK(found.steel.analysis().given[symbol] ==
          doctest::Approx(percent).epsilon(1e-3));
  }
  check_certified(found, targets);
}

TEST_CASE("design: one element, against composition_for") {
  const Quantity carbon = quantities::matrix("C");
  const Design found =
      design(punch(), {{"C", {0.2, 1.2}}}, {target(carbon, TargetSense::equal, 0.40)});
  CHECK(found.status == DesignStatus::met);
  const CompositionSearch search =
      composition_for(punch(), "C", carbon, 0.40, {0.2, 1.2}, kSoak);
  REQUIRE(search.crossings.size() == 1);
  CHECK(found.elements[0].weight_percent ==
        doctest::Approx(search.crossings[0].weight_percent).epsilon(1e-4));
}

TEST_CASE("design: the matrix of a high-speed steel with little carbide") {
  // The case of the issue: matrix of a given steel at a given temperature, at most 3
  // vol% carbide, at least 0.5 wt% matrix carbon.
  const Steel high_speed(
      {{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}},
      {"punch heat 12", {}, false});
  const State reference = high_speed.soak(Temperature::celsius(1200));
  auto targets = matrix_targets(reference, {"Cr", "Mo", "W", "V"});
  for (DesignTarget& wish : targets) wish.temperature = kSoak;
  targets.push_back(
      target(quantities::carbide_volume_percent(), TargetSense::at_most, 3.0));
  targets.push_back(target(quantities::matrix("C"), TargetSense::at_least, 0.5));
  const std::vector<DesignElement> elements{{"C", {0.3, 1.0}},
                                            {"Cr", {2.0, 6.0}},
                                            {"Mo", {0.5, 6.0}},
                                            {"W", {0.5, 7.0}},
                                            {"V", {0.2, 3.0}}};
  DesignOptions options;
  options.starts = 2;
  const Design found = design(punch(), elements, targets, options);
  // What is saturated at 1200 C cannot be held at 1120 C together with 0.5 % carbon.
  CHECK(found.status == DesignStatus::compromise);
  for (const TargetOutcome& outcome : found.targets)
    if (outcome.sense != TargetSense::equal) CHECK(outcome.met);
  check_certified(found, targets);
  // Nothing in the neighbourhood keeps to the limits and is closer.
  check_nothing_near_is_closer(found, targets);
}

TEST_CASE("design: limits alone take the nearest composition to the start") {
  const std::vector<DesignTarget> limits{
      target(quantities::carbide_volume_percent(), TargetSense::at_least, 4.0),
      target(quantities::matrix("C"), TargetSense::at_least, 0.45)};
  const Design found = design(punch(), {{"C", {0.3, 1.5}}, {"V", {0.5, 4.0}}}, limits);
  CHECK(found.status == DesignStatus::met);
  check_certified(found, limits);
  // A start that keeps to the limits is left as it is.
  const std::vector<DesignTarget> kept{
      target(quantities::carbide_volume_percent(), TargetSense::at_most, 4.0)};
  const Design same = design(punch(), {{"C", {0.3, 1.5}}}, kept);
  CHECK(same.status == DesignStatus::met);
  CHECK(same.elements[0].weight_percent == doctest::Approx(0.55).epsilon(1e-6));
  CHECK(same.starts == 1);
}

TEST_CASE("design: limits that no composition inside the bounds keeps") {
  const Design found =
      design(punch(), {{"C", {0.4, 0.6}}, {"V", {0.5, 1.5}}},
             {target(quantities::carbide_volume_percent(), TargetSense::at_most, 0.5),
              target(quantities::matrix("C"), TargetSense::at_least, 0.9)});
  CHECK(found.status == DesignStatus::infeasible);
  CHECK(found.targets[1].miss < 0.0);
  CHECK(found.text.find("no composition inside the bounds was found from 7 starts that "
                        "keeps to all limits; the nearest, ") == 0);
  CHECK(found.full().find("NOT MET") != std::string::npos);
  CHECK(found.full().find("a better one cannot be ruled out") != std::string::npos);
}

TEST_CASE("design: a limit that is missed by little is not met") {
  const Steel steel(
      {{"C", 1.0}, {"Cr", 5}, {"V", 2}, {"Mo", 1.9}, {"Si", 0.4}, {"Mn", 0.4}});
  const Temperature soak = Temperature::celsius(1040);
  DesignTarget hardness =
      target(quantities::hardness_hrc(), TargetSense::at_least, 63.5, soak);
  const DesignTarget austenite =
      target(quantities::retained_austenite(), TargetSense::at_most, 15.0, soak);
  const Design found = design(steel, {{"Mo", {1.0, 1.9}}}, {austenite, hardness});
  CHECK(found.status == DesignStatus::infeasible);
  CHECK_FALSE(found.targets[1].met);
  CHECK(found.targets[1].miss < 0.0);
  CHECK(found.targets[1].miss > -0.63);
  CHECK(found.full().find("NOT MET") != std::string::npos);
  // Slack that is asked for is given.
  hardness.tolerance = 0.63;
  const Design loose = design(steel, {{"Mo", {1.0, 1.9}}}, {austenite, hardness});
  CHECK(loose.status == DesignStatus::met);
}

TEST_CASE("design: a rounded composition keeps the limits that the exact one keeps") {
  std::size_t broken = 0;  // by rounding to the nearest
  for (const double least : {0.481, 0.493, 0.507, 0.519}) {
    CAPTURE(least);
    const std::vector<DesignTarget> limits{
        target(quantities::carbide_volume_percent(), TargetSense::at_most, 1.3),
        target(quantities::matrix("C"), TargetSense::at_least, least)};
    const std::vector<DesignElement> elements{{"C", {0.3, 1.0}}, {"V", {0.5, 3.0}}};
    const Design exact = design(punch(), elements, limits);
    CHECK(exact.status == DesignStatus::met);
    NamedValues nearest;
    for (const DesignedElement& e : exact.elements)
      nearest.set(e.symbol, e.weight_percent);
    nearest = to_makeable(nearest, MakeableSteps{});
    if (broken_by(punch().changed(nearest), limits) > 1e-3) ++broken;
    DesignOptions options;
    options.makeable = MakeableSteps{};
    const Design found = design(punch(), elements, limits, options);
    CHECK(found.status == DesignStatus::met);
    CHECK(found.targets[0].value <= 1.3);
    CHECK(found.targets[1].value >= least);
    check_certified(found, limits);
    NamedValues percents;
    for (const DesignedElement& e : found.elements)
      percents.set(e.symbol, e.weight_percent);
    CHECK(to_makeable(percents, MakeableSteps{}) == percents);
  }
  CHECK(broken > 0);
}

TEST_CASE("design: targets at two temperatures, and rounded to what can be ordered") {
  const Temperature low = Temperature::celsius(1000);
  const Steel wanted = punch().changed({{"C", 0.62}, {"Mo", 3.4}});
  const std::vector<DesignTarget> targets{
      target(quantities::matrix("C"), TargetSense::equal,
             wanted.soak(low).matrix.weight_percent["C"], low),
      target(quantities::matrix("Mo"), TargetSense::equal,
             wanted.soak(kSoak).matrix.weight_percent["Mo"])};
  DesignOptions options;
  options.makeable = MakeableSteps{};
  const Design found =
      design(punch(), {{"C", {0.4, 0.9}}, {"Mo", {1.0, 5.0}}}, targets, options);
  CHECK(found.status == DesignStatus::met);
  CHECK(found.states.size() == 2);
  CHECK(found.elements[0].weight_percent == 0.62);
  CHECK(found.elements[1].weight_percent == 3.4);
  check_certified(found, targets);
}

TEST_CASE("design: a quantity that throws, and one that has no value") {
  const Quantity wrong = quantities::volume_percent("M9C");
  CHECK(
      message([&] {
        design(punch(), {{"C", {0.4, 0.9}}}, {target(wrong, TargetSense::equal, 1.0)});
      }) ==
      "[gibbsteel.input.205] kind: there is no phase 'M9C'; choose from: austenite, "
      "MC, ferrite, M6C, M7C3, M23C6, M3C, M2C, hexagonal matrix, M3C2, hexagonal MC, "
      "graphite");
  const Quantity none("nothing", "", [](const State&) { return std::nan(""); });
  const Design lost =
      design(punch(), {{"C", {0.4, 0.9}}}, {target(none, TargetSense::equal, 1.0)});
  CHECK(lost.status == DesignStatus::not_converged);
  CHECK(lost.text ==
        "soaks without a usable result stood in the way; nothing is known");
}

TEST_CASE("design: stopped by the caller, the best so far is shown") {
  const std::vector<DesignElement> free{{"C", {0.3, 1.0}}, {"Mo", {1.0, 5.0}}};
  const std::vector<DesignTarget> targets{
      target(quantities::matrix("C"), TargetSense::equal, 0.45),
      target(quantities::matrix("Mo"), TargetSense::equal, 2.0,
             Temperature::celsius(1080))};
  DesignOptions options;
  std::size_t told = 0;
  options.progress = [&](std::size_t done) {
    CHECK(done == ++told);
    return done < 5;
  };
  const Design stopped = design(punch(), free, targets, options);
  CHECK(told == 5);
  CHECK(stopped.soaks == 7);  // and the final ones
  CHECK(stopped.status == DesignStatus::stopped);
  CHECK(to_string(stopped.status) == "stopped");
  CHECK(stopped.text.find("stopped by the caller after 7 soaks; the best so far, ") ==
        0);
  CHECK(stopped.brief().find("design from punch heat 7, long-hold limit: stopped: ") ==
        0);
  check_certified(stopped, targets);
  options.progress = [](std::size_t) { return true; };
  const Design whole = design(punch(), free, targets, options);
  CHECK(whole.status == DesignStatus::met);
  CHECK(whole.full() == design(punch(), free, targets).full());
}

TEST_CASE("design: every problem at once") {
  DesignOptions options;
  options.starts = -1;
  options.candidates = -1;
  options.most_steps = 1;
  CHECK(message([&] { design(punch(), {}, {}, options); }) ==
        "[gibbsteel.input.269] elements: is empty; give at least one with its bounds\n"
        "[gibbsteel.input.269] targets: is empty; give at least one\n"
        "[gibbsteel.input.269] starts: is -1; give 0 to 1000\n"
        "[gibbsteel.input.269] candidates: is -1; give 0 to 100000\n"
        "[gibbsteel.input.269] most_steps: is 1; give 5 to 100000");
  const DesignTarget bad{quantities::matrix("C"), kSoak, TargetSense::equal,
                         std::nan(""), 0.0};
  CHECK(message([&] {
          design(punch(), {{"Fe", {0.0, 1.0}}, {"C", {1.0, 0.5}}, {"C", {0.1, 0.2}}},
                 {bad});
        }) ==
        "[gibbsteel.input.269] elements: Fe is the balance of all others; choose "
        "elements that the parameter file models, other than Fe\n"
        "[gibbsteel.input.269] elements, C: goes from 1 to 0.5 wt%; give 0 to 100, the "
        "lower number first\n"
        "[gibbsteel.input.269] elements, C: is given twice; give it once\n"
        "[gibbsteel.input.269] targets, C in the matrix: wants nan; give the number "
        "that it shall be\n"
        "[gibbsteel.input.269] targets, C in the matrix: has a tolerance of 0; give a "
        "number above 0 in the unit of the quantity");
  CHECK(message([&] {
          design(punch(), {{"Cr", {0.0, 60.0}}, {"Ni", {0.0, 50.0}}},
                 {target(quantities::matrix("C"), TargetSense::equal, 0.5)});
        }) ==
        "[gibbsteel.input.269] elements: reach 116.30 wt% at their upper bounds; leave "
        "something for Fe, the balance");
  CHECK(message([&] { matrix_targets(punch().soak(kSoak), {"Co"}); }) ==
        "[gibbsteel.input.269] elements: there is no 'Co' in the matrix; choose "
        "elements of the calculation");
}
