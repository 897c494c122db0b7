/// What is known of the melting of similar steels: which they are, and what is said.

#include <doctest/doctest.h>

#include "gibbsteel/gibbsteel.hpp"
#include "internal/soak_warnings.hpp"
#include "internal/solidus_bounds.hpp"
#include "warned_soak.hpp"

using namespace gibbsteel;

namespace {

/// Warnings about melting of the high-speed steel above one bound.
std::string melting(const std::vector<SolidusBound>& bounds, double celsius) {
  ParameterSet set = *default_parameters();
  set.solidus_bounds = bounds;
  State state;
  state.analysis = read_analysis(kHighSpeed, set);
  state.temperature = Temperature::celsius(celsius);
  state.warnings = internal::soak_warnings(set, state);
  return texts(state, "304");
}

SolidusBound bound(SolidusSense sense, double celsius) {
  return {"AISI M2", {kHighSpeed.begin(), kHighSpeed.end()}, celsius, 10.0, sense, {}};
}

}  // namespace

TEST_CASE("which steel resembles which") {
  SolidusBound bound;
  bound.weight_percent = {
      {"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};
  using internal::resembles;
  CHECK(
      resembles(bound, {{"C", 0.9}, {"Cr", 4.3}, {"Mo", 4.8}, {"W", 6.4}, {"V", 2.0}}));
  for (const double carbon : {0.70, 1.1, 1.35})
    CHECK(resembles(bound,
                    {{"C", carbon}, {"Cr", 4.3}, {"Mo", 4.8}, {"W", 6.4}, {"V", 2.0}}));
  for (const double carbon : {0.69, 1.36})
    CHECK_FALSE(resembles(
        bound, {{"C", carbon}, {"Cr", 4.3}, {"Mo", 4.8}, {"W", 6.4}, {"V", 2.0}}));
}

TEST_CASE("cobalt ends no resemblance of high-speed steels") {
  using internal::resembles;
  SolidusBound m2;
  m2.weight_percent = {{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};
  NamedValues m35{{"C", 0.93}, {"Cr", 4.2}, {"Mo", 5.0}, {"W", 6.4}, {"V", 1.8}};
  for (const double cobalt : {0.0, 0.5, 0.51, 4.8, 10.0}) {
    m35.set("Co", cobalt);
    CHECK(resembles(m2, m35));
  }
  m35.set("Co", 10.1);
  CHECK_FALSE(resembles(m2, m35));
  // Not of others.
  SolidusBound bearing;
  bearing.weight_percent = {{"C", 1.0}, {"Cr", 1.5}};
  CHECK(resembles(bearing, {{"C", 1.0}, {"Cr", 1.5}, {"Co", 0.5}}));
  CHECK_FALSE(resembles(bearing, {{"C", 1.0}, {"Cr", 1.5}, {"Co", 0.51}}));
}

TEST_CASE("a record that is near in cobalt too counts before the others") {
  SolidusBound plain, cobalt;
  plain.weight_percent = {{"C", 1.0}, {"Cr", 4.0}, {"Mo", 9.0}};
  cobalt.weight_percent = {{"C", 1.0}, {"Cr", 4.0}, {"Mo", 9.0}, {"Co", 8.0}};
  using internal::resembling;
  const std::vector<SolidusBound> bounds{plain, cobalt};
  const auto of = [&](double percent) {
    return resembling(bounds, {{"C", 1.0}, {"Cr", 4.0}, {"Mo", 9.0}, {"Co", percent}});
  };
  CHECK(of(0.0) == std::vector{&bounds[0]});
  CHECK(of(5.0) == std::vector{&bounds[0], &bounds[1]});
  CHECK(of(7.5) == std::vector{&bounds[1]});
  CHECK(of(11.0).empty());
}

TEST_CASE("304: the published start of melting of a steel that this one resembles") {
  // 1240 +- 12 C for 0.8C-4Cr-5Mo-6W-2V: see solidus_bounds in the parameter file.
  CHECK(
      texts(soak(kHighSpeed, 1245), "304") ==
      "The steel resembles AISI M2 (HS6-5-2), which begins to melt at 1240 C (+-12).");
  CHECK(texts(soak(kHighSpeed, 1220), "304").empty());
  CHECK(
      texts(soak({{"C", 0.4}, {"Cr", 5}, {"Mo", 1.3}, {"V", 1}}, 1245), "304").empty());
}

TEST_CASE("304: what was seen to melt weighs more than what was free of melt") {
  const auto free_of_melt = bound(SolidusSense::at_least, 1230);
  const auto measured = bound(SolidusSense::measured, 1240);
  const auto melted = bound(SolidusSense::at_most, 1260);
  const std::string start = "The steel resembles AISI M2, which ";
  CHECK(melting({free_of_melt, measured, melted}, 1228).empty());
  CHECK(melting({free_of_melt, melted}, 1231) ==
        start + "is known to be free of melt only up to 1230 C (+-10).");
  // The error bar of a measurement counts.
  CHECK(melting({free_of_melt, melted, measured}, 1231) ==
        start + "begins to melt at 1240 C (+-10).");
  CHECK(melting({melted}, 1255) == start + "has been seen to melt at 1260 C (+-10).");
  CHECK(melting({melted}, 1245).empty());
}

TEST_CASE("304: Mn and Si of a certificate do not hide a grade that leaves them out") {
  SolidusBound grade = bound(SolidusSense::measured, 1160.0);
  grade.weight_percent = {{"C", 0.5}, {"Cr", 1.5}};
  const NamedValues heat{
      {"Fe", 97.2}, {"C", 0.5}, {"Cr", 1.5}, {"Mn", 0.4}, {"Si", 0.4}};
  CHECK(internal::resembles(grade, heat));
  CHECK_FALSE(internal::resembles(grade, {{"C", 0.5}, {"Cr", 1.5}, {"Mn", 0.6}}));
  CHECK_FALSE(internal::resembles(grade, {{"C", 0.34}, {"Cr", 1.5}}));
  CHECK_FALSE(internal::resembles(grade, {{"C", 0.5}, {"Cr", 0.9}}));
}

TEST_CASE("304: more carbon does not lift a bound, carbon lowers the solidus") {
  for (const double carbon : {0.70, 0.85, 1.0, 1.2, 1.3}) {
    CAPTURE(carbon);
    NamedValues steel = kHighSpeed;
    steel.set("C", carbon);
    CHECK(texts(soak(steel, 1245), "304") ==
          "The steel resembles AISI M2 (HS6-5-2), which begins to melt at 1240 C "
          "(+-12).");
  }
  CHECK(texts(soak({{"C", 1.2}, {"Cr", 4.1}, {"Mo", 5}, {"W", 6.2}, {"V", 3}}, 1245),
              "304") ==
        "The steel resembles EN HS6-5-3 (AISI M3:2), which begins to melt "
        "at 1230 C (+-12).");
}

TEST_CASE("304: M1 and M10 are hardened from as high as M7") {
  CHECK(
      texts(soak({{"C", 0.82}, {"Cr", 3.8}, {"Mo", 8.5}, {"W", 1.5}, {"V", 1.1}}, 1225),
            "304") ==
      "The steel resembles AISI M1, which is known to be free of melt "
      "only up to 1220 C (+-5). With more carbon than that this steel may melt 3 C "
      "sooner.");
  CHECK(
      texts(soak({{"C", 0.9}, {"Cr", 4}, {"Mo", 8}, {"V", 2}}, 1225), "304") ==
      "The steel resembles AISI M10, which is known to be free of melt only up to 1220 "
      "C (+-5).");
}

TEST_CASE("304: cobalt grades melt like their kin, others by records of their own") {
  const auto at = [](const NamedValues& steel, double celsius) {
    return texts(soak(steel, celsius), "304");
  };
  const NamedValues m35{{"C", 0.93}, {"Cr", 4.2}, {"Mo", 5},   {"W", 6.4},
                        {"V", 1.8},  {"Co", 4.8}, {"Mn", 0.3}, {"Si", 0.35}};
  CHECK(
      at(m35, 1260) ==
      "The steel resembles AISI M2 (HS6-5-2), which begins to melt at 1240 C (+-12).");
  CHECK(at(m35, 1225).empty());
  const NamedValues t4{{"C", 0.75}, {"Cr", 4.1}, {"W", 18},  {"Mo", 0.7},
                       {"V", 1.0},  {"Co", 5},   {"Mn", 0.3}};
  CHECK(at(t4, 1310) ==
        "The steel resembles AISI T1 (HS18-0-1), which has been seen to melt at 1315 C "
        "(+-10).");
  const NamedValues m42{{"C", 1.1},  {"Cr", 3.8}, {"Mo", 9.5}, {"W", 1.5},
                        {"V", 1.15}, {"Co", 8},   {"Si", 0.4}};
  CHECK(at(m42, 1225) ==
        "The steel resembles AISI M42 (HS2-9-1-8), which is known to be free of melt "
        "only up to 1210 C (+-5). With more carbon than that this steel may melt 3 C "
        "sooner.");
  // HS10-4-3-10 and maraging steel have no kin among the records.
  CHECK(at({{"C", 1.27}, {"Cr", 4.1}, {"Mo", 3.6}, {"W", 9.5}, {"V", 3.3}, {"Co", 10}},
           1290)
            .empty());
  CHECK(at({{"C", 0.02}, {"Mo", 5}, {"Co", 8}}, 1290).empty());
}
