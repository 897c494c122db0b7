/// What stands behind a soak: distances by hand, order, and what is computed.

#include "gibbsteel/evidence.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/hardening_quantities.hpp"

using namespace gibbsteel;

namespace {

const Temperature kHot = Temperature::celsius(1120.0);
const NamedValues kSteel{{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"Mn", 0.3}};

RecordedMeasurement measured(const std::string& record, const NamedValues& percents,
                             double celsius, Quantity quantity, double value) {
  return {{record, percents, Temperature::celsius(celsius), std::move(quantity), value,
           0.1, record},
          "Shop book, page 3",
          "low",
          true,
          false,
          "File: because."};
}

Distance at(const NamedValues& other, double celsius = 1120.0) {
  return distance(kSteel, kHot, other, Temperature::celsius(celsius));
}

}  // namespace

TEST_CASE("distance, Eq. (V1)") {
  CHECK(at(kSteel).value == 0.0);
  CHECK(at(kSteel).by == "");
  // 0.05 over 0.15; 0.75 over a fifth of 3.5; an element that one of them lacks.
  CHECK(at({{"C", 0.60}, {"Cr", 4.5}, {"Mo", 2.75}, {"Mn", 0.3}}).value ==
        doctest::Approx(1.0 / 3.0));
  const Distance molybdenum = at({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 3.5}});
  CHECK(molybdenum.value == doctest::Approx(0.75 / 0.7));
  CHECK(molybdenum.by == "Mo");
  CHECK(at({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}}).by == "Mn");
  CHECK(at({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}}).value == doctest::Approx(0.6));
  const Distance hotter = at(kSteel, 1195.0);
  CHECK(hotter.value == doctest::Approx(1.0));
  CHECK(hotter.by == "temperature");
  // Rich in carbon a tenth counts as one: 0.2 over 0.225. Iron does not count.
  CHECK(distance({{"C", 2.25}, {"Fe", 85.0}}, kHot, {{"C", 2.05}}, kHot).value ==
        doctest::Approx(0.2 / 0.225));
}

TEST_CASE("nearest first, so many soaks, each number with the set of the steel") {
  NamedValues far = kSteel, further = kSteel;
  far.set("Cr", 5.0);
  further.set("Cr", 6.0);
  EvidenceOptions options;
  options.measurements = {
      measured("further", further, 1120.0, quantities::matrix("Cr"), 5.9),
      measured("far", far, 1120.0, quantities::matrix("Cr"), 4.9),
      measured("far", far, 1120.0, quantities::volume_percent("M6C"), 2.0),
      measured("colder", kSteel, 1090.0, quantities::matrix("C"), 0.4)};
  options.most_soaks = 2;
  const Steel steel(kSteel, {"heat 7", nullptr, false});
  const Evidence found = evidence(steel, kHot, options);
  REQUIRE(found.rows.size() == 3);
  CHECK(found.measurements == 4);
  CHECK(found.rows[0].record == "colder");
  CHECK(found.rows[1].record == "far");
  CHECK(found.rows[2].quantity == "M6C");
  CHECK(found.nearest().by == "temperature");
  const State colder = steel.soak(Temperature::celsius(1090.0));
  CHECK(found.rows[0].computed == colder.matrix.weight_percent["C"]);
  const State other = Steel(far).soak(kHot);
  CHECK(found.rows[1].computed == other.matrix.weight_percent["Cr"]);
  CHECK(found.rows[1].miss() == doctest::Approx((found.rows[1].computed - 4.9) / 0.1));
  CHECK(found.computed() == 3);
}

TEST_CASE("what cannot be computed says why and counts as neither met nor missed") {
  EvidenceOptions options;
  options.measurements = {
      measured("a", kSteel, 1120.0, quantities::volume_percent("delta"), 2.0),
      measured("b", kSteel, 1120.0, quantities::in_phase("M23C6", "Cr"), 60.0)};
  const Evidence found = evidence(Steel(kSteel), kHot, options);
  REQUIRE(found.rows.size() == 2);
  CHECK(std::isnan(found.rows[0].computed));
  CHECK(found.rows[0].reason == "there is no phase 'delta'");
  CHECK(found.rows[1].reason == "there is none by the calculation");
  CHECK_FALSE(found.rows[1].met());
  CHECK(found.computed() == 0);
  CHECK(found.met() == 0);
}

TEST_CASE("the page") {
  EvidenceOptions options;
  options.temperature_unit = TemperatureUnit::fahrenheit;
  options.measurements = {
      measured("a", {{"C", 0.5}}, 1120.0, quantities::matrix("C"), 0.7),
      measured("b", {{"C", 0.5}}, 1120.0, quantities::carbide_volume_percent(), 0.0)};
  const Evidence found =
      evidence(Steel({{"C", 0.52}}, {"bar", nullptr, false}), kHot, options);
  CHECK(
      found.brief() ==
      "bar at 1120 C (2048 F), long-hold limit: measured on steels of this kind: 1 of "
      "2 numbers met; nearest a, 0.1 away (C)");
  const std::string page = found.full();
  CHECK(page.find("a at 1120 C (2048 F), 0.1 away (C): 0.5C\n"
                  "                         measured  computed  missed by  source\n"
                  "  C in the matrix, wt%  0.7 +-0.1       0.5        2.0  ml [1]\n"
                  "C in the matrix, why: File: because.\n"
                  "\n"
                  "b at 1120 C (2048 F), 0.1 away (C): 0.5C\n") != std::string::npos);
  CHECK(page.find("[1] Shop book, page 3\n") != std::string::npos);
  CHECK(page.find("local codes and licensed practice come first.") !=
        std::string::npos);
  CHECK(Evidence{}.nearest().value == 0.0);
  CHECK(page.find("shown:") == std::string::npos);
  options.most_soaks = 1;
  CHECK(evidence(Steel(kSteel), kHot, options)
            .full()
            .find("\nshown: the nearest 1 of 2 measurements\n\n") != std::string::npos);
}

TEST_CASE("no steel with much that is not modelled is of the kind of one without") {
  EvidenceOptions options;
  options.measurements = {
      measured("a", {{"C", 0.5}}, 1120.0, quantities::matrix("C"), 0.5)};
  const Steel boron({{"C", 0.52}, {"B", 0.2}}, {"bar", nullptr, false});
  CHECK(evidence(boron, kHot, options).brief() ==
        "bar at 1120 C, long-hold limit: computed without B 0.2 wt%, not modelled: "
        "measured on related steels only: 1 of 1 numbers met; nearest a, 0.4 away (B)");
}

TEST_CASE("soaks at one distance keep their rows together") {
  NamedValues other = kSteel;
  other.set("C", 0.56);
  EvidenceOptions options;
  options.most_soaks = 3;
  for (int i = 0; i < 3; ++i) {
    const std::string name(1, static_cast<char>('a' + i));
    auto one = measured(name, kSteel, 1300.0, quantities::matrix("C"), 0.4);
    auto two = measured(name + "2", other, 1300.0, quantities::matrix("C"), 0.4);
    one.measurement.steel = two.measurement.steel = "M2";
    auto restricted = one;
    restricted.measurement.soak.phases = std::vector<std::string>{"austenite", "M6C"};
    if (!options.measurements) options.measurements.emplace();
    for (const auto& each : {one, two, restricted})
      options.measurements->push_back(each);
  }
  const Evidence found = evidence(Steel(kSteel), kHot, options);
  REQUIRE(found.rows.size() == 9);
  std::string order;
  for (const EvidenceRow& row : found.rows)
    order += row.record + (row.phases ? "! " : " ");
  CHECK(order == "a b c a2 b2 c2 a! b! c! ");
  CHECK(found.full().find("; only\n  austenite, M6C\n") != std::string::npos);
}

TEST_CASE("what this set cannot soak is a row with a reason, nothing more") {
  EvidenceOptions options;
  auto bad =
      measured("a", {{"Fe", 40.0}, {"C", 1.0}}, 1120.0, quantities::matrix("C"), 0.4);
  auto phases = measured("b", kSteel, 1120.0, quantities::matrix("C"), 0.4);
  phases.measurement.soak.phases = std::vector<std::string>{"delta"};
  options.measurements = {bad, phases,
                          measured("c", kSteel, 1121.0, quantities::matrix("C"), 0.4)};
  const Evidence found = evidence(Steel(kSteel), kHot, options);
  REQUIRE(found.rows.size() == 3);
  CHECK(found.computed() == 1);
  CHECK(found.rows[0].reason == "phases there is no phase 'delta'");
  CHECK(found.rows[2].reason == "composition sums to 41.00 with Fe");
  CHECK(
      evidence(Steel(kSteel), kHot, {5, std::vector<RecordedMeasurement>{}}).brief() ==
      "steel at 1120 C, long-hold limit: no measurement is known");
}

TEST_CASE("hardness alone says nothing of carbide, and far rows do not count") {
  NamedValues far = kSteel;
  far.set("Cr", 12.0);
  EvidenceOptions options;
  options.measurements = {
      measured("a", kSteel, 1120.0, quantities::hardness_hrc(), 20.0),
      measured("b", far, 1120.0, quantities::matrix("C"), 0.4)};
  CHECK(evidence(Steel(kSteel), kHot, options).brief() ==
        "steel at 1120 C, long-hold limit: measured on steels of this kind, hardening "
        "only, of carbide and matrix nothing: 0 of 1 numbers met; nearest a, 0.0 away");
}

TEST_CASE("a measurement of one's own: its record is the source, nobody graded it") {
  Measurement own =
      measured("own", kSteel, 1120.0, quantities::matrix("C"), 0.4).measurement;
  const RecordedMeasurement recorded = own_measurement(own);
  CHECK(recorded.source == "own");
  CHECK(recorded.confidence == "");
  CHECK(recorded.remark == "");
  CHECK_FALSE(recorded.from_memory);
  CHECK_FALSE(recorded.fitted_to);
  CHECK(recorded.measurement.record == "own");
  own.record = "";
  const RecordedMeasurement unnamed = own_measurement(own);
  CHECK(unnamed.source == "own measurement");
  CHECK(unnamed.measurement.record == "");
}

TEST_CASE("options") {
  EvidenceOptions none;
  none.most_soaks = 0;
  CHECK_THROWS_WITH_AS(
      evidence(Steel(kSteel), kHot, none),
      "[gibbsteel.input.304] most_soaks: is 0; give a whole number from 1 to 1000",
      InputError);
}
